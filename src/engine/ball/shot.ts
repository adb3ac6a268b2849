import { usualField } from '../field/usual-field.ts';
import { bestAimInto, createAim, hurryAim, onTargetOdds, saveOdds, saveOddsAt } from './aim.ts';
import { speedAfter } from './flight.ts';
import { quickNormalCdf } from './normal-cdf.ts';
import { defaultShotParameters, type ShotParameters } from './shot-parameters.ts';
import { createShotView, goalHeight, type ShotSituation, type ShotView, viewInto } from './shot-view.ts';

/** What can become of a shot; the five odds sum to 1. Overwritten by `shotOddsInto`. */
export interface ShotOdds {
  goal: number;
  save: number;
  pipe: number;
  wide: number;
  block: number;
  /** The aim they hold for, yd: to the shooter's right on the plane of his view (`ShotView`, before mirroring), and up. */
  aimAcross: number;
  aimUp: number;
}

export type ShotResult = 'goal' | 'save' | 'pipe' | 'wide' | 'block';

/** What became of a shot, and where the ball is then. Overwritten by `drawShotInto`. */
export interface ShotOutcome {
  result: ShotResult;
  /** The keeper keeps it: no rebound. Only for a save. */
  held: boolean;
  /** Where the ball lies or leaves the field, yd: the exit over the end line for a wide shot, the rebound's place for a loose ball. */
  x: number;
  y: number;
}

export function createShotOdds(): ShotOdds {
  return { goal: 0, save: 0, pipe: 0, wide: 1, block: 0, aimAcross: 0, aimUp: 0 };
}

export function createShotOutcome(): ShotOutcome {
  return { result: 'wide', held: false, x: 0, y: 0 };
}

export interface FieldEdges {
  readonly endLine: number;
  readonly sideLine: number;
}

/** Where the field ends, yd in the field frame: both rulebooks' 15 yd behind the goal line and 30 yd to a side. */
export const defaultShotEdges: FieldEdges = { endLine: usualField.endLine, sideLine: usualField.sideline };

/**
 * Odds of everything that can become of a shot at its best aim.
 *
 * P(goal) = P(on target) - P(on target and stopped), the scatter a normal on the shooter's view of the goal. The keeper
 * stops what comes at his body with `bodyOdds`, what he has to reach for with `reachOdds`, and can reach farther the
 * longer the ball flies after he has reacted.
 */
export function shotOddsInto(
  out: ShotOdds,
  shot: ShotSituation,
  parameters: ShotParameters = defaultShotParameters,
): void {
  if (!viewInto(view, shot, parameters)) {
    out.goal = 0;
    out.save = 0;
    out.pipe = 0;
    out.block = shot.block;
    out.wide = 1 - shot.block;
    out.aimAcross = 0;
    out.aimUp = goalHeight / 2;
    return;
  }
  bestAimInto(aim, view, parameters);
  hurryAim(aim, view, parameters, shot.rush);
  const through = 1 - shot.block;
  const target = onTargetOdds(view, aim.across, aim.up);
  const save = saveOdds(view, aim.across, aim.up, parameters);
  const framed = frameOdds(view, aim.across, aim.up);
  out.goal = through * Math.max(0, target - save);
  out.save = through * Math.min(target, save);
  out.pipe = through * Math.max(0, framed - target);
  out.wide = through * (1 - Math.max(framed, target));
  out.block = shot.block;
  out.aimAcross = view.flip * aim.across;
  out.aimUp = aim.up;
}

/**
 * Draws what becomes of a shot aimed as `odds` says, and where the ball is then.
 *
 * Two standard normals place it on the goal, `uniform` (0 included to 1 excluded) decides block, save and whether the
 * save is held; the odds over many draws are those of `shotOddsInto`.
 */
export function drawShotInto(
  out: ShotOutcome,
  odds: ShotOdds,
  shot: ShotSituation,
  normalAcross: number,
  normalUp: number,
  uniform: number,
  parameters: ShotParameters = defaultShotParameters,
  edges: FieldEdges = defaultShotEdges,
): void {
  const seen = viewInto(view, shot, parameters);
  drawSeen(out, odds, shot, seen, view.flip * normalAcross, normalUp, uniform, parameters, edges);
  out.x *= view.flip;
}

const view = createShotView();
const aim = createAim();

/**
 * Outside the inner face a ball still hits the frame: pipe 1.5 in across (rule figure, from memory) and the ball's radius
 * (63.67 mm across, docs/models/ball.md), yd.
 */
const frameBand = 1.5 / 36 + 0.0348;
/** A blocked ball drops at this share of the way back from the goal to the shooter (assumption). */
const blockStays = 0.8;
/** A ball off the pipe comes to rest about so far out and to the side, yd (assumption). */
const pipeRebound = 3;
/** A rebound off the keeper lies about so far in front of him, and scatters so much, yd (assumption). */
const saveRebound = 4;
const reboundScatter = 2.5;

