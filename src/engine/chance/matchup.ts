import type { Discipline, Scheme } from '../defense/scheme.ts';
import type { Play } from '../offense/play.ts';
import type { Athlete, Keeper } from '../people/athlete.ts';

/** How the chance begins and ends. Seconds. */
export interface PenaltyPlan {
  /** 30, 60, 120 or 180 for a penalty that has been called; the time that is left of it. */
  readonly seconds: number;
  /** A goal ends it. When false the chance goes on with a face-off after a goal. */
  readonly releasable: boolean;
  /**
   * `restart`: after the whistle, ball outside the box. `clear`: the foul was in the unit's own half, so the ball is put in play just
   * over the midline and has to be brought up first (NFHS 7-3 by umloa.org: free clear). `flagDown`: the flag is down, six on six, one free shot.
   */
  readonly start: 'restart' | 'clear' | 'flagDown';
  /** Shot clock at the restart; `null` where the code has none. */
  readonly shotClock: number | null;
}

/** One play, by six men, against one scheme, by its men: all that a trial depends on besides its seed and number. */
export interface Matchup {
  readonly play: Play;
  /** One athlete per spot, in the order of the play's spots. */
  readonly six: readonly Athlete[];
  readonly scheme: Scheme;
  /** One athlete per defender of the scheme, in the order of its names. */
  readonly defenders: readonly Athlete[];
  /** How well each of them plays his part, same order. */
  readonly discipline: readonly Discipline[];
  readonly keeper: Keeper;
  /** The man who comes back on when the penalty is over; absent when nobody is in the box. */
  readonly released?: Athlete;
  readonly penalty: PenaltyPlan;
  /** +1 as written, -1 when play, hands, duties, start and draws are all mirrored. */
  readonly sense: 1 | -1;
  /** The spot a shutoff is meant for, when the scheme is one. */
  readonly star?: string;
}
