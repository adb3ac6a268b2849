/** The ways a look can be taken. */
export type LookKind = 'shot' | 'pass' | 'skip' | 'feed';

/** One spell in one trial during which a look was worth more than the carrier's other choices. Plain data. */
export interface LookWindow {
  readonly trial: number;
  readonly kind: LookKind;
  /** Offense index of the carrier and of the man who is open (the carrier himself for a shot). */
  readonly from: number;
  readonly to: number;
  /** Seconds after the first beat, from when the carrier could have taken it. */
  readonly opens: number;
  readonly closes: number;
  /** Seconds after the restart at which the carrier can first have seen it: when a forced trial takes it. */
  readonly seenAt: number;
  /**
   * At that moment, which may be after it closed: odds that the ball arrives and is caught (1 for a shot, 0 when the ball has gone
   * on by then), and goal odds of the shot it leads to.
   */
  readonly completion: number;
  readonly shotOdds: number;
  /** Defender who was meant to cover the open man, or -1 when the scheme leaves him; his duty; how late he is, s. */
  readonly leftBy: number;
  readonly duty: number;
  readonly lateBy: number;
}
