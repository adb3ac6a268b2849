/** What a carrier can do at one moment and what each is worth, in goals to the chance's end. Overwritten by `weighInto`. */
export interface Options {
  /** Goal odds of a shot at once, and its worth with what may follow. */
  shotOdds: number;
  shotValue: number;
  /** How hurried that shot would be, 0 (time and room) to 1. */
  shotRush: number;
  /** Worth of running in first and shooting then. */
  stepInValue: number;
  /** Worth of keeping the ball. */
  holdValue: number;
  /** Seconds of penalty left at that moment, and what a pass that nobody asks about must lead to for it to be weighed. */
  left: number;
  floor: number;
  /** For each mate: odds that the pass is caught, goal odds of his shot off it, worth of the pass, flight time. */
  readonly completion_byMate: Float64Array;
  readonly shotOdds_byMate: Float64Array;
  readonly value_byMate: Float64Array;
  readonly flight_byMate: Float64Array;
  readonly lob_byMate: Uint8Array;
}

export function createOptions(): Options {
  return {
    shotOdds: 0,
    shotValue: 0,
    shotRush: 0,
    stepInValue: 0,
    holdValue: 0,
    left: 0,
    floor: 0,
    completion_byMate: new Float64Array(6),
    shotOdds_byMate: new Float64Array(6),
    value_byMate: new Float64Array(6),
    flight_byMate: new Float64Array(6),
    lob_byMate: new Uint8Array(6),
  };
}
