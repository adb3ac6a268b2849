import { coverDangers } from '../cover.ts';
import type { DutyBoard } from '../duty.ts';
import { farPipe, giveBall, giveLane, giveLock, givePipe, giveSplit } from '../give.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { fromBall, seatOf } from '../seats.ts';
import { steady, zone } from '../zones.ts';
import { boxHome } from './box-zone.ts';
import { assignFourMan, type FourManReading, fourManMemory } from './four-man.ts';

const modeSlot = fourManMemory;
const ballSlot = fourManMemory + 1;
const lowerSlot = fourManMemory + 2;

const mode = { base: 0, jump: 1, hole: 2 } as const;

// Triggers (doctrine 3.10, common practice; yards ours).
/** A pass longer than this hangs long enough to jump it. */
const longPass = 12;
/** A carrier who drifts wider than this below the tops is in a corner. */
const cornerFrom = 9;
/** With less of the penalty left than this the unit presses, seconds. */
const lastSeconds = 10;
/** A ball that goes from one side to the other past this has crossed the middle. */
const middle = 3;
/** Yards by which a choice of the lower man must be wrong before it is changed. */
const levelMargin = 1;

/** Pressure on triggers from the four-man rotation: jump the receiver, shut off his outlet, the far men home. */
export const jump: Scheme = {
  id: 'jump',
  notes: {
    name: 'Jump',
    summary:
      'Plays the four-man rotation until a trigger: a long pass, a carrier in a corner, the last ten seconds. Then one man jumps the ball and the next shuts off the outlet, until the ball crosses the middle.',
    leaves: 'The far man when the ball gets out of the pressure; skips and dodges behind the jump.',
  },
  defenders: 5,
  names: ['tr', 'tl', 'lr', 'll', 'c'],
  shortSticks: [4],
  home: boxHome,
  memorySize: fourManMemory + 3,
  extends: 14.5,
  assign(view, memory, out) {
    const reading = assignFourMan(view, memory, out);
    const { ball, first } = reading;
    const now = readMode(view, memory, ball);
    if (view.inside[ball] === 0 && first !== ball) {
      if (isCornered(view, memory, ball)) double(view, memory, reading, out);
      else if (now === mode.jump) press(view, memory, reading, out);
      else if (now === mode.hole) toTheHole(view, reading, out);
    }
    coverDangers(view, ball, boxHome, out);
  },
};

/** Long pass on, ball across the middle off; both are judged when the ball changes hands. A pass across the middle never starts it. */
function readMode(view: SchemeView, memory: SchemeMemory, ball: number): number {
  if (memory[ballSlot] !== ball + 1) {
    const from = view.previousBall;
    if (from >= 0 && memory[ballSlot] !== 0) memory[modeSlot] = modeAfterPass(view, from, ball, memory[modeSlot]);
    memory[ballSlot] = ball + 1;
    memory[lowerSlot] = 0;
  }
  if (memory[modeSlot] === mode.base && view.timeLeft > 0 && view.timeLeft <= lastSeconds) return mode.jump;
  return memory[modeSlot];
}

function modeAfterPass(view: SchemeView, from: number, to: number, now: number): number {
  const fromX = view.offense[2 * from];
  const toX = view.offense[2 * to];
  const hasCrossed = (fromX > middle && toX < -middle) || (fromX < -middle && toX > middle);
  if (hasCrossed) return now === mode.jump ? mode.hole : mode.base;
  const dx = toX - fromX;
  const dy = view.offense[2 * to + 1] - view.offense[2 * from + 1];
  if (dx * dx + dy * dy > longPass * longPass) return mode.jump;
  return now === mode.hole ? mode.base : now;
}

function isCornered(view: SchemeView, memory: SchemeMemory, ball: number): boolean {
  if (!view.carrying) return false;
  const x = view.offense[2 * ball];
  const isLow = memory[ball] === zone.lowLeft || memory[ball] === zone.lowRight;
  return isLow && (x > cornerFrom || x < -cornerFrom);
}

/** The jumper has the receiver (the rotation gave him the ball); the trailing man shuts off the way back, the splitter goes home. */
function press(view: SchemeView, memory: SchemeMemory, reading: Readonly<FourManReading>, out: DutyBoard): void {
  const { seats, before, after, split, side } = reading;
  const beforeMan = fromBall(seats, 1, -1);
  const afterMan = fromBall(seats, 1, 1);
  const backIsAfter = isAfter(view, reading);
  giveLock(view, out, backIsAfter ? after : before, backIsAfter ? afterMan : beforeMan, boxHome);
  const lead = backIsAfter ? beforeMan : afterMan;
  if (lead >= 0 && memory[lead] !== zone.behind) {
    const x = 0.7 * view.sense * view.offense[2 * lead];
    giveLane(view, out, backIsAfter ? before : after, lead, x, 0.7 * view.offense[2 * lead + 1]);
  }
  const far = lowerOf(view, memory, fromBall(seats, side, 2), seats.size > 4 ? fromBall(seats, side, -2) : -1);
  if (view.creaseSize < 2) givePipe(view, out, split, far, farPipeX(view, far, side), farPipe.y);
}

/** Whether the ball came the way of the man after it in the ring: of the two ways round the shorter, of equals over the top. */
function isAfter(view: SchemeView, reading: Readonly<FourManReading>): boolean {
  const { seats, side } = reading;
  const from = seatOf(seats, view.previousBall);
  const steps = from < 0 ? 0 : (from - seats.ball + seats.size) % seats.size;
  if (from < 0 || 2 * steps === seats.size) return side < 0;
  return 2 * steps < seats.size;
}

function farPipeX(view: SchemeView, man: number, side: 1 | -1): number {
  const x = man < 0 ? 0 : view.sense * view.offense[2 * man];
  return (x > 0 ? 1 : x < 0 ? -1 : -side) * farPipe.x;
}

function lowerOf(view: SchemeView, memory: SchemeMemory, one: number, other: number): number {
  if (one < 0 || other < 0) return one < 0 ? other : one;
  const lower = view.offense[2 * other + 1] - view.offense[2 * one + 1];
  return steady(memory, lowerSlot, lower, levelMargin) > 0 ? one : other;
}

/** Corner: the man above doubles the carrier and the splitter shuts off the man he leaves. */
function double(view: SchemeView, memory: SchemeMemory, reading: Readonly<FourManReading>, out: DutyBoard): void {
  const { seats, ball, split } = reading;
  const side: 1 | -1 = memory[ball] === zone.lowRight ? 1 : -1;
  giveBall(view, out, side > 0 ? reading.before : reading.after, ball, side);
  giveLock(view, out, split, fromBall(seats, side, -1), boxHome);
}

/** The ball got out: everyone home, between his man and the crease. */
function toTheHole(view: SchemeView, reading: Readonly<FourManReading>, out: DutyBoard): void {
  const { seats, before, after, first } = reading;
  if (first < 0) return;
  const beforeMan = fromBall(seats, 1, -1);
  const afterMan = fromBall(seats, 1, 1);
  if (beforeMan >= 0) giveSplit(view, out, before, beforeMan, first, boxHome);
  if (afterMan >= 0) giveSplit(view, out, after, afterMan, first, boxHome);
}
