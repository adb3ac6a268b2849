import type {
  Athlete,
  CarrierChance,
  CarrierMoment,
  CarrierStudy,
  ConcededShots,
  ForcedGoals,
  ForcedTrial,
  FurthestScript,
  FutureRange,
  Guidance,
  Level,
  Matchup,
  MomentOutcomes,
  MomentTraces,
  MovementId,
  Outcome,
  Read,
  RunnerChance,
  RunnerStudy,
  RunOrder,
  Scheme,
  SchemeBelief,
  SchemeChances,
  SchemeInQuestion,
  SchemeRuns,
  ScriptTrace,
  SearchLimits,
  SeenManUp,
  ShotHeat,
  ShownAction,
  SpotId,
  Tally,
  Trace,
  WalkedMovement,
  WatchedPlay,
} from '../engine/index.ts';
import type { Practised } from './build-matchup.ts';

/**
 * Everything that a set of trials depends on, as plain data that any worker can receive. Two setups that are equal
 * as JSON give the same trials.
 */
export interface TrialSetup {
  /** The playbook file's text, already known to be free of errors. */
  readonly document: string;
  readonly play: string;
  readonly scheme: string;
  /** The opponent of the playbook who plays it so well as the playbook says; anybody of the level when absent. */
  readonly opponent?: string;
  readonly side: 'left' | 'right';
  /** Seconds of penalty; the playbook's own when `null`. */
  readonly penalty: number | null;
  /** Level both sides play at; the team's own when `null`. */
  readonly level: Level | null;
  readonly seed: number;
  /** Who has practised what since; nothing when absent. */
  readonly practised?: Practised;
}

/** Trials `from` (included) to `to` (excluded). */
export interface TrialRange {
  readonly from: number;
  readonly to: number;
}

/** What is asked of a worker. */
export type WorkerRequest =
  /** How do these trials end? */
  | { readonly kind: 'tally'; readonly setup: TrialSetup; readonly range: TrialRange }
  /** How would these trials end if the play taught one of the six (offense index) these reads in place of his own? */
  | {
      readonly kind: 'taught';
      readonly setup: TrialSetup;
      readonly carrier: number;
      readonly reads: readonly Read[];
      readonly range: TrialRange;
    }
  /** What comes open in these trials while the script runs by itself? */
  | { readonly kind: 'watch'; readonly setup: TrialSetup; readonly range: TrialRange }
  /** What is it worth to take these looks? */
  | { readonly kind: 'force'; readonly setup: TrialSetup; readonly trials: readonly ForcedTrial[] }
  /** Show one trial: its script alone (or that of the first trial after it in which the play begins), or the whole chance. */
  | {
      readonly kind: 'trace';
      readonly setup: TrialSetup;
      readonly of: 'script' | 'chance';
      readonly trial: number;
      /** A look that is taken in the chance, whatever else is there; its trial is this one. */
      readonly forced?: ForcedTrial;
    }
  /** Of the first so many man-ups the first in which the play comes farthest, the way it is written. */
  | { readonly kind: 'furthest'; readonly setup: TrialSetup; readonly watched: number }
  /** What could this one of the six (offense index) do when the play brings him the ball, and what would come of it in `horizon` seconds? */
  | {
      readonly kind: 'decisions';
      readonly setup: TrialSetup;
      readonly carrier: number;
      readonly range: TrialRange;
      readonly horizon: number;
    }
  /** What are his reads worth, by what was gathered? Some seconds of reckoning; the setup is any of those that were gathered against. */
  | {
      readonly kind: 'study';
      readonly setup: TrialSetup;
      readonly carrier: number;
      readonly learn: readonly SchemeChances[];
      readonly held: readonly SchemeChances[];
      readonly limits: SearchLimits;
    }
  /** What comes of these trials in `horizon` seconds when he goes by this guidance while he has the ball from the play? */
  | {
      readonly kind: 'guided';
      readonly setup: TrialSetup;
      readonly carrier: number;
      readonly guidance: Guidance;
      readonly trials: readonly number[];
      readonly horizon: number;
    }
  /** When could a man make this run of the play, and what would come of it in `horizon` seconds after the order? */
  | {
      readonly kind: 'runs';
      readonly setup: TrialSetup;
      readonly order: RunOrder;
      readonly range: TrialRange;
      readonly horizon: number;
    }
  /** What is the timing of that run worth, by what was gathered? The setup is any of those that were gathered against. */
  | {
      readonly kind: 'runStudy';
      readonly setup: TrialSetup;
      readonly order: RunOrder;
      readonly learn: readonly SchemeRuns[];
      readonly held: readonly SchemeRuns[];
      readonly limits: SearchLimits;
    }
  /** At which looks of these men (offense indices) could something be asked, in these trials? */
  | {
      readonly kind: 'moments';
      readonly setup: TrialSetup;
      readonly carriers: readonly number[];
      readonly range: TrialRange;
    }
  /** What would come of each thing that could be done at these moments, in so many futures? Up to a third of a second a moment for 96 of them. */
  | {
      readonly kind: 'momentValues';
      readonly setup: TrialSetup;
      readonly moments: readonly CarrierMoment[];
      readonly futures: FutureRange;
    }
  /** Show what led to a moment, and what comes of some actions there. Seconds before and after it. */
  | {
      readonly kind: 'momentTraces';
      readonly setup: TrialSetup;
      readonly moment: CarrierMoment;
      readonly shown: readonly ShownAction[];
      readonly before: number;
      readonly after: number;
    }
  /** Which of these schemes is it, by what was marked and ticked? The document holds them all; up to half a second a film of eight moments. */
  | { readonly kind: 'belief'; readonly setup: TrialSetup; readonly asked: BeliefAsked }
  /** What does a movement of the ball show of each of these schemes? Up to a second. `null`: the set has no such movement. */
  | {
      readonly kind: 'walk';
      readonly setup: TrialSetup;
      readonly schemes: readonly WalkedScheme[];
      readonly movement: MovementId;
    }
  /** Which shots does the defense give up in these trials, and who should have been there? */
  | { readonly kind: 'conceded'; readonly setup: TrialSetup; readonly range: TrialRange }
  /** What is a shot by this one of the six (offense index) worth, from everywhere? */
  | { readonly kind: 'heat'; readonly setup: TrialSetup; readonly shooter: number };

