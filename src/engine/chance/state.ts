import type { DutyBoard } from '../defense/duty.ts';
import type { SchemeView } from '../defense/scheme.ts';
import type { CompiledOrder, Script } from './program.ts';
import type { ChanceEnd, TraceEvent, TurnoverKind } from './trace.ts';

/** Seconds of one step of the bodies. */
export const stepSeconds = 0.05;

/** Steps of history kept, so that the slowest reaction (1.5 s) can look back. */
export const historySteps = 32;

/** Numbers per agent in `motion`: x, y, vx, vy. */
export const stride = 4;

/** Where the ball is. */
export const ballMode = { held: 0, windUp: 1, pass: 2, shotWindUp: 3, shot: 4, loose: 5, dead: 6 } as const;
export type BallMode = (typeof ballMode)[keyof typeof ballMode];

/** What an attacker without (or with) the ball is busy with. */
export const task = {
  stay: 0,
  path: 1,
  waitToRun: 2,
  pick: 3,
  seal: 4,
  carry: 5,
  receive: 6,
  chase: 7,
  drive: 8,
  backUp: 9,
} as const;
export type Task = (typeof task)[keyof typeof task];

/** What the receiver of a pass in the air does when he has it: stand, begin the carry of his path, or count as come to the end of his run. */
export const onCatch = { stand: 0, carry: 1, endRun: 2 } as const;

/** Where the chance stands as a whole. */
export const phase = { settingUp: 0, script: 1, free: 2, resetting: 3, probing: 4 } as const;
export type Phase = (typeof phase)[keyof typeof phase];

/** Whether the ball only goes round the set, before the play or back to the man who starts it. */
export function ballGoesRound(unit: { readonly phase: Phase }): boolean {
  return unit.phase === phase.probing || unit.phase === phase.resetting;
}

/** How a pass in the air will end; drawn once, at its release. */
export const passFate = { caught: 0, dropped: 1, bad: 2, intercepted: 3, deflected: 4 } as const;

/** Bodies and what they are steering for. One entry (or two, for x and y) per agent. */
export interface Bodies {
  readonly motion: Float64Array;
  /** `motion` of the last `historySteps` steps, in a ring: slot = step modulo `historySteps`. */
  readonly history: readonly Float64Array[];
  readonly target: Float64Array;
  /** 1 when he wants to stop at the target. */
  readonly arrive: Uint8Array;
  readonly effort: Float64Array;
  /** 1 while he stands as a pick or may not be moved. */
  readonly planted: Uint8Array;
  /** 1 while he takes part (the penalized man does not, until he is released). */
  readonly present: Uint8Array;
}

/** The six attackers. */
export interface Unit {
  readonly task: Uint8Array;
  readonly path: (Float64Array | null)[];
  /** What he does when the pass in the air comes to him; see `onCatch`. */
  readonly onCatch: Uint8Array;
  /** Index of the path's next point. */
  readonly leg: Uint8Array;
  /** Where he stays when he has nothing else to do. */
  readonly station: Float64Array;
  /** Where he goes back to after he has had the ball: the end of his last run, or his home. */
  readonly post: Float64Array;
  /** Small steps off his station to be easier to reach, x and y. */
  readonly drift: Float64Array;
  /** Latest time at which a man who waits to run goes anyway. */
  readonly goBy: Float64Array;
  /** Earliest time at which he goes though his place is open. */
  readonly goFrom: Float64Array;
  /** Man he screens or seals for. */
  readonly partner: Int8Array;
  /** Scripted pass he is to throw when he can: receiver, or -1; since when. */
  readonly passTo: Int8Array;
  readonly passStyle: Uint8Array;
  readonly passSince: Float64Array;
  /** Fake he is to make before anything else, or -1. */
  readonly fakeTo: Int8Array;
  /** Until when he has nothing to gain by another fake. */
  readonly fakedUntil: Float64Array;
  readonly holdUntil: Float64Array;
  readonly mustShoot: Uint8Array;
  /** Time at which each beat of the script started; NaN when it has not. */
  beatStarted: Float64Array;
  script: Script;
  newestBeat: number;
  /** Last time at which the script moved on. */
  lastProgress: number;
  phase: Phase;
  /** When the present phase began. */
  phaseSince: number;
  /** Passes thrown in this chance when it did. */
  phasePasses: number;
}

export interface BallState {
  mode: BallMode;
  x: number;
  y: number;
  height: number;
  /** Agent who has it; -1 when nobody. */
  holder: number;
  /** Last attacker who had it before the holder; -1 at a restart. */
  passer: number;
  /** When the holder got it. */
  heldSince: number;
  /** He can pass or shoot from then on. */
  readyAt: number;
  nextDecision: number;
  nextStrip: number;
  /** He has run in with it once already. */
  ranIn: boolean;
  // A pass or shot under way: from, to, start and end.
  from: number;
  to: number;
  fromX: number;
  fromY: number;
  toX: number;
  toY: number;
  startAt: number;
  endAt: number;
  /** When it would be at its end if nobody touched it: what its place is drawn from. */
  arriveAt: number;
  lob: boolean;
  /** Speed at which the pass arrives, yd/s: a lob's is less than a flat one's. */
  speedAtEnd: number;
  style: number;
  why: number;
  fate: number;
  /** Defender (agent) who gets a stick on it; -1 for none. */
  fateBy: number;
  /** Where and when he does. */
  fateX: number;
  fateY: number;
  goalOdds: number;
  /** The number that settles, at the far end, whether a pass is caught. */
  luck: number;
  /** Odds of a catch as the ball left the stick; only kept while a recorder listens. */
  completion: number;
  /** Odds of a catch as the passer judged them. */
  believed: number;
  /** Agent who wins the loose ball, and when. */
  winner: number;
  /** What the loss is called if the defense gets the loose ball. */
  lossKind: TurnoverKind;
  /** The shot in the air was taken from outside. */
  far: boolean;
  /** Who threw the pass that the holder caught; -1 when he came by the ball otherwise, or has had it for too long to be assisted. */
  assistedBy: number;
}

