import { describe, expect, it } from 'vitest';
import { duty, type LookWindow, type ShotHeat, type Trace, type WeighedMoments } from '../engine/index.ts';
import { fieldScene, unitView } from './field-scene.ts';
import { handMadeField, handMadeNames, handMadeTrace } from './hand-made.fixture.ts';
import { heatLevels } from './heat-marks.ts';
import { labelBox, overlaps, type TextMark } from './label-places.ts';
import type { Primitive, SceneLayer, StyleName } from './scene.ts';
import { traceScene } from './trace-scene.ts';
import { firstBeatAt, lanesAt, openMenAt } from './watch-marks.ts';
import { joinLayers, smallWatchOptions, watchField, watchScene } from './watch-scene.ts';
import { watchWords } from './watch-words.ts';

const trace = handMadeTrace();

function watched(time: number, options: Parameters<typeof watchScene>[3] = {}): SceneLayer {
  return watchScene(trace, time, handMadeNames, options);
}

function styled(layer: SceneLayer, style: StyleName): readonly Primitive[] {
  return layer.items.filter((item) => item.style === style);
}

function texts(layer: SceneLayer, style: StyleName): readonly string[] {
  return styled(layer, style).flatMap((item) => (item.kind === 'text' ? [item.text] : []));
}

describe('watchScene', () => {
  it('draws with its ground the same men and ball as the page does', () => {
    for (const time of [0, 0.5, 0.8, 1.2, 2]) {
      const page = traceScene(trace, time, handMadeNames, handMadeField);
      for (const style of [
        'attacker',
        'carrier',
        'attackerText',
        'carrierText',
        'defenderText',
        'ball',
        'duty',
      ] as const)
        expect(styled(watched(time), style), `${style} at ${time}`).toEqual(styled(page, style));
      expect([...styled(watched(time), 'defender')]).toEqual([...styled(page, 'defender')]);
    }
  });

  it('holds nothing of the ground, which is drawn once', () => {
    const ground = new Set(fieldScene(handMadeField).map(({ style }) => style));
    expect(watched(0.8).items.filter(({ style }) => ground.has(style))).toEqual([]);
    expect(watchField(handMadeField).items).toEqual(expect.arrayContaining([...fieldScene(handMadeField)]));
  });

  it('leads the line of a pass to the ball itself, between two frames too', () => {
    const layer = watched(0.73);
    const [pass] = styled(layer, 'pass');
    const [ball] = styled(layer, 'ball');
    if (pass?.kind !== 'path' || ball?.kind !== 'circle') throw new TypeError('expected a pass and a ball');
    const last = pass.steps.at(-1);
    expect(last?.kind === 'line' && [last.to.x, last.to.y]).toEqual([ball.centre.x, ball.centre.y]);
  });

  it('draws each lane by its odds: heavy, lighter, dashed', () => {
    const lanes = [
      { to: 0, completion: 0.8 },
      { to: 2, completion: 0.79 },
      { to: 4, completion: 0.496 },
      { to: 5, completion: 0.49 },
      { to: 3, completion: 1 },
    ];
    const layer = watched(0.3, { lanes });
    const counts = (['laneSure', 'laneFair', 'laneUnder'] as const).map((style) => styled(layer, style).length);
    expect(counts).toEqual([2, 2, 1]);
    // Nothing is sure: at most 99 %.
    expect(texts(layer, 'laneText')).toEqual(['80 %', '79 %', '50 %', '49 %', '99 %']);
  });

  it('draws no lanes while nobody has the ball', () => {
    expect(styled(watched(0.8, { lanes: [{ to: 0, completion: 0.9 }] }), 'laneSure')).toEqual([]);
  });

  it('writes the odds of a lane clear of the crosses where it can', () => {
    const layer = watched(0.3, { lanes: [{ to: 4, completion: 0.6 }] });
    const [odds] = styled(layer, 'laneText');
    const frame = styled(layer, 'defender').flatMap((item) => (item.kind === 'path' ? item.steps : []));
    for (const step of frame)
      if (step.kind === 'move' && odds?.kind === 'text')
        expect(Math.hypot(step.to.x - odds.at.x, step.to.y - odds.at.y)).toBeGreaterThan(0.8);
  });

  it('rings the open man and says it', () => {
    const layer = watched(0.3, { open: [{ who: 4, word: 'open' }] });
    expect(styled(layer, 'openRing')).toHaveLength(1);
    expect(texts(layer, 'openText')).toEqual(['open']);
  });

  it('shows a taught read as it is taken, and not for ever', () => {
    const read: Trace = {
      ...trace,
      events: [{ kind: 'read', time: 0.2, who: 1, read: 1, lastTen: false }, ...trace.events],
    };
    const at = (time: number, size: 'large' | 'small'): SceneLayer => watchScene(read, time, handMadeNames, { size });
    expect(texts(at(0.3, 'large'), 'readText')).toEqual(['read: open WL: skip WL']);
    expect([styled(at(0.3, 'small'), 'readRing').length, styled(at(0.3, 'small'), 'readText').length]).toEqual([1, 0]);
    expect(styled(at(0.1, 'large'), 'readRing')).toEqual([]);
    expect(styled(at(1.9, 'large'), 'readRing')).toEqual([]);
  });

  it.each([
    ['trails', { trailSeconds: 0 }, 'trail'],
    ['the way of the ball', { ballSeconds: 0 }, 'pass'],
    ['duties', { duties: false }, 'dutyLock'],
  ] as const)('leaves out %s when asked to', (_, options, style) => {
    expect(styled(watched(0.8, { trailSeconds: 2 }), style).length).toBeGreaterThan(0);
    expect(styled(watched(0.8, { trailSeconds: 2, ...options }), style)).toEqual([]);
  });

  it('on a small field tells sides and ball by shape and fill alone, in larger marks, without letters on the defense', () => {
    const small = watched(0.3, smallWatchOptions);
    const radius = (layer: SceneLayer, style: StyleName): number =>
      Math.max(...styled(layer, style).map((item) => (item.kind === 'circle' ? item.radius : 0)));
    expect(texts(small, 'defenderText')).toEqual([]);
    expect(styled(small, 'defender')).toHaveLength(10);
    expect([styled(small, 'attacker').length, styled(small, 'carrier').length]).toEqual([5, 1]);
    for (const style of ['attacker', 'carrier', 'ball'] as const)
      expect(radius(small, style)).toBeGreaterThan(1.5 * radius(watched(0.3), style));
    const ground = watchField(handMadeField, { size: 'small' });
    expect(texts(ground, 'yardText')).toEqual([]);
    expect(texts(watchField(handMadeField), 'yardText').length).toBeGreaterThan(3);
  });
});

