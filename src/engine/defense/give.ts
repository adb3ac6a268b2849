import { type DutyBoard, type DutyKind, duty } from './duty.ts';
import type { SchemeView } from './scheme.ts';

/*
 * Writers of one duty each. Places are in the scheme's own frame (its right is the offense's right) and turn over with `view.sense`.
 * A duty about nobody (man -1) becomes his home place: a scheme may ask for the next man of a ring that has none.
 */

export function givePlace(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  x: number,
  y: number,
  a = -1,
  b = -1,
): void {
  out.kind[defender] = duty.place;
  out.a[defender] = a;
  out.b[defender] = b;
  out.x[defender] = view.sense * x;
  out.y[defender] = y;
}

/** Play the carrier; `side` is the pipe he waits at while the carrier is behind the goal. */
export function giveBall(view: SchemeView, out: DutyBoard, defender: number, man: number, side: 1 | -1): void {
  give(view, out, defender, duty.ball, man, -1, side * pipeX, pipeY);
}

export function giveMan(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  man: number,
  home: readonly number[],
): void {
  give(view, out, defender, duty.man, man, -1, home[2 * defender], home[2 * defender + 1]);
}

export function giveFront(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  man: number,
  home: readonly number[],
): void {
  give(view, out, defender, duty.front, man, -1, home[2 * defender], home[2 * defender + 1]);
}

export function giveLock(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  man: number,
  home: readonly number[],
): void {
  give(view, out, defender, duty.lock, man, -1, home[2 * defender], home[2 * defender + 1]);
}

/** Split two men; with one of them missing play the other. */
export function giveSplit(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  one: number,
  other: number,
  home: readonly number[],
): void {
  if (other < 0 || one === other) {
    giveMan(view, out, defender, one, home);
    return;
  }
  if (one < 0) {
    giveMan(view, out, defender, other, home);
    return;
  }
  give(view, out, defender, duty.split, one, other, home[2 * defender], home[2 * defender + 1]);
}

/** Stand in the ball's lane to `man`, near (x, y); `behind` is the man he has at his back (-1 for nobody). */
export function giveLane(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  man: number,
  x: number,
  y: number,
  behind = -1,
): void {
  give(view, out, defender, duty.lane, man, behind, x, y);
}

/** Hold (x, y) and take `man` when he comes to the doorstep. */
export function givePipe(view: SchemeView, out: DutyBoard, defender: number, man: number, x: number, y: number): void {
  give(view, out, defender, duty.pipe, man, -1, x, y);
}

/** Where a defender on a pipe stands while the ball is behind the goal, and where he guards the far pipe (doctrine 3.2). */
export const pipeX = 2.2;
export const pipeY = 1.2;
export const farPipe = { x: 3, y: 3 } as const;

function give(
  view: SchemeView,
  out: DutyBoard,
  defender: number,
  kind: DutyKind,
  a: number,
  b: number,
  x: number,
  y: number,
): void {
  out.kind[defender] = a < 0 ? duty.place : kind;
  out.a[defender] = a;
  out.b[defender] = a < 0 ? -1 : b;
  out.x[defender] = view.sense * x;
  out.y[defender] = y;
}
