import { coverDangers } from '../cover.ts';
import { nearCrease, otherCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import { giveBall, giveFront, giveLane, giveMan, givePipe, givePlace, giveSplit } from '../give.ts';
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
import { playedBall, readSide, readZones, steady, zone } from '../zones.ts';
import { ballPipe, fourOrder, giveAdjacent } from './four-man.ts';

/** A tight box (shape: "Two Men Down vs. 1-3-2 Drill", coachesinsider.com; yards common practice, no source). */
const home = [4, 8.5, -4, 8.5, 4, 2.5, -4, 2.5] as const;

const creaseSlot = rotationMemory;
const wingSlot = rotationMemory + 1;
/** A ball lower than this is on a wing, higher it is on top, yards: the wings of a 1-4-1 work at 6 to 10. */
const wingBelow = 10.5;
const seats = createSeats();
const read = { ball: 0, side: 1 as 1 | -1, on: 0, before: 0, after: 0, far: 0, first: -1, second: -1 };

/** Two men down: a tight box that turns as a diamond, its far man on the crease. */
export const twoDown: Scheme = {
  id: 'two-down',
  notes: {
    name: 'Two down',
    summary:
      'Four in a tight box turn as a diamond: ball, two adjacents in the inside lanes, the far man on the crease.',
    leaves: 'The two men farthest from the ball.',
  },
  defenders: 4,
  names: ['tr', 'tl', 'lr', 'll'],
  shortSticks: [],
  home,
  memorySize: rotationMemory + 2,
  extends: 11,
  assign(view, memory, out) {
    readBox(view, memory);
    const { ball, on, side } = read;
    if (view.inside[ball] === 1) collapse(view, memory, out);
    else {
      giveBall(view, out, on, ball, ballPipe(view, ball, on, side));
      giveHelp(view, memory, out);
      noteOwners(memory);
    }
    coverDangers(view, ball, home, out);
  },
};

function readBox(view: SchemeView, memory: SchemeMemory): void {
  readZones(view, memory);
  const ball = playedBall(view, memory);
  read.ball = ball;
  read.side = readSide(view, memory, ball);
  if (isFresh(memory)) startRotation(memory, nearestHome(view, fourOrder, home, ball), ball);
  else if (view.inside[ball] === 0) turn(view, memory, fourOrder, ball);
  const index = indexIn(fourOrder, onBall(memory));
  read.on = fourOrder[index];
  read.before = fourOrder[(index + 3) % 4];
  read.after = fourOrder[(index + 1) % 4];
  read.far = fourOrder[(index + 2) % 4];
  read.first = nearCrease(view, memory, creaseSlot, ball);
  read.second = otherCrease(view, read.first);
  readSeatsInto(view, ball, -1, seats);
}

function noteOwners(memory: SchemeMemory): void {
  disown(memory);
  own(memory, read.ball, read.on);
  own(memory, fromBall(seats, 1, -1), read.before);
  own(memory, fromBall(seats, 1, 1), read.after);
  own(memory, fromBall(seats, 1, 2), read.far);
  own(memory, fromBall(seats, 1, -2), read.far);
  own(memory, fromBall(seats, 1, 3), read.far);
  own(memory, read.first, read.far);
  own(memory, read.second, read.far);
}

function giveHelp(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, before, after, far, first, second } = read;
  const at = memory[ball];
  giveFarMan(view, memory, out, far);
  const isLowEnough = steady(memory, wingSlot, wingBelow - view.offense[2 * ball + 1], 0.5) > 0;
  const isWing = isLowEnough && at !== zone.behind;
  if (isWing && second >= 0) {
    // Two inside: both adjacents slough and stand in the inside lanes, the upper one in the lane to the near man.
    const isRight = read.side > 0;
    giveLane(view, out, isRight ? before : after, first, creaseAnchor(view, first), 6);
    giveLane(view, out, isRight ? after : before, second, creaseAnchor(view, second), 6);
  } else if (at === zone.lowLeft || at === zone.lowRight) {
    const low: 1 | -1 = at === zone.lowRight ? 1 : -1;
    giveLowHelp(view, memory, out, low > 0 ? after : before, low);
    giveTopLane(view, out, low > 0 ? before : after, low);
  } else {
    giveAdjacent(view, memory, out, before, fromBall(seats, 1, -1), ball, read.side);
    giveAdjacent(view, memory, out, after, fromBall(seats, 1, 1), ball, read.side);
  }
}

function creaseAnchor(view: SchemeView, man: number): number {
  return 1.5 * view.sense * view.offense[2 * man];
}

function giveFarMan(view: SchemeView, memory: SchemeMemory, out: DutyBoard, far: number): void {
  const { first, second } = read;
  if (second >= 0) {
    giveSplit(view, out, far, first, second, home);
    return;
  }
  if (first >= 0) {
    giveFront(view, out, far, first, home);
    return;
  }
  const one = inFront(memory, fromBall(seats, 1, seats.size > 4 ? -2 : 2));
  giveSplit(view, out, far, one, seats.size > 4 ? inFront(memory, fromBall(seats, 1, 2)) : -1, home);
  if (out.a[far] < 0) givePlace(view, out, far, 0, 4);
}

function inFront(memory: SchemeMemory, man: number): number {
  return man >= 0 && memory[man] !== zone.behind ? man : -1;
}

/** The lower adjacent, who would have the man behind or across, helps low on the crease. */
function giveLowHelp(view: SchemeView, memory: SchemeMemory, out: DutyBoard, defender: number, side: 1 | -1): void {
  const { first, ball } = read;
  if (first < 0) giveAdjacent(view, memory, out, defender, fromBall(seats, side, 1), ball, side);
  else givePipe(view, out, defender, first, side * 1.5, 2.5);
}

/** The upper adjacent stands in the lane to the second man from the ball, the first at his back. */
function giveTopLane(view: SchemeView, out: DutyBoard, defender: number, side: 1 | -1): void {
  const next = fromBall(seats, side, -1);
  const second = fromBall(seats, side, -2);
  if (second < 0) giveMan(view, out, defender, next, home);
  else giveLane(view, out, defender, second, side * 4, 8.5, next);
}

function collapse(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side } = read;
  if (ownerOf(memory, ball) < 0) own(memory, ball, nearestHome(view, fourOrder, home, ball));
  const other = otherCrease(view, ball);
  for (let defender = 0; defender < 4; defender++) {
    if (ownerOf(memory, ball) === defender) giveBall(view, out, defender, ball, side);
    else if (other >= 0 && ownerOf(memory, other) === defender) giveMan(view, out, defender, other, home);
    else giveSplit(view, out, defender, ball, ownedBy(view, memory, defender, ball, side), home);
  }
}
