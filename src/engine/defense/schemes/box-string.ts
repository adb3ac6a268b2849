import { coverDangers } from '../cover.ts';
import type { DutyBoard } from '../duty.ts';
import { giveBall, giveFront, giveLane, giveMan, givePipe, giveSplit, pipeX, pipeY } from '../give.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { fromBall } from '../seats.ts';
import { behindOf, lowOf, pointMan, topOf, topOn, zone } from '../zones.ts';
import { boxHome } from './box-zone.ts';
import { assignTwoTop, inside, opposite, type TwoTopReading, type TwoTopRules, twoTopMemory } from './two-top-zone.ts';

const rules: TwoTopRules = { home: boxHome, locked: false, lanes: true };

const arrivedSlot = twoTopMemory;
const arrivedZoneSlot = twoTopMemory + 1;

/** Box with a crease string: the crease defender goes out to the odd man on top and back; everybody else holds his quarter. */
export const boxString: Scheme = {
  id: 'box-string',
  notes: {
    name: 'Box with crease string',
    summary: 'The box stays; one man is tied to the crease and strings out to the odd man on top and back.',
    leaves: 'The crease man while the string is out at the point; the far wing or the men behind.',
  },
  defenders: 5,
  names: ['tr', 'tl', 'lr', 'll', 'c'],
  shortSticks: [0],
  home: boxHome,
  memorySize: twoTopMemory + 2,
  extends: 12,
  assign(view, memory, out) {
    const reading = assignTwoTop(view, memory, rules, out);
    const { ball, at, side } = reading;
    if (view.inside[ball] === 0 && !isEscorted(memory, ball, at)) {
      const lowsFree = lowOf(view, memory, 1, ball) < 0 && lowOf(view, memory, -1, ball) < 0 && !isLow(at);
      const point = pointMan(view, memory, ball);
      if (at === zone.point) stringOut(view, memory, reading, lowsFree, out);
      else if (point >= 0) {
        if (at === topOn(side)) ballOnTop(view, memory, reading, point, lowsFree, out);
        else if (at === zone.behind) ballBehind(view, memory, reading, point, lowsFree, out);
        else giveSplit(view, out, reading.farTop, point, topOf(view, memory, opposite(side), ball), boxHome);
      }
    }
    coverDangers(view, ball, boxHome, out);
  },
};

function isLow(at: number): boolean {
  return at === zone.lowLeft || at === zone.lowRight;
}

/** The string answers passes. A corner who runs with the carrier to the point keeps him. */
function isEscorted(memory: SchemeMemory, ball: number, at: number): boolean {
  if (memory[arrivedSlot] !== ball + 1) {
    memory[arrivedSlot] = ball + 1;
    memory[arrivedZoneSlot] = at;
  }
  const from = memory[arrivedZoneSlot];
  return at === zone.point && (from === zone.topLeft || from === zone.topRight);
}

/** Ball at the point: the string has him, tops drop into the lanes, the low men have the crease. */
function stringOut(
  view: SchemeView,
  memory: SchemeMemory,
  reading: TwoTopReading,
  lowsFree: boolean,
  out: DutyBoard,
): void {
  const { ball, side, first, second, nearLow, farLow } = reading;
  giveBall(view, out, inside, ball, side);
  giveTopLane(view, memory, 0, 1, ball, out);
  giveTopLane(view, memory, 1, -1, ball, out);
  if (first < 0) return;
  if (second >= 0) {
    giveCreasePair(view, out);
    return;
  }
  giveMan(view, out, farLow, first, boxHome);
  if (lowsFree) giveFront(view, out, nearLow, first, boxHome);
}

function giveTopLane(
  view: SchemeView,
  memory: SchemeMemory,
  defender: number,
  side: 1 | -1,
  ball: number,
  out: DutyBoard,
): void {
  const top = topOf(view, memory, side, ball);
  const low = lowOf(view, memory, side, ball);
  const guarded = low >= 0 ? low : top;
  giveLane(view, out, defender, guarded, boxHome[2 * defender], boxHome[2 * defender + 1], low >= 0 ? top : -1);
}

/** Two crease men, one for each low man by side. */
function giveCreasePair(view: SchemeView, out: DutyBoard): void {
  giveMan(view, out, 2, view.crease[view.creaseSize - 1], boxHome);
  giveMan(view, out, 3, view.crease[0], boxHome);
}

function ballOnTop(
  view: SchemeView,
  memory: SchemeMemory,
  reading: TwoTopReading,
  point: number,
  lowsFree: boolean,
  out: DutyBoard,
): void {
  const { ball, side, first, second, nearLow, farLow, farTop, seats } = reading;
  if (lowsFree && first >= 0) {
    // With nobody to mind low the low men have the crease and the string stays up with the point.
    giveMan(view, out, inside, point, boxHome);
    giveMan(view, out, farTop, topOf(view, memory, opposite(side), ball), boxHome);
    if (second >= 0) giveCreasePair(view, out);
    else {
      giveMan(view, out, farLow, first, boxHome);
      giveLane(view, out, nearLow, first, side * boxHome[4], boxHome[5]);
    }
    return;
  }
  giveLane(view, out, farTop, point, 0, 10);
  if (second < 0) {
    const farWing = lowOf(view, memory, opposite(side), ball);
    giveSplit(view, out, farLow, topOf(view, memory, opposite(side), ball), farWing, boxHome);
    if (out.a[farLow] < 0) giveMan(view, out, farLow, fromBall(seats, side, 2), boxHome);
  }
}

/** Two men behind (doctrine 3.4, first row): each low man has one of them, the tops have the three on top. */
function ballBehind(
  view: SchemeView,
  memory: SchemeMemory,
  reading: TwoTopReading,
  point: number,
  lowsFree: boolean,
  out: DutyBoard,
): void {
  if (!lowsFree) return;
  const { ball, side, nearLow, farLow, nearTop, farTop, second } = reading;
  giveBall(view, out, nearLow, ball, side);
  if (second < 0) givePipe(view, out, farLow, behindOf(view, memory, opposite(side), ball), -side * pipeX, pipeY);
  giveMan(view, out, nearTop, topOf(view, memory, side, ball), boxHome);
  giveSplit(view, out, farTop, point, topOf(view, memory, opposite(side), ball), boxHome);
}
