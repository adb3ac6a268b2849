import { fitManyLeastSquares } from '../statistics/least-squares.ts';
import type { DecisionTable } from './decision-table.ts';

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
 * numbers, as nearly as the table tells. Each chance counts by its weight; of one without weight nothing is learnt.
 *
 * The worth of an action is a least-squares fit of what it came to. That of waiting is worked out backward from the last look: a fit of
 * what the chances came to under the decisions that are best from the next look on (Longstaff and Schwartz 2001, Rev. Financial Studies
 * 14:113). `ridge` is in chances of the mean weight: as many of no worth are added for each number.
 */
export function learnJudgement(table: DecisionTable, looks: LookNumbers, ridge: number): Judgement {
  const all = looksThatCount(table);
  const byAction = fitActions(table, looks, all, ridge);
  const ranks = looks.rank_byMoment.reduce((most, rank) => Math.max(most, rank + 1), 0);
  const ofWaiting = new Array<Float64Array | null>(ranks).fill(null);
  // What each chance comes to when nothing is done up to the rank that is looked at.
  const ahead_byChance = Float64Array.from(table.goOn_byChance);
  for (let rank = ranks - 1; rank >= 0; rank--) {
    const here = all.filter(({ moment }) => looks.rank_byMoment[moment] === rank);
    if (here.length === 0) continue;
    const comesTo = ({ chance }: CountedLook): number => ahead_byChance[chance];
    [ofWaiting[rank]] = fitWorths(looks, looks.columnsOfWaiting, here, [comesTo], ridge);
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

/** One look of a chance that counts. */
interface CountedLook {
  readonly chance: number;
  readonly moment: number;
  /** By how much its row and its target are drawn out, so that its error counts by the chance's weight: the mean weight counts 1. */
  readonly stretch: number;
}

function looksThatCount({ weight_byChance, first_byChance }: DecisionTable): readonly CountedLook[] {
  const counted = weight_byChance.filter((weight) => weight > 0);
  const mean = counted.reduce((sum, weight) => sum + weight, 0) / counted.length;
  const found: CountedLook[] = [];
  weight_byChance.forEach((weight, chance) => {
    if (weight <= 0) return;
    const stretch = Math.sqrt(weight / mean);
    for (let moment = first_byChance[chance]; moment < first_byChance[chance + 1]; moment++) {
      found.push({ chance, moment, stretch });
    }
  });
  return found;
}

/** One fit for each action; those that the same list of columns bears on are fitted together. */
function fitActions(
  { worth_byMomentAction, actions }: DecisionTable,
  looks: LookNumbers,
  counted: readonly CountedLook[],
  ridge: number,
): readonly Float64Array[] {
  const fitted = new Array<Float64Array>(actions);
  for (const columns of new Set(looks.columns_byAction)) {
    const alike = looks.columns_byAction.flatMap((each, action) => (each === columns ? [action] : []));
    const comeTo = alike.map(
      (action) =>
        ({ moment }: CountedLook) =>
          worth_byMomentAction[moment * actions + action],
    );
    fitWorths(looks, columns, counted, comeTo, ridge).forEach((coefficients, at) => {
      fitted[alike[at]] = coefficients;
    });
  }
  return fitted;
}

/** Coefficients of some numbers of the looks that tell best what each comes to, for everything that it can come to. */
function fitWorths(
  { count, numbers_byMoment }: LookNumbers,
  columns: readonly number[],
  looks: readonly CountedLook[],
  worthsOf: readonly ((look: CountedLook) => number)[],
  ridge: number,
): readonly Float64Array[] {
  const rows = new Float64Array(looks.length * columns.length);
  looks.forEach(({ moment, stretch }, row) => {
    columns.forEach((column, at) => {
      rows[row * columns.length + at] = stretch * numbers_byMoment[moment * count + column];
    });
  });
  const targets = worthsOf.map((worthOf) => Float64Array.from(looks, (look) => look.stretch * worthOf(look)));
  return fitManyLeastSquares(rows, columns.length, targets, ridge);
}
