/** A call to make before it is known which scheme it will meet. */
export interface Choice {
  /** How likely each scheme is; all together more than nothing, and counted by their shares of that. */
  readonly weight_byScheme: readonly number[];
  /** Goals a chance of each call, against each scheme. */
  readonly goals_byCallScheme: readonly (readonly number[])[];
}

/** The best call and what it brings on average. */
export interface BestCall {
  /** Number of the call; the first of those that bring the same. */
  readonly call: number;
  /** Goals a chance. */
  readonly goals: number;
}

/** One thing that may be observed before the call. */
export interface Finding {
  /** How likely it is to be observed. */
  readonly chance: number;
  /** How likely each scheme is once it has been; `null` for what is never observed, of which nothing follows. */
  readonly share_byScheme: readonly number[] | null;
  /** What to call then; of what is never observed that without an observation. */
  readonly best: BestCall;
}

/** What an observation is worth to who makes a call. */
export interface WorthOfInformation {
  /** Without it. */
  readonly without: BestCall;
  /** With it: goals a chance when the best is called after each observation. */
  readonly goals: number;
  /** How much more that is, goals a chance: the expected value of sample information. Never under 0. */
  readonly gain: number;
  /** The most that any observation could bring: the expected value of perfect information. Goals a chance, never under 0. */
  readonly mostGain: number;
  /** How much of the doubt about the scheme it takes away on average, bits; never under 0. It may tell much and be worth nothing. */
  readonly bits: number;
  readonly byObservation: readonly Finding[];
}

/**
 * What it is worth to observe something before a call, when it is known how likely each observation is against each scheme:
 * `chance_byObservationScheme`, which for every scheme add up to 1 over the observations.
 *
 * Raiffa and Schlaifer 1961, Applied Statistical Decision Theory, 4.5 (gains; from memory); Lindley 1956, Ann. Math. Statist. 27:986 (bits). RangeError for rows of
 * different lengths, for numbers that are not finite or not odds, and when no scheme is likely.
 *
 * @example
 * // Two schemes as likely as each other, two calls, and a look that is right eight times of ten: gain is .05, of .085 at most.
 * worthOfInformation({ weight_byScheme: [1, 1], goals_byCallScheme: [[0.3, 0.1], [0.12, 0.27]] }, [[0.8, 0.2], [0.2, 0.8]]);
 */
export function worthOfInformation(
  choice: Choice,
  chance_byObservationScheme: readonly (readonly number[])[],
): WorthOfInformation {
  checkChoice(choice);
  checkChances(chance_byObservationScheme, choice.weight_byScheme.length);
  const prior = sharesOf(choice.weight_byScheme)!;
  const without = bestCall(choice, prior);
  const byObservation = chance_byObservationScheme.map((chance_byScheme): Finding => {
    const joint = prior.map((share, scheme) => share * chance_byScheme[scheme]);
    const share_byScheme = sharesOf(joint);
    const best = share_byScheme === null ? without : bestCall(choice, share_byScheme);
    return { chance: sum(joint), share_byScheme, best };
  });
  const goals = sum(byObservation.map(({ chance, best }) => chance * best.goals));
  const left = byObservation.map(({ chance, share_byScheme }) => chance * doubtOf(share_byScheme ?? prior));
  return {
    without,
    goals,
    gain: Math.max(0, goals - without.goals),
    mostGain: Math.max(0, goalsOfKnowing(choice, prior) - without.goals),
    bits: Math.max(0, doubtOf(prior) - sum(left)),
    byObservation,
  };
}

/** How much is in doubt, bits: 0 when one is certain, 1 for two as likely as each other (Shannon 1948, Bell Syst. Tech. J. 27:379). Shares add up to 1. */
export function doubtOf(shares: readonly number[]): number {
  // What cannot be adds no doubt, though its logarithm has no end.
  return sum(shares.map((share) => (share > 0 ? -share * Math.log2(share) : 0)));
}

/** Goals when every scheme is known before the call. */
function goalsOfKnowing({ goals_byCallScheme }: Choice, shares: readonly number[]): number {
  return sum(shares.map((share, scheme) => share * Math.max(...goals_byCallScheme.map((goals) => goals[scheme]))));
}

function bestCall({ goals_byCallScheme }: Choice, shares: readonly number[]): BestCall {
  const goals_byCall = goals_byCallScheme.map((goals) => sum(shares.map((share, scheme) => share * goals[scheme])));
  const goals = Math.max(...goals_byCall);
  return { call: goals_byCall.indexOf(goals), goals };
}

/** Each one's share of all; `null` when they are nothing in all. */
function sharesOf(weights: readonly number[]): readonly number[] | null {
  const all = sum(weights);
  return all > 0 ? weights.map((weight) => weight / all) : null;
}

function sum(values: readonly number[]): number {
  return values.reduce((before, value) => before + value, 0);
}

/** Odds that add up to 1 but for this are taken as they are: they may come from counts. */
const rounding = 1e-9;

function checkChoice({ weight_byScheme, goals_byCallScheme }: Choice): void {
  const all = sum(weight_byScheme);
  if (!weight_byScheme.every((weight) => weight >= 0) || !(all > 0 && all < Number.POSITIVE_INFINITY)) {
    throw new RangeError(
      `invalid weights of schemes: ${weight_byScheme.join(' ')} (expected 0 or more, in all more than 0)`,
    );
  }
  if (goals_byCallScheme.length === 0) throw new RangeError('invalid calls: none (expected at least one)');
  goals_byCallScheme.forEach((goals, call) => {
    checkRow(`goals of call ${call}`, goals, weight_byScheme.length, Number.isFinite, 'finite');
  });
}

function checkChances(chance_byObservationScheme: readonly (readonly number[])[], schemes: number): void {
  const isChance = (value: number): boolean => value >= 0 && value <= 1;
  chance_byObservationScheme.forEach((chances, observation) => {
    checkRow(`odds of observation ${observation}`, chances, schemes, isChance, '0 to 1');
  });
  for (let scheme = 0; scheme < schemes; scheme++) {
    const all = sum(chance_byObservationScheme.map((chances) => chances[scheme]));
    if (!(Math.abs(all - 1) <= rounding)) {
      throw new RangeError(`invalid odds of observations against scheme ${scheme}: ${all} in all (expected 1)`);
    }
  }
}

function checkRow(
  what: string,
  values: readonly number[],
  length: number,
  isValid: (value: number) => boolean,
  expected: string,
): void {
  if (values.length !== length) throw new RangeError(`invalid ${what}: ${values.length} (expected ${length})`);
  const wrong = values.find((value) => !isValid(value));
  if (wrong !== undefined) throw new RangeError(`invalid ${what}: ${wrong} (expected ${expected})`);
}