function isInside(across: number, up: number, band: number): boolean {
  return across > view.left - band && across < view.right + band && up > -band && up < goalHeight + band;
}

/** Odds that the ball is inside the mouth or hits the frame: no frame below, the ball bounces in. */
function frameOdds(seen: ShotView, across: number, up: number): number {
  const per = 1 / seen.deviation;
  return (
    (quickNormalCdf((seen.right + frameBand - across) * per) - quickNormalCdf((seen.left - frameBand - across) * per)) *
    (quickNormalCdf((goalHeight + frameBand - up) * per) - quickNormalCdf((-frameBand - up) * per))
  );
}

/** The draw on the view, which is always from the right half. */
function drawSeen(
  out: ShotOutcome,
  odds: ShotOdds,
  shot: ShotSituation,
  seen: boolean,
  normalAcross: number,
  normalUp: number,
  uniform: number,
  parameters: ShotParameters,
  edges: FieldEdges,
): void {
  out.held = false;
  if (uniform < shot.block) {
    out.result = 'block';
    looseIn(out, view.x * blockStays, shot.y * blockStays, normalAcross, normalUp, edges);
    return;
  }
  const luck = (uniform - shot.block) / (1 - shot.block);
  const deviation = seen ? view.deviation : shot.scatter * view.distance;
  const across = view.flip * odds.aimAcross + deviation * normalAcross;
  const up = odds.aimUp + deviation * normalUp;
  if (seen && isInside(across, up, 0)) {
    landOnTarget(out, shot, across, up, luck, normalAcross, parameters, edges);
    return;
  }
  if (seen && isInside(across, up, frameBand)) {
    out.result = 'pipe';
    const side = across > (view.left + view.right) / 2 ? 1 : -1;
    looseIn(out, side * pipeRebound, pipeRebound, normalAcross, luck, edges);
    return;
  }
  out.result = 'wide';
  leaveField(out, shot, across, edges);
}

function landOnTarget(
  out: ShotOutcome,
  shot: ShotSituation,
  across: number,
  up: number,
  luck: number,
  normalAcross: number,
  parameters: ShotParameters,
  edges: FieldEdges,
): void {
  const stops = saveOddsAt(view, across, up, parameters);
  if (luck >= stops) {
    out.result = 'goal';
    out.x = 0;
    out.y = 0;
    return;
  }
  out.result = 'save';
  const kept = luck / stops;
  const held = heldOdds(speedAfter(view.distance, shot.speed), parameters);
  out.held = kept < held;
  if (out.held) {
    out.x = view.keeperX;
    out.y = shot.keeperY;
    return;
  }
  const spread = (kept - held) / (1 - held);
  const side = across >= view.keeperAcross ? 1 : -1;
  looseIn(
    out,
    view.keeperX + side * saveRebound * spread,
    shot.keeperY + saveRebound * (1 - spread / 2),
    normalAcross,
    0,
    edges,
  );
}

/** Most saves are controlled; the harder the ball the more come out (assumption). */
function heldOdds(speed: number, parameters: ShotParameters): number {
  const hard = Math.min(1, Math.max(0, (speed - slowShot) / (hardShot - slowShot)));
  return parameters.heldSlow + (parameters.heldHard - parameters.heldSlow) * hard;
}

const slowShot = 20;
const hardShot = 45;

function looseIn(out: ShotOutcome, x: number, y: number, scatterX: number, scatterY: number, edges: FieldEdges): void {
  out.x = Math.min(edges.sideLine, Math.max(-edges.sideLine, x + reboundScatter * scatterX));
  out.y = Math.max(edges.endLine, y + reboundScatter * scatterY);
}

/** The straight way of a ball that missed, until it crosses the end line or a side line. */
function leaveField(out: ShotOutcome, shot: ShotSituation, across: number, edges: FieldEdges): void {
  const distance = view.distance;
  const directionX = distance === 0 ? 0 : -view.x + (across * shot.y) / distance;
  const directionY = distance === 0 ? -1 : -shot.y - (across * view.x) / distance;
  const toEnd = directionY < 0 ? (edges.endLine - shot.y) / directionY : Number.POSITIVE_INFINITY;
  const side = directionX > 0 ? edges.sideLine : -edges.sideLine;
  const toSide = directionX === 0 ? Number.POSITIVE_INFINITY : (side - view.x) / directionX;
  const steps = Math.min(toEnd, toSide);
  out.x = toSide <= toEnd ? side : view.x + directionX * steps;
  out.y = toSide <= toEnd ? shot.y + directionY * steps : edges.endLine;
}
