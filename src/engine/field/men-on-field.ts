import type { RuleCode } from './rule-code.ts';

/** Who may be in the defended half when penalties are served. */
export interface MenOnField {
  /** Field defenders, goalkeeper not counted. */
  readonly defenders: number;
  readonly attackers: number;
  /** Penalties of the defending team that wait because it is as short as it may be. */
  readonly waiting: number;
}

/**
 * The numbers in one half when `defenseServing` defenders and `attackServing` attackers serve penalties.
 *
 * A team may have so many men in its defending end (goalkeeper included) and in its attacking end, and a man who serves counts
 * toward both; it may never be shorter than the code's `mostShort`, so that further penalties wait. At ten a side this is
 * 6, 5, 4 and 3 defenders against 6 attackers for none to three down, and 5 against 5 with one serving on each side.
 *
 * Whole numbers >= 0; RangeError otherwise. Source of the counts: `counts` of the rule code; the table itself is derived.
 */
export function menOnField(code: RuleCode, defenseServing: number, attackServing: number): MenOnField {
  for (const serving of [defenseServing, attackServing]) {
    if (!Number.isInteger(serving) || serving < 0) {
      throw new RangeError(`invalid men serving: ${serving} (expected a whole number >= 0)`);
    }
  }
  const { attackingEnd, defendingEnd, mostShort, servingCounts } = code.counts;
  const short = Math.min(defenseServing, mostShort.value);
  const attackShort = Math.min(attackServing, mostShort.value);
  const counted = servingCounts.value ? 1 : 0;
  return {
    defenders: defendingEnd.value - 1 - counted * short,
    attackers: attackingEnd.value - counted * attackShort,
    waiting: defenseServing - short,
  };
}
