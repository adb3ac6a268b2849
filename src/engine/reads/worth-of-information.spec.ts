import { describe, expect, it } from 'vitest';
import { searchRuleLists } from './search-rule-lists.ts';
import { tableOfChances } from './table-of-chances.fixture.ts';
import { type Choice, doubtOf, worthOfInformation } from './worth-of-information.ts';

// The same problems are given to the search for reads: calls as actions, what is observed as cues. So each checks the other.

/** What the search makes of calls with a cue for each observation; without any when none is given. */
function searched({ weight_byScheme, goals_byCallScheme }: Choice, odds: readonly (readonly number[])[]): number {
  const chances = weight_byScheme.flatMap((weight, scheme) =>
    odds.map((chances, seen) => ({
      weight: weight * chances[scheme]!,
      looks: [{ cues: 1 << seen, worths: goals_byCallScheme.map((goals) => goals[scheme]!) }],
      goOn: 0,
    })),
  );
  const limits = { mostReads: odds.length, leastShare: 0, leastComings: 0, absence: false, lists: 10_000 };
  return searchRuleLists(tableOfChances(odds.length, chances), limits).at(-1)!.worth;
}

/** An observation of two sides, by how likely the first is against each scheme. */
function twoSided(first: readonly number[]): readonly (readonly number[])[] {
  return [first, first.map((chance) => 1 - chance)];
}

function knowing(schemes: number): readonly (readonly number[])[] {
  return Array.from({ length: schemes }, (_, seen) =>
    Array.from({ length: schemes }, (_, at) => (at === seen ? 1 : 0)),
  );
}

// Made for this project and worked out from the definitions by a program of its own, to the digits that are given.
const three: Choice = {
  weight_byScheme: [0.5, 0.3, 0.2],
  goals_byCallScheme: [
    [0.3, 0.1, 0.2],
    [0.18, 0.28, 0.15],
    [0.2, 0.2, 0.26],
  ],
};
const probes = [
  { probe: 'A', first: [0.9, 0.2, 0.2], gain: 0.0292, bits: 0.397313 },
  { probe: 'B', first: [0.6, 0.6, 0.1], gain: 0.0028, bits: 0.12944 },
  { probe: 'C', first: [0.7, 0.5, 0.3], gain: 0.0084, bits: 0.072684 },
];

describe('three schemes and three calls', () => {
  it.each(probes)('probe $probe is worth $gain goals a chance and tells $bits bits', ({ first, gain, bits }) => {
    const found = worthOfInformation(three, twoSided(first));
    expect(found.gain).toBeCloseTo(gain, 9);
    expect(found.goals).toBeCloseTo(0.22 + gain, 9);
    expect(found.bits).toBeCloseTo(bits, 6);
    expect(searched(three, twoSided(first))).toBeCloseTo(0.22 + gain, 7);
  });

  it('have a best call without knowing, and another worth when all is known', () => {
    const found = worthOfInformation(three, knowing(3));
    expect(found.without.call).toBe(0);
    expect(found.without.goals).toBeCloseTo(0.22, 9);
    expect(found.mostGain).toBeCloseTo(0.066, 9);
    expect(found.gain).toBeCloseTo(0.066, 9);
    expect(found.bits).toBeCloseTo(1.485475, 6);
    expect(found.byObservation.map(({ best }) => best.call)).toEqual([0, 1, 2]);
    expect(searched(three, knowing(3))).toBeCloseTo(0.286, 7);
    expect(searched(three, [[1, 1, 1]])).toBeCloseTo(0.22, 7);
  });

  it('each call is worth its mean', () => {
    const alone = three.goals_byCallScheme.map((goals) => ({ ...three, goals_byCallScheme: [goals] }));
    const worths = alone.map((choice) => worthOfInformation(choice, knowing(3)).without.goals);
    [0.22, 0.204, 0.212].forEach((worth, call) => {
      expect(worths[call]).toBeCloseTo(worth, 9);
    });
  });

  it('what tells more is not what is worth more', () => {
    const [, b, c] = probes.map(({ first }) => worthOfInformation(three, twoSided(first)));
    expect(b!.bits).toBeGreaterThan(c!.bits);
    expect(b!.gain).toBeLessThan(c!.gain);
  });

  it('probe A seen leaves each scheme as likely as Bayes says', () => {
    const [seen] = worthOfInformation(three, twoSided([0.9, 0.2, 0.2])).byObservation;
    expect(seen!.chance).toBeCloseTo(0.55, 9);
    [0.818182, 0.109091, 0.072727].forEach((share, scheme) => {
      expect(seen!.share_byScheme![scheme]).toBeCloseTo(share, 6);
    });
  });
});

