import type { Level, SharePrior } from '../../engine/index.ts';
import type { ChanceSide } from '../../playbook/index.ts';
import { percent } from '../../render/index.ts';

/** What is usual before a team has played: a share of man-ups that end in a goal, worth as much as `weight` man-ups of its own. */
export interface SeasonPrior extends SharePrior {
  /** No figures were found: the mean is a guess, and is called one. */
  readonly isGuess: boolean;
  /** Where it comes from, as a sentence. */
  readonly source: string;
}

/**
 * What is usual at a level.
 *
 * College and pro: 72 NCAA Division I men's teams, 2022-23 (data/ncaa-d1-men-2022-23.csv). Ours: mean .372, and what their spread leaves beyond luck with 35 to
 * 55 man-ups a team is worth 33 to 52 man-ups: .37 and 40. Theirs: mean .364, spread hardly beyond luck: 150. Below college no table was found; the figures are guesses, lower for the young, who drop
 * more balls, and weigh less.
 */
export function priorOf(level: Level, side: ChanceSide): SeasonPrior {
  const found = usual[level];
  if (side === 'ours') return found;
  const { mean, weight } = found;
  // Division I teams differ so little in what they allow that most of it is luck: what is usual weighs more.
  return {
    mean: level === 'college' || level === 'pro' ? 0.36 : mean,
    weight: weight * theirsTimes,
    isGuess: found.isGuess,
    source: found.source,
  };
}

const theirsTimes = 3.75;

/**
 * The same of a chance, where a man-up holds more than one: goals a man-up stay what they are. `chancesPerManUp` 1 or more; RangeError below.
 */
export function perChanceOf(prior: SeasonPrior, chancesPerManUp: number): SeasonPrior {
  if (!(chancesPerManUp >= 1))
    throw new RangeError(`invalid chances a man-up: ${chancesPerManUp} (expected 1 or more)`);
  if (chancesPerManUp === 1) return prior;
  const mean = prior.mean / chancesPerManUp;
  if (percent(mean) === percent(prior.mean)) return { ...prior, mean };
  const why = `A man-up here has ${chancesPerManUp.toFixed(2)} chances, so ${percent(mean)} is taken of a chance.`;
  return { ...prior, mean, source: `${prior.source} ${why}` };
}

const measured = "72 teams of college lacrosse's first division in 2022-23 scored in 37 % of their man-ups.";
const school =
  'There is no reliable data for high schools: 33 % is a guess from college, and weighs half as much as college figures would.';
const young = 'There is no reliable data for this level: 25 % is a guess, lower than college, and weighs little.';

const usual: Readonly<Record<Level, SeasonPrior>> = {
  '8U': { mean: 0.25, weight: 10, isGuess: true, source: young },
  '10U': { mean: 0.25, weight: 10, isGuess: true, source: young },
  '12U': { mean: 0.25, weight: 10, isGuess: true, source: young },
  '14U': { mean: 0.25, weight: 10, isGuess: true, source: young },
  highSchool: { mean: 0.33, weight: 20, isGuess: true, source: school },
  college: { mean: 0.37, weight: 40, isGuess: false, source: measured },
  pro: {
    mean: 0.37,
    weight: 40,
    isGuess: false,
    source: `${measured} For professionals there is no such table: the same is taken.`,
  },
};
