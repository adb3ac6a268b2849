import { coverDangers } from '../cover.ts';
import { nearCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import {
  farPipe,
  giveBall,
  giveFront,
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
import {
  behindOf,
  isTop,
  lowOn,
  manIn,
  playedBall,
  readSide,
  readZones,
  topMan,
  topOf,
  topOn,
  type Zone,
  zone,
  zoneMemory,
} from '../zones.ts';
import { opposite, topOrPoint } from './two-top-zone.ts';

/** The lock man starts beside the star; the four are a triangle and a man on the crease (yards common practice, no source). */
const home = [6, 10, -1, 11, 4.5, 3.5, -4.5, 3.5, 0, 5] as const;
const lockMan = 0;
const top = 1;
const lowRight = 2;
const lowLeft = 3;
const crease = 4;

const creaseSlot = zoneMemory;
const starSlot = zoneMemory + 1;
const seats = createSeats();
const read = { ball: 0, at: 0, side: 1 as 1 | -1, nearLow: lowRight, farLow: lowLeft, star: -1, first: -1, second: -1 };

/** One man locks the star; four play the other five. */
export const shutoff: Scheme = {
  id: 'shutoff',
  notes: {
    name: 'Shutoff',
    summary:
      'One man denies the star the ball wherever he goes; a top man, two lows and a crease man play the other five.',
    leaves: 'Four against five everywhere else: the far top man first of all.',
  },
  defenders: 5,
  names: ['lock', 'top', 'lr', 'll', 'c'],
  shortSticks: [crease],
  home,
  memorySize: zoneMemory + 2,
  extends: 12,
  locksStar: true,
  assign(view, memory, out) {
    readShutoff(view, memory);
    const { ball, at, star } = read;
    giveCrease(view, out);
    if (view.inside[ball] === 1) ballInside(view, memory, out);
    else if (at === zone.behind) ballBehind(view, memory, out);
    else if (isTop(at)) ballOnTop(view, memory, out);
    else ballLow(view, memory, out);
    if (ball === star) giveBall(view, out, lockMan, star, read.side);
    else giveLock(view, out, lockMan, star, home);
    cheat(memory, out);
    coverDangers(view, ball, home, out);
  },
};

function readShutoff(view: SchemeView, memory: SchemeMemory): void {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  const star = readStar(view, memory);
  read.ball = ball;
  read.at = memory[ball];
  read.side = readSide(view, memory, ball);
  read.nearLow = read.side > 0 ? lowRight : lowLeft;
  read.farLow = read.side > 0 ? lowLeft : lowRight;
  read.star = star;
  read.first = nearCrease(view, memory, creaseSlot, ball);
  if (read.first === star) read.first = otherThan(view, star, -1);
  read.second = otherThan(view, star, read.first);
  readSeatsInto(view, ball, ball === star ? -1 : star, seats);
}

/** The named star; without a name the right top man of the first look, or the top man. */
function readStar(view: SchemeView, memory: SchemeMemory): number {
  if (view.star >= 0) return view.star;
  if (memory[starSlot] === 0) {
    const right = topOf(view, memory, 1, -1);
    memory[starSlot] = 1 + (right >= 0 ? right : topMan(view));
  }
  return memory[starSlot] - 1;
}

/** A crease man who is neither of two; -1 if there is none. */
function otherThan(view: SchemeView, one: number, other: number): number {
  for (let i = view.creaseSize - 1; i >= 0; i--) {
    if (view.crease[i] !== one && view.crease[i] !== other) return view.crease[i];
  }
  return -1;
}

function giveCrease(view: SchemeView, out: DutyBoard): void {
  const { first, ball } = read;
  if (first >= 0) giveFront(view, out, crease, first, home);
  else givePlace(view, out, crease, 0.12 * view.sense * view.offense[2 * ball], 5);
}

function ballOnTop(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, star, second, farLow } = read;
  if (ball === star) giveMan(view, out, top, fromBall(seats, side, -1), home);
  else giveBall(view, out, top, ball, side);
  giveLow(view, memory, lowRight, 1, out);
  giveLow(view, memory, lowLeft, -1, out);
  if (second >= 0) giveMan(view, out, farLow, second, home);
}

/** A low man has what is on his side: splits two, plays one, and one away from the ball from the far pipe. */
function giveLow(view: SchemeView, memory: SchemeMemory, defender: number, side: 1 | -1, out: DutyBoard): void {
  const wing = freeIn(view, memory, lowOn(side), side);
  const high = freeIn(view, memory, topOn(side), side);
  if (wing >= 0 && high >= 0) {
    giveSplit(view, out, defender, high, wing, home);
    return;
  }
  const one = wing >= 0 ? wing : high;
  const isAway = read.at !== zone.point && side !== read.side;
  if (one < 0 || isAway) {
    const behind = behindOf(view, memory, side, read.ball);
    givePipe(view, out, defender, one >= 0 ? one : behind, side * farPipe.x, farPipe.y);
  } else giveMan(view, out, defender, one, home);
}

/** The uppermost man of a zone who is neither the ball nor the star. */
function freeIn(view: SchemeView, memory: SchemeMemory, wanted: Zone, side: 1 | -1): number {
  const man = manIn(view, memory, wanted, read.ball, side);
  if (man !== read.star) return man;
  for (let i = 0; i < view.ringSize; i++) {
    const other = view.ring[side > 0 ? i : view.ringSize - 1 - i];
    if (other !== read.ball && other !== read.star && memory[other] === wanted) return other;
  }
  return -1;
}

function ballLow(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, star, nearLow, farLow, second } = read;
  giveMan(view, out, top, fromBall(seats, side, -1), home);
  if (ball === star) givePipe(view, out, nearLow, ball, side * pipeX, pipeY);
  else giveBall(view, out, nearLow, ball, side);
  const far = freeIn(view, memory, lowOn(opposite(side)), opposite(side));
  if (second >= 0) giveMan(view, out, farLow, second, home);
  else givePipe(view, out, farLow, far, -side * farPipe.x, farPipe.y);
}

