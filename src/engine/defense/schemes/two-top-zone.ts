import { lockedCrease, nearCrease, otherCrease } from '../crease.ts';
import { type DutyBoard, duty } from '../duty.ts';
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
import type { SchemeMemory, SchemeView } from '../scheme.ts';
import { createSeats, fromBall, readSeatsInto, type Seats } from '../seats.ts';
import {
  behindOf,
  isTop,
  lowOf,
  playedBall,
  pointMan,
  readSide,
  readZones,
  topOf,
  zone,
  zoneMemory,
} from '../zones.ts';

/** What tells one zone with two men on top, two low and one inside from another. */
export interface TwoTopRules {
  readonly home: readonly number[];
  /** The inside man goes with the crease man (true) or owns the crease and lets him go (false). */
  readonly locked: boolean;
  /** With the ball at the point the low men stand in the skip lanes (true) or on the low wings (false). */
  readonly lanes: boolean;
}

/** What a two-top zone has read off a view: one scratch value, written by `readTwoTop`. */
export interface TwoTopReading {
  ball: number;
  /** Where the ball is, a `zone`. */
  at: number;
  side: 1 | -1;
  nearTop: number;
  farTop: number;
  nearLow: number;
  farLow: number;
  /** The crease man of the inside defender, and the next one. */
  first: number;
  second: number;
  readonly seats: Seats;
}

export const inside = 4;
const creaseSlot = zoneMemory;
/** Slots in use; a scheme built on this one may use those after. */
export const twoTopMemory = zoneMemory + 1;

const scratch: TwoTopReading = {
  ball: 0,
  at: 0,
  side: 1,
  nearTop: 0,
  farTop: 1,
  nearLow: 2,
  farLow: 3,
  first: -1,
  second: -1,
  seats: createSeats(),
};

/** Duties of a zone whose corners own their quarters: defenders tr, tl, lr, ll and one inside. */
export function assignTwoTop(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  out: DutyBoard,
): Readonly<TwoTopReading> {
  const reading = readTwoTop(view, memory, rules);
  const { ball, first, side } = reading;
  if (view.inside[ball] === 1) collapse(view, memory, rules, reading, out);
  else {
    giveInside(view, rules, reading, out);
    if (reading.at === zone.behind) ballBehind(view, memory, rules, reading, out);
    else if (reading.at === zone.point) ballAtPoint(view, memory, rules, reading, out);
    else if (isTop(reading.at)) ballOnTop(view, memory, rules, reading, out);
    else ballLow(view, memory, rules, reading, out);
    if (first === ball) swapInside(view, ball, side, out);
  }
  return reading;
}

function readTwoTop(view: SchemeView, memory: SchemeMemory, rules: TwoTopRules): TwoTopReading {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  const side = readSide(view, memory, ball);
  const first = rules.locked
    ? lockedCrease(view, memory, creaseSlot, ball)
    : nearCrease(view, memory, creaseSlot, ball);
  scratch.ball = ball;
  scratch.at = memory[ball];
  scratch.side = side;
  scratch.nearTop = side > 0 ? 0 : 1;
  scratch.farTop = side > 0 ? 1 : 0;
  scratch.nearLow = side > 0 ? 2 : 3;
  scratch.farLow = side > 0 ? 3 : 2;
  scratch.first = first;
  scratch.second = otherCrease(view, first);
  readSeatsInto(view, ball, isPopped(view, first) && first !== ball ? first : -1, scratch.seats);
  return scratch;
}

/** A locked crease man who has come out. */
export function isPopped(view: SchemeView, man: number): boolean {
  return man >= 0 && view.inside[man] === 0;
}

/** The popped crease man has the ball outside: his own man plays him, and who would have had the ball minds the crease. */
export function swapInside(view: SchemeView, ball: number, side: 1 | -1, out: DutyBoard): void {
  for (let i = 0; i < out.kind.length; i++) if (out.kind[i] === duty.ball) givePlace(view, out, i, 0, 5);
  giveBall(view, out, inside, ball, side);
}

function giveInside(view: SchemeView, rules: TwoTopRules, reading: TwoTopReading, out: DutyBoard): void {
  const { first, at, ball } = reading;
  if (first < 0) givePlace(view, out, inside, 0.12 * view.sense * view.offense[2 * ball], 5);
  else if (isPopped(view, first)) giveLock(view, out, inside, first, rules.home);
  else if (at === zone.behind) giveMan(view, out, inside, first, rules.home);
  else giveFront(view, out, inside, first, rules.home);
}

/** Nobody goes behind: low men on the pipes, tops drop and watch cutters. */
function ballBehind(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  reading: TwoTopReading,
  out: DutyBoard,
): void {
  const { ball, side, nearLow, farLow, nearTop, farTop, second } = reading;
  const nearWing = lowOf(view, memory, side, ball);
  givePipe(view, out, nearLow, nearWing >= 0 ? nearWing : ball, side * pipeX, pipeY);
  giveFarLow(view, memory, rules, reading, pipeX, pipeY, out);
  if (second >= 0) giveMan(view, out, farLow, second, rules.home);
  givePlace(view, out, nearTop, side * 3, 7.5, topOrPoint(view, memory, side, ball));
  givePlace(view, out, farTop, side * -3, 7.5, topOrPoint(view, memory, opposite(side), ball));
}

