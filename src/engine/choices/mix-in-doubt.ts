import { createDraws, normal } from '../random/draws.ts';
import { type CallChoice, type CallMix, mixCalls } from './call-mix.ts';
import { worstCase } from './matrix-game.ts';

/** A choice among calls whose worth is known only so far. */
export interface DoubtfulChoice extends CallChoice {
  /** Standard error of `goals_byCallScheme`, in the same order; 0 or more. */
  readonly error_byCallScheme: readonly (readonly number[])[];
  /** Of the draws: a whole number, 0 or more. */
  readonly seed: number;
}

/** Tables that the calls may truly have, drawn one by one: shares to about .05. */
const tables = 100;
/** The kind of these draws among all of their seed. */
const tableDraw = 11;

/**
 * The mix of `mixCalls`, averaged over what the calls may truly be worth: a call comes as often as it may be the right one. Where luck alone tells the calls
 * apart, none of them comes always, and it is learnt what they make (Thompson 1933, Biometrika 25:285, from memory).
 *
 * A call's errors go together over all schemes, since it was tried with the same luck against each; those of two calls are taken apart, which leaves more doubt than there is.
 * Values are those of the given goals. RangeError as `mixCalls`, and for errors that are none.
 */
export function mixInDoubt(choice: DoubtfulChoice): CallMix {
  const { goals_byCallScheme: goals, error_byCallScheme: errors, weight_byScheme, seed } = choice;
  checkErrors(errors, goals);
  const calls = callsInMix(choice);
  const draws = createDraws(seed);
  const sums = goals.map(() => 0);
  for (let table = 0; table < tables; table++) {
    const drawn = calls.map((call) => {
      const luck = normal(draws, table, call, tableDraw, 0);
      return goals[call]!.map((mean, scheme) => mean + luck * errors[call]![scheme]!);
    });
    const { share_byCall: shares } = mixCalls({ ...choice, goals_byCallScheme: drawn, mostCalls: calls.length });
    for (const [at, call] of calls.entries()) sums[call]! += shares[at]!;
  }
  const share_byCall = sums.map((sum) => sum / tables);
  const all = weight_byScheme.reduce((sum, weight) => sum + weight, 0);
  const believed = goals.map((row) =>
    row.reduce((sum, one, scheme) => sum + (one * weight_byScheme[scheme]!) / all, 0),
  );
  return {
    share_byCall,
    asBelieved: share_byCall.reduce((sum, share, call) => sum + share * believed[call]!, 0),
    atWorst: worstCase(goals, share_byCall),
  };
}

/** The calls of the mix by the given goals; where that needs fewer than there may be, those that are worth most beside them. */
function callsInMix(choice: DoubtfulChoice): readonly number[] {
  const { goals_byCallScheme: goals, weight_byScheme, mostCalls } = choice;
  const { share_byCall } = mixCalls(choice);
  const worth = (call: number): number =>
    goals[call]!.reduce((sum, one, scheme) => sum + one * weight_byScheme[scheme]!, 0);
  const all = goals.map((_, call) => call);
  const isIn = (call: number): number => (share_byCall[call]! > 0 ? 1 : 0);
  return all.sort((one, other) => isIn(other) - isIn(one) || worth(other) - worth(one)).slice(0, mostCalls);
}

function checkErrors(errors: readonly (readonly number[])[], goals: readonly (readonly number[])[]): void {
  const fits = goals.every(
    (row, call) =>
      errors[call]?.length === row.length && errors[call]!.every((one) => Number.isFinite(one) && one >= 0),
  );
  if (!fits || errors.length !== goals.length)
    throw new RangeError(`invalid errors of calls: expected ${goals.length} rows as of the goals, each 0 or more`);
}
