import { coveredOdds, type KeeperCover, type KeeperQuarterId } from '../people/keeper-cover.ts';
import { quickNormalCdf } from './normal-cdf.ts';
import type { ShotParameters } from './shot-parameters.ts';
import { goalHeight, type ShotView } from './shot-view.ts';

/** Where a shot is aimed on the shooter's view of the goal, yd, and the odds of a goal there, nothing blocked. */
export interface Aim {
  across: number;
  up: number;
  goal: number;
}

export function createAim(): Aim {
  return { across: 0, up: 0, goal: 0 };
}

/**
 * The aim with the best odds of a goal: a coarse grid over the mouth, then a pattern search that halves its step.
 *
 * The best aim moves from the corner away from the keeper toward the middle of what is open as scatter grows
 * (Tibshirani, Price and Taylor 2011 for darts).
 */
export function bestAimInto(out: Aim, view: ShotView, parameters: ShotParameters): void {
  const width = view.right - view.left;
  out.goal = -1;
  for (const share of coarseAcross) {
    for (const up of coarseUp) tryAim(out, view, parameters, view.left + share * width, up);
  }
  refineAim(out, view, parameters, width * 0.12, 0.25);
}

/** The best aim from that for a keeper a little beside: from there, and from the other side of him. */
export function followAim(out: Aim, view: ShotView, parameters: ShotParameters): void {
  // A keeper with habits may be beaten best in another quarter now.
  if (view.cover !== undefined) {
    bestAimInto(out, view, parameters);
    return;
  }
  const { across, up } = out;
  out.goal = -1;
  tryAim(out, view, parameters, across, up);
  tryAim(out, view, parameters, Math.min(view.right, Math.max(view.left, 2 * view.keeperAcross - across)), up);
  refineAim(out, view, parameters, (view.right - view.left) * 0.12, 0.25);
}

/** Walks uphill from the aim in `out`, whose odds must be of this very view; steps in yd. */
function refineAim(out: Aim, view: ShotView, parameters: ShotParameters, stepAcross: number, stepUp: number): void {
  let across = stepAcross;
  let up = stepUp;
  for (let round = 0; round < refineRounds; round++) {
    const fromAcross = out.across;
    const sideways =
      tryAim(out, view, parameters, fromAcross + across, out.up) ||
      tryAim(out, view, parameters, fromAcross - across, out.up);
    const fromUp = out.up;
    const upward =
      tryAim(out, view, parameters, out.across, fromUp + up) || tryAim(out, view, parameters, out.across, fromUp - up);
    if (sideways || upward) continue;
    across *= 0.5;
    up *= 0.5;
  }
}

/**
 * Pull an aim toward the keeper's middle by how hurried the shot is, 0 to 1, and find its odds anew.
 *
 * A man with a stick on his hands gets it away, but not to the corner he would pick: rushed shots come at the keeper.
 */
export function hurryAim(out: Aim, view: ShotView, parameters: ShotParameters, rush: number): void {
  const pull = parameters.rushPull * Math.min(1, Math.max(0, rush));
  if (pull === 0) return;
  out.across += pull * (view.keeperAcross - out.across);
  out.up += pull * (view.keeperUp - out.up);
  out.goal = Math.max(0, onTargetOdds(view, out.across, out.up) - saveOdds(view, out.across, out.up, parameters));
}

/** Odds that the ball's centre is inside the mouth, aimed at (across, up). */
export function onTargetOdds(view: ShotView, across: number, up: number): number {
  const per = 1 / view.deviation;
  return (
    (quickNormalCdf((view.right - across) * per) - quickNormalCdf((view.left - across) * per)) *
    (quickNormalCdf((goalHeight - up) * per) - quickNormalCdf(-up * per))
  );
}

/** Odds that the ball comes on target and the keeper stops it, aimed at (across, up). */
export function saveOdds(view: ShotView, across: number, up: number, parameters: ShotParameters): number {
  area.left = view.left;
  area.right = view.right;
  area.bottom = 0;
  area.top = goalHeight;
  if (view.cover !== undefined) return coveredSaves(view, across, up, parameters, view.cover);
  return savesInArea(view, across, up, parameters.bodyOdds, parameters.reachOdds);
}

/** The part of the mouth that is asked about, in memory: four more numbers across a call would go to the heap. */
const area = { left: 0.5, right: 0.5, bottom: 0.5, top: 0.5 };

