import { type Estimate, shareDifference } from '../../engine/index.ts';
import { counted } from '../../render/index.ts';
import { canCompare, compareGroups } from './compare-groups.ts';
import { countOf } from './group-numbers.ts';
import type { GroupReport, SideReport } from './season-report.ts';
import { pointsWords, spanWords } from './season-words.ts';

/** Two groups that a coach chose beside each other. */
export interface PairReport {
  /** Goals a chance of the first less those of the second, Newcombe's interval, 95 %, of this pair alone. */
  readonly difference: Estimate;
  /** `sure` holds though so many pairs could have been chosen; `hint` only if it had been the one pair that was asked for. */
  readonly verdict: 'sure' | 'hint' | 'unsure';
  /** Pairs among which it was chosen. */
  readonly pairs: number;
  readonly says: string;
}

/** Groups that can be chosen: those of which it is known what they have in common, where that is written down evenly. */
export function groupsToCompare({ groups, uneven }: SideReport): readonly GroupReport[] {
  return uneven === undefined ? groups.filter(({ key }) => key !== '') : [];
}

/**
 * Compares two groups, by their keys; undefined when one is not there, or both are the same. Who looks for the widest gap among many pairs finds one by luck: what is surely so must hold for all of
 * them together (Bonferroni).
 */
export function comparePair(report: SideReport, first: string, second: string): PairReport | undefined {
  const known = groupsToCompare(report);
  const one = known.find(({ key }) => key === first);
  const other = known.find(({ key }) => key === second);
  if (one === undefined || other === undefined || one === other) return undefined;
  const pairs = (known.length * (known.length - 1)) / 2;
  const [a, b] = [countOf(one.numbers), countOf(other.numbers)];
  const alone = compareGroups(a, b).verdict;
  const verdict = alone === 'unsure' ? alone : compareGroups(a, b, pairs).verdict === 'unsure' ? 'hint' : 'sure';
  const difference = shareDifference(a, b);
  return { difference, verdict, pairs, says: pairSentence(one, other, { difference, verdict, pairs }) };
}

function pairSentence(one: GroupReport, other: GroupReport, pair: Omit<PairReport, 'says'>): string {
  const { difference, verdict, pairs } = pair;
  const [more, less] = difference.mean >= 0 ? [one, other] : [other, one];
  const gap =
    difference.mean >= 0
      ? pointsWords(difference.low, difference.high)
      : pointsWords(-difference.high, -difference.low);
  const counts = `${one.name} ${shareOf(one)}, ${other.name} ${shareOf(other)}`;
  const chosen = pairs === 1 ? '' : ` ${pairs} pairs were possible`;
  switch (verdict) {
    case 'sure':
      return `${counts}: ${more.name} brings surely more goals, by ${gap}.${chosen === '' ? '' : `${chosen}, and it holds all the same.`} Why it does is not said: against whom and when each came was not dealt out by lot.`;
    case 'hint':
      return `${counts}: asked of this pair alone, ${more.name} would bring more goals than ${less.name}, by ${gap}. But${chosen}, and one of them looks like this by luck easily: it is a hint, and cannot be concluded yet.`;
    case 'unsure':
      if (!canCompare(countOf(one.numbers), countOf(other.numbers)))
        return `${counts}: there are too few to compare them.`;
      return `${counts}: which brings more goals cannot be told. ${one.name} may bring anything from ${spanWords(difference)}; that they are alike is not shown either.${chosen === '' ? '' : `${chosen}.`}`;
    default:
      return exhaustive(verdict);
  }
}

function shareOf({ numbers: { goals, chances } }: GroupReport): string {
  return `${goals} of ${counted(chances, 'chance')}`;
}

function exhaustive(verdict: never): never {
  throw new TypeError(`unknown verdict: ${JSON.stringify(verdict)}`);
}
