import { fitLeastSquares } from '../statistics/least-squares.ts';

/** The quarters of the goal mouth, as the shooter sees it. */
export const keeperQuarterIds = ['highLeft', 'highRight', 'lowLeft', 'lowRight'] as const;
export type KeeperQuarterId = (typeof keeperQuarterIds)[number];

/**
 * What a goalkeeper makes of balls into each quarter of the mouth beside what he makes of them all: the odds that he stops one are those
 * of a keeper alike everywhere times this. 1 is alike, above 1 he stops more of them; above 0.
 */
export type KeeperCover = Readonly<Record<KeeperQuarterId, number>>;

/** Shots that came into each quarter of the mouth: how many he stopped, and how many went in. */
export type QuarterCounts = Readonly<Record<KeeperQuarterId, { readonly saves: number; readonly goals: number }>>;

/** The same keeper in a mirror. */
export function mirrorCover({ highLeft, highRight, lowLeft, lowRight }: KeeperCover): KeeperCover {
  return { highLeft: highRight, highRight: highLeft, lowLeft: lowRight, lowRight: lowLeft };
}

/** The odds `stops` of a save, 0 to 1, where a keeper's cover is `ratio` times the usual. */
export function coveredOdds(stops: number, ratio: number): number {
  return (ratio * stops) / (1 - stops + ratio * stops);
}

/**
 * The best guess of a goalkeeper's cover from shots by quarters; `undefined` when he is alike everywhere, as without shots.
 *
 * The log-odds of a save are his own mean, and more or less by height, by side and by both; each of the three is drawn from a normal
 * around 0 (`habitSpread`), and the guess is the most likely of all together: few shots say little. Only what differs between his quarters counts: shots that
 * were hard everywhere make him no worse.
 */
export function guessCover(counts: QuarterCounts): KeeperCover | undefined {
  const beliefs = mostLikelyHabits(counts);
  const logs = designOf.map((row) => beliefs.slice(1).reduce((sum, habit, at) => sum + habit * row[at + 1]!, 0));
  if (logs.every((log) => Math.abs(log) < nothing)) return undefined;
  const [highLeft, highRight, lowLeft, lowRight] = logs.map(Math.exp) as [number, number, number, number];
  return { highLeft, highRight, lowLeft, lowRight };
}

/** Rows in the order of `keeperQuarterIds`: himself, high, to the shooter's right, high to his right or low to his left. */
const designOf = [
  [1, 1, -1, -1],
  [1, 1, 1, 1],
  [1, -1, -1, 1],
  [1, -1, 1, -1],
];

/**
 * Log-odds of a save: spread over keepers of the mean of one, around even (a man-up's keeper stops .495 of what is on target,
 * docs/models/shot.md), and of his habits by height, by side, by both. Assumption: one keeper in three stops .07 more or less high than at the mean.
 */
const habitSpread = [1, 0.3, 0.3, 0.2];
/** Log-odds below which nothing is said: what rounding leaves. */
const nothing = 1e-9;
/** Newton's steps of a mode that is smooth and single-peaked; six reach the last digits. */
const rounds = 12;

/** Mean and habits in log-odds, by Newton's method as least squares over and over (McCullagh and Nelder, Generalized Linear Models, 2.5). */
function mostLikelyHabits(counts: QuarterCounts): Float64Array {
  let habits: Float64Array = new Float64Array(habitSpread.length);
  for (let round = 0; round < rounds; round++) {
    const rows: number[] = [];
    const targets: number[] = [];
    keeperQuarterIds.forEach((id, at) => {
      const { saves, goals } = counts[id];
      const row = designOf[at]!;
      const log = row.reduce((sum, share, one) => sum + share * habits[one]!, 0);
      const stops = 1 / (1 + Math.exp(-log));
      const weight = Math.sqrt((saves + goals) * stops * (1 - stops));
      rows.push(...row.map((share) => weight * share));
      targets.push(weight === 0 ? 0 : weight * log + (saves - (saves + goals) * stops) / weight);
    });
    habitSpread.forEach((spread, at) => {
      rows.push(...habitSpread.map((_, one) => (one === at ? 1 / spread : 0)));
      targets.push(0);
    });
    habits = fitLeastSquares(Float64Array.from(rows), habitSpread.length, Float64Array.from(targets));
  }
  return habits;
}
