import type { GivenPenalty, TeamSide } from '../../engine/index.ts';
import type { ChanceLookKind, ChanceResult } from '../../playbook/index.ts';

/** The look that a man-up came to: by whom and to whom, where that was tapped. */
export interface TappedLook {
  readonly kind: ChanceLookKind;
  readonly from?: string;
  readonly to?: string;
}

/** Goals a chance with where the truth lies 95 times in 100, as a playbook keeps it. */
export interface ExpectedGoals {
  readonly goals: number;
  readonly low: number;
  readonly high: number;
}

/** What is tapped on the bench. Everything else follows from the taps and the time. */
export type BenchTap =
  | { readonly kind: 'clock'; readonly does: 'start' | 'stop' }
  /** The clock of the table shows something else: s left in the period. */
  | { readonly kind: 'clockSet'; readonly period: number; readonly left: number }
  /** The next period, with all its time; the clock stands. */
  | { readonly kind: 'period'; readonly period: number }
  /** A flag is down on this side, and play goes on. */
  | { readonly kind: 'flag'; readonly on: TeamSide }
  /** It is taken up without a penalty that is served. */
  | { readonly kind: 'flagOff' }
  | { readonly kind: 'fouls'; readonly penalties: readonly GivenPenalty[]; readonly simultaneous: boolean }
  /** An official lets a man go; the number of his penalty in the order in which all were given. */
  | { readonly kind: 'letGo'; readonly penalty: number }
  /** The table has another time for a penalty: so much of it is left, s. */
  | { readonly kind: 'boxSet'; readonly penalty: number; readonly left: number }
  /** A goal that is not the result of the chance that is on: of even sides, of the short side, or after the ball was lost and won again. */
  | { readonly kind: 'goal'; readonly by: TeamSide }
  /** The ball is back while they are still short: another chance of the same side. */
  | { readonly kind: 'begun' }
  | {
      readonly kind: 'called';
      readonly play: string;
      readonly fromSide: 'left' | 'right';
      /** Drawn from the mix; else chosen by hand. */
      readonly drawn: boolean;
      readonly expected?: ExpectedGoals;
      /** What was believed of each scheme when it was called, 0 to 1. */
      readonly belief?: Readonly<Record<string, number>>;
    }
  /** They play this scheme, as the coach sees it. */
  | { readonly kind: 'seen'; readonly scheme: string }
  /** A cue is so, or is not. */
  | { readonly kind: 'ticked'; readonly cue: string; readonly isSo: boolean }
  /** A shot, and the ball is still the same side's. */
  | { readonly kind: 'shot' }
  /** How the man-up ended. */
  | { readonly kind: 'result'; readonly result: ChanceResult }
  /** By which look the last one ended, and who shot; `null`: by none that the play has. */
  | { readonly kind: 'look'; readonly look: TappedLook | null; readonly scorer?: number }
  | { readonly kind: 'absent'; readonly man: number; readonly isAbsent: boolean }
  | { readonly kind: 'timeout'; readonly by: TeamSide };

/** A tap with its moment: `wall` is s since 1970 by the clock of the device. */
export type BenchEvent = BenchTap & { readonly wall: number };

/** What holds for a whole game, as the coach set it before. */
export interface BenchSettings {
  /** Id of the opponent in the playbook; nobody in particular when absent. */
  readonly opponent?: string;
  /** The day, YYYY-MM-DD. */
  readonly date: string;
  /** How long a period is, s, and how many there are before overtime. */
  readonly periodSeconds: number;
  readonly periods: number;
  /** The clock runs through whistles, as in many youth games. */
  readonly runningTime: boolean;
  /** Which sides plays are called from. */
  readonly sides: 'right' | 'left' | 'both';
  /** Calls that the unit can run: the most that the mix may hold. */
  readonly learnt: number;
  /** How far the belief about their scheme is trusted, 0 to 1: see `mixCalls`. */
  readonly trust: number;
}

/** A game on the bench: the taps in their order, the newest last. A tap is never changed, only the newest taken back. */
export interface BenchGame {
  /** Small letters, digits and dashes; the man-ups are written into the playbook under it. */
  readonly id: string;
  /** Of the draws of calls. A whole number, 0 or more. */
  readonly seed: number;
  readonly settings: BenchSettings;
  readonly events: readonly BenchEvent[];
}

/** The game with one more tap. The moment is never before that of the tap before: a device may set its clock back. */
export function tapped(game: BenchGame, tap: BenchTap, wall: number): BenchGame {
  const latest = game.events.at(-1)?.wall ?? wall;
  return { ...game, events: [...game.events, { ...tap, wall: Math.max(latest, wall) }] };
}

/** The game without its newest tap; the same game where there is none. */
export function untapped(game: BenchGame): BenchGame {
  return game.events.length === 0 ? game : { ...game, events: game.events.slice(0, -1) };
}
