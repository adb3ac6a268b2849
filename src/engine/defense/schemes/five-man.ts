import { coverDangers } from '../cover.ts';
import { nearCrease, otherCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import { farPipe, giveBall, giveFront, giveLane, giveMan, givePipe, giveSplit, pipeX, pipeY } from '../give.ts';
import {
  disown,
  indexIn,
  isFresh,
  nearestHome,
  onBall,
  own,
  ownedBy,
  ownerOf,
  rotationMemory,
  startRotation,
  turn,
} from '../rotation.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { createSeats, fromBall, readSeatsInto } from '../seats.ts';
import { playedBall, pointMan, readSide, readZones, steady, zone } from '../zones.ts';
import { ballPipe, giveAdjacent, isAcross } from './four-man.ts';

/** Pentagon 1-2-2 (shape: "Select Team Man-Down Defense: 55", slideplayer.com/amp/2345932; yards ours). */
const home = [0, 11.5, 5, 9, -5, 9, 3.5, 4, -3.5, 4] as const;

/** Ring order ll, tl, pt, tr, lr with a man at the point; without one the fifth man is the low one of the ring. */
const pointOrder: readonly number[] = [4, 2, 0, 1, 3];
const lowOrder: readonly number[] = [4, 2, 1, 3, 0];

const creaseSlot = rotationMemory;
const orderSlot = rotationMemory + 1;
const arrivedZoneSlot = rotationMemory + 2;
const skippedSlot = rotationMemory + 3;
// Choices between men who may stand level; forgotten when the ball changes hands.
const lowerSlot = rotationMemory + 4;
const nearSlot = rotationMemory + 5;
const creaseSideSlot = rotationMemory + 6;
/** Yards by which a choice must be wrong before it is changed. */
const levelMargin = 1;

const seats = createSeats();

/** The five by their part, written by `readParts`. */
const parts = {
  ball: 0,
  side: 1 as 1 | -1,
  on: 0,
  before: 0,
  after: 0,
  farBefore: 0,
  farAfter: 0,
  first: -1,
  second: -1,
};

/** Five in unison: nobody owns the crease; ball, two adjacents, and two who share the far men and the crease. */
export const fiveMan: Scheme = {
  id: 'five-man-rotation',
  notes: {
    name: 'Five-man rotation',
    summary:
      'All five shift together: ball, two adjacents in the skip lanes, two backside men who split the far men and the crease.',
    leaves: 'Shots one pass away; the crease when a man is late.',
  },
  defenders: 5,
  names: ['pt', 'tr', 'tl', 'lr', 'll'],
  shortSticks: [0],
  home,
  memorySize: rotationMemory + 7,
  extends: 13,
  assign(view, memory, out) {
    readParts(view, memory);
    const { ball } = parts;
    if (view.inside[ball] === 1) collapse(view, memory, out);
    else {
      disown(memory);
      giveBall(view, out, parts.on, ball, ballPipe(view, ball, parts.on, parts.side));
      own(memory, ball, parts.on);
      if (seats.size === 5 && parts.first >= 0) giveOneCrease(view, memory, out);
      else giveOthers(view, memory, out);
    }
    coverDangers(view, ball, home, out);
  },
};

function readParts(view: SchemeView, memory: SchemeMemory): void {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  parts.ball = ball;
  parts.side = readSide(view, memory, ball);
  parts.first = nearCrease(view, memory, creaseSlot, ball);
  parts.second = otherCrease(view, parts.first);
  readSeatsInto(view, ball, -1, seats);
  const order = turnFive(view, memory, ball);
  const index = indexIn(order, onBall(memory));
  parts.on = order[index];
  parts.before = order[(index + 4) % 5];
  parts.after = order[(index + 1) % 5];
  parts.farBefore = order[(index + 3) % 5];
  parts.farAfter = order[(index + 2) % 5];
}

/** Turn the five for the ball; returns the cyclic order in force. */
function turnFive(view: SchemeView, memory: SchemeMemory, ball: number): readonly number[] {
  if (isFresh(memory)) {
    const order = chooseOrder(view, memory);
    startRotation(memory, nearestHome(view, order, home, ball), ball);
    memory[arrivedZoneSlot] = memory[ball];
    return order;
  }
  const old = memory[orderSlot] === 2 ? lowOrder : pointOrder;
  if (view.inside[ball] === 1) return old;
  const before = indexIn(old, onBall(memory));
  if (turn(view, memory, old, ball)) {
    const steps = (indexIn(old, onBall(memory)) - before + 5) % 5;
    memory[skippedSlot] = steps === 2 || steps === 3 ? 1 : 0;
    memory[arrivedZoneSlot] = memory[ball];
    memory[lowerSlot] = 0;
    memory[creaseSideSlot] = 0;
    memory[nearSlot] = 0;
    return chooseOrder(view, memory);
  }
  if (view.carrying) bump(memory, old, ball);
  return old;
}

function chooseOrder(view: SchemeView, memory: SchemeMemory): readonly number[] {
  const hasPoint = pointMan(view, memory, -1) >= 0;
  memory[orderSlot] = hasPoint ? 1 : 2;
  return hasPoint ? pointOrder : lowOrder;
}

/** A carrier who crosses a seam in front of the goal is handed to the next man, who bumps the first one back. */
function bump(memory: SchemeMemory, order: readonly number[], ball: number): void {
  const from = memory[arrivedZoneSlot];
  const to = memory[ball];
  if (from === to || from === zone.behind || to === zone.behind) return;
  const steps = to > from ? 1 : -1;
  const next = order[(indexIn(order, onBall(memory)) + steps + 5) % 5];
  startRotation(memory, next, ball);
  memory[arrivedZoneSlot] = to;
}

/** Five on the perimeter, one on the crease: the tables of doctrine 3.5. */
function giveOneCrease(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, before, after, farBefore, farAfter } = parts;
  const beforeMan = fromBall(seats, 1, -1);
  const afterMan = fromBall(seats, 1, 1);
  const farBeforeMan = fromBall(seats, 1, -2);
  const farAfterMan = fromBall(seats, 1, 2);
  own(memory, beforeMan, before);
  own(memory, afterMan, after);
  own(memory, farBeforeMan, farBefore);
  own(memory, farAfterMan, farAfter);
  if (memory[ball] === zone.point && isLowFront(memory, farBeforeMan) && isLowFront(memory, farAfterMan)) {
    giveSkipLane(view, out, before, farBeforeMan, beforeMan);
    giveSkipLane(view, out, after, farAfterMan, afterMan);
    shareCrease(view, memory, farBeforeMan, farAfterMan, out);
  } else if (isAcross(memory, afterMan, ball)) {
    giveNear(view, memory, out, before, beforeMan);
    giveAcross(view, memory, out, after, farAfter, farBefore, afterMan, farAfterMan, farBeforeMan);
  } else if (isAcross(memory, beforeMan, ball)) {
    giveNear(view, memory, out, after, afterMan);
    giveAcross(view, memory, out, before, farBefore, farAfter, beforeMan, farBeforeMan, farAfterMan);
  } else {
    giveNear(view, memory, out, before, beforeMan);
    giveNear(view, memory, out, after, afterMan);
    const lowIsAfter = isLower(view, memory, farAfterMan, farBeforeMan);
    giveFar(view, memory, out, lowIsAfter ? farAfter : farBefore, lowIsAfter ? farBefore : farAfter);
  }
}

