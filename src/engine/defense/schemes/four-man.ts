import { lockedCrease, otherCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import { farPipe, giveBall, giveLock, giveMan, givePipe, givePlace, giveSplit, pipeX, pipeY } from '../give.ts';
import {
  onBall as ballDefender,
  disown,
  indexIn,
  isFresh,
  nearestHome,
  own,
  ownedBy,
  ownerOf,
  rotationMemory,
  startRotation,
  turn,
} from '../rotation.ts';
import type { SchemeMemory, SchemeView } from '../scheme.ts';
import { createSeats, fromBall, readSeatsInto, type Seats } from '../seats.ts';
import { playedBall, readSide, readZones, zone } from '../zones.ts';
import { boxHome } from './box-zone.ts';
import { inside, isPopped, swapInside } from './two-top-zone.ts';

/** The four who rotate, in ring order: ll, tl, tr, lr. The fifth is locked on the crease. */
export const fourOrder: readonly number[] = [3, 1, 0, 2];
const creaseSlot = rotationMemory;
export const fourManMemory = rotationMemory + 1;

/** What the rotation has read: one scratch value, written by `assignFourMan`. */
export interface FourManReading {
  ball: number;
  side: 1 | -1;
  /** Defenders by their part. */
  onBall: number;
  before: number;
  after: number;
  split: number;
  first: number;
  readonly seats: Seats;
}

const scratch: FourManReading = {
  ball: 0,
  side: 1,
  onBall: 0,
  before: 0,
  after: 0,
  split: 0,
  first: -1,
  seats: createSeats(),
};

/**
 * Four rotate as ball, two adjacents and a splitter of the two men farthest away; the fifth is locked on the crease man
 * (roles: "Man Down Defense in Boys Lacrosse", paperzz.com/doc/7108563).
 */
export function assignFourMan(view: SchemeView, memory: SchemeMemory, out: DutyBoard): Readonly<FourManReading> {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  const side = readSide(view, memory, ball);
  const first = lockedCrease(view, memory, creaseSlot, ball);
  const isInside = view.inside[ball] === 1;
  if (isFresh(memory)) startRotation(memory, nearestHome(view, fourOrder, boxHome, ball), ball);
  else if (!isInside) turn(view, memory, fourOrder, ball);
  const index = indexIn(fourOrder, ballDefender(memory));
  scratch.ball = ball;
  scratch.side = side;
  scratch.first = first;
  scratch.onBall = fourOrder[index];
  scratch.before = fourOrder[(index + 3) % 4];
  scratch.after = fourOrder[(index + 1) % 4];
  scratch.split = fourOrder[(index + 2) % 4];
  readSeatsInto(view, ball, isPopped(view, first) && first !== ball ? first : -1, scratch.seats);
  if (isInside) collapse(view, memory, out);
  else {
    giveParts(view, memory, out);
    if (first === ball) swapInside(view, ball, side, out);
  }
  return scratch;
}

function giveParts(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { seats, ball, side, onBall, before, after, split, first } = scratch;
  const beforeMan = fromBall(seats, 1, -1);
  const afterMan = fromBall(seats, 1, 1);
  giveBall(view, out, onBall, ball, ballPipe(view, ball, onBall, side));
  giveAdjacent(view, memory, out, before, beforeMan, ball, side);
  giveAdjacent(view, memory, out, after, afterMan, ball, side);
  disown(memory);
  own(memory, ball, onBall);
  own(memory, beforeMan, before);
  own(memory, afterMan, after);
  const one = fromBall(seats, 1, 2);
  const second = otherCrease(view, first);
  const other = seats.size > 4 ? fromBall(seats, 1, -2) : second;
  // The man behind can't shoot: with two on the crease the splitter drops to the second of them (doctrine 3.3).
  if (seats.size === 4 && second >= 0 && memory[one] === zone.behind) giveMan(view, out, split, second, boxHome);
  else giveSplit(view, out, split, one, other, boxHome);
  own(memory, one, split);
  own(memory, other, split);
  const opposite = fromBall(seats, 1, 3);
  own(memory, opposite, split);
  giveCrease(view, memory, opposite, out);
}

/** Nobody on the crease: its man minds the middle, and the man across the ring when he could come in. */
function giveCrease(view: SchemeView, memory: SchemeMemory, opposite: number, out: DutyBoard): void {
  const { first, ball } = scratch;
  if (first >= 0) giveLock(view, out, inside, first, boxHome);
  else if (opposite >= 0 && memory[opposite] !== zone.behind) giveMan(view, out, inside, opposite, boxHome);
  else givePlace(view, out, inside, 0.12 * view.sense * view.offense[2 * ball], 5);
}

/** One pass away: his man, or the pipe for a man behind or across the crease. */
export function giveAdjacent(
  view: SchemeView,
  memory: SchemeMemory,
  out: DutyBoard,
  defender: number,
  man: number,
  ball: number,
  side: 1 | -1,
): void {
  if (man < 0) {
    givePlace(view, out, defender, 0, 4);
    return;
  }
  const manSide = sideOf(view, man, side);
  if (memory[man] === zone.behind) {
    givePipe(view, out, defender, man, manSide * pipeX, pipeY);
    return;
  }
  if (isAcross(memory, man, ball)) {
    givePipe(view, out, defender, man, manSide * farPipe.x, farPipe.y);
    return;
  }
  giveMan(view, out, defender, man, boxHome);
}

/** Both low in front of the goal, on different sides. */
export function isAcross(memory: SchemeMemory, man: number, ball: number): boolean {
  return (
    (memory[man] === zone.lowLeft && memory[ball] === zone.lowRight) ||
    (memory[man] === zone.lowRight && memory[ball] === zone.lowLeft)
  );
}

/** A man clearly off the axis has his own side, another the ball's. */
function sideOf(view: SchemeView, man: number, ballSide: 1 | -1): 1 | -1 {
  const x = view.sense * view.offense[2 * man];
  return x > 2 ? 1 : x < -2 ? -1 : ballSide;
}

/** The pipe a man on the ball waits at with the ball straight behind: the one he is nearer to. */
export function ballPipe(view: SchemeView, ball: number, defender: number, side: 1 | -1): 1 | -1 {
  const x = view.sense * view.offense[2 * ball];
  if (x > 2) return 1;
  if (x < -2) return -1;
  const own = view.sense * view.defense[2 * defender];
  return own > 0 ? 1 : own < 0 ? -1 : side;
}

/** The ball is inside: everyone sinks between it and the man he had. */
function collapse(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, first } = scratch;
  if (first === ball || first < 0) giveBall(view, out, inside, ball, side);
  else giveLock(view, out, inside, first, boxHome);
  const other = otherCrease(view, first);
  for (const defender of fourOrder) {
    if (other >= 0 && other !== ball && ownerOf(memory, other) === defender)
      giveMan(view, out, defender, other, boxHome);
    else if (ownerOf(memory, ball) === defender && first !== ball) giveBall(view, out, defender, ball, side);
    else giveSplit(view, out, defender, ball, ownedBy(view, memory, defender, ball, side), boxHome);
  }
}
