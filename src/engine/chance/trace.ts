/**
 * Everything one trial did, kept for replay: nothing is simulated again to be drawn.
 * Times are seconds since the restart's whistle. Agents are numbered offense 0 to 5 in the order of the play's spots,
 * then the defenders in the order of the scheme's names (the released man is the last of them when there is one), then the keeper.
 */
export interface Trace {
  /** Seconds between frames. */
  readonly step: number;
  readonly frames: number;
  /** Offense (6) + defenders + keeper. */
  readonly agents: number;
  readonly defenders: number;
  /** Body centres, yards: x at ((frame * agents) + agent) * 2, y next. */
  readonly places_byFrame: Float32Array;
  /** Ball x, y, height in yards: three per frame. */
  readonly ball_byFrame: Float32Array;
  /** Offense index 0 to 5 of the holder; -1 in flight or loose; 100 + defender index when they have it; 99 the keeper. */
  readonly holder_byFrame: Int8Array;
  /** Duty of each defender: kind, a, b; three per defender per frame. */
  readonly duties_byFrame: Int8Array;
  readonly events: readonly TraceEvent[];
}

/** A pass that a carrier was told to throw and did not dare. */
export interface RefusedPass {
  readonly from: number;
  readonly to: number;
  /** Odds of a catch as he judged them, 0 to 1. */
  readonly believed: number;
}

/** The ways a chance loses the ball. */
export type TurnoverKind =
  | 'intercepted'
  | 'deflected'
  | 'badPass'
  | 'dropped'
  | 'stripped'
  | 'saved'
  | 'blocked'
  | 'wide'
  | 'rebound'
  | 'shotClock'
  | 'outOfBounds'
  | 'failedClear';

/** How the chance ended. */
export type ChanceEnd = 'goal' | 'turnover' | 'penaltyOver' | 'flagOver';

/** `who`, `from`, `to` are offense indices; `by` is a defender index (0-based among defenders), or -1 for the keeper. */
export type TraceEvent =
  | { readonly kind: 'restart'; readonly time: number; readonly who: number }
  | { readonly kind: 'setUp'; readonly time: number }
  /** `lastTen`: the beat or read is one of those that replace the play's in the last ten seconds; `read` counts among its own. */
  | { readonly kind: 'beat'; readonly time: number; readonly beat: string; readonly lastTen: boolean }
  | {
      readonly kind: 'read';
      readonly time: number;
      readonly who: number;
      readonly read: number;
      readonly lastTen: boolean;
    }
  | {
      readonly kind: 'pass';
      readonly time: number;
      readonly from: number;
      readonly to: number;
      readonly style: 'adjacent' | 'skip' | 'feed';
      readonly lob: boolean;
      /** Odds that it gets past every stick and is caught, as it leaves the stick; and as the passer judged them when he wound up. */
      readonly completion: number;
      readonly believed: number;
      readonly why: 'script' | 'read' | 'open' | 'safe';
    }
  | { readonly kind: 'catch'; readonly time: number; readonly who: number }
  | { readonly kind: 'dropped'; readonly time: number; readonly who: number }
  /** `by` is -1 for the keeper. */
  | { readonly kind: 'intercepted' | 'deflected' | 'stripped'; readonly time: number; readonly by: number }
  | { readonly kind: 'badPass'; readonly time: number }
  | { readonly kind: 'groundBall'; readonly time: number; readonly won: 'offense' | 'defense'; readonly who: number }
  | { readonly kind: 'fake'; readonly time: number; readonly who: number; readonly toward: number }
  | { readonly kind: 'bite'; readonly time: number; readonly by: number; readonly seconds: number }
  | {
      readonly kind: 'duty';
      readonly time: number;
      readonly by: number;
      readonly duty: number;
      readonly a: number;
      readonly b: number;
      readonly late: number;
    }
  | {
      readonly kind: 'shot';
      readonly time: number;
      readonly who: number;
      readonly goalOdds: number;
      readonly distance: number;
      readonly pressed: boolean;
      readonly assistedBy: number;
    }
  | { readonly kind: 'goal'; readonly time: number; readonly who: number; readonly assistedBy: number }
  | { readonly kind: 'save' | 'pipe' | 'wide'; readonly time: number; readonly who: number; readonly kept: boolean }
  | { readonly kind: 'blocked'; readonly time: number; readonly by: number }
  /** `refused`: the script's pass that never was open enough, with the odds that its thrower gave it at the last; null for any other reason. */
  | { readonly kind: 'reset'; readonly time: number; readonly refused: RefusedPass | null }
  /** The ball goes where no beat sends it: no beat begins until the play is run anew. */
  | { readonly kind: 'leave'; readonly time: number }
  | { readonly kind: 'released'; readonly time: number }
  | { readonly kind: 'turnover'; readonly time: number; readonly how: TurnoverKind; readonly back: number }
  | { readonly kind: 'end'; readonly time: number; readonly how: ChanceEnd };
