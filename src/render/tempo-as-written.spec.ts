import { describe, expect, it } from 'vitest';
import { demoPlaybook, groundOf, type PlayEntry, playTiming, toEnginePlay } from '../playbook/index.ts';
import { tempoAsWritten } from './tempo-as-written.ts';
import { legEnd, legStart, type PlayTempo, tempoChart } from './tempo-chart.ts';

function written(entry: PlayEntry): PlayTempo {
  const playbook = { ...demoPlaybook, plays: [entry] };
  return tempoAsWritten(toEnginePlay(playbook, entry.id), playTiming(entry, groundOf(playbook)));
}

describe.each(demoPlaybook.plays.map((entry) => [entry.id, entry] as const))('%s as it is written', (_, entry) => {
  const play = toEnginePlay(demoPlaybook, entry.id);
  const tempo = written(entry);
  const chart = tempoChart(play, tempo);

  it('starts every beat and does everything in it', () => {
    expect(chart.beats).toHaveLength(play.beats.length);
    for (const { id, actions, starts } of chart.beats) {
      expect(actions).toHaveLength(play.beats.find((beat) => beat.id === id)!.actions.length);
      for (const { start, end } of actions) {
        expect(start).toBeGreaterThanOrEqual(starts - 1e-9);
        expect(end).toBeGreaterThanOrEqual(start);
      }
    }
  });

  it('follows one ball without a gap from the first man to the shot', () => {
    const { ball } = chart;
    expect(ball[0]).toMatchObject({ kind: 'held', spot: play.start.ball, from: 0 });
    expect(ball.at(-1)!.kind).toBe('shot');
    for (const [index, leg] of ball.slice(1).entries()) expect(legStart(leg)).toBeCloseTo(legEnd(ball[index]!), 6);
  });

  it('throws what the script names, in its own way', () => {
    const asked = play.beats.flatMap(({ actions }) =>
      actions.flatMap((one) => (one.kind === 'pass' ? [`${one.by} ${one.style} ${one.to}`] : [])),
    );
    const thrown = tempo.ball.flatMap((leg) => (leg.kind === 'pass' ? [`${leg.from} ${leg.style} ${leg.to}`] : []));
    expect([...thrown].sort()).toEqual([...asked].sort());
  });
});

describe('what only holds the ball or a man up', () => {
  const first = demoPlaybook.plays[0]!;
  const more = ['TR hold 0.6', 'TR fake X', 'C seal on WR'];
  const [swing, ...others] = first.beats;
  const entry: PlayEntry = { ...first, beats: [{ ...swing!, do: [...swing!.do, ...more] }, ...others] };

  it('lasts from when it is said', () => {
    const [, hold, fake, seal] = written(entry).beats.find(({ id }) => id === swing!.id)!.actions;
    expect(hold).toEqual({ start: 0, end: 0.6 });
    expect(fake!.start).toBe(0);
    // A seal lasts until its man is sent elsewhere: C cuts when "down" begins.
    const down = written(entry).beats.find(({ id }) => id === 'down')!;
    expect(seal!.end).toBeCloseTo(down.starts, 6);
  });
});
