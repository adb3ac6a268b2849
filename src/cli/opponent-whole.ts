import {
  addValue,
  createMoments,
  type Interval,
  type PlayReport,
  type SchemeReport,
  studentMeanInterval,
  type Tally,
} from '../engine/index.ts';
import type { Opponent } from '../playbook/index.ts';

/** What a play does against an opponent as a whole: its schemes by their weights. */
export interface OpponentWhole {
  readonly id: string;
  readonly name: string;
  /** How often each scheme is played, 0 to 1, in the order of the report's results; they add up to 1. */
  readonly shares: readonly number[];
  readonly goalsPerChance: Interval;
  readonly shotsPerChance: number;
  readonly turnoversPerChance: number;
  /** "discipline ordinary, pt loose"; that of the level when the entry says nothing. */
  readonly discipline: string;
}

/** Adds up a report and its tallies, scheme by scheme in one order, by the opponent's weights. */
export function opponentWhole(opponent: Opponent, report: PlayReport, tallies: readonly Tally[]): OpponentWhole {
  const weights = report.results.map(({ scheme }) => opponent.schemes?.[scheme] ?? 0);
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / all);
  const mean = (of: (result: SchemeReport) => number): number =>
    report.results.reduce((sum, result, i) => sum + shares[i]! * of(result), 0);
  return {
    id: opponent.id,
    name: opponent.name,
    shares,
    goalsPerChance: around(
      mean((result) => result.goalsPerChance.mean),
      halfWidth(shares, tallies),
    ),
    shotsPerChance: mean((result) => result.shotsPerChance.mean),
    turnoversPerChance: mean((result) => result.turnoversPerChance.mean),
    discipline: disciplineWords(opponent),
  };
}

/**
 * Half the 95 % interval, from the trials that all schemes have run. Trial for trial these share their luck, so they are
 * weighed together before the spread is taken: intervals that are added up would come out too narrow.
 */
function halfWidth(shares: readonly number[], tallies: readonly Tally[]): number {
  const from = Math.max(...tallies.map((tally) => tally.from));
  const to = Math.min(...tallies.map((tally) => tally.to));
  const moments = createMoments();
  for (let trial = from; trial < to; trial++) {
    addValue(
      moments,
      tallies.reduce((sum, tally, i) => sum + shares[i]! * (tally.goals_byTrial[trial - tally.from] ?? 0), 0),
    );
  }
  const { low, high } = studentMeanInterval(moments);
  return (high - low) / 2;
}

function around(mean: number, half: number): Interval {
  return { mean, low: mean - half, high: mean + half };
}

function disciplineWords({ discipline = {} }: Opponent): string {
  const { all, ...men } = discipline;
  const parts = [...(all === undefined ? [] : [all]), ...Object.entries(men).map(([man, name]) => `${man} ${name}`)];
  return parts.length === 0 ? 'discipline as usual at the level' : `discipline ${parts.join(', ')}`;
}
