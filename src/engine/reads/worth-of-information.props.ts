import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Choice, worthOfInformation } from './worth-of-information.ts';

const schemes = 3;
const row = (most: number) => fc.array(fc.nat(most), { minLength: schemes, maxLength: schemes });
const choices: fc.Arbitrary<Choice> = fc
  .record({ weights: row(20), calls: fc.array(row(100), { minLength: 1, maxLength: 4 }) })
  .filter(({ weights }) => weights.some((weight) => weight > 0))
  .map(({ weights, calls }) => ({
    weight_byScheme: weights,
    goals_byCallScheme: calls.map((goals) => goals.map((each) => each / 100)),
  }));

/** How likely each of four observations is against each scheme. */
const observations = fc
  .array(fc.array(fc.nat(9), { minLength: 4, maxLength: 4 }), { minLength: schemes, maxLength: schemes })
  .filter((counts) => counts.every((each) => each.some((count) => count > 0)))
  .map((count_bySchemeObservation) =>
    [0, 1, 2, 3].map((seen) =>
      count_bySchemeObservation.map((counts) => counts[seen]! / counts.reduce((sum, each) => sum + each, 0)),
    ),
  );
const runs = { numRuns: 200 };
const rounding = 1e-9;

it('is worth something from nothing up to what all is worth, and tells no more than there is to tell', () => {
  fc.assert(
    fc.property(choices, observations, (choice, odds) => {
      const { gain, mostGain, bits, goals, without } = worthOfInformation(choice, odds);
      // Not what `gain` is cut to: whoever observes can always call as if he had not.
      expect(goals).toBeGreaterThanOrEqual(without.goals - rounding);
      expect(gain).toBeLessThanOrEqual(mostGain + rounding);
      expect(bits).toBeLessThanOrEqual(Math.log2(schemes) + rounding);
    }),
    runs,
  );
});

it('leaves on average each scheme as likely as it was', () => {
  fc.assert(
    fc.property(choices, observations, (choice, odds) => {
      const { byObservation } = worthOfInformation(choice, odds);
      const all = choice.weight_byScheme.reduce((sum, weight) => sum + weight, 0);
      choice.weight_byScheme.forEach((weight, scheme) => {
        const after = byObservation.map(({ chance, share_byScheme }) => chance * (share_byScheme?.[scheme] ?? 0));
        expect(after.reduce((sum, each) => sum + each, 0)).toBeCloseTo(weight / all, 9);
      });
    }),
    runs,
  );
});

it('is worth and tells no more when two of the observations look alike', () => {
  fc.assert(
    fc.property(choices, observations, (choice, [one, other, ...rest]) => {
      const apart = worthOfInformation(choice, [one!, other!, ...rest]);
      const alike = worthOfInformation(choice, [one!.map((chance, scheme) => chance + other![scheme]!), ...rest]);
      expect(alike.goals).toBeLessThanOrEqual(apart.goals + rounding);
      expect(alike.bits).toBeLessThanOrEqual(apart.bits + rounding);
    }),
    runs,
  );
});

it('is worth and tells nothing when it is as likely against every scheme', () => {
  fc.assert(
    fc.property(choices, fc.integer({ min: 1, max: 9 }), (choice, tenths) => {
      const odds = [tenths, 10 - tenths].map((each) => new Array<number>(schemes).fill(each / 10));
      const { gain, bits } = worthOfInformation(choice, odds);
      expect(gain).toBeCloseTo(0, 9);
      expect(bits).toBeCloseTo(0, 9);
    }),
    runs,
  );
});
