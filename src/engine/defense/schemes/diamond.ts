import { coverDangers } from '../cover.ts';
import { lockedCrease, otherCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import {
  farPipe,
  giveBall,
  giveFront,
  giveLane,
  giveLock,
  giveMan,
  givePipe,
  givePlace,
  giveSplit,
  pipeX,
  pipeY,
} from '../give.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { createSeats, fromBall, readSeatsInto } from '../seats.ts';
import { isTop, lowOf, playedBall, readSide, readZones, topOf, zone, zoneMemory } from '../zones.ts';
import { isPopped, opposite, pointOrTop, swapInside, topOrPoint } from './two-top-zone.ts';

/** Diamond round the crease man (doctrine 3.1; yards common practice, no source). */
const home = [0, 12, 6, 7, -6, 7, 0, 2, 0, 5] as const;
const pt = 0;
const low = 3;
const crease = 4;

const creaseSlot = zoneMemory;
const ballSlot = zoneMemory + 1;
const onBallSlot = zoneMemory + 2;

const seats = createSeats();
const read = { ball: 0, at: 0, side: 1 as 1 | -1, near: 1, far: 2, first: -1, second: -1 };

/** Diamond-and-one: point, two wings and a low man round a man on the crease. */
export const diamond: Scheme = {
  id: 'diamond-and-one',
  notes: {
    name: 'Diamond-and-one',
    summary: 'A point, two wings and a low man shift a little with the ball; one man stays with the crease man.',
    leaves: 'The corners of a 3-3 (top right and top left); low wings; the man behind.',
  },
  defenders: 5,
  names: ['pt', 'wr', 'wl', 'low', 'c'],
  shortSticks: [pt],
  home,
  memorySize: zoneMemory + 3,
  extends: 13,
  assign(view, memory, out) {
    readDiamond(view, memory);
    const { ball, side, at, first } = read;
    if (view.inside[ball] === 1) collapse(view, memory, out);
    else {
      const onBall = chooseBallMan(view, memory);
      giveCrease(view, out);
      if (at === zone.behind) ballBehind(view, memory, out);
      else if (at === zone.point) ballAtPoint(view, memory, out);
      else if (isTop(at)) ballOnTop(view, memory, out);
      else ballLow(view, memory, onBall, out);
      if (first === ball) swapInside(view, ball, side, out);
    }
    coverDangers(view, ball, home, out);
  },
};

function readDiamond(view: SchemeView, memory: SchemeMemory): void {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  read.ball = ball;
  read.at = memory[ball];
  read.side = readSide(view, memory, ball);
  read.near = read.side > 0 ? 1 : 2;
  read.far = 3 - read.near;
  read.first = lockedCrease(view, memory, creaseSlot, ball);
  read.second = otherCrease(view, read.first);
  readSeatsInto(view, ball, isPopped(view, read.first) && read.first !== ball ? read.first : -1, seats);
}

/** A wing has his side; a ball passed down to the low wing of it goes to the low man, a ball skipped there to the wing. */
function chooseBallMan(view: SchemeView, memory: SchemeMemory): number {
  const { ball, at, near } = read;
  const isNew = memory[ballSlot] !== ball + 1;
  const last = memory[onBallSlot] - 1;
  let onBall = near;
  if (at === zone.point) onBall = pt;
  else if (at === zone.behind) onBall = low;
  else if (!isTop(at) && view.creaseSize < 2) {
    if (isNew ? last === near : last === low) onBall = low;
  }
  memory[ballSlot] = ball + 1;
  memory[onBallSlot] = onBall + 1;
  return onBall;
}

/** With two men inside the low man has the one on the ball's side and the crease man's man the other. */
function giveCrease(view: SchemeView, out: DutyBoard): void {
  const { first, side } = read;
  if (view.creaseSize > 1) giveFront(view, out, crease, creaseMan(view, opposite(side)), home);
  else if (first < 0) givePlace(view, out, crease, 0, 5);
  else if (isPopped(view, first)) giveLock(view, out, crease, first, home);
  else giveFront(view, out, crease, first, home);
}

function creaseMan(view: SchemeView, side: 1 | -1): number {
  return side > 0 ? view.crease[view.creaseSize - 1] : view.crease[0];
}

function ballBehind(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side } = read;
  giveBall(view, out, low, ball, side);
  giveHash(view, memory, out, 1, 1);
  giveHash(view, memory, out, 2, -1);
  if (view.creaseSize > 1) {
    // The crease man's man fronts on the ball's side; the point drops on the other.
    giveFront(view, out, crease, creaseMan(view, side), home);
    givePipe(view, out, pt, creaseMan(view, opposite(side)), 0, 8);
  } else {
    givePlace(
      view,
      out,
      pt,
      0,
      8,
      topOrPoint(view, memory, side, ball),
      topOrPoint(view, memory, opposite(side), ball),
    );
  }
}

