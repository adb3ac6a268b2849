import type { KeeperCover } from './keeper-cover.ts';

/** The levels of play that have a preset, youngest first. */
export const levels = ['8U', '10U', '12U', '14U', 'highSchool', 'college', 'pro'] as const;
export type Level = (typeof levels)[number];

export type Hand = 'left' | 'right' | 'both';
export type Crosse = 'short' | 'pole' | 'goalkeeper';

/**
 * One player as the simulation sees him: yards, seconds, radians.
 * Made by `createAthlete` from a level, grades of 1 to 5 and measurements; never written by hand.
 */
export interface Athlete {
  readonly hand: Hand;
  readonly crosse: Crosse;
  /** Top speed V of the drag model, yd/s. */
  readonly topSpeed: number;
  /** Drag constant a of dv/dt = a (V u - v), 1/s. */
  readonly drag: number;
  /** Delay between what happens and the first move that answers it, s. */
  readonly reaction: number;
  /** Distance from body centre at which the stick can still touch the ball, yd. */
  readonly stickReach: number;
  /** Speed of the ball leaving the stick on a firm pass, yd/s. */
  readonly passSpeed: number;
  /** Standard deviation of the pass's direction, rad. */
  readonly passScatter: number;
  /** From a clean catch to the release of the next pass when hurried, s. */
  readonly passRelease: number;
  /** Odds that an accurate, unhurried adjacent pass is caught, 0 to 1. */
  readonly catching: number;
  /** Speed of the ball on a set shot, yd/s. */
  readonly shotSpeed: number;
  /** Standard deviation of the shot's direction with time and room, rad (each axis). */
  readonly shotScatter: number;
  /** From a clean catch to the release of a shot with feet set, s. */
  readonly shotRelease: number;
  /** Factor on scatter when the off hand must be used, >= 1. */
  readonly offHand: number;
  /** Odds that a defender of this kind bites on a good fake, 0 to 1. */
  readonly bite: number;
}

/** The goalkeeper's own gifts; he moves like any athlete along his arc. */
export interface Keeper extends Athlete {
  /** Radius around body centre he covers without moving, yd. */
  readonly bodyReach: number;
  /** Speed at which stick and body extend the covered radius once he has reacted, yd/s. */
  readonly handSpeed: number;
  /** Delay from release to his first move when he saw the release, s. */
  readonly shotReaction: number;
  /** Where in the mouth he stops more and less; alike everywhere when absent. */
  readonly cover?: KeeperCover;
}