describe('what is written', () => {
  const lanes = [0, 2, 3, 4, 5].map((to) => ({ to, completion: 0.35 + to / 10 }));
  const open = [0, 4, 5].map((who) => ({ who, word: 'open' }));
  const read: Trace = {
    ...trace,
    events: [{ kind: 'read', time: 0.1, who: 1, read: 1, lastTen: false }, ...trace.events],
  };
  const moments = Array.from({ length: 21 }, (_, index) => index / 10);
  const written = (layer: SceneLayer): readonly TextMark[] =>
    layer.items.flatMap((item) => (item.kind === 'text' ? [item] : []));

  it.each([10, 21, 34])('piles up at no moment with all layers on, at %d px a yard', (pxPerYard) => {
    for (const time of moments) {
      const words = written(watchScene(read, time, handMadeNames, { lanes, open, pxPerYard }));
      const letters = words.filter(({ style }) => style === 'attackerText' || style === 'carrierText');
      const placed = words.filter((word) => !letters.includes(word));
      for (const [index, word] of placed.entries())
        for (const other of [...placed.slice(index + 1), ...letters])
          expect(
            overlaps(labelBox(word, pxPerYard), labelBox(other, pxPerYard)),
            `${word.text} and ${other.text} at ${time}`,
          ).toBe(false);
    }
  });

  it('is less where the picture is small, and what matters most is kept', () => {
    const large = written(watchScene(read, 0.3, handMadeNames, { lanes, open, pxPerYard: 34 }));
    const small = written(watchScene(read, 0.3, handMadeNames, { lanes, open, pxPerYard: 4 }));
    expect(small.length).toBeLessThan(large.length);
    expect(small.filter(({ style }) => style === 'attackerText' || style === 'carrierText')).toHaveLength(6);
  });

  it('is the same in the mirrored picture, at the mirrored places', () => {
    // Nobody stands on the middle line to the last bit, where neither side is the outward one.
    const aside = withSides(read, (x) => x + 0.01);
    const turned = withSides(aside, (x) => -x);
    for (const time of moments) {
      const here = written(watchScene(aside, time, handMadeNames, { lanes, open }));
      const there = written(watchScene(turned, time, handMadeNames, { lanes, open }));
      expect(there.map(({ text, at }) => ({ text, x: rounded(at.x), y: rounded(at.y) }))).toEqual(
        here.map(({ text, at }) => ({ text, x: rounded(-at.x), y: rounded(at.y) })),
      );
    }
  });

  const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
  function withSides(one: Trace, change: (x: number) => number): Trace {
    const changed = (numbers: Float32Array, stride: number): Float32Array =>
      numbers.map((value, index) => (index % stride === 0 ? change(value) : value));
    return { ...one, places_byFrame: changed(one.places_byFrame, 2), ball_byFrame: changed(one.ball_byFrame, 3) };
  }
});