/** The top from the side the ball came from escorts it, the other sags half way to his man. */
function ballAtPoint(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  reading: TwoTopReading,
  out: DutyBoard,
): void {
  const { ball, side, nearTop, farTop, nearLow, farLow, second } = reading;
  giveBall(view, out, nearTop, ball, side);
  const far = topOf(view, memory, opposite(side), ball);
  giveMan(view, out, farTop, far >= 0 ? far : fromBall(reading.seats, side, -1), rules.home);
  giveLowAtPoint(view, memory, rules, nearLow, side, ball, out);
  if (second >= 0) giveMan(view, out, farLow, second, rules.home);
  else giveLowAtPoint(view, memory, rules, farLow, opposite(side), ball, out);
}

function giveLowAtPoint(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  defender: number,
  side: 1 | -1,
  ball: number,
  out: DutyBoard,
): void {
  const wing = lowOf(view, memory, side, ball);
  if (wing < 0) givePipe(view, out, defender, behindOf(view, memory, side, ball), side * farPipe.x, farPipe.y);
  else if (rules.lanes) giveLane(view, out, defender, wing, rules.home[2 * defender], rules.home[2 * defender + 1]);
  else giveMan(view, out, defender, wing, rules.home);
}

function ballOnTop(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  reading: TwoTopReading,
  out: DutyBoard,
): void {
  const { ball, side, nearTop, farTop, nearLow, farLow, second, seats } = reading;
  giveBall(view, out, nearTop, ball, side);
  giveMan(view, out, farTop, fromBall(seats, side, -1), rules.home);
  const next = fromBall(seats, side, 1);
  if (next >= 0 && memory[next] === zone.behind) givePipe(view, out, nearLow, next, side * pipeX, pipeY);
  else giveMan(view, out, nearLow, next, rules.home);
  if (second >= 0) giveMan(view, out, farLow, second, rules.home);
  else giveFarLow(view, memory, rules, reading, farPipe.x, farPipe.y, out);
}

function ballLow(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  reading: TwoTopReading,
  out: DutyBoard,
): void {
  const { ball, side, nearTop, farTop, nearLow, farLow, second, seats } = reading;
  giveBall(view, out, nearLow, ball, side);
  giveMan(view, out, nearTop, fromBall(seats, side, -1), rules.home);
  givePlace(view, out, farTop, 0, 8, fromBall(seats, side, -2), fromBall(seats, side, -3));
  if (second >= 0) giveMan(view, out, farLow, second, rules.home);
  else giveFarLow(view, memory, rules, reading, farPipe.x, farPipe.y, out);
}

/** Far pipe: the low wing of that side comes there, or with an empty side the man behind. */
function giveFarLow(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  reading: TwoTopReading,
  x: number,
  y: number,
  out: DutyBoard,
): void {
  const away = opposite(reading.side);
  const wing = lowOf(view, memory, away, reading.ball);
  if (wing >= 0 && !rules.lanes) giveMan(view, out, reading.farLow, wing, rules.home);
  else {
    const guarded = wing >= 0 ? wing : behindOf(view, memory, away, reading.ball);
    givePipe(view, out, reading.farLow, guarded, away * x, y);
  }
}

/** The ball is inside: his man plays him, the near low man checks down, the far one has the far pipe, tops sink. */
function collapse(
  view: SchemeView,
  memory: SchemeMemory,
  rules: TwoTopRules,
  reading: TwoTopReading,
  out: DutyBoard,
): void {
  const { ball, first, second, side, nearLow, farLow } = reading;
  const others = ball === first ? second : first;
  if (ball === first || first < 0) {
    giveBall(view, out, inside, ball, side);
    giveMan(view, out, nearLow, ball, rules.home);
  } else {
    giveFront(view, out, inside, first, rules.home);
    giveBall(view, out, nearLow, ball, side);
  }
  const wing = lowOf(view, memory, opposite(side), ball);
  if (ball === first && others >= 0) giveMan(view, out, farLow, others, rules.home);
  else givePipe(view, out, farLow, wing >= 0 ? wing : ball, -side * farPipe.x, farPipe.y);
  for (let top = 0; top < 2; top++) {
    const topSide = top === 0 ? 1 : -1;
    giveSplit(view, out, top, ball, topOrPoint(view, memory, topSide, ball), rules.home);
  }
}

/** The top man of a side, or failing him the point. */
export function topOrPoint(view: SchemeView, memory: SchemeMemory, side: 1 | -1, ball: number): number {
  const top = topOf(view, memory, side, ball);
  return top >= 0 ? top : pointMan(view, memory, ball);
}

/** The point, or failing him the top man of a side. */
export function pointOrTop(view: SchemeView, memory: SchemeMemory, side: 1 | -1, ball: number): number {
  const point = pointMan(view, memory, ball);
  return point >= 0 ? point : topOf(view, memory, side, ball);
}

export function opposite(side: 1 | -1): 1 | -1 {
  return side > 0 ? -1 : 1;
}