/** Requests about decisions and about the defense: what could have been done, what that is worth, and what is being played. */
const studyKinds = [
  'decisions',
  'study',
  'guided',
  'runs',
  'runStudy',
  'moments',
  'momentValues',
  'momentTraces',
  'belief',
  'walk',
  'conceded',
] as const satisfies readonly WorkerRequest['kind'][];
export type StudyRequest = Extract<WorkerRequest, { readonly kind: (typeof studyKinds)[number] }>;
/** Requests about trials as they are played. */
export type TrialsRequest = Exclude<WorkerRequest, StudyRequest>;

export function isStudy(request: WorkerRequest): request is StudyRequest {
  return (studyKinds as readonly string[]).includes(request.kind);
}

/** A scheme that is walked through, and how well it is said to be played. */
export type WalkedScheme = Pick<SchemeInQuestion, 'discipline'> & { readonly id: string };

/** What is known of a man-down unit, and which schemes it may be playing. */
export interface BeliefAsked {
  /** Ids, how likely each is beforehand, how well it is said to be played, and whom a shutoff may shut off. */
  readonly schemes: readonly (Omit<SchemeInQuestion, 'scheme'> & { readonly id: string })[];
  readonly manUps: readonly SeenManUp[];
  /** Needed where signs are ticked: the movements that were walked through for the same schemes in the same order. */
  readonly walked?: readonly WalkedMovement[];
  /** Standard deviation of a mark along each axis, yards; a yard when absent. */
  readonly error?: number;
}

/** Who is who in a matchup, without what no message can carry: enough to name, draw and report what it does. */
export interface Cast extends Pick<Matchup, 'play' | 'sense'> {
  readonly scheme: Pick<Scheme, 'id' | 'notes' | 'names'>;
  /** Jersey numbers and athletes, one for each spot. */
  readonly numbers: readonly number[];
  /** The spot whose man the scheme shuts off; `null` when it shuts off nobody. */
  readonly shutOff: SpotId | null;
  readonly six: readonly Athlete[];
  /** One for each of the scheme's names. */
  readonly defenders: readonly Athlete[];
}

/** What a worker answers. */
export type WorkerAnswer =
  | { readonly kind: 'tally'; readonly tally: Tally }
  | { readonly kind: 'watch'; readonly watched: WatchedPlay }
  /** Goals from each forced look to its chance's end. */
  | { readonly kind: 'force'; readonly forced: ForcedGoals }
  /** `null`: the play begins in none of the trials that were tried. */
  | { readonly kind: 'trace'; readonly of: 'script'; readonly cast: Cast; readonly script: ScriptTrace | null }
  | { readonly kind: 'trace'; readonly of: 'chance'; readonly cast: Cast; readonly trace: Trace }
  /** `null`: the play begins in none of them. */
  | { readonly kind: 'furthest'; readonly cast: Cast; readonly found: FurthestScript | null }
  | { readonly kind: 'decisions'; readonly chances: readonly CarrierChance[] }
  /** `null`: the play hardly ever brings him the ball. */
  | { readonly kind: 'study'; readonly study: CarrierStudy | null }
  | { readonly kind: 'guided'; readonly outcomes: readonly Outcome[] }
  | { readonly kind: 'runs'; readonly chances: readonly RunnerChance[] }
  /** `null`: the play hardly ever comes to that run. */
  | { readonly kind: 'runStudy'; readonly study: RunnerStudy | null }
  | { readonly kind: 'moments'; readonly cast: Cast; readonly moments: readonly CarrierMoment[] }
  /** One for each moment, in their order. */
  | { readonly kind: 'momentValues'; readonly values: readonly MomentOutcomes[] }
  | { readonly kind: 'momentTraces'; readonly traces: MomentTraces }
  | { readonly kind: 'belief'; readonly belief: SchemeBelief }
  | { readonly kind: 'walk'; readonly walked: WalkedMovement | null }
  | { readonly kind: 'conceded'; readonly cast: Cast; readonly shots: readonly ConcededShots[] }
  | { readonly kind: 'heat'; readonly heat: ShotHeat }
  /** The setup names something that the playbook does not have: a plain sentence. */
  | { readonly kind: 'refused'; readonly reason: string };
