import type { Athlete, Keeper } from '../people/athlete.ts';
import { bestAimInto, createAim, followAim, hurryAim } from './aim.ts';
import { defaultKeeperArc, type KeeperArc, keeperPlaceInto } from './keeper.ts';
import { defaultShotParameters, type ShotParameters } from './shot-parameters.ts';
import { createShotSituation, createShotView, faceKeeperInto, releaseInto, viewInto } from './shot-view.ts';

/** Goal odds of one shooter against one keeper, unblocked, at the best aim, over the field in front of the goal. */
export interface ShotTable {
  readonly odds: Float64Array;
}

/** Grid lines: across (|x|) and up (y), denser where the odds bend; the keeper's lag in even steps; rush 0 and 1. */
const gridX = [0, 1.5, 3, 5, 7.5, 10.5, 14];
const gridY = [0, 0.75, 1.75, 3, 5, 7, 9, 11, 13.5, 16.5, 20];
const lagLow = -0.8;
const lagStep = 0.4;
const lagSteps = 7;
const rushSteps = 2;

const strideRush = 1;
const strideLag = rushSteps;
const strideY = strideLag * lagSteps;
const strideX = strideY * gridY.length;

/** Precomputes a shooter's goal odds against a keeper (under 5 ms). */
export function createShotTable(
  shooter: Athlete,
  keeper: Keeper,
  parameters: ShotParameters = defaultShotParameters,
  arc: KeeperArc = defaultKeeperArc,
): ShotTable {
  const odds = new Float64Array(strideX * gridX.length);
  const shot = createShotSituation();
  const view = createShotView();
  const aim = createAim();
  const hurried = createAim();
  const place = new Float64Array(2);
  faceKeeperInto(shot, keeper);
  for (let ix = 0; ix < gridX.length; ix++) {
    for (let iy = 1; iy < gridY.length; iy++) {
      shot.x = gridX[ix];
      shot.y = gridY[iy];
      const distance = Math.sqrt(shot.x * shot.x + shot.y * shot.y);
      keeperPlaceInto(place, shot.x, shot.y, arc);
      for (let rush = 0; rush < rushSteps; rush++) {
        releaseInto(shot, shooter.shotSpeed, shooter.shotScatter, rush, 0, 1, parameters);
        aim.goal = -1;
        for (let lag = 0; lag < lagSteps; lag++) {
          // Straight in front both sides are the same: one number, so that a mirrored shot is worth the same to the last bit.
          const off = lagLow + lag * lagStep;
          const used = ix === 0 ? Math.abs(off) : off;
          shot.keeperX = place[0] - (used * shot.y) / distance;
          shot.keeperY = place[1] + (used * shot.x) / distance;
          if (!viewInto(view, shot, parameters)) continue;
          // The best aim moves little from one line to the next: the full search is needed only once.
          if (aim.goal < 0) bestAimInto(aim, view, parameters);
          else followAim(aim, view, parameters);
          // The unhurried aim is the one to follow; the odds are those of the hurried one.
          hurried.across = aim.across;
          hurried.up = aim.up;
          hurried.goal = aim.goal;
          hurryAim(hurried, view, parameters, rush);
          odds[ix * strideX + iy * strideY + lag * strideLag + rush * strideRush] = Math.max(0, hurried.goal);
        }
      }
    }
  }
  return { odds };
}

/**
 * Goal odds of an unblocked shot from (x, y), by interpolation: 0 on and behind the goal line, the edge's value outside the grid.
 *
 * `keeperLag` as in keeper.ts (positive: he trails on the far side), yd; `rush` 0 (time and room) to 1 (a man on the hands).
 */
export function shotValue(table: ShotTable, x: number, y: number, keeperLag: number, rush: number): number {
  if (!(y > 0)) return 0;
  const px = placeOn(inverseX, Math.abs(x), 0, 14, perX);
  const py = placeOn(inverseY, y, 0, 20, perY);
  const lagShare = Math.min(lagSteps - 1, Math.max(0, (keeperLag - lagLow) / lagStep));
  const lagIndex = Math.min(lagSteps - 2, Math.floor(lagShare));
  const ix = Math.min(gridX.length - 2, Math.floor(px));
  const iy = Math.min(gridY.length - 2, Math.floor(py));
  const base = ix * strideX + iy * strideY + lagIndex * strideLag;
  const tl = lagShare - lagIndex;
  const tr = Math.min(1, Math.max(0, rush));
  const { odds } = table;
  const near = plane(odds, base, tl, tr) * (1 - (py - iy)) + plane(odds, base + strideY, tl, tr) * (py - iy);
  const far =
    plane(odds, base + strideX, tl, tr) * (1 - (py - iy)) + plane(odds, base + strideX + strideY, tl, tr) * (py - iy);
  return near + (far - near) * (px - ix);
}

/** Lag and rush between their four neighbours. */
function plane(odds: Float64Array, base: number, lag: number, rush: number): number {
  const a = odds[base] + (odds[base + strideRush] - odds[base]) * rush;
  const b = odds[base + strideLag] + (odds[base + strideLag + strideRush] - odds[base + strideLag]) * rush;
  return a + (b - a) * lag;
}

const perX = 4;
const perY = 4;
/** Fractional grid index at every quarter yard: the grid lines all lie on quarters, so between them it is straight. */
const inverseX = invert(gridX, perX);
const inverseY = invert(gridY, perY);

function placeOn(inverse: Float64Array, value: number, low: number, high: number, per: number): number {
  const at = (Math.min(high, Math.max(low, value)) - low) * per;
  const index = Math.floor(at);
  if (index >= inverse.length - 1) return inverse[inverse.length - 1];
  return inverse[index] + (inverse[index + 1] - inverse[index]) * (at - index);
}

function invert(grid: readonly number[], per: number): Float64Array {
  const top = grid[grid.length - 1];
  return Float64Array.from({ length: top * per + 1 }, (_, i) => {
    const value = i / per;
    let low = 0;
    while (low < grid.length - 2 && grid[low + 1] <= value) low++;
    return low + (value - grid[low]) / (grid[low + 1] - grid[low]);
  });
}
