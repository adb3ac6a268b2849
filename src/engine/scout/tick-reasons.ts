import { logOfSum } from './scheme-mix.ts';
import { logOddsOfTicks, type SignTable, type Tick } from './sign-table.ts';
import type { WeighedSuspect } from './suspects.ts';

/** Why one tick speaks for one scheme rather than for another. */
export interface TickReason {
  /** Number of the man-up in which it was ticked, and of the tick among its ticks. */
  readonly manUp: number;
  readonly tick: number;
  /** Number of the scheme that it speaks for, and of the one that it speaks against. */
  readonly speaksFor: number;
  readonly against: number;
  /** How many times likelier it is there, given the other ticks of its man-up: over 1. */
  readonly odds: number;
}

/** A tick that is less than this many times likelier on one side says nothing worth reading. */
const leastOdds = 1.2;

/** What each tick of a man-up says between two schemes: how much less surely they would be told apart without it. */
export function reasonsOfTicks(
  ticks: readonly Tick[],
  manUp: number,
  context: {
    readonly table: SignTable;
    readonly suspects: readonly WeighedSuspect[];
    /** How likely each suspect is once it is known that it is his scheme. */
    readonly shares: readonly number[];
    readonly between: readonly [number, number];
  },
): readonly TickReason[] {
  const { table, suspects, shares, between } = context;
  const [first, second] = between;
  if (first === second) return [];
  const logOf = (of: number, seen: readonly Tick[]): number =>
    logOfSum(
      suspects.flatMap((suspect, at) =>
        suspect.of === of ? [Math.log(shares[at]!) + logOddsOfTicks(table, suspect, seen)] : [],
      ),
    );
  const logBetween = (seen: readonly Tick[]): number => logOf(first, seen) - logOf(second, seen);
  const whole = logBetween(ticks);
  return ticks.flatMap((_, tick): readonly TickReason[] => {
    const log = whole - logBetween(ticks.filter((__, at) => at !== tick));
    const odds = Math.exp(Math.abs(log));
    if (!(odds >= leastOdds)) return [];
    const [speaksFor, against] = log > 0 ? [first, second] : [second, first];
    return [{ manUp, tick, speaksFor, against, odds }];
  });
}