/** The lower of the two has the crease, the other splits the two far men. */
function giveFar(view: SchemeView, memory: SchemeMemory, out: DutyBoard, onCrease: number, splitter: number): void {
  const one = fromBall(seats, 1, -2);
  const other = fromBall(seats, 1, 2);
  giveFront(view, out, onCrease, parts.first, home);
  giveSplit(view, out, splitter, one, other, home);
  own(memory, parts.first, onCrease);
  own(memory, one, splitter);
  own(memory, other, splitter);
}

/** Ball low, next man low on the other side: the adjacent fronts the crease, the next has the far pipe, the third sinks between the rest. */
function giveAcross(
  view: SchemeView,
  memory: SchemeMemory,
  out: DutyBoard,
  adjacent: number,
  next: number,
  third: number,
  across: number,
  one: number,
  other: number,
): void {
  const { first, side } = parts;
  if (memory[skippedSlot] === 1) {
    // After a skip the next man is still on his way in: the adjacent holds the near pipe and hands him the crease.
    givePipe(view, out, adjacent, first, side * pipeX, pipeY);
    giveMan(view, out, next, first, home);
    own(memory, first, next);
  } else {
    giveFront(view, out, adjacent, first, home);
    givePipe(view, out, next, across, -side * farPipe.x, farPipe.y);
    own(memory, first, adjacent);
  }
  own(memory, across, next);
  giveSplit(view, out, third, one, other, home);
  own(memory, one, third);
  own(memory, other, third);
}

/** Ball at the point: the backside men converge on the crease by side, the other one holding his own low man's pipe. */
function shareCrease(view: SchemeView, memory: SchemeMemory, leftMan: number, rightMan: number, out: DutyBoard): void {
  const { first, farBefore, farAfter } = parts;
  const x = view.sense * view.offense[2 * first];
  const isRight = steady(memory, creaseSideSlot, x !== 0 ? x : parts.side, levelMargin) > 0;
  const onCrease = isRight ? farAfter : farBefore;
  giveFront(view, out, onCrease, first, home);
  own(memory, first, onCrease);
  if (isRight) givePipe(view, out, farBefore, leftMan, -pipeX, farPipe.y);
  else givePipe(view, out, farAfter, rightMan, pipeX, farPipe.y);
}

