import type { TurnoverKind } from '../chance/trace.ts';

/** An estimate with its 95 % interval. */
export interface Interval {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** One way the play comes open against one scheme. Times are seconds after the play's first beat. */
export interface LookReport {
  readonly kind: 'shot' | 'pass' | 'skip' | 'feed';
  /** Spot of the carrier. */
  readonly from: string;
  /** Spot of the man who is open; the carrier's own spot for a shot. */
  readonly to: string;
  /** Share of trials in which it came open at least once, 0 to 1. */
  readonly share: number;
  /** Median start and end of its first window, s. */
  readonly opens: number;
  readonly closes: number;
  /** Odds that the ball arrives and is caught, 0 to 1 (1 for a shot). */
  readonly completion: number;
  /** Goal odds of the shot that it leads to at once, 0 to 1. */
  readonly shotValue: number;
  /** Goals expected from that moment to the chance's end when the look is taken, with its interval. */
  readonly value: number;
  readonly valueLow: number;
  readonly valueHigh: number;
  /** Trials in which the look was taken to find its value: that many counts the value and its interval rest on. */
  readonly replays: number;
  /** Who should have been there: defender's name, his duty's name, and how late he was, s; `defender` is null when the scheme leaves that man. */
  readonly leftBy: { readonly defender: string | null; readonly duty: string; readonly lateBy: number };
}

/** A look before anybody has found out what taking it is worth. */
export type SeenLook = Omit<LookReport, 'value' | 'valueLow' | 'valueHigh' | 'replays'>;

/** One pass that the play names itself, in a beat or in a read, and what became of it in the watched trials. */
export interface OwnThrowReport {
  readonly kind: 'pass' | 'skip' | 'feed';
  readonly from: string;
  readonly to: string;
  readonly asked: 'script' | 'read';
  /** Id of the beat it belongs to; `null` for a read that counts in every beat. */
  readonly beat: string | null;
  /** Share of the watched trials in which the play came to it, 0 to 1: the man had the ball when it was asked for. 0: never reached. */
  readonly reached: number;
  /** Share of the watched trials in which it then was a look: open, and worth more than going on. Never more than `reached`. */
  readonly share: number;
  /** Mean of its best odds to be caught in the trials that came to it, 0 to 1; `null` when none did. */
  readonly completion: number | null;
}

/** How much of the play was run. The last ten seconds' own beats are not counted. */
export interface PlayRunReport {
  /** Share of chances in which it began. */
  readonly begun: Interval;
  /** Share of chances in which each beat began at least once, 0 to 1, in the play's order. */
  readonly beats: readonly { readonly id: string; readonly share: number }[];
  /** Share of all passes that the play or one of its reads asked for, 0 to 1; 0 without a pass. */
  readonly playPasses: number;
}

/** What one play does against one scheme. */
export interface SchemeReport {
  readonly scheme: string;
  readonly trials: number;
  readonly goalsPerChance: Interval;
  readonly shotsPerChance: Interval;
  readonly turnoversPerChance: Interval;
  /** Share of chances ended by each kind of loss. */
  readonly turnovers: Readonly<Record<TurnoverKind, number>>;
  /** Seconds after the restart; null when no trial had a shot. */
  readonly firstShot: { readonly q1: number; readonly median: number; readonly q3: number } | null;
  /** Mean goal odds of a shot at its release. */
  readonly shotQuality: number;
  readonly onTarget: number;
  readonly assisted: number;
  readonly play: PlayRunReport;
  /** Trials that were watched for looks: the shares of `looks` are multiples of one in so many. */
  readonly watched: number;
  readonly looks: readonly LookReport[];
  readonly own: readonly OwnThrowReport[];
  /** When the ball is lost: attackers between ball and midfield, and odds that the other side runs a fast break. */
  readonly back: { readonly mean: number; readonly fastBreak: number };
}

export interface PlayReport {
  readonly engine: string;
  readonly seed: number;
  readonly inputHash: string;
  readonly play: string;
  readonly side: 'left' | 'right';
  /** Seconds. */
  readonly penalty: number;
  /** What is asked of the unit: passes, skips, reads, movers in one run of the script. */
  readonly complexity: {
    readonly passes: number;
    readonly skips: number;
    readonly reads: number;
    readonly movers: number;
  };
  readonly results: readonly SchemeReport[];
}
