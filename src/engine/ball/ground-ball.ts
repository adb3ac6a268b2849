/**
 * Spread of who comes first to a loose ball, s: a man a full `groundBallSoftness` later has his odds divided by e.
 *
 * Assumption, no source: two men .25 s apart (two yards at a run) win it 73 to 27. Pass control models fit the spread
 * of arrival at .45 to .54 s for soccer (Spearman 2018 by open code that cites it), with a logistic of scale s = .25 to .3.
 */
export const groundBallSoftness = 0.25;

/**
 * Odds that each agent wins a loose ball, written to `odds_byAgent` from `first` (included) to `end` (excluded).
 *
 * From the times at which each can be there, s (Infinity for one who takes no part): odds in proportion to e^{-t/s}, for
 * two men the logistic of the difference. They sum to 1; all are 0 when nobody can come.
 */
export function groundBallOddsInto(
  odds_byAgent: Float64Array,
  arrival_byAgent: Float64Array,
  first: number,
  end: number,
  softness: number = groundBallSoftness,
): void {
  let earliest = Number.POSITIVE_INFINITY;
  for (let agent = first; agent < end; agent++) earliest = Math.min(earliest, arrival_byAgent[agent]);
  let sum = 0;
  for (let agent = first; agent < end; agent++) {
    const late = arrival_byAgent[agent] - earliest;
    // Infinity - Infinity is NaN: nobody can come.
    odds_byAgent[agent] = late >= 0 ? Math.exp(-late / softness) : 0;
    sum += odds_byAgent[agent];
  }
  if (sum === 0) return;
  for (let agent = first; agent < end; agent++) odds_byAgent[agent] /= sum;
}

/** Draws the winner from the odds; -1 when nobody can come. `uniform` 0 (included) to 1 (excluded). */
export function drawGroundBall(odds_byAgent: Float64Array, first: number, end: number, uniform: number): number {
  let sum = 0;
  let winner = -1;
  for (let agent = first; agent < end; agent++) {
    if (odds_byAgent[agent] === 0) continue;
    winner = agent;
    sum += odds_byAgent[agent];
    if (sum > uniform) break;
  }
  return winner;
}
