import { coverDangers } from '../cover.ts';
import { nearCrease, otherCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import { farPipe, giveBall, giveFront, giveMan, givePipe, givePlace, giveSplit, pipeX, pipeY } from '../give.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { isTop, lowOf, playedBall, readSide, readZones, zone, zoneMemory } from '../zones.ts';
import { opposite, topOrPoint } from './two-top-zone.ts';

/** Triangle with its base on the pipes (doctrine 3.9; yards common practice, no source). */
const home = [0, 7, 2.5, 2, -2.5, 2] as const;
const top = 0;
const right = 1;
const left = 2;

const creaseSlot = zoneMemory;
const read = { ball: 0, at: 0, side: 1 as 1 | -1, near: right, far: left, first: -1, second: -1 };

/** Three men down: a triangle that turns to the ball and never leaves the hash. */
export const threeDown: Scheme = {
  id: 'three-down',
  notes: {
    name: 'Three down',
    summary:
      'A triangle turns to the ball: one fronts it inside ten yards, the others have the crease and the far pipe.',
    leaves: 'Every shot from outside: the goalkeeper has those.',
  },
  defenders: 3,
  names: ['top', 'lr', 'll'],
  shortSticks: [],
  home,
  memorySize: zoneMemory + 1,
  extends: 9,
  assign(view, memory, out) {
    readZones(view, memory);
    const ball = playedBall(view, memory);
    read.ball = ball;
    read.at = memory[ball];
    read.side = readSide(view, memory, ball);
    read.first = nearCrease(view, memory, creaseSlot, ball);
    read.second = otherCrease(view, read.first);
    read.near = read.side > 0 ? right : left;
    read.far = read.side > 0 ? left : right;
    if (view.inside[ball] === 1) ballInside(view, memory, out);
    else if (isTop(read.at)) ballOnTop(view, memory, out);
    else ballLow(view, memory, out);
    coverDangers(view, ball, home, out);
  },
};

function ballOnTop(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, near, far, first, second } = read;
  giveBall(view, out, top, ball, side);
  if (first >= 0) giveFront(view, out, near, first, home);
  else givePipe(view, out, near, lowOf(view, memory, side, ball), side * pipeX, 2);
  if (second >= 0) giveMan(view, out, far, second, home);
  else givePipe(view, out, far, farWing(view, memory), -side * pipeX, 2);
}

/** Low or behind: the near low man has the ball (behind, from the pipe), the top man the crease, the other the far pipe. */
function ballLow(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, side, near, far, first, second, at } = read;
  giveBall(view, out, near, ball, side);
  if (first >= 0) giveFront(view, out, top, first, home);
  else givePlace(view, out, top, 0, 6);
  if (second >= 0) {
    giveMan(view, out, far, second, home);
    return;
  }
  const y = at === zone.behind ? pipeY : 2;
  givePipe(view, out, far, farWing(view, memory), -side * (at === zone.behind ? pipeX : farPipe.x), y);
}

function farWing(view: SchemeView, memory: SchemeMemory): number {
  return lowOf(view, memory, opposite(read.side), read.ball);
}

function ballInside(view: SchemeView, memory: SchemeMemory, out: DutyBoard): void {
  const { ball, first, second, side, near } = read;
  const other = ball === first ? second : first;
  giveBall(view, out, near, ball, side);
  giveSplit(view, out, top, ball, topOrPoint(view, memory, side, ball), home);
  if (other >= 0) giveMan(view, out, 3 - near, other, home);
  else givePipe(view, out, 3 - near, ball, -side * pipeX, 2);
}
