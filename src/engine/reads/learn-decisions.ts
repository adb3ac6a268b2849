import type { Play } from '../offense/play.ts';
import { type Judgement, type LookNumbers, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import { carrierActions } from './carrier-actions.ts';
import type { DecisionTable } from './decision-table.ts';
import { type Keeping, learnKeeping } from './learn-keeping.ts';
import { numbersOf } from './numbers-of-looks.ts';
import { worthsUnder } from './rule-list.ts';
import { allChances, type SchemeChances, tableOf } from './scheme-chances.ts';
import { type FoundList, type SearchLimits, searchRuleLists } from './search-rule-lists.ts';
import { tryUnmet, type UnmetTrial } from './try-unmet.ts';

/** What is learnt of one carrier's decisions from some chances, to be tried in others. */
export interface LearntDecisions {
  readonly keeping: Keeping;
  /** The chances that were learnt from, and the numbers of their looks. */
  readonly table: DecisionTable;
  readonly numbers: LookNumbers;
  /** The best decisions that are known. */
  readonly judgement: Judgement;
  /** The best list of so many reads or fewer: none, one, two ... */
  readonly lists: readonly FoundList[];
  /** How many reads are worth holding, and whether a card does more than the judgement: see `tryUnmet`. */
  readonly unmet: UnmetTrial;
}

/** As many chances of no worth as this are added for each number that a judgement learns. */
export const ridge = 10;

/** Learns from chances of one carrier (offense index) what `studyCarrier` would learn from them for all schemes. RangeError when there is none. */
export function learnDecisions(
  play: Play,
  carrier: number,
  learn: readonly SchemeChances[],
  limits: SearchLimits,
): LearntDecisions {
  const keeping = learnKeeping(allChances(learn));
  const table = tableOf(carrier, learn, keeping);
  const numbers = numbersIn(play, carrier, learn);
  return {
    keeping,
    table,
    numbers,
    judgement: learnJudgement(table, numbers, ridge),
    lists: searchRuleLists(table, limits),
    unmet: tryUnmet(table, numbers, limits, ridge),
  };
}

/** What some chances come to, each by itself, by decisions that were learnt elsewhere. Goals. */
export interface TriedDecisions {
  /** The chances, with what they come to when he leaves them to the play. */
  readonly table: DecisionTable;
  readonly numbers: LookNumbers;
  /** By the best decisions that are known: the judgement, or a card that did more in what it was not learnt from. */
  readonly byBest: Float64Array;
  /** One for each list. */
  readonly byLists: readonly Float64Array[];
}

/** Tries in some chances what was learnt in others. RangeError when there is none. */
export function tryDecisions(
  play: Play,
  carrier: number,
  { keeping, judgement, lists, unmet }: LearntDecisions,
  held: readonly SchemeChances[],
): TriedDecisions {
  const table = tableOf(carrier, held, keeping);
  const byLists = lists.map(({ list }) => worthsUnder(list, table));
  const numbers = numbersIn(play, carrier, held);
  const byJudgement = worthsByJudgement(judgement, table, numbers);
  return { table, numbers, byBest: unmet.bestCard === null ? byJudgement : byLists[unmet.bestCard], byLists };
}

function numbersIn(play: Play, carrier: number, gathered: readonly SchemeChances[]) {
  return numbersOf(carrier, allChances(gathered), carrierActions(play, carrier).length);
}
