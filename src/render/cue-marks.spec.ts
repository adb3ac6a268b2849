import { describe, expect, it } from 'vitest';
import type { Cue, Point, Trace } from '../engine/index.ts';
import { cueMarks } from './cue-marks.ts';
import { handMadeNames } from './hand-made.fixture.ts';
import type { Primitive, StyleName } from './scene.ts';
import { motionAt } from './trace-motion.ts';

// Two frames a tenth of a second apart: in the second TR has the ball and everybody is on his way as the case says.

const step = 0.1;
const offense: readonly Point[] = [
  { x: 0, y: 14 },
  { x: 9, y: 12 },
  { x: -9, y: 12 },
  { x: 8, y: 4 },
  { x: -8, y: 4 },
  { x: 1.5, y: 6 },
];
interface Man extends Point {
  readonly vx?: number;
  readonly vy?: number;
}
const tr: Man = { x: 7.5, y: 10.5 };
const tl: Man = { x: 0, y: 9.5 };
const lr: Man = { x: 6.5, y: 4 };
const ll: Man = { x: -6.5, y: 3.5 };
const c: Man = { x: 0.5, y: 5 };

function traceOf(men: readonly Man[], holder: number, sense: 1 | -1 = 1): Trace {
  const all: readonly Man[] = [...offense, ...men, { x: 0, y: 1 }];
  const frame = (share: number): readonly number[] =>
    all.flatMap(({ x, y, vx = 0, vy = 0 }) => [sense * (x - vx * step * share), y - vy * step * share]);
  const at = offense[Math.max(holder, 0)]!;
  return {
    step,
    frames: 2,
    agents: 12,
    defenders: 5,
    places_byFrame: Float32Array.from([...frame(1), ...frame(0)]),
    ball_byFrame: Float32Array.from([sense * at.x, at.y, 1.5, sense * at.x, at.y, 1.5]),
    holder_byFrame: Int8Array.from([holder, holder]),
    duties_byFrame: new Int8Array(30),
    events: [],
  };
}

function marks(cue: Cue, men: readonly Man[], holder = 1): readonly Primitive[] {
  return cueMarks(traceOf(men, holder), step, cue, handMadeNames);
}

function circles(items: readonly Primitive[], style: StyleName): readonly (readonly number[])[] {
  return items.flatMap((item) =>
    item.kind === 'circle' && item.style === style
      ? [[item.centre.x, item.centre.y].map((value) => Number(value.toFixed(3)))]
      : [],
  );
}

const styles = (items: readonly Primitive[]): readonly StyleName[] => [...new Set(items.map(({ style }) => style))];

interface Drawn {
  readonly cue: Cue;
  readonly men: readonly Man[];
  readonly styles: readonly StyleName[];
  /** Whom the ring is round; nobody for a cue about room. */
  readonly ring: Point | null;
}

const drawn: readonly Drawn[] = [
  { cue: { kind: 'iAmFree' }, men: [{ x: 4, y: 10 }, tl, lr, ll, c], styles: ['cueRoom'], ring: null },
  {
    cue: { kind: 'iAmPressed' },
    men: [{ x: 8.5, y: 11 }, tl, lr, ll, c],
    styles: ['cueRing'],
    ring: { x: 8.5, y: 11 },
  },
  {
    cue: { kind: 'nextSteps' },
    men: [tr, tl, { x: 7, y: 5, vx: 1, vy: 4 }, ll, c],
    styles: ['cueRing', 'cueMove', 'cueMoveHead'],
    ring: { x: 7, y: 5 },
  },
  {
    cue: { kind: 'myManLeaves' },
    men: [{ ...tr, vx: -2, vy: -2 }, tl, lr, ll, c],
    styles: ['cueRing', 'cueMove', 'cueMoveHead'],
    ring: tr,
  },
  {
    cue: { kind: 'creaseUp' },
    men: [tr, tl, lr, ll, { x: 1, y: 9 }],
    styles: ['cueRing', 'cueRoom'],
    ring: { x: 1, y: 9 },
  },
  {
    cue: { kind: 'farLowLooksAway' },
    men: [tr, tl, lr, { x: -1, y: 6 }, c],
    styles: ['cueRing', 'cueLane'],
    ring: { x: -1, y: 6 },
  },
  {
    cue: { kind: 'farLowCrosses' },
    men: [tr, tl, lr, { x: -4, y: 4, vx: 4 }, c],
    styles: ['cueRing', 'cueMove', 'cueMoveHead'],
    ring: { x: -4, y: 4 },
  },
  {
    cue: { kind: 'open', who: 'WL' },
    men: [tr, tl, lr, { x: -4, y: 3 }, c],
    styles: ['cueRoom', 'cueLane'],
    ring: null,
  },
  {
    cue: { kind: 'left', who: 'WL' },
    men: [tr, tl, lr, { x: -4, y: 4, vx: 3, vy: 1 }, c],
    styles: ['cueRing', 'cueMove', 'cueMoveHead'],
    ring: { x: -4, y: 4 },
  },
  {
    cue: { kind: 'laneTaken', who: 'WL' },
    men: [tr, { x: 0, y: 10.5 }, lr, { x: -4, y: 6 }, { x: 0, y: 3.5 }],
    styles: ['cueRing', 'cueLane'],
    ring: { x: -4, y: 6 },
  },
];