function giveHash(view: SchemeView, memory: SchemeMemory, out: DutyBoard, defender: number, side: 1 | -1): void {
  givePlace(view, out, defender, side * 5, 5, lowOrTop(view, memory, side));
}

function lowOrTop(view: SchemeView, memory: SchemeMemory, side: 1 | -1): number {
  const wing = lowOf(view, memory, side, read.ball);
  return wing >= 0 ? wing : topOf(view, memory, side, read.ball);
}

function ballAtPoint(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side } = read;
  giveBall(view, out, pt, ball, side);
  giveWingLane(view, memory, out, 1, 1);
  giveWingLane(view, memory, out, 2, -1);
  giveLow(view, out, -1);
}

function giveWingLane(view: SchemeView, memory: SchemeMemory, out: DutyBoard, defender: number, side: 1 | -1): void {
  const guarded = lowOrTop(view, memory, side);
  const top = topOf(view, memory, side, read.ball);
  giveLane(view, out, defender, guarded, side * 6, 7, top === guarded ? -1 : top);
}

/** The low man: on the near one of two crease men, else on `man`, else between the pipes. */
function giveLow(view: SchemeView, out: DutyBoard, man: number): void {
  if (view.creaseSize > 1) giveMan(view, out, low, creaseMan(view, read.side), home);
  else if (man >= 0) giveMan(view, out, low, man, home);
  else givePlace(view, out, low, 0, 2);
}

function ballOnTop(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, near, far } = read;
  giveBall(view, out, near, ball, side);
  giveMan(view, out, pt, fromBall(seats, side, -1), home);
  const next = fromBall(seats, side, 1);
  if (view.creaseSize < 2 && next >= 0 && memory[next] === zone.behind) {
    givePipe(view, out, low, next, side * pipeX, pipeY);
  } else giveLow(view, out, next);
  giveFarWing(view, memory, out, far);
}

/** The wing away from the ball: splits the two far men in front, or pinches to the far pipe when one is all there is. */
function giveFarWing(view: SchemeView, memory: SchemeMemory, out: DutyBoard, far: number): void {
  const { side } = read;
  const one = inFront(memory, fromBall(seats, side, -2));
  const other = inFront(memory, fromBall(seats, side, 2));
  if (one >= 0 && other >= 0) giveSplit(view, out, far, one, other, home);
  else givePipe(view, out, far, one >= 0 ? one : other, -side * farPipe.x, farPipe.y);
}

function inFront(memory: SchemeMemory, man: number): number {
  return man >= 0 && memory[man] !== zone.behind ? man : -1;
}

function ballLow(view: SchemeView, memory: SchemeMemory, onBall: number, out: DutyBoard): void {
  const { ball, side, near, far } = read;
  giveBall(view, out, onBall, ball, side);
  const top = fromBall(seats, side, -1);
  const second = fromBall(seats, side, -2);
  if (onBall === low) {
    giveMan(view, out, near, top, home);
    giveSplit(view, out, pt, second, inFront(memory, fromBall(seats, side, 2)), home);
  } else {
    giveSplit(view, out, pt, top, second, home);
    if (view.creaseSize > 1) giveLow(view, out, -1);
    else givePipe(view, out, low, ball, side * 1, 2);
  }
  givePipe(view, out, far, lowOf(view, memory, opposite(side), ball), -side * farPipe.x, farPipe.y);
}

function collapse(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, first } = read;
  if (ball === first) {
    giveBall(view, out, crease, ball, side);
    giveMan(view, out, low, ball, home);
  } else {
    giveFront(view, out, crease, first, home);
    giveBall(view, out, low, ball, side);
  }
  giveSplit(view, out, pt, ball, pointOrTop(view, memory, side, ball), home);
  giveSplit(view, out, 1, ball, lowOrTop(view, memory, 1), home);
  giveSplit(view, out, 2, ball, lowOrTop(view, memory, -1), home);
}
