import type { SchemeView } from './scheme.ts';

/** The crease working area, yards: a man becomes a crease man inside `enter` and stays one until outside `leave`. */
export const creaseArea = {
  // Crease men stand at y 4 to 8 and |x| up to 3, a tight low wing at |x| 6 (doctrine of sets, common practice, no source).
  enter: { radius: 8.25, halfWidth: 5, floor: 0.5 },
  leave: { radius: 9.25, halfWidth: 6, floor: -0.25 },
} as const;

/** Centre about which the perimeter is ordered: on the axis, between the goal and the crease man, so that low wings and men behind part clearly. */
const ringCentreY = 3;

/** An empty view for a scheme played with `defenders` men: reused through the whole chance. */
export function createSchemeView(defenders: number): SchemeView {
  return {
    ball: -1,
    previousBall: -1,
    carrying: false,
    sense: 1,
    offense: new Float64Array(12),
    defense: new Float64Array(2 * defenders),
    ring: new Int8Array(6),
    ringSize: 0,
    crease: new Int8Array(6),
    creaseSize: 0,
    timeLeft: 0,
    star: -1,
    inside: new Uint8Array(6),
    round: new Float64Array(6),
  };
}

/** Forget who was on the crease and who had the ball: call before each chance. */
export function resetSchemeView(view: SchemeView): void {
  view.inside.fill(0);
  view.ball = -1;
  view.previousBall = -1;
  view.carrying = false;
  view.ringSize = 0;
  view.creaseSize = 0;
}

/**
 * Sort the six positions in `view.offense` into crease men and the perimeter in order round the goal.
 *
 * `view.ring` runs from the left behind the goal over the top to the right behind; a man straight behind comes last.
 * `view.crease` runs from left to right. Left is the offense's, times `view.sense`. Ties go to the lower index.
 */
export function readOffense(view: SchemeView): void {
  const { offense, inside, round, ring, crease, sense } = view;
  let ringSize = 0;
  let creaseSize = 0;
  for (let i = 0; i < 6; i++) {
    const x = sense * offense[2 * i];
    const y = offense[2 * i + 1];
    const area = inside[i] === 1 ? creaseArea.leave : creaseArea.enter;
    const isInside =
      y >= area.floor && x <= area.halfWidth && x >= -area.halfWidth && x * x + y * y <= area.radius * area.radius;
    inside[i] = isInside ? 1 : 0;
    if (isInside) {
      round[i] = x;
      creaseSize = insertInto(crease, creaseSize, round, i);
    } else {
      round[i] = placeRound(x, y - ringCentreY);
      ringSize = insertInto(ring, ringSize, round, i);
    }
  }
  view.ringSize = ringSize;
  view.creaseSize = creaseSize;
}

/** A monotone stand-in for the angle from straight behind, clockwise by the left: 0 to 4, without trigonometry. */
function placeRound(dx: number, dy: number): number {
  const span = (dx < 0 ? -dx : dx) + (dy < 0 ? -dy : dy);
  if (span === 0) return 2; // On the centre itself: call him the top man.
  return dx < 0 ? 1 + dy / span : 3 - dy / span;
}

/** Insert man `i` into the first `size` entries of `list`, kept in order of `key`; returns the new size. */
function insertInto(list: Int8Array, size: number, key: Float64Array, i: number): number {
  let at = size;
  while (at > 0 && key[list[at - 1]] > key[i]) {
    list[at] = list[at - 1];
    at--;
  }
  list[at] = i;
  return size + 1;
}
