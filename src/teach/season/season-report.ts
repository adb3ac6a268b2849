import type { Level } from '../../engine/index.ts';
import { type Chance, type ChanceSide, type Playbook, shotResults } from '../../playbook/index.ts';
import { type ChanceGroup, type ChanceGrouping, groupChances, groupKeyOf } from './chance-groups.ts';
import { compareGroups, type GroupComparison } from './compare-groups.ts';
import {
  type Clears,
  clearsOf,
  countOf,
  type GroupNumbers,
  groupNumbers,
  type LookUsed,
  looksUsed,
} from './group-numbers.ts';
import { countManUps, type ManUpNumbers } from './man-ups.ts';
import { isSurelyUneven, type Naming, namingOf } from './naming.ts';
import { type PlanAndResult, planAndResult } from './plan-and-result.ts';
import { perChanceOf, priorOf, type SeasonPrior } from './season-prior.ts';
import {
  comparisonSentence,
  conversionSentence,
  groupingWords,
  looksSentence,
  manUpSentence,
  planSentence,
  unevenSentence,
} from './season-words.ts';

/** What a season says, ours and theirs apart. */
export interface SeasonReport {
  readonly ours: SideReport;
  readonly theirs: SideReport;
  readonly plan: PlanAndResult | undefined;
  readonly planSays: string;
}

/** The chances of one side. */
export interface SideReport {
  readonly side: ChanceSide;
  /** What is usual of a man-up, and of a chance where a man-up has several. */
  readonly usual: SeasonPrior;
  readonly prior: SeasonPrior;
  /** By chances. */
  readonly all: GroupNumbers;
  readonly manUps: ManUpNumbers;
  readonly says: string;
  readonly by: ChanceGrouping;
  readonly groups: readonly GroupReport[];
  /** What groups have in common was written down by how the chance ended: then they are not compared; undefined when they may be. */
  readonly uneven: Naming | undefined;
  /** What can be told of the groups beside each other, a sentence each: what is surely so, else why nothing is. */
  readonly told: readonly string[];
  readonly looks: readonly LookUsed[];
  readonly looksSay: string | undefined;
  /** Of theirs that were stopped. */
  readonly clears: Clears;
}

export interface GroupReport {
  readonly key: string;
  readonly name: string;
  readonly numbers: GroupNumbers;
  /** Beside all others of this side of which it is known; undefined when there are none, or when it is not known what these have in common. */
  readonly beside: GroupComparison | undefined;
  readonly says: string;
}

export interface SeasonWishes {
  readonly by: ChanceGrouping;
  /** Only chances against this one, by id or as it was written; all when left out. */
  readonly opponent?: string;
  /** By which what is usual is taken; the team's when left out. */
  readonly level?: Level;
}

/** Counts the chances of a playbook, and says what follows from them. */
export function seasonReport(playbook: Playbook, { by, opponent, level }: SeasonWishes): SeasonReport {
  const chances = (playbook.chances ?? []).filter((chance) => opponent === undefined || chance.opponent === opponent);
  const side = (one: ChanceSide): SideReport =>
    sideReport(
      playbook,
      chances.filter((chance) => chance.side === one),
      one,
      // What is called is called for our own chances.
      one === 'theirs' && by === 'call' ? 'opponent' : by,
      priorOf(level ?? playbook.team.level, one),
    );
  const plan = planAndResult(chances);
  return { ours: side('ours'), theirs: side('theirs'), plan, planSays: planSentence(plan) };
}

/** Counts chances of one side by what they have in common. `usual` is what is usual of a man-up. */
export function sideReport(
  playbook: Playbook,
  chances: readonly Chance[],
  side: ChanceSide,
  by: ChanceGrouping,
  usual: SeasonPrior,
): SideReport {
  const manUps = countManUps(chances);
  const prior = perChanceOf(usual, manUps.manUps === 0 ? 1 : chances.length / manUps.manUps);
  const all = groupNumbers(chances, prior);
  const naming = namingOf(chances, (chance) => groupKeyOf(chance, by) !== '');
  const uneven = isSurelyUneven(naming) ? naming : undefined;
  const groups = groupReports(groupChances(playbook, chances, by), prior, uneven !== undefined);
  const looks = looksUsed(chances);
  const lookNaming = namingOf(chances.filter(isShot), ({ look }) => look !== undefined);
  return {
    side,
    usual,
    prior,
    all,
    manUps,
    says: manUpSentence(chances.length, manUps, usual),
    by,
    groups,
    uneven,
    told: toldOf(groups, by, uneven),
    looks,
    looksSay: looksSentence(looks, isSurelyUneven(lookNaming) ? lookNaming : undefined),
    clears: clearsOf(chances),
  };
}

/** Each group beside all others of which it is known what they have in common. */
function groupReports(groups: readonly ChanceGroup[], prior: SeasonPrior, isUneven: boolean): readonly GroupReport[] {
  const known = groups.filter(({ key }) => key !== '');
  // Two groups that are all there is are one comparison, seen from both sides.
  const pairs = known.length === 2 ? 1 : Math.max(1, known.length);
  return groups.map(({ key, name, chances }): GroupReport => {
    const numbers = groupNumbers(chances, prior);
    const others = known.filter((group) => group.key !== key).flatMap((group) => group.chances);
    if (key === '' || others.length === 0 || isUneven)
      return { key, name, numbers, beside: undefined, says: `${name}: ${conversionSentence(numbers, prior)}` };
    const rest = groupNumbers(others, prior);
    const beside = compareGroups(countOf(numbers), countOf(rest), pairs);
    return { key, name, numbers, beside, says: comparisonSentence(name, beside, numbers, rest) };
  });
}

function toldOf(groups: readonly GroupReport[], by: ChanceGrouping, uneven: Naming | undefined): readonly string[] {
  if (uneven !== undefined) return [unevenSentence(by, uneven)];
  const compared = groups.filter(({ beside }) => beside !== undefined);
  const sure = compared.filter(({ beside }) => beside?.verdict !== 'unsure');
  if (sure.length > 0) return sure.map(({ says }) => says);
  if (compared.length === 0) return ['There is nothing to compare it with.'];
  return [`No ${groupingWords[by].toLowerCase()} can be told from the others yet: luck explains the differences.`];
}

function isShot({ result }: Chance): boolean {
  return shotResults.has(result);
}
