import { motionStride, type Trace } from '../engine/index.ts';

/**
 * Where everyone is and how he moves in the frame of a trace at `time`, as the engine lays it out: x, y, vx, vy per agent, yards and yards a
 * second. A velocity is the way since the frame before; in the first frame everybody stands. Times outside the trace give its first or
 * last frame. RangeError for a trace without frames or a time that is no number.
 */
export function motionAt(trace: Trace, time: number): Float64Array {
  if (trace.frames < 1) throw new RangeError('a trace without frames has no motion');
  if (Number.isNaN(time)) throw new RangeError('time must be a number of seconds');
  // A time that is a sum of steps may lie a hair before its frame.
  const frame = Math.min(Math.max(Math.floor(time / trace.step + 1e-6), 0), trace.frames - 1);
  const before = Math.max(frame - 1, 0);
  const motion = new Float64Array(motionStride * trace.agents);
  for (let agent = 0; agent < trace.agents; agent++) {
    for (let axis = 0; axis < 2; axis++) {
      const place = placeOf(trace, frame, agent, axis);
      motion[motionStride * agent + axis] = place;
      motion[motionStride * agent + 2 + axis] = (place - placeOf(trace, before, agent, axis)) / trace.step;
    }
  }
  return motion;
}

function placeOf(trace: Trace, frame: number, agent: number, axis: number): number {
  return trace.places_byFrame[(frame * trace.agents + agent) * 2 + axis]!;
}
