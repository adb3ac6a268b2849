/**
 * The numbers of the chance that no source gives. `probeShare`, `continuationTop`, `keptShare` and `openFloor` were searched for on the 60 s
 * column of the pro timing table, then set by hand near what was found; the rest are assumptions, shaped with both columns in
 * sight (docs/models/chance-fit.md). Seconds and yards.
 */
export interface ChanceParameters {
  /** From the whistle until the set is up: 4 to 6 s of a restart (derived from the timing table: docs/models/chance.md). */
  readonly setUpSeconds: number;
  /** Share of the penalty for which the ball is then swung round the set before the play is run. */
  readonly probeShare: number;
  /** How much better than going on a look must be to be taken before the play is run. */
  readonly probeMargin: number;
  /** The longest that a unit waits for a man who is not in his place. */
  readonly setUpPatience: number;
  /**
   * Goals of a ball in hand when the penalty is over: it is not lost then. A whole possession at even strength is worth .21 to .24, as man-up
   * scores 30 to 50 % more often (Mauboussin, laxpower.com, pages 3 and 7: .295 to .351 a man-up over eight seasons); of it three quarters (assumption).
   */
  readonly evenStrength: number;
  /** Goals a unit expects from a long time still to play: what a carrier weighs a look against. */
  readonly continuationTop: number;
  /** Time in which most of that is reached. */
  readonly continuationRise: number;
  /** Time too short to make anything of. */
  readonly continuationDead: number;
  /** Share of shots whose ball comes back to the shooter's side, as a carrier reckons. */
  readonly keptShare: number;
  /** How much better than going on a look must be to be taken where no play runs, */
  readonly greedyMargin: number;
  /** and before a play that runs is left for it. */
  readonly playMargin: number;
  /** Least odds, as shares of an easy pass's, at which a pass that no script asked for is forced into a look, */
  readonly openFloor: number;
  /** and at which a scripted pass is thrown. */
  readonly passFloor: number;
  /** How long a carrier waits for a scripted pass to come open. */
  readonly passPatience: number;
  /** How long nothing may happen before the unit goes to its reset. */
  readonly stallPatience: number;
  /** From catch to pass when the ball is swung without a script. */
  readonly swingTempo: number;
  /** Chance of a strip per second with a defender on the carrier's hands. */
  readonly stripRate: number;
  /** Distance at which a defender is on his hands. */
  readonly stripDistance: number;
  /** From this near a defender's stick is on the hands of a man who catches or shoots. */
  readonly handsDistance: number;
  /** A defender farther than this leaves time and room; nearer than `pressDistance` he presses. */
  readonly freeDistance: number;
  readonly pressDistance: number;
  /** From how far a man thinks of shooting at all. */
  readonly shotRange: number;
  /** Time between two looks round by a carrier who holds the ball. */
  readonly decideEvery: number;
  /** Time between two looks round by the defense as a whole. */
  readonly defenseEvery: number;
  /** Odds that the face-off after a goal is won, for a penalty that a goal does not end. */
  readonly faceOff: number;
}

export const defaultChanceParameters: ChanceParameters = {
  setUpSeconds: 5,
  probeShare: 0.13,
  probeMargin: 0.3,
  setUpPatience: 11,
  evenStrength: 0.16,
  continuationTop: 0.2,
  continuationRise: 20,
  continuationDead: 0,
  keptShare: 0.35,
  greedyMargin: 0.01,
  playMargin: 0.09,
  openFloor: 0.6,
  passFloor: 0.8,
  passPatience: 0.9,
  stallPatience: 2.2,
  swingTempo: 1.2,
  stripRate: 0.04,
  stripDistance: 1.3,
  handsDistance: 1.6,
  freeDistance: 4,
  pressDistance: 1.8,
  shotRange: 15,
  decideEvery: 0.2,
  defenseEvery: 0.25,
  faceOff: 0.5,
};

/**
 * Goals that a unit reckons with when it keeps the ball, with `timeLeft` seconds of the penalty to play: from the worth of
 * a possession at even strength, which is what it has when the penalty is over, up to `continuationTop`.
 */
export function continuation(parameters: ChanceParameters, timeLeft: number): number {
  const { evenStrength, continuationTop, continuationRise, continuationDead } = parameters;
  const useful = timeLeft - continuationDead;
  if (useful <= 0) return evenStrength;
  return evenStrength + ((continuationTop - evenStrength) * useful) / (useful + continuationRise);
}
