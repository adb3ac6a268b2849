import {
  type Count,
  type Estimate,
  quartiles,
  type SharePrior,
  shrunkShare,
  wilsonInterval,
} from '../../engine/index.ts';
import { type Chance, shotResults } from '../../playbook/index.ts';

/** What was counted of some chances. */
export interface GroupNumbers {
  readonly goals: number;
  readonly chances: number;
  /** Goals a chance as counted, Wilson's interval, 95 %. */
  readonly raw: Estimate;
  /** The same drawn toward what is usual: the better guess while there are few. */
  readonly shrunk: Estimate;
  /** Of the chances whose shots are known: how many those are, and the shots in them. */
  readonly shots: { readonly chances: number; readonly shots: number };
  /** Seconds to the first shot, of the chances in which it was timed. */
  readonly firstShot: FirstShot | undefined;
}

export interface FirstShot {
  readonly timed: number;
  readonly q1: number;
  readonly median: number;
  readonly q3: number;
}

/** Counts some chances. Without any, everything is possible and what is usual is the best guess. */
export function groupNumbers(chances: readonly Chance[], prior: SharePrior): GroupNumbers {
  const goals = chances.filter(({ result }) => result === 'goal').length;
  const known = chances.map(({ shots }) => shots).filter((shots) => shots !== undefined);
  const times = chances.map(({ firstShot }) => firstShot).filter((time) => time !== undefined);
  const spread = quartiles(times);
  return {
    goals,
    chances: chances.length,
    raw: wilsonInterval(goals, chances.length),
    shrunk: shrunkShare(goals, chances.length, prior),
    shots: { chances: known.length, shots: known.reduce((sum, shots) => sum + shots, 0) },
    firstShot: spread === undefined ? undefined : { timed: times.length, ...spread },
  };
}

/** Goals of chances, to be compared. */
export function countOf({ goals, chances }: Pick<GroupNumbers, 'goals' | 'chances'>): Count {
  return { hits: goals, tries: chances };
}

/** How often the ball was cleared after their chances that brought no goal. */
export interface Clears {
  readonly cleared: number;
  /** Stops of which it is written down, and of which it is not. */
  readonly stops: number;
  readonly unknown: number;
}

export function clearsOf(chances: readonly Chance[]): Clears {
  const stopped = chances.filter(({ result }) => result !== 'goal');
  const known = stopped.filter(({ clear }) => clear !== undefined);
  const cleared = known.filter(({ clear }) => clear === true).length;
  return { cleared, stops: known.length, unknown: stopped.length - known.length };
}

/** A way to the last shot, how often it was taken and what came of it. */
export interface LookUsed {
  /** "feed X to C", "shot by P". */
  readonly name: string;
  readonly times: number;
  readonly goals: number;
}

/** The looks that were taken, the most frequent first. */
export function looksUsed(chances: readonly Chance[]): readonly LookUsed[] {
  const found = new Map<string, { times: number; goals: number }>();
  for (const { look, result } of chances) {
    if (look === undefined) continue;
    const name = lookWords(look);
    const used = found.get(name) ?? { times: 0, goals: 0 };
    found.set(name, { times: used.times + 1, goals: used.goals + (result === 'goal' ? 1 : 0) });
  }
  return [...found]
    .map(([name, used]) => ({ name, ...used }))
    .sort((one, other) => other.times - one.times || (one.name < other.name ? -1 : 1));
}

/** A look in a few words, with what is known of it. */
export function lookWords({ kind, from, to }: NonNullable<Chance['look']>): string {
  if (kind === 'shot') return from === undefined ? 'shot' : `shot by ${from}`;
  return [kind, from, to === undefined ? undefined : `to ${to}`].filter((part) => part !== undefined).join(' ');
}

/** Shooters: last shots of each number and the goals among them. */
export function shotsByShooter(chances: readonly Chance[]): ReadonlyMap<number, { shots: number; goals: number }> {
  const found = new Map<number, { shots: number; goals: number }>();
  for (const { scorer, result } of chances) {
    if (scorer === undefined || !shotResults.has(result)) continue;
    const taken = found.get(scorer) ?? { shots: 0, goals: 0 };
    found.set(scorer, { shots: taken.shots + 1, goals: taken.goals + (result === 'goal' ? 1 : 0) });
  }
  return found;
}
