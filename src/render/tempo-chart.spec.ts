import { describe, expect, it } from 'vitest';
import { handMadePlay, handMadeTrace } from './hand-made.fixture.ts';
import { handMadeChart, handMadeReads, handMadeTempo, handMadeWindows } from './hand-made-tempo.fixture.ts';
import { type TempoChart, tempoChart, windowsOfLooks, windowsOfTrial } from './tempo-chart.ts';
import { tempoOfTrace } from './tempo-of-trace.ts';
import { tempoChartWords, triggerName } from './tempo-words.ts';

const chart = handMadeChart();

describe('tempoChart', () => {
  it('has a row for each spot in the order of the play, and room after the last thing', () => {
    expect(chart.rows).toEqual(['P', 'TR', 'TL', 'WR', 'WL', 'C']);
    expect(chart.end).toBeCloseTo(4.85, 9);
  });

  it('lasts each beat until the next one, whatever their order', () => {
    const spans = ({ beats }: TempoChart): readonly string[] =>
      beats.map((one) => `${one.id} ${one.starts}-${one.ends}`);
    expect(spans(chart)).toEqual(['open 0-1', 'skip 1-3.25', `finish 3.25-${chart.end}`]);
    const reversed = { ...handMadeTempo, beats: [...handMadeTempo.beats].reverse() };
    expect(spans(tempoChart(handMadePlay, reversed))).toEqual(spans(chart));
  });

  it('leaves out what never came about, and keeps the numbers of the rest', () => {
    const [open, skip] = handMadeTempo.beats;
    const tempo = { ...handMadeTempo, beats: [open!, { ...skip!, actions: [null, ...skip!.actions.slice(1)] }] };
    const shown = tempoChart(handMadePlay, tempo);
    expect(shown.beats.map(({ id }) => id)).toEqual(['open', 'skip']);
    expect(shown.beats[1]!.actions.map(({ index, action }) => `${index} ${action.kind}`)).toEqual([
      '1 pick',
      '2 stepIn',
      '3 seal',
      '4 pass',
    ]);
  });

  it('shows some time of a play with nothing in it', () => {
    expect(tempoChart({ ...handMadePlay, beats: [] }, { beats: [], ball: [] }).end).toBe(4);
  });

  it('sets reads where their carrier first has the ball while they count, one after the other', () => {
    expect(chart.reads.map(({ index, at, cues }) => [index, Number(at.toFixed(2)), cues])).toEqual([
      [0, 1.15, 'open WL, left WL'],
      [1, 1.55, 'always'],
      [2, 3.4, 'pressed'],
    ]);
  });

  it('sets all reads of one moment while the ball is there', () => {
    const reads = Array.from({ length: 6 }, () => handMadeReads[1]);
    const shown = tempoChart({ ...handMadePlay, reads }, handMadeTempo).reads.map(({ at }) => at);
    expect(new Set(shown).size).toBe(6);
    expect(Math.max(...shown)).toBeLessThan(2.5);
  });

  it('sets a read whose carrier never has the ball at the start of its beat, and none whose beat never began', () => {
    const read = { ...handMadeReads[0], carrier: 'C' } as const;
    const late = { ...handMadeReads[0], during: 'gone' } as const;
    const never = { ...handMadeReads[2], carrier: 'C' } as const;
    const shown = tempoChart({ ...handMadePlay, reads: [read, late, never] }, handMadeTempo);
    expect(shown.reads.map(({ index, at }) => [index, at])).toEqual([[0, 1.15]]);
  });

  it('refuses a time that is no number', () => {
    const ball = [{ kind: 'held', spot: 'P', from: 0, to: Number.NaN }] as const;
    expect(() => tempoChart(handMadePlay, { beats: [], ball })).toThrow(RangeError);
  });
});

describe('windows', () => {
  it('come from the looks of a report', () => {
    const leftBy = { defender: 'll', duty: 'split', lateBy: 0.2 };
    const look = {
      kind: 'skip',
      from: 'TR',
      to: 'WL',
      share: 0.4,
      opens: 2,
      closes: 3,
      completion: 0.8,
      shotValue: 0.3,
    } as const;
    const worth = { value: 0.27, valueLow: 0.2, valueHigh: 0.33, replays: 60, leftBy };
    expect(windowsOfLooks([{ ...look, ...worth }])).toEqual([{ spot: 'WL', opens: 2, closes: 3, worth: 0.27 }]);
  });

  it('come from one trial, worth what arrives times what it scores', () => {
    const window = {
      kind: 'feed',
      from: 1,
      to: 5,
      opens: 1,
      closes: 2,
      seenAt: 9,
      completion: 0.5,
      shotOdds: 0.4,
      leftBy: -1,
      duty: 0,
      lateBy: 0,
    } as const;
    const windows = [
      { ...window, trial: 7 },
      { ...window, trial: 8 },
      { ...window, trial: 7, to: 9 },
      { ...window, trial: 7, completion: 0 },
    ];
    expect(windowsOfTrial(windows, 7, chart.rows)).toEqual([{ spot: 'C', opens: 1, closes: 2, worth: 0.2 }]);
  });
});

