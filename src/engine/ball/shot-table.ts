import type { Athlete, Keeper } from '../people/athlete.ts';
import { mirrorCover } from '../people/keeper-cover.ts';
import { type Aim, bestAimInto, createAim, followAim, hurryAim, onTargetOdds, saveOdds } from './aim.ts';
import { defaultKeeperArc, type KeeperArc, keeperPlaceInto } from './keeper.ts';
import { defaultShotParameters, type ShotParameters } from './shot-parameters.ts';
import {
  createShotSituation,
  createShotView,
  faceKeeperInto,
  releaseInto,
  type ShotSituation,
  viewInto,
} from './shot-view.ts';

/** Goal odds of one shooter against one keeper, unblocked, at the best aim, over the field in front of the goal. */
export interface ShotTable {
  /** From the offense's right of the goal, and straight in front. */
  readonly odds: Float64Array;
  /** From its left: the very same for a keeper who is alike on both sides. */
  readonly leftOdds: Float64Array;
}

/** Grid lines: across (|x|) and up (y), denser where the odds bend; the keeper's lag and the rush in even steps. */
const gridX = [0, 1.5, 3, 5, 7.5, 10.5, 14];
const gridY = [0, 0.75, 1.75, 3, 5, 7, 9, 11, 13.5, 16.5, 20];
const lagLow = -0.8;
const lagStep = 0.4;
const lagSteps = 7;
/** Rush bends the odds because it pulls the aim to the keeper: on the line from 0 to 1 alone the worst error was .13. */
const rushSteps = 4;
/** The ends first, because the aims between are found between theirs. */
const rushOrder = [0, rushSteps - 1, 1, 2];

const strideRush = 1;
const strideLag = rushSteps;
const strideY = strideLag * lagSteps;
const strideX = strideY * gridY.length;

/** Precomputes a shooter's goal odds against a keeper (about 5 ms; four times that for one with habits). */
export function createShotTable(
  shooter: Athlete,
  keeper: Keeper,
  parameters: ShotParameters = defaultShotParameters,
  arc: KeeperArc = defaultKeeperArc,
): ShotTable {
  const odds = oddsFromRight(shooter, keeper, parameters, arc);
  const { cover } = keeper;
  if (cover === undefined) return { odds, leftOdds: odds };
  // His left side is the right side of the same keeper in a mirror.
  const leftOdds = oddsFromRight(shooter, { ...keeper, cover: mirrorCover(cover) }, parameters, arc);
  meetInFront(odds, leftOdds);
  return { odds, leftOdds };
}

/** Straight in front the table does not know to which side the keeper is late: it is as often the one as the other. */
function meetInFront(odds: Float64Array, leftOdds: Float64Array): void {
  for (let at = 0; at < strideX; at++) {
    odds[at] = (odds[at] + leftOdds[at]) / 2;
    leftOdds[at] = odds[at];
  }
}

function oddsFromRight(shooter: Athlete, keeper: Keeper, parameters: ShotParameters, arc: KeeperArc): Float64Array {
  const odds = new Float64Array(strideX * gridX.length);
  const shot = createShotSituation();
  faceKeeperInto(shot, keeper);
  for (let ix = 0; ix < gridX.length; ix++) {
    for (let iy = 1; iy < gridY.length; iy++) {
      shot.x = gridX[ix];
      shot.y = gridY[iy];
      fillPlace(odds, ix * strideX + iy * strideY, shot, shooter, parameters, arc);
    }
  }
  return odds;
}

/** Every lag and rush of one place. */
function fillPlace(
  odds: Float64Array,
  base: number,
  shot: ShotSituation,
  shooter: Athlete,
  parameters: ShotParameters,
  arc: KeeperArc,
): void {
  const distance = Math.sqrt(shot.x * shot.x + shot.y * shot.y);
  keeperPlaceInto(place, shot.x, shot.y, arc);
  calm.goal = -1;
  hasty.goal = -1;
  for (let lag = 0; lag < lagSteps; lag++) {
    // Straight in front both sides are the same: one number, so that a mirrored shot is worth the same to the last bit.
    const off = lagLow + lag * lagStep;
    const used = shot.x === 0 ? Math.abs(off) : off;
    shot.keeperX = place[0] - (used * shot.y) / distance;
    shot.keeperY = place[1] + (used * shot.x) / distance;
    for (const rush of rushOrder) {
      const share = rush / (rushSteps - 1);
      releaseInto(shot, shooter.shotSpeed, shooter.shotScatter, share, 0, 1, parameters);
      if (!viewInto(view, shot, parameters)) continue;
      if (rush === 0) search(calm, parameters);
      else if (rush === rushSteps - 1) search(hasty, parameters);
      blendAim(aim, share, parameters);
      // The unhurried aim is the one to follow; the odds are those of the hurried one.
      hurryAim(aim, view, parameters, share);
      odds[base + lag * strideLag + rush * strideRush] = Math.max(0, aim.goal);
    }
  }
}

