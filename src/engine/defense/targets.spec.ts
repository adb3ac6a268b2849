import { describe, expect, test } from 'vitest';
import { createDutyBoard, duty } from './duty.ts';
import { targetInto } from './targets.ts';

type Pair = readonly [x: number, y: number];

interface Case {
  readonly what: string;
  readonly kind: keyof typeof duty;
  readonly a?: Pair;
  readonly b?: Pair;
  readonly at?: Pair;
  readonly ball: Pair;
  /** Where he should be, within `within` yards. */
  readonly near: Pair;
  readonly within: number;
}

const params = { extends: 12, standoff: 1.8, sense: 1 } as const;

function target(given: Omit<Case, 'what' | 'near' | 'within'>, sense: 1 | -1 = 1): Pair {
  const board = createDutyBoard(1);
  const offense = new Float64Array(12);
  board.kind[0] = duty[given.kind];
  if (given.a) {
    board.a[0] = 0;
    offense.set([sense * given.a[0], given.a[1]], 0);
  }
  if (given.b) {
    board.b[0] = 1;
    offense.set([sense * given.b[0], given.b[1]], 2);
  }
  board.x[0] = sense * (given.at?.[0] ?? 0);
  board.y[0] = given.at?.[1] ?? 0;
  const out = new Float64Array(2);
  const ball = Float64Array.of(sense * given.ball[0], given.ball[1]);
  targetInto(out, board, 0, offense, ball, { ...params, sense });
  return [out[0]!, out[1]!];
}

// Places that man-down units are taught (common practice, no source): box corners (5, 10) and (5, 3), inside man (0, 5),
// the carrier met at 11 to 13 yd and a stick's length off, far pipe (3, 3), a far top at (0, 8).
const cases: readonly Case[] = [
  { what: 'meets a carrier at the point', kind: 'ball', a: [0, 14], ball: [0, 14], near: [0, 12], within: 0.3 },
  { what: 'does not chase him out', kind: 'ball', a: [0, 22], ball: [0, 22], near: [0, 12], within: 1e-9 },
  { what: 'meets a low carrier a stick off', kind: 'ball', a: [8, 4], ball: [8, 4], near: [6.4, 3.2], within: 0.1 },
  {
    what: 'waits at the near pipe for a ball behind',
    kind: 'ball',
    a: [5, -4],
    ball: [5, -4],
    near: [2.2, 1.2],
    within: 0.1,
  },
  {
    what: 'waits at his own pipe for a ball straight behind',
    kind: 'ball',
    a: [0, -5],
    at: [-2, 1],
    ball: [0, -5],
    near: [-2.2, 1.2],
    within: 0.1,
  },
  { what: 'a top corner with the ball at the point', kind: 'man', a: [9, 12], ball: [0, 14], near: [5, 10], within: 1 },
  {
    what: 'a low corner with the ball at the same top',
    kind: 'man',
    a: [8, 4],
    ball: [9, 12],
    near: [5, 3],
    within: 1.9,
  },
  {
    what: 'a far low man with the ball at the other top',
    kind: 'man',
    a: [-8, 4],
    ball: [9, 12],
    near: [-3, 3],
    within: 1,
  },
  { what: 'a crease man is played tight', kind: 'man', a: [0, 6], ball: [0, 14], near: [0, 5], within: 0.3 },
  {
    what: 'a man behind is played from his pipe',
    kind: 'man',
    a: [-6, -4],
    ball: [6, -4],
    near: [-2.2, 1.2],
    within: 0.1,
  },
  { what: 'a far top splits and sinks', kind: 'split', a: [0, 14], b: [-9, 12], ball: [8, 4], near: [0, 8], within: 3 },
  {
    what: 'two wings are split in front of the goal',
    kind: 'split',
    a: [8, 4],
    b: [-8, 4],
    ball: [0, 14],
    near: [0, 3],
    within: 0.5,
  },
  {
    what: 'of a wing and a man behind the wing counts more',
    kind: 'split',
    a: [-11, 4],
    b: [0, -5],
    ball: [7, 14],
    near: [-3, 3],
    within: 2,
  },
  {
    what: 'fronts the crease man on the ball side',
    kind: 'front',
    a: [0, 6],
    ball: [9, 12],
    near: [0.8, 6.6],
    within: 0.1,
  },
  { what: 'locks between man and ball', kind: 'lock', a: [9, 12], ball: [0, 14], near: [7.8, 12.3], within: 0.1 },
  {
    what: 'holds the far pipe while the wing is out',
    kind: 'pipe',
    a: [-8, 4],
    at: [-3, 3],
    ball: [9, 12],
    near: [-3, 3],
    within: 1e-9,
  },
  {
    what: 'goes to a man at the doorstep',
    kind: 'pipe',
    a: [-3, 2],
    at: [3, 3],
    ball: [9, 12],
    near: [-2.2, 1.4],
    within: 0.2,
  },
  { what: 'stands in a skip lane', kind: 'lane', a: [8, 4], at: [5, 3], ball: [0, 14], near: [5.5, 5], within: 0.6 },
  { what: 'holds a place', kind: 'place', at: [0, 8], ball: [9, 12], near: [0, 8], within: 1e-9 },
  { what: 'without a man holds the place', kind: 'man', at: [5, 3], ball: [9, 12], near: [5, 3], within: 1e-9 },
];

describe('targetInto', () => {
  test.each(cases)('$kind: $what', ({ near, within, ...given }) => {
    const [x, y] = target(given);
    expect(Math.hypot(x - near[0], y - near[1])).toBeLessThanOrEqual(within);
  });

  test.each(cases)('mirrors exactly: $kind, $what', (given) => {
    const [x, y] = target(given);
    const [mx, my] = target(given, -1);
    expect([mx + 0, my]).toEqual([0 - x, y]);
  });

  test('sags farther off the farther the ball is', () => {
    const gaps = [8, 0, -8].map((x) => {
      const [tx, ty] = target({ kind: 'man', a: [9, 12], ball: [x, 14] });
      return Math.hypot(tx - 9, ty - 12);
    });
    expect(gaps[0]).toBeLessThan(gaps[1]!);
    expect(gaps[1]).toBeLessThan(gaps[2]!);
  });

  test('a lock man may cheat a part of the way to the free man', () => {
    const [alone] = target({ kind: 'lock', a: [9, 12], ball: [-9, 12] });
    const [cheating] = target({ kind: 'lock', a: [9, 12], b: [0, 14], ball: [-9, 12] });
    expect(cheating).toBeLessThan(alone - 1);
    expect(cheating).toBeGreaterThan(3);
  });
});
