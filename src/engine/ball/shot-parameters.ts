/** Every free number of the shot model. The two scales are left to the fit of the whole chance. */
export interface ShotParameters {
  /** Factor on every shooter's scatter. */
  readonly scatterScale: number;
  /** Factor on what every keeper covers, standing and reaching. */
  readonly keeperScale: number;
  /** Near the goal a shot scatters as if it flew this much farther, root of squares (release point, hurry inside), yd. */
  readonly nearDistance: number;
  /** Exponent of the growth of scatter with ball speed over the shooter's own. */
  readonly speedPower: number;
  /** Share more scatter, and share less speed, of a shot with a man on the hands. */
  readonly rushScatter: number;
  readonly rushSlowing: number;
  /** Share of the way from the aim he would pick to the keeper's middle that a man on the hands pulls the aim. */
  readonly rushPull: number;
  /** The same of a shot on the run against one with the feet set. */
  readonly runScatter: number;
  readonly runSlowing: number;
  /** Odds that the keeper stops a shot that comes where he stands, and one that he has to reach for. */
  readonly bodyOdds: number;
  readonly reachOdds: number;
  /** Height he covers standing over width. */
  readonly bodyAspect: number;
  /** Height of the middle of what he covers, and of a shooter's stick at release, yd. */
  readonly keeperHeight: number;
  readonly releaseHeight: number;
  /** A screened shot is seen this much later, s. */
  readonly screenDelay: number;
  /** Odds that a save of a slow and of a hard ball stays in the keeper's stick. */
  readonly heldSlow: number;
  readonly heldHard: number;
}

/** Defaults for men's play; docs/models/shot.md says what each was fitted to or assumed from. */
export const defaultShotParameters: ShotParameters = {
  scatterScale: 1.42,
  keeperScale: 0.8,
  nearDistance: 10.5,
  speedPower: 1,
  rushScatter: 0.8,
  rushSlowing: 0.12,
  rushPull: 0.8,
  runScatter: 0.25,
  runSlowing: 0.12,
  bodyOdds: 0.9,
  reachOdds: 0.645,
  bodyAspect: 1.5,
  keeperHeight: 0.93,
  releaseHeight: 1.9,
  screenDelay: 0.08,
  heldSlow: 0.95,
  heldHard: 0.6,
};
