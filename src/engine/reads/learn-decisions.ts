import type { Play } from '../offense/play.ts';
import { type Judgement, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import { carrierActions } from './carrier-actions.ts';
import type { DecisionTable } from './decision-table.ts';
import { type Keeping, learnKeeping } from './learn-keeping.ts';
import { numbersOf } from './numbers-of-looks.ts';
import { readsWorthHolding } from './reads-worth-holding.ts';
import { worthsUnder } from './rule-list.ts';
import { allChances, type SchemeChances, tableOf } from './scheme-chances.ts';
import { type FoundList, type SearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** What is learnt of one carrier's decisions from some chances, to be tried in others. */
export interface LearntDecisions {
  readonly keeping: Keeping;
  /** The best decisions that are known. */
  readonly judgement: Judgement;
  /** The best list of so many reads or fewer: none, one, two ... */
  readonly lists: readonly FoundList[];
  /** See `readsWorthHolding`. */
  readonly worthHolding: number;
}

/** As many chances of no worth as this are added for each number that the judgement learns. */
const ridge = 10;

/** Learns from chances of one carrier (offense index) what `studyCarrier` would learn from them for all schemes. RangeError when there is none. */
export function learnDecisions(
  play: Play,
  carrier: number,
  learn: readonly SchemeChances[],
  limits: SearchLimits,
): LearntDecisions {
  const keeping = learnKeeping(allChances(learn));
  const table = tableOf(carrier, learn, keeping);
  return {
    keeping,
    judgement: learnJudgement(table, numbersIn(play, carrier, learn), ridge),
    lists: searchRuleLists(table, limits),
    worthHolding: readsWorthHolding(table, limits),
  };
}

/** What some chances come to, each by itself, by decisions that were learnt elsewhere. Goals. */
export interface TriedDecisions {
  /** The chances, with what they come to when he leaves them to the play. */
  readonly table: DecisionTable;
  readonly byJudgement: Float64Array;
  /** One for each list. */
  readonly byLists: readonly Float64Array[];
}

/** Tries in some chances what was learnt in others. RangeError when there is none. */
export function tryDecisions(
  play: Play,
  carrier: number,
  { keeping, judgement, lists }: LearntDecisions,
  held: readonly SchemeChances[],
): TriedDecisions {
  const table = tableOf(carrier, held, keeping);
  return {
    table,
    byJudgement: worthsByJudgement(judgement, table, numbersIn(play, carrier, held)),
    byLists: lists.map(({ list }) => worthsUnder(list, table)),
  };
}

function numbersIn(play: Play, carrier: number, gathered: readonly SchemeChances[]) {
  return numbersOf(carrier, allChances(gathered), carrierActions(play, carrier).length);
}