/** The defense's minds: what it sees, what it wants, what each man is doing. */
export interface Coverage {
  readonly view: SchemeView;
  readonly memory: Int8Array;
  /** Duties as the scheme last gave them out. */
  readonly wanted: DutyBoard;
  /** The last wanted duty that each man has taken notice of. */
  readonly noticed: DutyBoard;
  /** What each is about to do about it. */
  readonly pending: DutyBoard;
  /** Duties the men are really playing. */
  readonly played: DutyBoard;
  /** When each will take up his pending duty; Infinity when nothing is pending. */
  readonly adoptAt: Float64Array;
  /** When his wanted duty last changed. */
  readonly changedAt: Float64Array;
  /** When he last began to answer a change. */
  readonly preparedAt: Float64Array;
  /** How late (beyond his reaction) he is with it, s. */
  readonly lateBy: Float64Array;
  /** From when until when he is out of the play on a fake, and where he went. */
  readonly bittenFrom: Float64Array;
  readonly bittenUntil: Float64Array;
  readonly bittenTo: Int8Array;
  /** Attackers as the defense sees them now. */
  readonly seen: Float64Array;
  /** The ball as the defense sees it now: x, y. */
  readonly seenBall: Float64Array;
  /** Since when the defense plays the man whom it plays as the ball. */
  ballSince: number;
  nextLook: number;
}

/** What is counted in one trial. */
export interface Counts {
  goals: number;
  shots: number;
  turnovers: number;
  firstShot: number;
  firstGoal: number;
  onTarget: number;
  saves: number;
  assistedGoals: number;
  assistedShots: number;
  goalOddsSum: number;
  farShots: number;
  farGoals: number;
  passes: number;
  /** Passes that the play's script or one of its reads asked for, those of the last ten seconds among them. */
  playPasses: number;
  passesCaught: number;
  turnover: TurnoverKind | null;
  back: number;
}

/** Everything that changes in a trial. Made once by `createChanceState` and used again for every trial. */
export interface ChanceState {
  readonly bodies: Bodies;
  readonly unit: Unit;
  readonly ball: BallState;
  readonly coverage: Coverage;
  readonly counts: Counts;
  /** 1 for each beat of the main script that has begun at least once in this trial; what replaces it in the last ten seconds is not kept. */
  readonly begun_byBeat: Uint8Array;
  /** How many draws of each kind each agent has used: kind * agents + agent. */
  readonly drawsUsed: Int32Array;
  /** Who had the ball at each of the last steps (-1 nobody): what the keeper follows, late. */
  readonly holder_byStep: Int8Array;
  trial: number;
  step: number;
  time: number;
  /** Time at which the penalty is over; Infinity under a flag. */
  penaltyEnds: number;
  shotClockEnds: number;
  /** How long this unit takes from the restart until its set is up, s. */
  setUpTime: number;
  /** How long it then swings the ball before it runs its play, s. */
  probeTime: number;
  /** When the ball is lost on its way up; Infinity when it is brought up. */
  clearFailsAt: number;
  /** The play time zero of looks: when the first beat of the present run started; NaN before. */
  scriptSince: number;
  /** The last ten seconds have begun; */
  lastTen: boolean;
  /** and the play changes at the next step. */
  lastTenDue: boolean;
  end: ChanceEnd | null;
  /** Listens to what happens; null in the trials that are only counted. */
  recorder: Recorder | null;
  /** A look that has to be taken, to find what it is worth; null in ordinary trials. */
  forced: ForcedLook | null;
  /** A run that begins at a time that is set, to find what that is worth; null in ordinary trials. */
  forcedRun: ForcedRun | null;
  /** Nobody takes an opening or a read: the script runs on so that its looks can be seen coming and going. */
  watching: boolean;
  /** Nobody takes an opening that no read of the play names: what the reads alone are worth. */
  byReadsAlone: boolean;
}

/** Keeps what a trial does. */
export interface Recorder {
  event(event: TraceEvent): void;
  frame(state: ChanceState): void;
  /** Told each time that the man with the ball looks round, before he acts: what he sees, all passes being weighed in the model's options. */
  look?(carrier: number, seen: Float64Array): void;
}

/**
 * The first who can act from `time` on must throw to `to`, or shoot when `to` is himself, if he is `from`. When it is another
 * the look was missed, and nothing is forced.
 */
export interface ForcedLook {
  readonly time: number;
  readonly from: number;
  readonly to: number;
  /** What he does in its place, as a read of the play would have him do it: the play goes on from there where it can, and he by eye. */
  readonly order?: CompiledOrder;
}

/**
 * The first time that a man is ordered to run along `path` he goes at the first step that is not before `time`, seconds after the restart: not
 * as the play has it, and not before. Orders after that one are the play's.
 */
export interface ForcedRun {
  /** The path of the order, and no copy of it: his other runs go as the play has them. */
  readonly path: Float64Array;
  readonly time: number;
}
