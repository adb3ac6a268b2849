import { shareDifference } from '../../engine/index.ts';
import type { Chance } from '../../playbook/index.ts';

/** How often something is written down of goals, and of what was none. */
export interface Naming {
  readonly goals: NamedShare;
  readonly others: NamedShare;
}

interface NamedShare {
  readonly named: number;
  readonly all: number;
}

export function namingOf(chances: readonly Chance[], isNamed: (chance: Chance) => boolean): Naming {
  const share = (some: readonly Chance[]): NamedShare => ({ named: some.filter(isNamed).length, all: some.length });
  return {
    goals: share(chances.filter(({ result }) => result === 'goal')),
    others: share(chances.filter(({ result }) => result !== 'goal')),
  };
}

/** As much as one of the two may be named more seldom than the other, as a share of it, before what is missing counts as chosen by the result (an assumption). */
const leastEven = 0.8;

/**
 * Whether something is written down far more often of goals than of the rest, or the other way round: then what is missing is missing because of how it ended, and shares of
 * what is there say nothing. False where nothing is written down at all.
 */
export function isUneven(naming: Naming): boolean {
  const shares = [naming.goals, naming.others].map(({ named, all }) => (all === 0 ? undefined : named / all));
  const [goals, others] = shares;
  if (goals === undefined || others === undefined) return false;
  const most = Math.max(goals, others);
  return most > 0 && Math.min(goals, others) < leastEven * most;
}

/** The same, where luck is no likely cause of it: the 95 % interval of the difference leaves out 0. */
export function isSurelyUneven(naming: Naming): boolean {
  const count = ({ named, all }: NamedShare) => ({ hits: named, tries: all });
  const { low, high } = shareDifference(count(naming.goals), count(naming.others));
  return isUneven(naming) && (low > 0 || high < 0);
}

/** "8 of 22 goals and for 0 of 25 chances without one". */
export function namingWords({ goals, others }: Naming, withoutGoal: string): string {
  return `${goals.named} of ${goals.all} goals and for ${others.named} of ${others.all} ${withoutGoal}`;
}
