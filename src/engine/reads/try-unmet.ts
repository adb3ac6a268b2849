import { type LookNumbers, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import { chancesOf, type DecisionTable } from './decision-table.ts';
import { measureIn } from './measure-decisions.ts';
import { worthsUnder } from './rule-list.ts';
import { type SearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** Each third of the chances is judged by what is found in the two others; chances that share their luck are in the same third. */
const folds = 3;
/** Ordered lists that are tried for each number of reads: the search is done once for each third, and which lengths pay does not hang on the last list. */
const lists = 1_000;
/** Half of a 95 % interval is so many standard errors. */
const errorsInHalf = 1.96;

/** What cards and judgements are good for in chances of a table that they were not learnt from. */
export interface UnmetTrial {
  /**
   * How many reads are worth holding in mind: the fewest whose cards are at most one standard error below the best length's (cross-validation and
   * the one-standard-error rule: Breiman et al. 1984, Classification and Regression Trees, 3.4.3; from memory). A longer card always looks better
   * where it was found.
   */
  readonly worthHolding: number;
  /** How many reads the card has that does more than the judgement by over one standard error; `null` when none does: of several the best looks better than it is. */
  readonly bestCard: number | null;
}

/** Learns cards and a judgement from two thirds of a table at a time and tries them in the third that is left. */
export function tryUnmet(table: DecisionTable, numbers: LookNumbers, limits: SearchLimits, ridge: number): UnmetTrial {
  const worths_byReads = Array.from({ length: limits.mostReads + 1 }, () => new Float64Array(chancesOf(table)));
  const byJudgement = new Float64Array(chancesOf(table));
  const fold_byChance = foldsOf(table);
  for (let fold = 0; fold < folds; fold++) {
    const rest = without(table, fold_byChance, fold);
    const fill = (into: Float64Array, worths: Float64Array): void => {
      worths.forEach((worth, chance) => {
        if (fold_byChance[chance] === fold) into[chance] = worth;
      });
    };
    searchRuleLists(rest, { ...limits, lists }).forEach(({ list }, reads) => {
      fill(worths_byReads[reads], worthsUnder(list, table));
    });
    fill(byJudgement, worthsByJudgement(learnJudgement(rest, numbers, ridge), table, numbers));
  }
  const measure = measureIn(table);
  const means = worths_byReads.map((worths) => measure.goals(worths).mean);
  const best = means.indexOf(Math.max(...means));
  const worthHolding = worths_byReads.findIndex((worths) => {
    const short = measure.difference(worths_byReads[best], worths);
    return short.mean <= (short.high - short.mean) / errorsInHalf;
  });
  const more = measure.difference(worths_byReads[best], byJudgement);
  return { worthHolding, bestCard: more.mean > (more.high - more.mean) / errorsInHalf ? best : null };
}

/** Third of each chance: one luck after the other, in turn. */
function foldsOf(table: DecisionTable): Int32Array {
  const lucks = table.luck_byChance ?? Int32Array.from({ length: chancesOf(table) }, (_, chance) => chance);
  const inOrder = [...new Set(lucks)].sort((one, other) => one - other);
  const fold_byLuck = new Map(inOrder.map((luck, at) => [luck, at % folds]));
  return lucks.map((luck) => fold_byLuck.get(luck)!);
}

/** The table in which the chances of one third count nothing. */
function without(table: DecisionTable, fold_byChance: Int32Array, fold: number): DecisionTable {
  return {
    ...table,
    weight_byChance: table.weight_byChance.map((weight, chance) => (fold_byChance[chance] === fold ? 0 : weight)),
  };
}
