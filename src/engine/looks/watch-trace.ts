import type { ChanceModel } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { type ChanceState, stepSeconds } from '../chance/state.ts';
import type { Trace } from '../chance/trace.ts';
import { type MomentKeeper, watchPlay } from './watch.ts';
import type { LookWindow } from './window.ts';

/** What was weighed at each watched moment of a trace, for the man who has the ball or to whom it is on its way. Plain data. */
export interface WeighedMoments {
  /** Seconds of the trace, rising. Moments at which nobody has the ball are left out. */
  readonly time_byMoment: Float32Array;
  /** Offense index. */
  readonly hand_byMoment: Int8Array;
  /** Of each mate, six a moment, 0 for the man himself: odds that a pass is caught, goal odds of his shot off it, worth of the pass. */
  readonly completion_byMate: Float32Array;
  readonly shotOdds_byMate: Float32Array;
  readonly value_byMate: Float32Array;
  /** 1 where the pass would be thrown over the sticks. */
  readonly lob_byMate: Uint8Array;
  /** Of a shot of his own: goal odds and worth. */
  readonly shotOdds_byMoment: Float32Array;
  readonly shotValue_byMoment: Float32Array;
  /** Worth of going on with neither. */
  readonly holdValue_byMoment: Float32Array;
}

/** The script of one trial as it is watched: nobody takes an opening. Plain data. */
export interface ScriptTrace {
  readonly trial: number;
  /** From a little before the first beat to the script's end. Its times count from its own first frame. */
  readonly trace: Trace;
  /** The first beat, in seconds of the trace. The windows count from here. */
  readonly began: number;
  readonly weighed: WeighedMoments;
  readonly windows: readonly LookWindow[];
}

/** What is shown before the first beat, so that the eye finds its place. Seconds. */
const leadIn = 1;
/** Of so many trials one begins its play, or this play hardly ever begins. */
const mostTries = 20;

/**
 * Record the script alone, as `watchPlay` runs it, in trial `from` or the first after it in which the play begins.
 * Undefined when it begins in none of twenty.
 */
export function traceScript(model: ChanceModel, state: ChanceState, from: number): ScriptTrace | undefined {
  for (let trial = from; trial < from + mostTries; trial++) {
    const traced = traceTrial(model, state, trial);
    if (traced !== undefined) return traced;
  }
  return undefined;
}

function traceTrial(model: ChanceModel, state: ChanceState, trial: number): ScriptTrace | undefined {
  const recorder = createTraceRecorder(model);
  const moments = createMomentKeeper();
  state.recorder = recorder;
  const { windows } = watchPlay(model, state, trial, trial + 1, moments.keep);
  state.recorder = null;
  const whole = recorder.finish();
  const began = whole.events.find(({ kind }) => kind === 'beat')?.time;
  if (began === undefined) return undefined;
  const firstFrame = Math.max(0, Math.round((began - leadIn) / stepSeconds));
  const since = firstFrame * stepSeconds;
  return {
    trial,
    trace: fromFrame(whole, firstFrame),
    began: began - since,
    weighed: moments.finish(since),
    windows,
  };
}

/** The trace from a frame on, as if the restart had been there. */
function fromFrame(trace: Trace, first: number): Trace {
  const since = first * trace.step;
  return {
    ...trace,
    frames: trace.frames - first,
    places_byFrame: trace.places_byFrame.slice(2 * trace.agents * first),
    ball_byFrame: trace.ball_byFrame.slice(3 * first),
    holder_byFrame: trace.holder_byFrame.slice(first),
    duties_byFrame: trace.duties_byFrame.slice(3 * trace.defenders * first),
    events: trace.events.filter(({ time }) => time >= since).map((event) => ({ ...event, time: event.time - since })),
  };
}

function createMomentKeeper(): { readonly keep: MomentKeeper; readonly finish: (since: number) => WeighedMoments } {
  const times: number[] = [];
  const hands: number[] = [];
  const completions: number[] = [];
  const odds: number[] = [];
  const values: number[] = [];
  const lobs: number[] = [];
  const ownOdds: number[] = [];
  const ownValues: number[] = [];
  const holds: number[] = [];
  return {
    keep: ({ time }, hand, options) => {
      times.push(time);
      hands.push(hand);
      completions.push(...options.completion_byMate);
      odds.push(...options.shotOdds_byMate);
      values.push(...options.value_byMate);
      lobs.push(...options.lob_byMate);
      ownOdds.push(options.shotOdds);
      ownValues.push(options.shotValue);
      holds.push(options.holdValue);
    },
    finish: (since) => ({
      time_byMoment: Float32Array.from(times, (time) => time - since),
      hand_byMoment: Int8Array.from(hands),
      completion_byMate: Float32Array.from(completions),
      shotOdds_byMate: Float32Array.from(odds),
      value_byMate: Float32Array.from(values),
      lob_byMate: Uint8Array.from(lobs),
      shotOdds_byMoment: Float32Array.from(ownOdds),
      shotValue_byMoment: Float32Array.from(ownValues),
      holdValue_byMoment: Float32Array.from(holds),
    }),
  };
}
