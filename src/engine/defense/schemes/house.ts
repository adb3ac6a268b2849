import { coverDangers } from '../cover.ts';
import { nearCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import { giveBall, giveFront, giveLane, giveMan, givePipe, givePlace, giveSplit, pipeX, pipeY } from '../give.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { createSeats, fromBall, readSeatsInto } from '../seats.ts';
import { behindOf, isTop, lowOf, playedBall, readSide, readZones, steady, topOf, zone, zoneMemory } from '../zones.ts';
import { opposite, pointOrTop, topOrPoint } from './two-top-zone.ts';

/** Roof, two sides, two lows (doctrine 3.1; yards common practice, no source). */
const home = [0, 12, 6, 9, -6, 9, 4, 3, -4, 3] as const;
const roof = 0;

const creaseSlot = zoneMemory;
const creaseSideSlot = zoneMemory + 1;
/** A crease man this far over belongs to the other low man, yards. */
const sideMargin = 1;
const seats = createSeats();
const read = { ball: 0, at: 0, side: 1 as 1 | -1, nearSide: 1, farSide: 2, nearLow: 3, farLow: 4, first: -1 };

/** 3-2 zone: the static cousin of the five-man rotation; nobody goes past his fifth. */
export const house: Scheme = {
  id: 'house-3-2',
  notes: {
    name: '3-2 house',
    summary: 'A roof man, two sides and two lows own fifths of the ground; the lows share the crease by side.',
    leaves: 'Two men on the crease; a flooded low side; the far low man on a feed from behind.',
  },
  defenders: 5,
  names: ['pt', 'sr', 'sl', 'lr', 'll'],
  shortSticks: [roof],
  home,
  memorySize: zoneMemory + 2,
  extends: 12.5,
  assign(view, memory, out) {
    readHouse(view, memory);
    const { ball, at } = read;
    if (at !== zone.point) memory[creaseSideSlot] = 0;
    if (view.inside[ball] === 1) collapse(view, memory, out);
    else if (at === zone.behind) ballBehind(view, memory, out);
    else if (at === zone.point) ballAtPoint(view, memory, out);
    else if (isTop(at)) ballOnTop(view, memory, out);
    else ballLow(view, memory, out);
    coverDangers(view, ball, home, out);
  },
};

function readHouse(view: SchemeView, memory: SchemeMemory): void {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  const side = readSide(view, memory, ball);
  read.ball = ball;
  read.at = memory[ball];
  read.side = side;
  read.nearSide = side > 0 ? 1 : 2;
  read.farSide = 3 - read.nearSide;
  read.nearLow = side > 0 ? 3 : 4;
  read.farLow = 7 - read.nearLow;
  read.first = nearCrease(view, memory, creaseSlot, ball);
  readSeatsInto(view, ball, -1, seats);
}

function creaseMan(view: SchemeView, side: 1 | -1): number {
  return side > 0 ? view.crease[view.creaseSize - 1] : view.crease[0];
}

function ballAtPoint(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, first } = read;
  giveBall(view, out, roof, ball, side);
  const creaseX = first < 0 ? 0 : view.sense * view.offense[2 * first];
  const creaseSide = first < 0 ? 0 : steady(memory, creaseSideSlot, creaseX !== 0 ? creaseX : side, sideMargin);
  for (let s = 1 as 1 | -1; ; s = -1) {
    const wing = lowOf(view, memory, s, ball);
    const top = topOf(view, memory, s, ball);
    giveLane(view, out, s > 0 ? 1 : 2, wing >= 0 ? wing : top, s * 6, 9, wing >= 0 ? top : -1);
    const low = s > 0 ? 3 : 4;
    if (view.creaseSize > 1) giveMan(view, out, low, creaseMan(view, s), home);
    else if (creaseSide === s) giveFront(view, out, low, first, home);
    else givePipe(view, out, low, wing >= 0 ? wing : behindOf(view, memory, s, ball), s * pipeX, 3);
    if (s < 0) return;
  }
}

