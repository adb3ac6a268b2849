import { chancesOf, type DecisionTable } from './decision-table.ts';

/** At most two cues that must be seen, or seen not to be. */
export interface Condition {
  /** Cues that are looked at, bit i for cue i; at least one. */
  readonly looksAt: number;
  /** Those of them that must hold; the others must not. */
  readonly mustHold: number;
}

export interface Rule extends Condition {
  readonly action: number;
}

/** The last resort of who leaves it to the play. */
export const goOn = -1;

/**
 * An ordered list of reads. It is gone through at each moment; the first rule whose condition holds is acted on, once. With `goOn` as the last
 * resort he waits for a rule as long as the play lets him, and then does what the play asks; with an action he does that at his first look when
 * no rule holds there: he has something to do in any case, and waits for nothing.
 */
export interface RuleList {
  readonly rules: readonly Rule[];
  readonly lastResort: number;
}

export function holds({ looksAt, mustHold }: Condition, cues: number): boolean {
  return (cues & looksAt) === mustHold;
}

/** Where a list acts in one chance. */
export interface Acted {
  /** Number of the rule, or -1 for the last resort. */
  readonly rule: number;
  /** Number of the moment in the whole table; the chance's first when nothing is done at any. */
  readonly moment: number;
}

/** The moment at which a list acts in a chance, and by which rule. */
export function actedBy({ rules, lastResort }: RuleList, table: DecisionTable, chance: number): Acted {
  const begin = table.first_byChance[chance];
  const end = lastResort === goOn ? table.first_byChance[chance + 1] : begin + 1;
  for (let moment = begin; moment < end; moment++) {
    const cues = table.cues_byMoment[moment];
    const rule = rules.findIndex((each) => holds(each, cues));
    if (rule >= 0) return { rule, moment };
  }
  return { rule: -1, moment: begin };
}

/** What each chance of a table is worth under a list, goals. */
export function worthsUnder(list: RuleList, table: DecisionTable): Float64Array {
  const worth_byChance = new Float64Array(chancesOf(table));
  for (let chance = 0; chance < worth_byChance.length; chance++) {
    const { rule, moment } = actedBy(list, table, chance);
    const action = rule < 0 ? list.lastResort : list.rules[rule].action;
    worth_byChance[chance] =
      action === goOn ? table.goOn_byChance[chance] : table.worth_byMomentAction[moment * table.actions + action];
  }
  return worth_byChance;
}

/** Mean of a number for each chance by the chances' weights. */
export function weightedMean(values: ArrayLike<number>, { weight_byChance }: DecisionTable): number {
  let sum = 0;
  let all = 0;
  for (let chance = 0; chance < weight_byChance.length; chance++) {
    sum += weight_byChance[chance] * values[chance];
    all += weight_byChance[chance];
  }
  return sum / all;
}