/** The same by quarters of the mouth, for a keeper with habits. */
function coveredSaves(
  view: ShotView,
  across: number,
  up: number,
  { bodyOdds, reachOdds }: ShotParameters,
  { highLeft, highRight, lowLeft, lowRight }: KeeperCover,
): number {
  const quarter = (ratio: number): number =>
    savesInArea(view, across, up, coveredOdds(bodyOdds, ratio), coveredOdds(reachOdds, ratio));
  area.bottom = goalHeight / 2;
  area.right = 0;
  let saves = quarter(highLeft);
  area.right = view.right;
  area.left = 0;
  saves += quarter(highRight);
  area.top = goalHeight / 2;
  area.bottom = 0;
  saves += quarter(lowRight);
  area.left = view.left;
  area.right = 0;
  return saves + quarter(lowLeft);
}

function savesInArea(view: ShotView, across: number, up: number, bodyOdds: number, reachOdds: number): number {
  const reached = ellipseMass(view, across, up, view.reachWidth, view.reachHeight);
  const body = ellipseMass(view, across, up, view.bodyWidth, view.bodyHeight);
  return reachOdds * reached + (bodyOdds - reachOdds) * body;
}

/** Odds that the keeper stops a ball that comes exactly here, 0 to `bodyOdds`. */
export function saveOddsAt(view: ShotView, across: number, up: number, parameters: ShotParameters): number {
  const dx = across - view.keeperAcross;
  const dy = up - view.keeperUp;
  const stops = insideEllipse(dx, dy, view.bodyWidth, view.bodyHeight)
    ? parameters.bodyOdds
    : insideEllipse(dx, dy, view.reachWidth, view.reachHeight)
      ? parameters.reachOdds
      : 0;
  return view.cover === undefined ? stops : coveredOdds(stops, view.cover[quarterAt(across, up)]);
}

/** The quarter of the mouth of a place on the shooter's view; on a middle line the right and the upper one. */
function quarterAt(across: number, up: number): KeeperQuarterId {
  if (up >= goalHeight / 2) return across < 0 ? 'highLeft' : 'highRight';
  return across < 0 ? 'lowLeft' : 'lowRight';
}

const coarseAcross = [0.1, 0.3, 0.5, 0.7, 0.9];
const coarseUp = [0.4, 0.9, 1.55];
const refineRounds = 6;

function tryAim(out: Aim, view: ShotView, parameters: ShotParameters, across: number, up: number): boolean {
  const goal = onTargetOdds(view, across, up) - saveOdds(view, across, up, parameters);
  if (goal <= out.goal) return false;
  out.across = across;
  out.up = up;
  out.goal = goal;
  return true;
}

function insideEllipse(dx: number, dy: number, halfWidth: number, halfHeight: number): boolean {
  if (halfWidth <= 0 || halfHeight <= 0) return false;
  const a = dx / halfWidth;
  const b = dy / halfHeight;
  return a * a + b * b <= 1;
}

const strips = 6;
const turn = (i: number): number => ((i / strips) * 2 - 1) * (Math.PI / 2);
/** Sines of the strip edges: narrow strips where the ellipse's edge is steep. */
const edge = Float64Array.from({ length: strips + 1 }, (_, i) => Math.sin(turn(i)));
/** Half-height of each strip over the ellipse's, so that the strip has the ellipse's area. */
const height = Float64Array.from({ length: strips }, (_, i) => {
  const area = (turn(i + 1) - turn(i)) / 2 + (Math.sin(2 * turn(i + 1)) - Math.sin(2 * turn(i))) / 4;
  return area / (edge[i + 1] - edge[i]);
});

/**
 * Mass of the shot's scatter over the part of the keeper's ellipse inside `area`, by upright strips: exact across a
 * strip, the strip's height that which gives it the ellipse's area. Error under .006 for scatter over .35 yd (aim.spec.ts).
 */
function ellipseMass(view: ShotView, across: number, up: number, halfWidth: number, halfHeight: number): number {
  const per = 1 / view.deviation;
  const { left, right, bottom: floor, top: ceiling } = area;
  let low = quickNormalCdf((Math.min(right, Math.max(left, view.keeperAcross - halfWidth)) - across) * per);
  let sum = 0;
  for (let strip = 0; strip < strips; strip++) {
    const to = Math.min(right, Math.max(left, view.keeperAcross + halfWidth * edge[strip + 1]));
    const high = quickNormalCdf((to - across) * per);
    const mass = high - low;
    low = high;
    if (mass <= 0) continue;
    const half = halfHeight * height[strip];
    const top = Math.min(ceiling, view.keeperUp + half);
    const bottom = Math.max(floor, view.keeperUp - half);
    if (top > bottom) sum += mass * (quickNormalCdf((top - up) * per) - quickNormalCdf((bottom - up) * per));
  }
  return sum;
}