function ballOnTop(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, nearSide, farSide, nearLow, farLow, first } = read;
  giveBall(view, out, nearSide, ball, side);
  giveMan(view, out, roof, fromBall(seats, side, -1), home);
  const next = inFront(memory, fromBall(seats, side, 1));
  const nearMan = view.creaseSize > 1 ? creaseMan(view, side) : first;
  if (nearMan < 0 && next < 0) givePipe(view, out, nearLow, fromBall(seats, side, 1), side * pipeX, pipeY);
  else giveSplit(view, out, nearLow, nearMan, next, home);
  if (view.creaseSize > 1) giveMan(view, out, farLow, creaseMan(view, opposite(side)), home);
  else {
    const guarded = first >= 0 ? first : lowOf(view, memory, opposite(side), ball);
    givePipe(view, out, farLow, guarded, -side * 1.5, 3);
  }
  givePlace(view, out, farSide, -side * 3, 7, fromBall(seats, side, -2), inFront(memory, fromBall(seats, side, 2)));
}

function ballLow(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, nearSide, farSide, nearLow, farLow, first } = read;
  giveBall(view, out, nearLow, ball, side);
  givePlace(view, out, nearSide, side * 5, 8, fromBall(seats, side, -1));
  const far = lowOf(view, memory, opposite(side), ball);
  if (view.creaseSize > 1) {
    giveFront(view, out, roof, creaseMan(view, side), home);
    giveMan(view, out, farLow, creaseMan(view, opposite(side)), home);
  } else {
    giveFront(view, out, roof, first, home);
    if (first < 0) givePlace(view, out, roof, 0, 8);
    giveSplit(view, out, farLow, first, far, home);
  }
  givePlace(view, out, farSide, 0, 9, fromBall(seats, side, -2), inFront(memory, fromBall(seats, side, 2)));
}

function ballBehind(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, farLow, nearLow, first } = read;
  for (let s = 1 as 1 | -1; ; s = -1) {
    const wing = lowOf(view, memory, s, ball);
    const top = topOf(view, memory, s, ball);
    const behind = s === side ? ball : behindOf(view, memory, s, ball);
    givePipe(view, out, s > 0 ? 3 : 4, wing >= 0 ? wing : behind >= 0 ? behind : ball, s * pipeX, pipeY);
    givePlace(view, out, s > 0 ? 1 : 2, s * 5, 5, top >= 0 ? top : wing);
    if (s < 0) break;
  }
  if (first < 0) givePlace(view, out, roof, 0, 8, topOrPoint(view, memory, side, ball));
  else giveFront(view, out, roof, view.creaseSize > 1 ? creaseMan(view, opposite(side)) : first, home);
  // Two inside: the ball-side one comes to the near pipe, the roof man has the other.
  if (view.creaseSize > 1) givePipe(view, out, nearLow, creaseMan(view, side), side * pipeX, pipeY);
  else if (out.a[farLow] < 0) givePlace(view, out, farLow, -side * pipeX, pipeY);
}

function inFront(memory: SchemeMemory, man: number): number {
  return man >= 0 && memory[man] !== zone.behind ? man : -1;
}

/** The ball is inside: the low man of his side plays him, the other helps, everyone else sinks. */
function collapse(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, nearLow: onBall } = read;
  const other = view.creaseSize > 1 ? creaseMan(view, opposite(side)) : ball;
  giveBall(view, out, onBall, ball, side);
  giveMan(view, out, 7 - onBall, other, home);
  giveSplit(view, out, roof, ball, pointOrTop(view, memory, side, ball), home);
  for (let s = 1 as 1 | -1; ; s = -1) {
    const wing = lowOf(view, memory, s, ball);
    giveSplit(view, out, s > 0 ? 1 : 2, ball, wing >= 0 ? wing : topOf(view, memory, s, ball), home);
    if (s < 0) return;
  }
}
