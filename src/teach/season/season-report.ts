import type { Level } from '../../engine/index.ts';
import type { Chance, ChanceSide, Playbook } from '../../playbook/index.ts';
import { type ChanceGrouping, groupChances } from './chance-groups.ts';
import { compareGroups, type GroupComparison } from './compare-groups.ts';
import { type GroupNumbers, groupNumbers, type LookUsed, looksUsed } from './group-numbers.ts';
import { type PlanAndResult, planAndResult } from './plan-and-result.ts';
import { priorOf, type SeasonPrior } from './season-prior.ts';
import { comparisonSentence, conversionSentence, planSentence } from './season-words.ts';

/** What a season says, ours and theirs apart. */
export interface SeasonReport {
  readonly ours: SideReport;
  readonly theirs: SideReport;
  readonly plan: PlanAndResult | undefined;
  readonly planSays: string;
}

/** The man-ups of one side. */
export interface SideReport {
  readonly side: ChanceSide;
  readonly prior: SeasonPrior;
  readonly all: GroupNumbers;
  readonly says: string;
  readonly by: ChanceGrouping;
  readonly groups: readonly GroupReport[];
  readonly looks: readonly LookUsed[];
  /** Of theirs that were stopped and where it was written down: how often we cleared. */
  readonly clears: { readonly cleared: number; readonly stops: number };
}

export interface GroupReport {
  readonly key: string;
  readonly name: string;
  readonly numbers: GroupNumbers;
  /** Beside all others of this side; undefined when there are none, or when it is not known what these have in common. */
  readonly beside: GroupComparison | undefined;
  readonly says: string;
}

export interface SeasonWishes {
  readonly by: ChanceGrouping;
  /** Only man-ups against this one, by id or as it was written; all when left out. */
  readonly opponent?: string;
  /** By which what is usual is taken; the team's when left out. */
  readonly level?: Level;
}

/** Counts the man-ups of a playbook, and says what follows from them. */
export function seasonReport(playbook: Playbook, { by, opponent, level }: SeasonWishes): SeasonReport {
  const chances = (playbook.chances ?? []).filter((chance) => opponent === undefined || chance.opponent === opponent);
  const side = (one: ChanceSide): SideReport =>
    sideReport(
      playbook,
      chances.filter((chance) => chance.side === one),
      one,
      // What is called is called for our own man-ups.
      one === 'theirs' && by === 'call' ? 'opponent' : by,
      priorOf(level ?? playbook.team.level, one),
    );
  const plan = planAndResult(chances);
  return { ours: side('ours'), theirs: side('theirs'), plan, planSays: planSentence(plan) };
}

/** Counts man-ups of one side by what they have in common. */
export function sideReport(
  playbook: Playbook,
  chances: readonly Chance[],
  side: ChanceSide,
  by: ChanceGrouping,
  prior: SeasonPrior,
): SideReport {
  const all = groupNumbers(chances, prior);
  const groups = groupChances(playbook, chances, by);
  const known = groups.filter(({ key }) => key !== '');
  // Two groups that are all there is are one comparison, seen from both sides.
  const pairs = groups.length === 2 ? 1 : Math.max(1, known.length);
  const stops = chances.filter(({ result, clear }) => result !== 'goal' && clear !== undefined);
  return {
    side,
    prior,
    all,
    says: conversionSentence(all, prior),
    by,
    groups: groups.map(({ key, name, chances: members }): GroupReport => {
      const numbers = groupNumbers(members, prior);
      const inside = new Set(members);
      const others = chances.filter((chance) => !inside.has(chance));
      if (key === '' || others.length === 0)
        return { key, name, numbers, beside: undefined, says: conversionSentence(numbers, prior) };
      const rest = groupNumbers(others, prior);
      const beside = compareGroups(countOf(numbers), countOf(rest), pairs);
      return { key, name, numbers, beside, says: comparisonSentence(name, beside, numbers, rest) };
    }),
    looks: looksUsed(chances),
    clears: { cleared: stops.filter(({ clear }) => clear === true).length, stops: stops.length },
  };
}

function countOf({ goals, chances }: GroupNumbers): { readonly hits: number; readonly tries: number } {
  return { hits: goals, tries: chances };
}
