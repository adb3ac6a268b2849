import {
  type CompiledCue,
  type Cue,
  type CueGround,
  compileCue,
  creaseFront,
  cueSubject,
  defaultChanceSettings,
  manBehind,
  motionStride,
  type Point,
  type Trace,
} from '../engine/index.ts';
import { along, distance, straightArrow } from './arrow.ts';
import { type MarkSizes, usualSizes } from './people-marks.ts';
import { circle, line, type Primitive } from './scene.ts';
import { frameAt } from './trace-frame.ts';
import { motionAt } from './trace-motion.ts';
import type { TraceNames } from './trace-names.ts';

/**
 * What to look at: the marks of a cue at one moment of a trace, for the man who has the ball then; nothing when he has none of it to see, or
 * when nobody of the offense has the ball.
 *
 * A ring stands round the defender whom the cue is about, an arrow shows where he goes, a line of dashes and dots a lane or a man out of
 * sight, a dotted circle the room. It is drawn as it is at the moment, which the carrier knows a little later. Of `free` and `open` only the room
 * is asked about, not what the shot or the pass would be worth.
 */
export function cueMarks(
  trace: Trace,
  time: number,
  cue: Cue,
  names: Pick<TraceNames, 'offense' | 'defense'>,
  sizes: MarkSizes = usualSizes,
): readonly Primitive[] {
  const { holder } = frameAt(trace, time);
  if (holder.kind !== 'attacker') return [];
  const seen = motionAt(trace, time);
  const asked = compileCue(cue, (spot) => names.offense.indexOf(spot));
  if ('who' in asked && (asked.who < 0 || asked.who === holder.index)) return [];
  const ground: CueGround = { covering: names.defense.length, parameters: defaultChanceSettings.parameters };
  const subject = cueSubject(ground, seen, holder.index, asked);
  return subject < 0 ? [] : marksOf(asked, { seen, carrier: holder.index, subject, sizes });
}

interface SeenSubject {
  readonly seen: Float64Array;
  readonly carrier: number;
  /** Agent index of the defender whom the cue is about. */
  readonly subject: number;
  readonly sizes: MarkSizes;
}

function marksOf(cue: CompiledCue, now: SeenSubject): readonly Primitive[] {
  const { seen, carrier, subject } = now;
  switch (cue.kind) {
    case 'iAmFree':
      return [roomMark(now, carrier)];
    case 'open':
      return [roomMark(now, cue.who), ...laneMark(now, carrier, cue.who)];
    case 'iAmPressed':
      return [ringMark(now)];
    case 'left':
    case 'nextSteps':
    case 'myManLeaves':
    case 'farLowCrosses':
      return [ringMark(now), ...moveMark(now)];
    case 'creaseUp':
      return [ringMark(now), circle('cueRoom', creaseFront, creaseFront.radius)];
    case 'farLowLooksAway':
      return [ringMark(now), ...laneMark(now, subject, manBehind(seen, carrier, subject))];
    case 'laneTaken':
      return [ringMark(now), ...laneMark(now, carrier, cue.who)];
    default:
      return exhaustive(cue);
  }
}

/** Radius of the ring round a defender, in half widths of his cross: clear of its corners. */
const ringRadius = 1.9;

function ringMark({ seen, subject, sizes }: SeenSubject): Primitive {
  return circle('cueRing', placeOf(seen, subject), sizes.cross * ringRadius);
}

/** No more room than this is drawn: it is enough. Yards. */
const drawnRoom = 4;

function roomMark({ seen, subject }: SeenSubject, who: number): Primitive {
  const at = placeOf(seen, who);
  return circle('cueRoom', at, Math.min(distance(at, placeOf(seen, subject)), drawnRoom));
}

/** From one man's mark to another's; nothing where the two touch. */
function laneMark({ seen, sizes }: SeenSubject, from: number, to: number): readonly Primitive[] {
  const [start, end] = [placeOf(seen, from), placeOf(seen, to)];
  const [leaves, comes] = [from, to].map((agent) => (agent < 6 ? sizes.attacker : sizes.cross * ringRadius));
  if (distance(start, end) <= leaves! + comes!) return [];
  return [line('cueLane', along(start, end, leaves!), along(end, start, comes!))];
}

/** An arrow shows the way of this much time, and never less than can be seen. Seconds, yards. */
const movedIn = 0.5;
const leastMove = 1.4;

function moveMark({ seen, subject, sizes }: SeenSubject): readonly Primitive[] {
  const at = placeOf(seen, subject);
  const [vx, vy] = [seen[motionStride * subject + 2]!, seen[motionStride * subject + 3]!];
  const ahead = { x: at.x + vx, y: at.y + vy };
  const edge = sizes.cross * ringRadius;
  const length = Math.max(movedIn * distance(at, ahead), leastMove);
  return straightArrow('cueMove', 'cueMoveHead', along(at, ahead, edge), along(at, ahead, edge + length));
}

function placeOf(seen: Float64Array, agent: number): Point {
  return { x: seen[motionStride * agent]!, y: seen[motionStride * agent + 1]! };
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind of cue: ${JSON.stringify(value)}`);
}
