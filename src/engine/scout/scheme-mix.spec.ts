import { describe, expect, it } from 'vitest';
import { mixOfSchemes, usuallyOne } from './scheme-mix.ts';

const prior = [0.6, 0.3, 0.1];
/** Man-ups of which each looks so many times as much like one scheme as like the others. */
const looks = (...schemes: readonly number[]) => schemes.map((scheme) => odds(scheme, 200));
const odds = (scheme: number, times: number) => prior.map((_, at) => (at === scheme ? 0 : -Math.log(times)));

function mix(logs: readonly (readonly number[])[], before: readonly number[] = prior) {
  return mixOfSchemes(
    before,
    before.map((_, at) => logs.reduce((sum, one) => sum + one[at]!, 0)),
    logs,
  );
}

/** The same by every way to give schemes to man-ups, one by one: two man-ups' worth of prior. */
function byEveryWay(logs: readonly (readonly number[])[]): number {
  const go = (at: number, counts: readonly number[]): number =>
    at === logs.length
      ? 1
      : prior.reduce(
          (sum, share, scheme) =>
            sum +
            ((2 * share + counts[scheme]!) / (2 + at)) *
              Math.exp(logs[at]![scheme]!) *
              go(
                at + 1,
                counts.map((count, one) => (one === scheme ? count + 1 : count)),
              ),
          0,
        );
  return go(
    0,
    prior.map(() => 0),
  );
}

describe('one scheme or a mix', () => {
  it('is what it was before when nothing was seen', () => {
    expect(mix([])).toEqual({ share_byScheme: prior, oneScheme: usuallyOne });
  });

  it.each([[looks(0)], [looks(0, 1)], [looks(2, 2, 1, 0)], [[odds(1, 3), odds(1, 2), odds(0, 5)]]])(
    'weighs the two as every way to give schemes to man-ups does: %#',
    (logs) => {
      const one = prior.reduce(
        (sum, share, at) => sum + share * Math.exp(logs.reduce((all, log) => all + log[at]!, 0)),
        0,
      );
      const wanted = (usuallyOne * one) / (usuallyOne * one + (1 - usuallyOne) * byEveryWay(logs));
      expect(mix(logs).oneScheme).toBeCloseTo(wanted, 9);
    },
  );

  it('takes man-ups that look alike for one scheme, and those that do not for a mix', () => {
    const same = mix(looks(2, 2, 2));
    expect(same.oneScheme).toBeGreaterThan(0.8);
    expect(same.share_byScheme[2]).toBeGreaterThan(0.9);
    const mixed = mix(looks(0, 0, 2));
    expect(mixed.oneScheme).toBeLessThan(0.3);
    expect(mixed.share_byScheme[2]).toBeGreaterThan(0.15);
    expect(mixed.share_byScheme[0]).toBeGreaterThan(mixed.share_byScheme[2]!);
    expect(mixed.share_byScheme.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('does not depend on the order of the man-ups, and finds the mix of many', () => {
    const some = looks(0, 2, 2, 1, 2);
    const turned = mix([...some].reverse());
    mix(some).share_byScheme.forEach((share, at) => {
      expect(share).toBeCloseTo(turned.share_byScheme[at]!, 9);
    });
    const many = mix(Array.from({ length: 60 }, (_, at) => odds(at % 3 === 0 ? 2 : 0, 1000)));
    expect(many.share_byScheme[2]).toBeCloseTo(1 / 3, 1);
  });

  it('never gives back what was ruled out', () => {
    expect(mix(looks(2, 2), [0.5, 0.5, 0]).share_byScheme[2]).toBe(0);
  });
});
