import type { ChanceModel } from './model.ts';
import { type ChanceState, type Recorder, stepSeconds, stride } from './state.ts';
import type { Trace, TraceEvent } from './trace.ts';

/** A recorder that keeps a whole trial, and the trace it makes of it. */
export interface TraceRecorder extends Recorder {
  finish(): Trace;
}

/** Record one trial of `model`. Grows as the trial goes on; used for the few trials that are shown, never for the many. */
export function createTraceRecorder(model: ChanceModel): TraceRecorder {
  const places: number[] = [];
  const ball: number[] = [];
  const holders: number[] = [];
  const duties: number[] = [];
  const events: TraceEvent[] = [];
  return {
    event: (event) => void events.push(event),
    frame: (state) => {
      pushPlaces(model, state, places);
      ball.push(state.ball.x, state.ball.y, state.ball.height);
      holders.push(holderCode(model, state.ball.holder));
      pushDuties(model, state, duties);
    },
    finish: () => ({
      step: stepSeconds,
      frames: holders.length,
      agents: model.agents,
      defenders: model.agents - 7,
      places_byFrame: Float32Array.from(places),
      ball_byFrame: Float32Array.from(ball),
      holder_byFrame: Int8Array.from(holders),
      duties_byFrame: Int8Array.from(duties),
      events,
    }),
  };
}

function pushPlaces(model: ChanceModel, state: ChanceState, places: number[]): void {
  for (let agent = 0; agent < model.agents; agent++) {
    places.push(state.bodies.motion[stride * agent], state.bodies.motion[stride * agent + 1]);
  }
}

/** See `Trace.holder_byFrame`. */
function holderCode(model: ChanceModel, holder: number): number {
  if (holder < 6) return holder;
  return holder === model.keeper ? 99 : 100 + (holder - 6);
}

/** The released man has no duty of the scheme's: he is on his way to his place. */
function pushDuties(model: ChanceModel, state: ChanceState, duties: number[]): void {
  const { played } = state.coverage;
  for (let defender = 0; defender < model.agents - 7; defender++) {
    if (defender < model.covering) duties.push(played.kind[defender], played.a[defender], played.b[defender]);
    else duties.push(0, -1, -1);
  }
}
