import { dutyNames, type Point, type Trace } from '../engine/index.ts';

/** Who has the ball. Offense and defender numbers are those of the trace. */
export type Holder =
  | { readonly kind: 'attacker'; readonly index: number }
  | { readonly kind: 'defender'; readonly index: number }
  | { readonly kind: 'keeper' }
  | { readonly kind: 'nobody' };

export interface DutyFrame {
  readonly duty: string;
  /** Offense indices it is about; -1 for none. */
  readonly a: number;
  readonly b: number;
}

/** Everything at one instant of a trace. Yards. */
export interface TraceFrame {
  readonly time: number;
  readonly offense: readonly Point[];
  readonly defense: readonly Point[];
  readonly keeper: Point;
  readonly ball: Point & { readonly height: number };
  readonly holder: Holder;
  readonly duties: readonly DutyFrame[];
}

const offenseCount = 6;

/** Last instant that the trace holds, s. */
export function traceEnd(trace: Trace): number {
  return Math.max(0, (trace.frames - 1) * trace.step);
}

/**
 * The trace at `time`, bodies and ball between two frames on the straight line, holder and duties as of the earlier one.
 * Times outside the trace give its first or last frame. Throws a RangeError for a trace without frames or a time that is no number.
 */
export function frameAt(trace: Trace, time: number): TraceFrame {
  if (trace.frames < 1) throw new RangeError('a trace without frames cannot be drawn');
  if (Number.isNaN(time)) throw new RangeError('time must be a number of seconds');
  const exact = Math.min(Math.max(time, 0), traceEnd(trace)) / trace.step;
  const early = Math.min(Math.floor(exact), trace.frames - 1);
  const late = Math.min(early + 1, trace.frames - 1);
  const share = exact - early;
  const place = (agent: number): Point => placeBetween(trace, early, late, share, agent);
  const balls = [0, 1, 2].map((axis) => mix(ballOf(trace, early, axis), ballOf(trace, late, axis), share));
  return {
    time: exact * trace.step,
    offense: Array.from({ length: offenseCount }, (_, index) => place(index)),
    defense: Array.from({ length: trace.defenders }, (_, index) => place(offenseCount + index)),
    keeper: place(trace.agents - 1),
    ball: { x: balls[0]!, y: balls[1]!, height: balls[2]! },
    holder: holderOf(trace.holder_byFrame[early] ?? -1),
    duties: Array.from({ length: trace.defenders }, (_, index) => dutyAt(trace, early, index)),
  };
}

/** Where the ball has been from `from` to `to` (both included), one point a frame. */
export function ballPath(trace: Trace, from: number, to: number): readonly Point[] {
  return framesBetween(trace, from, to).map((frame) => ({ x: ballOf(trace, frame, 0), y: ballOf(trace, frame, 1) }));
}

/** Where one agent has been from `from` to `to` (both included), one point a frame. */
export function agentPath(trace: Trace, agent: number, from: number, to: number): readonly Point[] {
  return framesBetween(trace, from, to).map((frame) => placeBetween(trace, frame, frame, 0, agent));
}

function framesBetween(trace: Trace, from: number, to: number): readonly number[] {
  const first = Math.max(0, Math.ceil(from / trace.step - 1e-6));
  const last = Math.min(trace.frames - 1, Math.floor(to / trace.step + 1e-6));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index);
}

function placeBetween(trace: Trace, early: number, late: number, share: number, agent: number): Point {
  const a = (early * trace.agents + agent) * 2;
  const b = (late * trace.agents + agent) * 2;
  const places = trace.places_byFrame;
  return { x: mix(places[a]!, places[b]!, share), y: mix(places[a + 1]!, places[b + 1]!, share) };
}

function ballOf(trace: Trace, frame: number, axis: number): number {
  return trace.ball_byFrame[frame * 3 + axis]!;
}

function dutyAt(trace: Trace, frame: number, defender: number): DutyFrame {
  const at = (frame * trace.defenders + defender) * 3;
  const kind = trace.duties_byFrame[at] ?? 0;
  return {
    duty: dutyNames[kind] ?? 'place',
    a: trace.duties_byFrame[at + 1] ?? -1,
    b: trace.duties_byFrame[at + 2] ?? -1,
  };
}

// The numbers are those of `Trace.holder_byFrame`.
function holderOf(code: number): Holder {
  if (code >= 100) return { kind: 'defender', index: code - 100 };
  if (code === 99) return { kind: 'keeper' };
  if (code >= 0) return { kind: 'attacker', index: code };
  return { kind: 'nobody' };
}

function mix(a: number, b: number, share: number): number {
  return a + (b - a) * share;
}