/** No crease man, or two and more: the backside men take what is inside by side, then the man across the ring. */
function giveOthers(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { before, after, farBefore, farAfter, first, second } = parts;
  const beforeMan = fromBall(seats, 1, -1);
  const afterMan = fromBall(seats, 1, 1);
  giveNear(view, memory, out, before, beforeMan);
  giveNear(view, memory, out, after, afterMan);
  own(memory, beforeMan, before);
  own(memory, afterMan, after);
  const across = fromBall(seats, 1, seats.size > 5 ? 3 : 2);
  if (first < 0) {
    giveSplit(view, out, farBefore, fromBall(seats, 1, -2), across, home);
    giveSplit(view, out, farAfter, fromBall(seats, 1, 2), across, home);
    own(memory, fromBall(seats, 1, -2), farBefore);
    own(memory, fromBall(seats, 1, 2), farAfter);
    own(memory, across, parts.side > 0 ? farBefore : farAfter);
    return;
  }
  const nearIsAfter = takesNear(view, memory, afterMan, beforeMan);
  const onNear = nearIsAfter ? farAfter : farBefore;
  const onFar = nearIsAfter ? farBefore : farAfter;
  giveFront(view, out, onNear, first, home);
  own(memory, first, onNear);
  const acrossInFront = across >= 0 && memory[across] !== zone.behind ? across : -1;
  giveSplit(view, out, onFar, second, acrossInFront, home);
  own(memory, second, onFar);
  own(memory, across, onFar);
}

/** Whether the man after the ball is the one whose backside partner stands nearer the near crease man; the lower one on a tie. */
function takesNear(view: SchemeView, memory: SchemeMemory, afterMan: number, beforeMan: number): boolean {
  const { first, second } = parts;
  if (afterMan < 0 || beforeMan < 0 || second < 0) return true;
  const straight = distance(view, afterMan, first) + distance(view, beforeMan, second);
  const crossed = distance(view, afterMan, second) + distance(view, beforeMan, first);
  const better = crossed - straight;
  const isTie = memory[nearSlot] === 0 && better < levelMargin && better > -levelMargin;
  return (
    steady(
      memory,
      nearSlot,
      isTie ? view.offense[2 * beforeMan + 1] - view.offense[2 * afterMan + 1] : better,
      2 * levelMargin,
    ) > 0
  );
}

function giveNear(view: SchemeView, memory: SchemeMemory, out: DutyBoard, defender: number, man: number): void {
  giveAdjacent(view, memory, out, defender, man, parts.ball, parts.side);
}

function giveSkipLane(view: SchemeView, out: DutyBoard, defender: number, far: number, near: number): void {
  const x = near >= 0 ? 0.5 * view.sense * view.offense[2 * near] : home[2 * defender];
  giveLane(view, out, defender, far, x, 9, near);
}

function isLowFront(memory: SchemeMemory, man: number): boolean {
  return man >= 0 && (memory[man] === zone.lowLeft || memory[man] === zone.lowRight);
}

/** Whether one far man is the lower, kept until the other clearly is; of level men the one on the side the ball came from. */
function isLower(view: SchemeView, memory: SchemeMemory, one: number, other: number): boolean {
  const lower = view.offense[2 * other + 1] - view.offense[2 * one + 1];
  const isLevel = memory[lowerSlot] === 0 && lower < levelMargin && lower > -levelMargin;
  return steady(memory, lowerSlot, isLevel ? sideBy(view, one, other) : lower, 2 * levelMargin) > 0;
}

/** By how much one man is more to the side the ball came from than another. */
function sideBy(view: SchemeView, one: number, other: number): number {
  return parts.side * view.sense * (view.offense[2 * one] - view.offense[2 * other]);
}

function distance(view: SchemeView, one: number, other: number): number {
  const dx = view.offense[2 * one] - view.offense[2 * other];
  const dy = view.offense[2 * one + 1] - view.offense[2 * other + 1];
  return Math.sqrt(dx * dx + dy * dy);
}

/** The ball is inside: who has him plays him, everyone else sinks between him and his own man. */
function collapse(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side } = parts;
  if (ownerOf(memory, ball) < 0) own(memory, ball, nearestHome(view, pointOrder, home, ball));
  const owner = ownerOf(memory, ball);
  const other = otherCrease(view, ball);
  for (let defender = 0; defender < 5; defender++) {
    if (defender === owner) giveBall(view, out, defender, ball, side);
    else if (other >= 0 && ownerOf(memory, other) === defender) giveMan(view, out, defender, other, home);
    else giveSplit(view, out, defender, ball, ownedBy(view, memory, defender, ball, side), home);
  }
}
