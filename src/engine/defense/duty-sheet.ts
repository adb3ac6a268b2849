import type { Point } from '../geometry/point.ts';
import { createDutyBoard, type DutyBoard } from './duty.ts';
import { dutyWords } from './duty-words.ts';
import type { Scheme } from './scheme.ts';
import { targetInto } from './targets.ts';
import { createSchemeView, readOffense } from './view.ts';

/** The grid a man-down unit is taught from: who does what for each place of the ball. */
export interface DutySheet {
  /** Defender names, the columns. */
  readonly defenders: readonly string[];
  readonly rows: readonly DutyRow[];
}

export interface DutyRow {
  /** Spot id of the ball. */
  readonly ball: string;
  /** Words per defender. */
  readonly duties: readonly string[];
  /** Spot ids that no duty names. */
  readonly open: readonly string[];
  readonly board: DutyBoard;
  /** Where the duties put the defenders, yards. */
  readonly places: readonly Point[];
}

export interface SheetOptions {
  /** +1, or -1 to run the mirror image: spots are turned over, duties come out the same. */
  readonly sense: 1 | -1;
  /** Spot id of the man a shutoff is meant for. */
  readonly star: string | undefined;
  readonly timeLeft: number;
}

export const defaultSheetOptions: SheetOptions = { sense: 1, star: undefined, timeLeft: 60 };

/** Distance a walked-through defender keeps from the ball, yards. */
const standoff = 1.8;

/**
 * Walk the ball along `balls` (spot ids) while the six stand still and every defender reaches his place before the next pass.
 *
 * Throws RangeError for a ball spot that is not one of `spots`.
 */
export function createDutySheet(
  scheme: Scheme,
  spots: readonly { readonly id: string; readonly at: Point }[],
  balls: readonly string[],
  options: Partial<SheetOptions> = {},
): DutySheet {
  const { sense, star, timeLeft } = { ...defaultSheetOptions, ...options };
  const names = spots.map((spot) => spot.id);
  const view = createSchemeView(scheme.defenders);
  view.sense = sense;
  view.timeLeft = timeLeft;
  view.star = star === undefined ? -1 : indexOfSpot(names, star);
  for (const [i, spot] of spots.entries()) {
    view.offense[2 * i] = sense * spot.at.x;
    view.offense[2 * i + 1] = spot.at.y;
  }
  for (let i = 0; i < scheme.defenders; i++) {
    view.defense[2 * i] = sense * scheme.home[2 * i];
    view.defense[2 * i + 1] = scheme.home[2 * i + 1];
  }
  const memory = new Int8Array(scheme.memorySize);
  const params = { extends: scheme.extends, standoff, sense };
  const target = new Float64Array(2);
  const rows = balls.map((ball) => {
    const man = indexOfSpot(names, ball);
    view.previousBall = view.ball;
    view.ball = man;
    readOffense(view);
    const board = createDutyBoard(scheme.defenders);
    scheme.assign(view, memory, board);
    for (let i = 0; i < scheme.defenders; i++) {
      targetInto(target, board, i, view.offense, view.offense.subarray(2 * man, 2 * man + 2), params);
      view.defense.set(target, 2 * i);
    }
    return createRow(scheme, board, ball, names, view.defense);
  });
  return { defenders: scheme.names, rows };
}

function createRow(
  scheme: Scheme,
  board: DutyBoard,
  ball: string,
  names: readonly string[],
  defense: Float64Array,
): DutyRow {
  const named = new Set([...board.a, ...board.b]);
  return {
    ball,
    board,
    duties: scheme.names.map((_, i) => dutyWords(board, i, names)),
    open: names.filter((name, i) => !named.has(i) && name !== ball),
    places: scheme.names.map((_, i) => ({ x: defense[2 * i], y: defense[2 * i + 1] })),
  };
}

function indexOfSpot(names: readonly string[], id: string): number {
  const index = names.indexOf(id);
  if (index < 0) throw new RangeError(`unknown spot: ${id} (expected ${names.join(', ')})`);
  return index;
}
