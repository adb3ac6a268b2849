import { describe, expect, it } from 'vitest';
import { type SchemeId, schemes } from '../defense/schemes.ts';
import { sets } from '../offense/sets.ts';
import { movementsOf } from './movement.ts';
import { logOddsOfTicks, oddsOfSign, signsOf, signTableOf, walkMovement } from './sign-table.ts';
import { suspectsOf } from './suspects.ts';
import { worthOfMovements } from './worth-of-movements.ts';

const ids = [
  'box-zone',
  'box-string',
  'five-man-rotation',
  'diamond-and-one',
  'shutoff',
] as const satisfies readonly SchemeId[];
const suspects = suspectsOf(
  ids.map((id) => ({ scheme: schemes[id], weight: 1 })),
  'highSchool',
);
const movements = movementsOf(
  sets['3-3']!.spots.map(({ at }) => at),
  0,
  'highSchool',
);
const choice = { level: 'highSchool', takes: 4, seed: 7 } as const;
const lap = walkMovement(movements[0]!, suspects, choice);
const pop = walkMovement(movements.find(({ id }) => id === 'pop')!, suspects, choice);
const truly = (walked: typeof lap, sign: Parameters<typeof oddsOfSign>[1]) =>
  Object.fromEntries(oddsOfSign(walked, sign, suspects, ids.length, 0).map((odds, at) => [ids[at]!, odds]));

// What the tables of the trade say of each scheme against a 3-3 (doctrine of man-down schemes: common practice), not what was measured.
describe('signs in a lap of the ball round a 3-3', () => {
  it('show one man glued to the crease in a box-and-one and a diamond-and-one, nobody in a five-man rotation or a string', () => {
    const glued = truly(lap, 'crease-glued');
    expect(Math.min(glued['box-zone']!, glued['diamond-and-one']!)).toBeGreaterThan(0.8);
    expect(Math.max(glued['five-man-rotation']!, glued['box-string']!)).toBeLessThan(0.4);
  });

  it('show the man from the crease at the point in a box with a string', () => {
    const out = truly(lap, 'crease-man-out');
    expect(out['box-string']).toBeGreaterThan(0.6);
    expect(out['box-zone']).toBeLessThan(0.2);
  });

  it('show two in front in a box, one alone in a diamond', () => {
    expect(truly(lap, 'two-in-front')['box-zone']).toBeGreaterThan(0.7);
    expect(truly(lap, 'one-in-front')['diamond-and-one']).toBeGreaterThan(0.7);
  });

  it('show a man who never leaves one of ours in a shutoff alone', () => {
    const locked = truly(lap, 'locked-man');
    expect(locked.shutoff).toBeGreaterThan(0.2);
    expect(Math.max(...ids.slice(0, 4).map((id) => locked[id]!))).toBeLessThan(0.1);
  });

  it('cannot show what the set does not have', () => {
    expect(lap.signs).not.toContain('both-pipes');
    expect(signsOf(signTableOf([lap, pop], suspects))).toContain('crease-man-follows');
  });

  it('are the same when walked through again', () => {
    expect(walkMovement(movements[0]!, suspects, choice)).toEqual(lap);
  });
});

describe('ticks', () => {
  const table = signTableOf([lap, pop], suspects);
  const [first] = suspects;

  it('of one movement are weighed together: the same said twice in other words is not counted twice', () => {
    const twice = [
      { sign: 'two-in-front', seen: true },
      { sign: 'one-in-front', seen: false },
    ] as const;
    const both = logOddsOfTicks(table, first!, twice, 0);
    const one = logOddsOfTicks(table, first!, twice.slice(0, 1), 0);
    expect(both).toBeGreaterThanOrEqual(one - 1e-9);
  });

  it('that no movement shows say nothing', () => {
    expect(logOddsOfTicks(table, first!, [{ sign: 'goes-behind', seen: true }])).toBe(0);
  });

  it('are refused for a suspect that the table was not made for', () => {
    const [other] = suspectsOf([{ scheme: schemes.jump, weight: 1 }], 'highSchool');
    expect(() => logOddsOfTicks(table, other!, [])).toThrow(RangeError);
  });
});

describe('what a movement is worth', () => {
  const table = signTableOf([lap, pop], suspects);
  const even = ids.map(() => 1);

  it('is nothing when one call is best against all', () => {
    const goals_byCallScheme = [ids.map(() => 0.3), ids.map(() => 0.2)];
    const advice = worthOfMovements(table, movements, suspects, { share_byScheme: even, goals_byCallScheme });
    expect(advice.mostGain).toBe(0);
    expect(advice.movements.every(({ gain }) => gain < 1e-12)).toBe(true);
  });

  it('is that of the sign that changes the call, never more than to know for certain', () => {
    // One call for those who glue a man to the crease, one for the others.
    const goals_byCallScheme = [
      ids.map((id) => (id.includes('one') || id === 'box-zone' || id === 'shutoff' ? 0.4 : 0.1)),
      ids.map(() => 0.25),
    ];
    const advice = worthOfMovements(table, movements, suspects, { share_byScheme: even, goals_byCallScheme });
    const [best] = advice.movements;
    expect(best!.gain).toBeGreaterThan(0.02);
    expect(best!.gain).toBeLessThanOrEqual(advice.mostGain);
    expect(best!.callIfSeen).not.toBe(best!.callIfNot);
  });
});