const view = createShotView();
const place = new Float64Array(2);
/** The aim being tried, and the best unhurried ones of the scatter of a shot with time and of one without. */
const aim = createAim();
const calm = createAim();
const hasty = createAim();

/** The best aim moves little from one lag to the next: the full search is needed only once a place. */
function search(best: Aim, parameters: ShotParameters): void {
  if (best.goal < 0) bestAimInto(best, view, parameters);
  else followAim(best, view, parameters);
}

/** The aim of a scatter in between: between the two, or the better one when they lie on two sides of the keeper. */
function blendAim(out: Aim, share: number, parameters: ShotParameters): void {
  const sameSide = (calm.across - view.keeperAcross) * (hasty.across - view.keeperAcross) >= 0;
  const toward = sameSide ? share : unhurried(hasty, parameters) > unhurried(calm, parameters) ? 1 : 0;
  out.across = calm.across + toward * (hasty.across - calm.across);
  out.up = calm.up + toward * (hasty.up - calm.up);
  out.goal = unhurried(out, parameters);
}

function unhurried({ across, up }: Aim, parameters: ShotParameters): number {
  return onTargetOdds(view, across, up) - saveOdds(view, across, up, parameters);
}

/**
 * Goal odds of an unblocked shot from (x, y), by interpolation: 0 on and behind the goal line, the edge's value outside the grid.
 *
 * `keeperLag` as in keeper.ts (positive: he trails on the far side), yd; `rush` 0 (time and room) to 1 (a man on the hands).
 */
export function shotValue(table: ShotTable, x: number, y: number, keeperLag: number, rush: number): number {
  asked.x = x;
  asked.y = y;
  asked.keeperLag = keeperLag;
  asked.rush = rush;
  lookUpShot(table, asked);
  return asked.odds;
}

/** What `shotValue` is asked, and its answer in `odds`, in memory: numbers that cross a call go to the heap. */
export interface ShotQuery {
  x: number;
  y: number;
  keeperLag: number;
  rush: number;
  odds: number;
}

// Fractions, so that the runtime lays the fields out for fractions.
export function createShotQuery(): ShotQuery {
  return { x: 0.5, y: 0.5, keeperLag: 0.5, rush: 0.5, odds: 0.5 };
}

const asked = createShotQuery();

/** `shotValue` for loops that ask millions of times: writes `query.odds`. */
export function lookUpShot(table: ShotTable, query: ShotQuery): void {
  const { x, y, keeperLag, rush } = query;
  query.odds = 0;
  if (!(y > 0)) return;
  const px = placeOn(inverseX, Math.abs(x), 0, 14, perX);
  const py = placeOn(inverseY, y, 0, 20, perY);
  const lagShare = Math.min(lagSteps - 1, Math.max(0, (keeperLag - lagLow) / lagStep));
  const lagIndex = Math.min(lagSteps - 2, Math.floor(lagShare));
  const ix = Math.min(gridX.length - 2, Math.floor(px));
  const iy = Math.min(gridY.length - 2, Math.floor(py));
  const rushShare = (rushSteps - 1) * Math.min(1, Math.max(0, rush));
  const rushIndex = Math.min(rushSteps - 2, Math.floor(rushShare));
  const base = ix * strideX + iy * strideY + lagIndex * strideLag + rushIndex * strideRush;
  const tl = lagShare - lagIndex;
  const tr = rushShare - rushIndex;
  const odds = x < 0 ? table.leftOdds : table.odds;
  const near = plane(odds, base, tl, tr) * (1 - (py - iy)) + plane(odds, base + strideY, tl, tr) * (py - iy);
  const far =
    plane(odds, base + strideX, tl, tr) * (1 - (py - iy)) + plane(odds, base + strideX + strideY, tl, tr) * (py - iy);
  query.odds = near + (far - near) * (px - ix);
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