describe('tempoOfTrace', () => {
  // The trace begins with the beat "skip": TR throws at .5 s, WL catches at 1 s, shoots at 1.5 s and scores at 1.65 s.
  const tempo = tempoOfTrace(handMadePlay, handMadeTrace());

  it('takes throws, catches and shot from what really happened', () => {
    expect(tempo.ball).toEqual([
      { kind: 'held', spot: 'TR', from: 0, to: 0.5 },
      { kind: 'pass', from: 'TR', to: 'WL', style: 'skip', leaves: 0.5, arrives: 1 },
      { kind: 'held', spot: 'WL', from: 1, to: 1.5 },
      { kind: 'shot', by: 'WL', leaves: 1.5, arrives: 1.65, result: 'goal' },
    ]);
  });

  it('times what each man was told, and leaves out what he never did', () => {
    const [skip, ...others] = tempo.beats;
    expect(others).toEqual([]);
    expect([skip!.id, skip!.starts]).toEqual(['skip', 0]);
    const [fake, pick, stepIn, seal, pass] = skip!.actions;
    expect([fake, pick]).toEqual([null, null]);
    expect(seal).toEqual({ start: 0, end: 1.65 });
    expect(pass).toEqual({ start: 0, end: 0.5 });
    // WL walks from (-8, 4) to (-6, 6) in 2 s, 1.414 yd/s: .3 yd after .21 s, .8 yd short of the end after 1.43 s.
    expect(stepIn!.start).toBeCloseTo(0.2, 9);
    expect(stepIn!.end).toBeCloseTo(1.45, 9);
  });

  it('says how a pass was lost, and ends there when nobody gets it back', () => {
    const trace = handMadeTrace();
    const events = trace.events.flatMap((event) =>
      event.kind === 'catch'
        ? [
            { kind: 'intercepted', time: 1, by: 2 } as const,
            { kind: 'turnover', time: 1, how: 'intercepted', back: 1 } as const,
          ]
        : event.time <= 1
          ? [event]
          : [],
    );
    expect(tempoOfTrace(handMadePlay, { ...trace, events }).ball.at(-1)).toEqual({
      kind: 'pass',
      from: 'TR',
      to: 'WL',
      style: 'skip',
      leaves: 0.5,
      arrives: 1,
      lost: 'picked off',
    });
  });

  it('ends where the script begins anew', () => {
    const trace = handMadeTrace();
    const again = { kind: 'beat', time: 1.2, beat: 'skip', lastTen: false } as const;
    const events = [...trace.events, again].sort((a, b) => a.time - b.time);
    const cut = tempoOfTrace(handMadePlay, { ...trace, events });
    expect(cut.beats).toHaveLength(1);
    const last = cut.ball.at(-1)!;
    expect(last.kind === 'held' && last.to).toBeCloseTo(1.2, 9);
  });

  it('is empty for a play that never began', () => {
    expect(tempoOfTrace(handMadePlay, { ...handMadeTrace(), events: [] })).toEqual({ beats: [], ball: [] });
  });
});

describe('tempoChartWords', () => {
  const words = tempoChartWords(chart);

  it('is a sentence for each beat, then what is open', () => {
    expect(words).toHaveLength(4);
    expect(words[0]).toBe(
      '0.0 s, "open", when the set is up: P carries from 0.0 to 0.5 s; TL fills the empty place from 0.0 to 1.5 s; P passes to TR at 0.5, there at 1.0 s.',
    );
    expect(words[1]).toContain('TR skips to WL at 2.5, there at 3.3 s');
    expect(words[1]).toContain(
      "Reads: if WL is open and WL's man has left him, TR skips to WL; TR shoots in any case.",
    );
    expect(words[2]).toBe('3.3 s, "finish", when WL catches: WL shoots at 4.0 s.');
    expect(words[3]).toBe('Open: WL from 2.0 to 3.5 s (worth 0.41); C from 1.0 to 1.5 s (worth 0.10).');
  });

  it('tells a shot that no beat asked for, and what became of it', () => {
    const ball = [{ kind: 'shot', by: 'C', leaves: 4.4, arrives: 4.7, result: 'saved' }] as const;
    expect(tempoChartWords({ ...chart, ball })[3]).toBe('C shoots at 4.4 s: saved.');
  });

  it('says nothing of what is not open', () => {
    expect(tempoChartWords({ ...chart, windows: [] })).toHaveLength(3);
    expect(handMadeWindows).toHaveLength(2);
  });

  it.each([
    [{ kind: 'start' }, 'start'],
    [{ kind: 'catch', by: 'TL' }, 'catch TL'],
    [{ kind: 'arrival', who: 'X' }, 'arrive X'],
    [{ kind: 'pass', from: 'P' }, 'P passes'],
    [{ kind: 'pass', from: 'P', to: 'TR' }, 'P to TR'],
    [{ kind: 'call', beat: 'curl', seconds: 0.8 }, 'call curl + 0.8'],
  ] as const)('names the trigger %j', (trigger, name) => {
    expect(triggerName(trigger)).toBe(name);
  });
});
