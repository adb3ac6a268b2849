import { fitLeastSquares } from '../statistics/least-squares.ts';
import { chancesOf, type DecisionTable } from './decision-table.ts';

/** What a carrier makes of each look of a table, in numbers, and which of them bear on what. */
export interface LookNumbers {
  /** Numbers of a look. */
  readonly count: number;
  readonly numbers_byMoment: Float64Array;
  /** Which look of its time each moment is, from 0: looks of the same rank are judged alike. */
  readonly rank_byMoment: Int32Array;
  /** Numbers by which the worth of each action is judged. */
  readonly columns_byAction: readonly (readonly number[])[];
  /** Those by which that of waiting is. */
  readonly columnsOfWaiting: readonly number[];
}

/** How to judge any look: coefficients of the numbers of a look. */
export interface Judgement {
  readonly byAction: readonly Float64Array[];
  /** By the rank of the look; where none was learnt he acts at once. */
  readonly ofWaiting: readonly (Float64Array | null)[];
}

/**
 * Learn from a table what acting now and waiting are worth on average, given what is seen: the best decisions that can be made by these
 * numbers, as nearly as the table tells.
 *
 * The worth of an action is a least-squares fit of what it came to. That of waiting is worked out backward from the last look: a fit of
 * what the chances came to under the decisions that are best from the next look on (Longstaff and Schwartz 2001, Rev. Financial Studies
 * 14:113). `ridge` is in chances: as many of no worth are added for each number.
 */
export function learnJudgement(table: DecisionTable, looks: LookNumbers, ridge: number): Judgement {
  const moments = looks.rank_byMoment.length;
  const everyMoment = Array.from({ length: moments }, (_, moment) => moment);
  const byAction = looks.columns_byAction.map((columns, action) => {
    const worths = Float64Array.from(everyMoment, (at) => table.worth_byMomentAction[at * table.actions + action]);
    return fitLeastSquares(rowsOf(looks, columns, everyMoment), columns.length, worths, ridge);
  });
  const ranks = looks.rank_byMoment.reduce((most, rank) => Math.max(most, rank + 1), 0);
  const ofWaiting = new Array<Float64Array | null>(ranks).fill(null);
  // What each chance comes to when nothing is done up to the rank that is looked at.
  const ahead_byChance = Float64Array.from(table.goOn_byChance);
  for (let rank = ranks - 1; rank >= 0; rank--) {
    const here = looksOfRank(table, looks, rank);
    const columns = looks.columnsOfWaiting;
    const rows = rowsOf(
      looks,
      columns,
      here.map(({ moment }) => moment),
    );
    const targets = Float64Array.from(here, ({ chance }) => ahead_byChance[chance]);
    if (here.length > 0) ofWaiting[rank] = fitLeastSquares(rows, columns.length, targets, ridge);
    for (const { chance, moment } of here) {
      const action = decideAt(looks, { byAction, ofWaiting }, moment);
      if (action >= 0) ahead_byChance[chance] = table.worth_byMomentAction[moment * table.actions + action];
    }
  }
  return { byAction, ofWaiting };
}

/** What each chance of a table comes to by a judgement. Of chances that it was not learnt from it is what the decisions return, without flattery. */
export function worthsByJudgement(judgement: Judgement, table: DecisionTable, looks: LookNumbers): Float64Array {
  return Float64Array.from(table.goOn_byChance, (goOn, chance) => {
    for (let moment = table.first_byChance[chance]; moment < table.first_byChance[chance + 1]; moment++) {
      const action = decideAt(looks, judgement, moment);
      if (action >= 0) return table.worth_byMomentAction[moment * table.actions + action];
    }
    return goOn;
  });
}

/** The action that is judged best at a look, or -1 when waiting is. */
function decideAt(looks: LookNumbers, { byAction, ofWaiting }: Judgement, moment: number): number {
  const waiting = ofWaiting[looks.rank_byMoment[moment]] ?? null;
  let best = waiting === null ? Number.NEGATIVE_INFINITY : judged(looks, looks.columnsOfWaiting, waiting, moment);
  let action = -1;
  byAction.forEach((coefficients, at) => {
    const worth = judged(looks, looks.columns_byAction[at], coefficients, moment);
    if (worth <= best) return;
    best = worth;
    action = at;
  });
  return action;
}

function judged(
  { count, numbers_byMoment }: LookNumbers,
  columns: readonly number[],
  coefficients: Float64Array,
  moment: number,
): number {
  let sum = 0;
  for (let at = 0; at < columns.length; at++) sum += coefficients[at] * numbers_byMoment[moment * count + columns[at]];
  return sum;
}

function rowsOf(looks: LookNumbers, columns: readonly number[], moments: readonly number[]): Float64Array {
  return Float64Array.from(
    moments.flatMap((moment) => columns.map((column) => looks.numbers_byMoment[moment * looks.count + column])),
  );
}

function looksOfRank(
  table: DecisionTable,
  looks: LookNumbers,
  rank: number,
): readonly { readonly chance: number; readonly moment: number }[] {
  const found: { chance: number; moment: number }[] = [];
  for (let chance = 0; chance < chancesOf(table); chance++) {
    for (let moment = table.first_byChance[chance]; moment < table.first_byChance[chance + 1]; moment++) {
      if (looks.rank_byMoment[moment] === rank) found.push({ chance, moment });
    }
  }
  return found;
}