describe('the marks of a cue', () => {
  it.each(drawn)('$cue.kind: what to look at', ({ cue, men, styles: expected, ring }) => {
    const items = marks(cue, men);
    expect(styles(items)).toEqual(expected);
    expect(circles(items, 'cueRing')).toEqual(ring === null ? [] : [[ring.x, ring.y]]);
  });

  it.each(drawn)('$cue.kind: mirrored in the mirror', ({ cue, men }) => {
    const names = handMadeNames;
    // The corners of an arrow's head come in the other order.
    const sorted = (xs: readonly number[]): readonly number[] => xs.map((x) => x + 0).sort((a, b) => a - b);
    const seen = cueMarks(traceOf(men, 1), step, cue, names).flatMap(xOfAll);
    const mirrored = cueMarks(traceOf(men, 1, -1), step, cue, names).flatMap(xOfAll);
    expect(sorted(mirrored.map((x) => -x))).toEqual(sorted(seen));
  });

  it('are none while it does not hold', () => {
    for (const { cue } of drawn) {
      if (cue.kind === 'creaseUp' || !('who' in cue)) expect(marks(cue, [tr, tl, lr, ll, c]), cue.kind).toEqual([]);
      else expect(marks({ ...cue, who: 'WR' }, [tr, tl, lr, ll, c]), cue.kind).toEqual([]);
    }
  });

  it('are none while nobody of the offense has the ball, or the man who is asked about has it', () => {
    const [free] = drawn;
    expect(marks(free!.cue, free!.men, -1)).toEqual([]);
    expect(marks({ kind: 'laneTaken', who: 'TR' }, free!.men)).toEqual([]);
    expect(marks({ kind: 'open', who: 'nobody' }, free!.men)).toEqual([]);
  });

  it('show with the arrow where he goes: on toward the carrier', () => {
    const arrow = marks({ kind: 'nextSteps' }, [tr, tl, { x: 7, y: 5, vx: 0, vy: 4 }, ll, c]);
    const shaft = arrow.find(({ style }) => style === 'cueMove');
    if (shaft?.kind !== 'path') throw new TypeError('expected a path');
    const ys = shaft.steps.flatMap((each) => (each.kind === 'close' ? [] : [each.to.y]));
    expect(ys[0]).toBeGreaterThan(5);
    expect(ys.at(-1)).toBeGreaterThan(ys[0]!);
  });
});

describe('the motion of a trace', () => {
  const trace = traceOf([tr, tl, { x: 7, y: 5, vx: 1, vy: 4 }, ll, c], 1);

  it('is where a man is, and his way since the frame before', () => {
    const [x, y, vx, vy] = motionAt(trace, step).slice(4 * 8, 4 * 9);
    for (const [is, should] of [
      [x, 7],
      [y, 5],
      [vx, 1],
      [vy, 4],
    ])
      expect(is).toBeCloseTo(should!, 4);
  });

  it('is nothing in the first frame, and stays that of the last after the end', () => {
    expect([...motionAt(trace, 0).slice(34, 36)]).toEqual([0, 0]);
    expect(motionAt(trace, 9)).toEqual(motionAt(trace, step));
    expect(motionAt(trace, -1)).toEqual(motionAt(trace, 0));
  });

  it('is refused for a time that is no number', () => {
    expect(() => motionAt(trace, Number.NaN)).toThrow(RangeError);
    expect(() => motionAt({ ...trace, frames: 0 }, 0)).toThrow(RangeError);
  });
});

/** Every x of a mark, rounded to the width of nothing that is seen. */
function xOfAll(item: Primitive): readonly number[] {
  const points =
    item.kind === 'circle'
      ? [item.centre]
      : item.kind === 'line'
        ? [item.from, item.to]
        : item.kind === 'path'
          ? item.steps.flatMap((each) => (each.kind === 'close' ? [] : [each.to]))
          : [item.at];
  return points.map(({ x }) => Math.round(x * 1e4) / 1e4);
}
