import { describe, expect, it } from 'vitest';
import { mixCalls } from './call-mix.ts';

const goals_byCallScheme = [
  [0.42, 0.18, 0.31, 0.25],
  [0.2, 0.38, 0.22, 0.3],
  [0.28, 0.26, 0.35, 0.19],
];
const asked = { goals_byCallScheme, weight_byScheme: [1, 1, 1, 1], trust: 0, mostCalls: 3 };

describe('a mix of calls', () => {
  it('keeps to two calls where the unit can run two, and gives up little (found by trying all three pairs)', () => {
    const [three, two, one] = [3, 2, 1].map((mostCalls) => mixCalls({ ...asked, mostCalls }));
    expect(three!.atWorst).toBeCloseTo(0.270867, 5);
    expect(two!.share_byCall.filter((share) => share > 0)).toHaveLength(2);
    expect(two!.atWorst).toBeLessThan(three!.atWorst);
    expect(one!.atWorst).toBeCloseTo(0.2, 9);
  });

  it('is by exchange, where there are too many sets to try, no worse than the best of fewer calls', () => {
    // Twenty calls of which four may be in the mix: 4,845 sets are too many to be tried one by one.
    const many = Array.from({ length: 20 }, (_, call) =>
      Array.from(
        { length: 5 },
        (__, scheme) => 0.2 + 0.1 * Math.sin(7 * call + 3 * scheme) + (call === scheme ? 0.2 : 0),
      ),
    );
    const found = mixCalls({ goals_byCallScheme: many, weight_byScheme: [1, 1, 1, 1, 1], trust: 0, mostCalls: 4 });
    expect(found.share_byCall.filter((share) => share > 0).length).toBeLessThanOrEqual(4);
    const three = mixCalls({ goals_byCallScheme: many, weight_byScheme: [1, 1, 1, 1, 1], trust: 0, mostCalls: 3 });
    expect(found.atWorst).toBeGreaterThanOrEqual(three.atWorst);
  });

  it('refuses what is no choice', () => {
    expect(() => mixCalls({ ...asked, trust: 2 })).toThrow(RangeError);
    expect(() => mixCalls({ ...asked, mostCalls: 0 })).toThrow(RangeError);
    expect(() => mixCalls({ ...asked, weight_byScheme: [1, 1, 1] })).toThrow(RangeError);
    expect(() => mixCalls({ ...asked, weight_byScheme: [0, 0, 0, 0] })).toThrow(RangeError);
  });
});
