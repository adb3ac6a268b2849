import { coverDangers } from '../cover.ts';
import { nearCrease } from '../crease.ts';
import { type DutyBoard, duty } from '../duty.ts';
import type { SchemeMemory, SchemeView } from '../scheme.ts';
import { playedBall, zoneMemory } from '../zones.ts';
import { creasePlace } from './places.ts';

/** A coach's grid in flat arrays. Duties are numbered row times defenders plus defender. */
export interface Grid {
  readonly defenders: number;
  readonly home: Float64Array;
  /** Place of each row: index into `points`, or `creasePlace`. */
  readonly rowPlace: Int16Array;
  readonly kind: Int8Array;
  /** Two per duty: index into `points`, `creasePlace`, or below for nobody. */
  readonly who: Int16Array;
  /** x, y per duty. */
  readonly at: Float64Array;
  /** x, y per place that the grid names. */
  readonly points: Float64Array;
}

// Memory after the zones' slots (of which only the last ball is used): row, near crease man, then man per place, then locked man per defender.
const rowSlot = zoneMemory;
const creaseSlot = zoneMemory + 1;
const manSlot = zoneMemory + 2;

/** A man must be this much nearer a place before he takes the name of it over, yards. */
const nameMargin = 1.5;
/** A place with nobody this near is empty, yards. */
const emptyFrom = 8;
/** The ball must be this much nearer another row's place before that row is played, yards. */
const rowMargin = 1;

export function gridMemory(grid: Grid): number {
  return manSlot + grid.points.length / 2 + grid.defenders;
}

/** The scheme's `assign`: one closure per scheme, none per call. */
export function createAssign(grid: Grid): (view: SchemeView, memory: SchemeMemory, out: DutyBoard) => void {
  const home = Array.from(grid.home);
  return (view, memory, out) => {
    const ball = playedBall(view, memory);
    nearCrease(view, memory, creaseSlot, ball);
    const row = readRow(view, memory, grid, ball);
    for (let defender = 0; defender < grid.defenders; defender++) {
      giveOwn(view, memory, grid, row * grid.defenders + defender, defender, ball, out);
    }
    coverDangers(view, ball, home, out);
  };
}

/** The row whose place is nearest the ball, kept until another is clearly nearer; the crease row for a ball on the crease. */
function readRow(view: SchemeView, memory: SchemeMemory, grid: Grid, ball: number): number {
  const x = view.sense * view.offense[2 * ball];
  const y = view.offense[2 * ball + 1];
  const kept = memory[rowSlot] - 1;
  let best = 0;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (let row = 0; row < grid.rowPlace.length; row++) {
    const place = grid.rowPlace[row];
    let distance = Number.MAX_VALUE;
    if (place === creasePlace) {
      if (view.inside[ball] === 1) distance = 0;
    } else {
      const dx = grid.points[2 * place] - x;
      const dy = grid.points[2 * place + 1] - y;
      distance = Math.sqrt(dx * dx + dy * dy) - (row === kept ? rowMargin : 0);
    }
    if (distance < bestDistance) {
      best = row;
      bestDistance = distance;
    }
  }
  memory[rowSlot] = best + 1;
  return best;
}

function giveOwn(
  view: SchemeView,
  memory: SchemeMemory,
  grid: Grid,
  index: number,
  defender: number,
  ball: number,
  out: DutyBoard,
): void {
  const kind = grid.kind[index];
  const isBall = kind === duty.ball;
  let a = isBall ? ball : manAt(view, memory, grid, grid.who[2 * index]);
  let b = isBall ? -1 : manAt(view, memory, grid, grid.who[2 * index + 1]);
  if (kind === duty.lock) a = lockedMan(memory, grid, defender, a);
  if (a < 0 || a === b) {
    a = a < 0 ? b : a;
    b = -1;
  }
  out.kind[defender] = a < 0 ? duty.place : kind === duty.split && b < 0 ? duty.man : kind;
  out.a[defender] = a;
  out.b[defender] = b;
  out.x[defender] = view.sense * grid.at[2 * index];
  out.y[defender] = grid.at[2 * index + 1];
}

/** A lock belongs to the man, not to the place: whoever was there first. */
function lockedMan(memory: SchemeMemory, grid: Grid, defender: number, man: number): number {
  const slot = manSlot + grid.points.length / 2 + defender;
  if (memory[slot] === 0 && man >= 0) memory[slot] = man + 1;
  return memory[slot] - 1;
}

/** Who has the name of a place now: the man nearest it, with hysteresis; -1 for an empty place. */
function manAt(view: SchemeView, memory: SchemeMemory, grid: Grid, place: number): number {
  if (place === creasePlace) return memory[creaseSlot] - 1;
  if (place < 0) return -1;
  const x = view.sense * grid.points[2 * place];
  const y = grid.points[2 * place + 1];
  const kept = memory[manSlot + place] - 1;
  let best = -1;
  let bestDistance = emptyFrom;
  for (let man = 0; man < 6; man++) {
    const dx = view.offense[2 * man] - x;
    const dy = view.offense[2 * man + 1] - y;
    const distance = Math.sqrt(dx * dx + dy * dy) - (man === kept ? nameMargin : 0);
    if (distance < bestDistance) {
      best = man;
      bestDistance = distance;
    }
  }
  memory[manSlot + place] = best + 1;
  return best;
}