function ballBehind(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, nearLow, farLow, second } = read;
  giveBall(view, out, nearLow, ball, side);
  const wing = freeIn(view, memory, lowOn(opposite(side)), opposite(side));
  if (second >= 0) giveMan(view, out, farLow, second, home);
  else givePipe(view, out, farLow, wing >= 0 ? wing : ball, -side * pipeX, pipeY);
  giveSplit(view, out, top, freeTop(view, memory, side), freeTop(view, memory, opposite(side)), home);
}

function freeTop(view: SchemeView, memory: SchemeMemory, side: 1 | -1): number {
  const high = freeIn(view, memory, topOn(side), side);
  return high >= 0 ? high : freeIn(view, memory, zone.point, side);
}

function ballInside(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, first, star, nearLow, farLow, side, second } = read;
  if (first === ball) giveBall(view, out, crease, ball, side);
  else if (ball !== star) giveBall(view, out, farLow, ball, side);
  giveMan(view, out, nearLow, ball, home);
  if (first === ball || ball === star) {
    const wing = freeIn(view, memory, lowOn(opposite(side)), opposite(side));
    if (second >= 0) giveMan(view, out, farLow, second, home);
    else givePipe(view, out, farLow, wing >= 0 ? wing : ball, -side * farPipe.x, farPipe.y);
  }
  giveSplit(view, out, top, ball, topOrPoint(view, memory, side, ball), home);
}

/** Ball on top two seats from the star: the man between them is free, and the lock man cheats to him. */
function cheat(memory: SchemeMemory, out: DutyBoard): void {
  const { ball, at, star } = read;
  if (ball === star || (at !== zone.topLeft && at !== zone.topRight)) return;
  const toMiddle = opposite(read.side);
  const between = fromBall(seats, toMiddle, 1);
  if (between >= 0 && between !== star && isTop(memory[between]) && isNobodys(out, between)) out.b[lockMan] = between;
}

function isNobodys(out: DutyBoard, man: number): boolean {
  for (let i = 0; i < out.kind.length; i++) if (out.a[i] === man || out.b[i] === man) return false;
  return true;
}
