import type { Point } from '../geometry/point.ts';

/** A place in a set, by the trade's name: P, TR, TL, WR, WL, C, CR, CL, X, BR, BL, or the coach's own. */
export type SpotId = string;
export type BeatId = string;

/** What a spot asks of the man who fills it; weights 0 (nothing) to 3 (everything). */
export interface SpotNeeds {
  readonly feed: number;
  readonly shoot: number;
  readonly inside: number;
  readonly handle: number;
}

/** What a man does when the ball is lost or the shot goes wide. */
export type SafetyDuty = 'backUp' | 'getBack' | 'none';

export interface Spot {
  readonly id: SpotId;
  /** Home, yards in the field frame (docs/units-and-frames.md). */
  readonly at: Point;
  /** The hand that should be on the inside here. */
  readonly hand: 'left' | 'right' | 'either';
  readonly needs: SpotNeeds;
  readonly safety: SafetyDuty;
}

/** What starts a beat. All triggers of a play are live from its start; each beat starts once a run. */
export type Trigger =
  /** The set is up and the starter has the ball. */
  | { readonly kind: 'start' }
  /** `by` has caught the ball. */
  | { readonly kind: 'catch'; readonly by: SpotId }
  /** `from` has thrown the ball (to `to`, when given). */
  | { readonly kind: 'pass'; readonly from: SpotId; readonly to?: SpotId }
  /** `who` has come to the end of the path he was running. */
  | { readonly kind: 'arrival'; readonly who: SpotId }
  /** `seconds` after the beat `beat` started: a call. */
  | { readonly kind: 'call'; readonly beat: BeatId; readonly seconds: number };

/** Kinds of run off the ball: they steer the same way and differ in when and how hard they go. */
export type RunKind = 'cut' | 'pop' | 'sneak' | 'flash' | 'replace' | 'backUp' | 'getBack';

/** One thing one man does in a beat. */
export type Action =
  | {
      readonly kind: 'pass';
      readonly by: SpotId;
      readonly to: SpotId;
      /** A skip goes over an adjacent man, a feed goes inside to a man near the crease. */
      readonly style: 'adjacent' | 'skip' | 'feed';
    }
  | { readonly kind: 'carry'; readonly by: SpotId; readonly path: readonly Point[] }
  | {
      readonly kind: 'run';
      readonly run: RunKind;
      readonly by: SpotId;
      readonly path: readonly Point[];
      /** `now` goes on the trigger; `whenOpen` waits until his defender looks away or leaves, at most `patience` s. */
      readonly go: 'now' | 'whenOpen';
    }
  /** Stand still at `at` so that the defender on `on` must go round; roll to the ball after. */
  | { readonly kind: 'pick'; readonly by: SpotId; readonly at: Point; readonly on: SpotId }
  /** Keep the defender of `on` behind the inside shoulder, between him and the lane. */
  | { readonly kind: 'seal'; readonly by: SpotId; readonly on: SpotId }
  | { readonly kind: 'fake'; readonly by: SpotId; readonly toward: SpotId }
  | { readonly kind: 'hold'; readonly by: SpotId; readonly seconds: number }
  /** Step toward the goal to `to` with the stick up, ready to shoot. */
  | { readonly kind: 'stepIn'; readonly by: SpotId; readonly to: Point }
  | { readonly kind: 'shot'; readonly by: SpotId };

export interface Beat {
  readonly id: BeatId;
  readonly when: Trigger;
  readonly actions: readonly Action[];
}

/** A yes-no fact that the carrier can see: of himself and the defense as a whole, or of one mate. */
export type Cue =
  /** I have time and room within my range. */
  | { readonly kind: 'iAmFree' }
  /** A defender is on me. */
  | { readonly kind: 'iAmPressed' }
  /** A defender other than the one nearest to me comes at me. */
  | { readonly kind: 'nextSteps' }
  /** The defender nearest to me drops off me. */
  | { readonly kind: 'myManLeaves' }
  /** Nobody stands at the front of the crease: its defender has come out. */
  | { readonly kind: 'creaseUp' }
  /** The low defender away from the ball has lost sight of the man behind him. */
  | { readonly kind: 'farLowLooksAway' }
  /** The low defender away from the ball runs across to its side. */
  | { readonly kind: 'farLowCrosses' }
  | MateCue;

/** What can be seen of one mate. */
export type MateCue =
  /** That man has room and nobody stands in the lane. */
  | { readonly kind: 'open'; readonly who: SpotId }
  /** The man who should guard that man has left him for the ball. */
  | { readonly kind: 'left'; readonly who: SpotId }
  /** A defender stands with his stick in the line to that man. */
  | { readonly kind: 'laneTaken'; readonly who: SpotId };

/** A taught read: in this carrier's hands, when every cue holds, do this. Reads are tried in order. */
export interface Read {
  readonly carrier: SpotId;
  /** Only while this beat is the newest to have started; every beat when absent. */
  readonly during?: BeatId;
  readonly cues: readonly Cue[];
  readonly then: ReadOrder;
}

/**
 * What a read has its carrier do: something with the ball; step in from where he stands, ready to shoot; or give the play up for now, which then flows to
 * its reset.
 */
export type ReadOrder =
  | Extract<Action, { kind: 'pass' | 'shot' | 'carry' | 'stepIn' | 'fake' | 'hold' }>
  | { readonly kind: 'runIn'; readonly by: SpotId }
  | { readonly kind: 'reset'; readonly by: SpotId };

/** Anything that a play asks of a man, in a beat or by a read. */
export type Order = Action | ReadOrder;

/** Where the play flows when its script cannot go on. */
export interface Reset {
  /** Who should have the ball when the set is up again. */
  readonly ball: SpotId;
  /** Run the play again from its first beat, or stay in the set and play what comes open. */
  readonly then: 'again' | 'free';
}

export interface Play {
  readonly id: string;
  readonly name: string;
  /** Exactly six, ids distinct. */
  readonly spots: readonly Spot[];
  readonly start: {
    readonly ball: SpotId /** Where the restart is taken, outside the box. */;
    readonly restart: Point;
  };
  readonly beats: readonly Beat[];
  readonly reads: readonly Read[];
  readonly reset: Reset;
  /** What changes with ten seconds of the penalty left; the play goes on unchanged when absent. */
  readonly lastTen?: { readonly beats: readonly Beat[]; readonly reads: readonly Read[] };
}
