import type { Athlete, Keeper } from '../people/athlete.ts';
import { type KeeperCover, mirrorCover } from '../people/keeper-cover.ts';
import { flightTime } from './flight.ts';
import type { ShotParameters } from './shot-parameters.ts';

/** A shot about to leave the stick: filled in place by the caller, yards, seconds, radians. */
export interface ShotSituation {
  /** Where it is taken from. */
  x: number;
  y: number;
  /** Speed of the ball, yd/s, and standard deviation of its direction, rad: `releaseInto` fills both. */
  speed: number;
  scatter: number;
  /** How hurried it is, 0 (time and room) to 1 (a man on the hands). */
  rush: number;
  /** Where the keeper stands. */
  keeperX: number;
  keeperY: number;
  /** The keeper's own gifts (`Keeper`). */
  bodyReach: number;
  handSpeed: number;
  shotReaction: number;
  cover: KeeperCover | undefined;
  /** How much later than usual he sees it (a screen, a fake, feet not set), s. */
  lateCue: number;
  /** Odds that a body or stick on the way stops it (`shotTrafficInto`), 0 to 1. */
  block: number;
  /** 1, or -1 in a mirrored play: turns a shot that is the same to either side, so that mirrored trials mirror exactly. */
  sense: number;
}

export function createShotSituation(): ShotSituation {
  return {
    x: 0,
    y: 0,
    speed: 0,
    scatter: 0,
    rush: 0,
    keeperX: 0,
    keeperY: 0,
    bodyReach: 0,
    handSpeed: 0,
    shotReaction: 0,
    cover: undefined,
    lateCue: 0,
    block: 0,
    sense: 1,
  };
}

/**
 * Speed and scatter of a shot by how it is taken.
 *
 * sigma(v) = sigma0 (v / v0)^p: variance of kicks is a power of speed (Hunter 2018, doi 10.1016/j.jbiomech.2018.03.003,
 * abstract). `rush` and `run` 0 to 1; `offHand` multiplies scatter (1 on the good hand).
 */
export function releaseInto(
  out: ShotSituation,
  shotSpeed: number,
  shotScatter: number,
  rush: number,
  run: number,
  offHand: number,
  parameters: ShotParameters,
): void {
  const share = (1 - parameters.rushSlowing * rush) * (1 - parameters.runSlowing * run);
  const widening = (1 + parameters.rushScatter * rush) * (1 + parameters.runScatter * run) * offHand;
  out.rush = rush;
  out.speed = shotSpeed * share;
  out.scatter = shotScatter * parameters.scatterScale * widening * share ** parameters.speedPower;
}

/** The keeper's gifts into the situation. */
export function faceKeeperInto(out: ShotSituation, keeper: Keeper): void {
  out.bodyReach = keeper.bodyReach;
  out.handSpeed = keeper.handSpeed;
  out.shotReaction = keeper.shotReaction;
  out.cover = keeper.cover;
}

/** The extra rush that does to scatter what the off hand does: for tables, which know no hands. */
export function rushOfOffHand(shooter: Athlete, parameters: ShotParameters): number {
  return (shooter.offHand - 1) / parameters.rushScatter;
}

/**
 * The goal as the shooter sees it, on a plane across his line to its middle at the goal's distance, yd.
 *
 * Always seen as from the right half of the field: a shot from the left is mirrored first (`flip` -1), so that mirrored
 * shots give the same digits. Across is positive to his right when he stands in front. The mouth is taken as a rectangle
 * as high as the goal; the keeper's cover is an ellipse thrown onto the plane from the stick's head.
 */
export interface ShotView {
  /** -1 when mirrored, else 1; x of shooter and keeper after that. */
  flip: number;
  x: number;
  keeperX: number;
  distance: number;
  /** The pipes' inner faces: a ball whose centre passes inside them goes in, off the pipe or not. */
  left: number;
  right: number;
  /** Standard deviation of the shot's place, both ways. */
  deviation: number;
  /** Middle of what the keeper covers. */
  keeperAcross: number;
  keeperUp: number;
  /** Half-width and half-height of what he covers standing, and when he reaches. */
  bodyWidth: number;
  bodyHeight: number;
  reachWidth: number;
  reachHeight: number;
  /** His habits by quarters of the mouth, after mirroring; `undefined` when he is alike everywhere. */
  cover: KeeperCover | undefined;
}

export function createShotView(): ShotView {
  return {
    flip: 1,
    x: 0,
    keeperX: 0,
    distance: 0,
    left: 0,
    right: 0,
    deviation: 0,
    keeperAcross: 0,
    keeperUp: 0,
    bodyWidth: 0,
    bodyHeight: 0,
    reachWidth: 0,
    reachHeight: 0,
    cover: undefined,
  };
}

/** Half the goal's width, and its height, inside the pipes, yd (6 ft by 6 ft). */
export const goalHalfWidth = 1;
export const goalHeight = 2;

/** Closest that the shooter's view treats the keeper, yd: nearer than that he is past him. */
const closestKeeper = 0.3;

/** Looks at the goal; false when there is no goal to see (on or behind the goal line). */
export function viewInto(out: ShotView, shot: ShotSituation, parameters: ShotParameters): boolean {
  const flip = isFromLeft(shot) ? -1 : 1;
  const x = flip * shot.x;
  const { y } = shot;
  out.flip = flip;
  out.x = x;
  out.keeperX = flip * shot.keeperX;
  const square = x * x + y * y;
  const distance = Math.sqrt(square);
  out.distance = distance;
  // A pipe at (+-1, 0) is seen at distance y / (d^2 -+ x) to the side; from inside the goal's own width on the line it is not.
  if (y <= 0 || square <= x * goalHalfWidth) return false;
  out.right = (distance * y * goalHalfWidth) / (square - x * goalHalfWidth);
  out.left = (-distance * y * goalHalfWidth) / (square + x * goalHalfWidth);
  out.deviation = shot.scatter * Math.sqrt(square + parameters.nearDistance * parameters.nearDistance);

  const toKeeperX = out.keeperX - x;
  const toKeeperY = shot.keeperY - y;
  const along = Math.max(closestKeeper, -(toKeeperX * x + toKeeperY * y) / distance);
  const enlarged = distance / along;
  out.keeperAcross = ((toKeeperX * y - toKeeperY * x) / distance) * enlarged;
  out.keeperUp = parameters.releaseHeight + (parameters.keeperHeight - parameters.releaseHeight) * enlarged;
  const time = Math.max(0, flightTime(along, shot.speed) - shot.shotReaction - shot.lateCue);
  const scale = parameters.keeperScale * enlarged;
  const reach = shot.bodyReach + shot.handSpeed * time;
  out.bodyWidth = shot.bodyReach * scale;
  out.bodyHeight = shot.bodyReach * parameters.bodyAspect * scale;
  out.reachWidth = reach * scale;
  out.cover = shot.cover !== undefined && flip < 0 ? mirrorCover(shot.cover) : shot.cover;
  out.reachHeight = (reach + shot.bodyReach * (parameters.bodyAspect - 1)) * scale;
  return true;
}

function isFromLeft(shot: ShotSituation): boolean {
  if (shot.x !== 0) return shot.x < 0;
  return shot.keeperX !== 0 ? shot.keeperX < 0 : shot.sense < 0;
}
