import { describe, expect, it } from 'vitest';
import { normalCdf } from '../ball/normal-cdf.ts';
import { mixCalls } from './call-mix.ts';
import { mixInDoubt } from './mix-in-doubt.ts';

const goals_byCallScheme = [
  [0.42, 0.18, 0.31, 0.25],
  [0.2, 0.38, 0.22, 0.3],
  [0.28, 0.26, 0.35, 0.19],
];
const errors = (error: number) => goals_byCallScheme.map((row) => row.map(() => error));
const asked = { goals_byCallScheme, weight_byScheme: [1, 1, 1, 1], trust: 0, mostCalls: 3, seed: 5 };

describe('a mix of calls whose worth is in doubt', () => {
  it.each([0, 0.5, 1])('is that of the calls themselves where nothing is in doubt, trusted %s', (trust) => {
    const sure = mixCalls({ ...asked, trust });
    const mix = mixInDoubt({ ...asked, trust, error_byCallScheme: errors(0) });
    mix.share_byCall.forEach((share, call) => {
      expect(share).toBeCloseTo(sure.share_byCall[call]!, 9);
    });
    expect(mix.asBelieved).toBeCloseTo(sure.asBelieved, 9);
  });

  it.each([
    [0.03, 0.02],
    [0.03, 0.06],
    [0.005, 0.03],
  ])('comes as often as each may be the better one: %s apart with an error of %s', (apart, error) => {
    // Two calls against one scheme, by hand: the first is better with odds Phi(apart / (error root 2)).
    const mix = mixInDoubt({
      goals_byCallScheme: [[0.3 + apart], [0.3]],
      error_byCallScheme: [[error], [error]],
      weight_byScheme: [1],
      trust: 1,
      mostCalls: 2,
      seed: 3,
    });
    // Four standard errors of a hundred draws.
    expect(Math.abs(mix.share_byCall[0]! - normalCdf(apart / (error * Math.SQRT2)))).toBeLessThan(0.2);
    expect(mix.share_byCall[0]! + mix.share_byCall[1]!).toBeCloseTo(1, 12);
  });

  it('holds no more calls than are learnt, and beside the best those that are worth most', () => {
    const table = [[0.2], [0.29], [0.3], [0.1]];
    const mix = mixInDoubt({
      goals_byCallScheme: table,
      error_byCallScheme: table.map(() => [0.05]),
      weight_byScheme: [1],
      trust: 1,
      mostCalls: 2,
      seed: 1,
    });
    expect(mix.share_byCall.map((share) => share > 0)).toEqual([false, true, true, false]);
    expect(mix).toEqual(
      mixInDoubt({
        goals_byCallScheme: table,
        error_byCallScheme: table.map(() => [0.05]),
        weight_byScheme: [3],
        trust: 1,
        mostCalls: 2,
        seed: 1,
      }),
    );
  });

  it('refuses errors that do not fit', () => {
    expect(() => mixInDoubt({ ...asked, error_byCallScheme: errors(-0.1) })).toThrow(RangeError);
    expect(() => mixInDoubt({ ...asked, error_byCallScheme: errors(0.1).slice(1) })).toThrow(RangeError);
  });
});
