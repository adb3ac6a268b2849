import { ballMode, type ChanceState, stride } from '../chance/state.ts';
import { type FilmPath, leadIn, pathOfFilm } from './film-path.ts';
import type { Movement } from './movement.ts';
import { createRehearsed, type Rehearsal, rehearse } from './rehearsal.ts';

/** What one rehearsal of a movement looked like: everybody at the end of each touch, and as each pass came. */
export interface WalkedLap {
  readonly men: number;
  readonly touches: readonly WalkedTouch[];
}

/** Places of the six and of the defenders, x and y each, yards. */
export interface Standing {
  readonly offense: Float64Array;
  readonly defense: Float64Array;
}

/** One man's touch, or one stretch of it when he moved or others did meanwhile. */
export interface WalkedTouch {
  readonly ball: number;
  /** As the ball came; as it stood at the end of the touch. */
  readonly came: Standing;
  readonly end: Standing;
}

/** How surely men stand at their spots in a lap of the ball: a foot or so either way. Yards. */
const standsAbout = 0.4;

/** The path of a movement: made once for all suspects and takes. */
export function pathOfMovement(movement: Movement): FilmPath {
  return pathOfFilm(movement.film, standsAbout, false);
}

/** Walk a unit through a movement once. */
export function walkLap(rehearsal: Rehearsal, movement: Movement, path: FilmPath, take: number): WalkedLap {
  const men = rehearsal.model.covering;
  const { moments } = movement.film;
  const came: (Standing | null)[] = moments.map(() => null);
  const touches: WalkedTouch[] = [];
  const finish = (state: ChanceState): void => {
    const end = standing(state, men);
    touches.push({
      ball: moments[touches.length]!.ball,
      came: came[touches.length] ?? end,
      end,
    });
  };
  rehearse(rehearsal, path, take, createRehearsed(moments.length, men), (state) => {
    const at = touches.length;
    if (at >= moments.length) return;
    const isThere = state.ball.mode === ballMode.held && state.ball.holder === moments[at]!.ball;
    if (isThere && came[at] === null && state.time > leadIn - 1.25) came[at] = standing(state, men);
    if (state.time >= path.time_byMoment[at]! - 0.026) finish(state);
  });
  return { men, touches };
}

function standing({ bodies }: ChanceState, men: number): Standing {
  return { offense: places(bodies.motion, 0, 6), defense: places(bodies.motion, 6, men) };
}

function places(motion: Float64Array, from: number, count: number): Float64Array {
  const out = new Float64Array(2 * count);
  for (let at = 0; at < count; at++) {
    out[2 * at] = motion[stride * (from + at)]!;
    out[2 * at + 1] = motion[stride * (from + at) + 1]!;
  }
  return out;
}
