import { type SignId, signIds, type WalkedMovement } from '../../engine/index.ts';
import { menOfScheme, type Playbook } from '../../playbook/index.ts';
import type { MeasureOptions, TrialPool } from '../../worker/index.ts';
import { beliefByTicks, walkMovements } from '../scout/scout-belief.ts';
import type { ScoutQuestion } from '../scout/scout-question.ts';
import type { Call } from './call-advice.ts';

/** What can be ticked from the bench and what it says, found before the game with one set of ours on the field. */
export interface MeasuredTicks extends Call {
  /** Schemes with one man down, in the order of what was walked through. */
  readonly schemes: readonly string[];
  readonly walked: readonly WalkedMovement[];
}

/** Finds what each sign says of each scheme: some seconds on all threads. */
export async function measureTicks(
  pool: TrialPool,
  playbook: Playbook,
  { play, fromSide }: Call,
  schemes: readonly string[],
  options: MeasureOptions = {},
): Promise<MeasuredTicks> {
  const five = schemes.filter((id) => menOfScheme(playbook, id)?.length === 5);
  const question = questionOf({ play, fromSide, schemes: five });
  return { play, fromSide, schemes: five, walked: await walkMovements(pool, playbook, question, options) };
}

/** The signs that say something, in the order in which they are asked. */
export function signsToTick({ walked }: MeasuredTicks): readonly SignId[] {
  return signIds.filter((id) => walked.some(({ signs }) => signs.includes(id)));
}

/**
 * How likely all ticks of a man-up are together under each scheme, beside the others: those of one movement are weighed together. Empty when nothing that was
 * ticked is known, or when the playbook has changed so that it can't be asked any more.
 */
export function oddsOfTicks(
  playbook: Playbook,
  measured: MeasuredTicks,
  ticks: readonly { readonly cue: string; readonly isSo: boolean }[],
): Readonly<Record<string, number>> {
  const known = signsToTick(measured);
  const seen = ticks.flatMap(({ cue, isSo }) => {
    const sign = known.find((id) => id === cue);
    return sign === undefined ? [] : [{ sign, seen: isSo }];
  });
  if (seen.length === 0) return {};
  try {
    // With all schemes alike beforehand, what is believed after is the odds.
    const shares = beliefByTicks(playbook, questionOf(measured), measured.walked, seen);
    return Object.fromEntries(measured.schemes.map((id, at) => [id, shares[at]!]));
  } catch (error) {
    if (error instanceof RangeError || error instanceof TypeError) return {};
    throw error;
  }
}

function questionOf({ play, fromSide, schemes }: Call & { readonly schemes: readonly string[] }): ScoutQuestion {
  return { play, side: fromSide, level: null, schemes: schemes.map((id) => ({ id, weight: 1 })) };
}