describe('two schemes, one read', () => {
  const two: Choice = {
    weight_byScheme: [1, 1],
    goals_byCallScheme: [
      [0.3, 0.1],
      [0.12, 0.27],
    ],
  };

  // Of this project, worked out by hand: .200 without a read. Bits of a look that is right so often: 1 - H(p), Cover and Thomas, Elements of Information
  // Theory, 7.1.4 (from memory).
  it.each([
    [0.5, 0.2, 0],
    [0.8, 0.25, 0.278072],
    [1, 0.285, 1],
  ])('right %d of the time, it comes to %d goals a chance', (right, goals, bits) => {
    const odds = twoSided([right, 1 - right]);
    const found = worthOfInformation(two, odds);
    expect(found.goals).toBeCloseTo(goals, 9);
    expect(found.mostGain).toBeCloseTo(0.085, 9);
    expect(found.bits).toBeCloseTo(bits, 6);
    expect(searched(two, odds)).toBeCloseTo(goals, 7);
  });

  it('is worth nothing where one call is better against both', () => {
    const sure = {
      ...two,
      goals_byCallScheme: [
        [0.3, 0.3],
        [0.1, 0.2],
      ],
    };
    const found = worthOfInformation(sure, knowing(2));
    expect(found).toMatchObject({ gain: 0, mostGain: 0, bits: 1 });
  });
});

describe('what never is', () => {
  const never: Choice = { ...three, weight_byScheme: [1, 1, 0] };

  it('an observation of a scheme that is never met says nothing, and is worth nothing', () => {
    const { byObservation, without, bits } = worthOfInformation(never, knowing(3));
    expect(byObservation[2]).toEqual({ chance: 0, share_byScheme: null, best: without });
    expect(bits).toBeCloseTo(1, 12);
  });

  it('a scheme that is certain leaves nothing to know', () => {
    const certain = { ...three, weight_byScheme: [0, 1, 0] };
    expect(worthOfInformation(certain, knowing(3))).toMatchObject({ gain: 0, mostGain: 0, bits: 0 });
    expect(doubtOf([0, 1, 0])).toBe(0);
  });
});

describe('broken input', () => {
  it.each<[Partial<Choice>, readonly (readonly number[])[], string]>([
    [
      { weight_byScheme: [0, 0, 0] },
      knowing(3),
      'invalid weights of schemes: 0 0 0 (expected 0 or more, in all more than 0)',
    ],
    [
      { weight_byScheme: [1, -1, 1] },
      knowing(3),
      'invalid weights of schemes: 1 -1 1 (expected 0 or more, in all more than 0)',
    ],
    [{ weight_byScheme: [] }, [], 'invalid weights of schemes:  (expected 0 or more, in all more than 0)'],
    [{ goals_byCallScheme: [] }, knowing(3), 'invalid calls: none (expected at least one)'],
    [{ goals_byCallScheme: [[1, 2]] }, knowing(3), 'invalid goals of call 0: 2 (expected 3)'],
    [{ goals_byCallScheme: [[1, Number.NaN, 2]] }, knowing(3), 'invalid goals of call 0: NaN (expected finite)'],
    [{}, [[0.5, 0.5, 1.5]], 'invalid odds of observation 0: 1.5 (expected 0 to 1)'],
    [{}, [[1, 1]], 'invalid odds of observation 0: 2 (expected 3)'],
    [{}, twoSided([1, 1, 1]).slice(1), 'invalid odds of observations against scheme 0: 0 in all (expected 1)'],
    [{}, [], 'invalid odds of observations against scheme 0: 0 in all (expected 1)'],
  ])('is refused: %o', (part, odds, message) => {
    expect(() => worthOfInformation({ ...three, ...part }, odds)).toThrow(new RangeError(message));
  });
});