describe('watchField', () => {
  const cone: ShotHeat = {
    left: -9.5,
    bottom: 0.5,
    cell: 1,
    columns: 20,
    rows: 20,
    // .7 at the goal and .04 less a yard: .5 at 5 yd, .1 at 15.
    odds_byCell: Float32Array.from({ length: 400 }, (_, cell) =>
      Math.max(0, 0.7 - 0.04 * Math.hypot((cell % 20) - 9.5, Math.floor(cell / 20) + 0.5)),
    ),
  };
  const field = watchField(handMadeField, { heat: cone });

  it('lays a band of heat for each level over the one below it, under lines and goal', () => {
    expect(styled(field, 'heat')).toHaveLength(heatLevels.length);
    const styles = field.items.map(({ style }) => style);
    expect(styles.lastIndexOf('heat')).toBeLessThan(styles.indexOf('creaseArea'));
    expect(styles.indexOf('heat')).toBeGreaterThan(styles.lastIndexOf('boxArea'));
  });

  it('prints the odds where they are reached', () => {
    const printed = styled(field, 'heatText').flatMap((item) => (item.kind === 'text' ? [item] : []));
    expect(new Set(printed.map(({ text }) => text))).toEqual(new Set(['.10', '.20', '.30', '.40', '.50']));
    for (const { at, text } of printed.filter(({ at }) => Math.abs(at.x) < 1))
      expect(Math.hypot(at.x, at.y), text).toBeCloseTo((0.7 - Number(text)) / 0.04, 0);
  });

  it('draws none without it', () => {
    expect(styled(watchField(handMadeField), 'heat')).toEqual([]);
  });
});

describe('what is open at a moment', () => {
  const window = (to: number, opens: number, closes: number, more: Partial<LookWindow> = {}): LookWindow => ({
    trial: 3,
    kind: 'skip',
    from: 1,
    to,
    opens,
    closes,
    seenAt: opens,
    completion: 0.7,
    shotOdds: 0.3,
    leftBy: 3,
    duty: duty.split,
    lateBy: 0.4,
    ...more,
  });
  const windows = [
    window(4, 1, 2),
    window(4, 1.5, 2.5),
    window(5, 3, 4, { kind: 'shot' }),
    window(2, 1, 9, { trial: 4 }),
  ];

  it.each([
    [0.9, []],
    [1, ['4 open']],
    [1.7, ['4 open']],
    [2.5, ['4 open']],
    [3.5, ['5 free']],
  ])('%d s after the first beat', (time, expected) => {
    expect(openMenAt(windows, 3, time).map(({ who, word }) => `${who} ${word}`)).toEqual(expected);
  });

  it('counts from the first beat of the trace', () => {
    expect(firstBeatAt(trace)).toBe(0);
    expect(firstBeatAt({ ...trace, events: [] })).toBeUndefined();
  });
});

describe('lanesAt', () => {
  // Two moments: TR (1) at 1 s, WL (4) at 2 s; mate i of moment m completes (m * 6 + i) / 16.
  const none = new Float32Array(12);
  const weighed: WeighedMoments = {
    time_byMoment: Float32Array.of(1, 2),
    hand_byMoment: Int8Array.of(1, 4),
    completion_byMate: Float32Array.from({ length: 12 }, (_, at) => at / 16),
    shotOdds_byMate: none,
    value_byMate: none,
    lob_byMate: new Uint8Array(12),
    shotOdds_byMoment: none,
    shotValue_byMoment: none,
    holdValue_byMoment: none,
  };

  it('takes what was weighed last, for each mate', () => {
    expect(lanesAt(weighed, 1.2, 1)).toEqual([0, 2, 3, 4, 5].map((to) => ({ to, completion: to / 16 })));
    expect(lanesAt(weighed, 2, 4)).toEqual([0, 1, 2, 3, 5].map((to) => ({ to, completion: (6 + to) / 16 })));
  });

  it.each([
    ['before anything was weighed', 0.9, 1],
    ['long after', 1.9, 1],
    ['of a man who has not got the ball', 1.1, 4],
  ])('gives none %s', (_, time, holder) => {
    expect(lanesAt(weighed, time, holder)).toEqual([]);
  });
});

describe('watchWords', () => {
  it('says what the layers show', () => {
    const lanes = [{ to: 4, completion: 0.86 }];
    const { title, description } = watchWords(trace, 0.3, handMadeNames, { lanes, open: [{ who: 4, word: 'open' }] });
    expect(title).toBe('Far corner against Box and one, zone, 0.3 s');
    expect(description).toContain('WL is open.');
    expect(description).toContain('Odds of a pass by TR: WL 86 %.');
    expect(description).toContain('ll splits WL and TL');
    expect(watchWords(trace, 0.8, handMadeNames, { lanes }).description).not.toContain('Odds of a pass');
  });

  it('joins layers to one scene', () => {
    const words = watchWords(trace, 0.3, handMadeNames);
    const scene = joinLayers([watchField(handMadeField), watched(0.3)], words);
    expect(scene.view).toEqual(unitView);
    expect(scene.items).toHaveLength(watchField(handMadeField).items.length + watched(0.3).items.length);
    expect(() => joinLayers([], words)).toThrow(RangeError);
  });
});
