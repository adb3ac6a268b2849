import type { Rule } from './rule.ts';

/** The rule codes that the engine knows. */
export const ruleCodeIds = ['nfhs', 'ncaa', 'worldLacrosse', 'usal14U', 'usal12U', 'usal10U', 'usal8U'] as const;
export type RuleCodeId = (typeof ruleCodeIds)[number];

/** Lines of the half field around one goal, yards from the middle of the goal line (docs/units-and-frames.md). */
export interface Markings {
  /** From the middle of the field to a sideline. */
  readonly halfWidth: Rule<number>;
  /** Goal line to end line. */
  readonly goalToEndLine: Rule<number>;
  /** Goal line to restraining line, the box's upper edge. */
  readonly goalToRestraining: Rule<number>;
  /** Goal line to midfield. */
  readonly goalToMidfield: Rule<number>;
  /** Middle of the field to a side of the box; null where the line spans the field. */
  readonly boxHalfWidth: Rule<number | null>;
  readonly creaseRadius: Rule<number>;
  /** Half-disc in front of the goal inside the crease in which a dive is judged; null where there is none. */
  readonly goalMouthRadius: Rule<number | null>;
  /** Inside the pipes, and height under the bar. */
  readonly goalWidth: Rule<number>;
  readonly goalHeight: Rule<number>;
  /** Goal line to the point where the net is pegged. */
  readonly goalDepth: Rule<number>;
  /** Half the length of the substitution gate at midfield. */
  readonly gateHalfLength: Rule<number>;
}

/** How many may be where. Counts of the attacking end leave out its goalkeeper; of the defending end they include him. */
export interface Counts {
  /** On the field for one team, goalkeeper included. */
  readonly players: Rule<number>;
  readonly attackingEnd: Rule<number>;
  readonly defendingEnd: Rule<number>;
  /** Whether a man who serves a penalty counts for his team's ends; null where there is no offside. */
  readonly servingCounts: Rule<boolean>;
  /** Most men that a team is ever short; further penalties are served after those. */
  readonly mostShort: Rule<number>;
  readonly longCrosses: Rule<number>;
}

/** Penalty time, s. */
export interface Penalties {
  /** Whether a penalty in a game leaves the team a man down at all. */
  readonly playedShort: Rule<boolean>;
  readonly technical: Rule<number>;
  readonly personal: Rule<readonly number[]>;
  /** Whether a goal ends releasable penalties. */
  readonly goalReleases: Rule<boolean>;
  /** Whether one goal ends all releasable penalties that are being served, not one of them. */
  readonly goalReleasesAll: Rule<boolean>;
  /** Whether the part that a goal does not end is served first. */
  readonly nonReleasableFirst: Rule<boolean>;
  /** When both teams foul at once: whether the shorter of the two times may not be ended by a goal on either side. */
  readonly simultaneousNonReleasable: Rule<boolean>;
}

/** What a signalled foul does while the attack keeps the ball. */
export interface FlagDown {
  /** What ends the play, in words. */
  readonly endsOn: Rule<readonly string[]>;
  /** Whether a goal under the flag wipes a technical foul; a personal foul is served. */
  readonly goalWipesTechnical: Rule<boolean>;
  /** Whether the attack may leave the box. */
  readonly mayLeaveBox: Rule<boolean>;
}

/** The shot clock, s. */
export interface ShotClock {
  readonly seconds: number;
  /** Once play stops for the penalty: what the clock is set to when it shows `threshold` or less, and when it shows more. */
  readonly afterPenalty: { readonly threshold: number; readonly atOrBelow: number; readonly above: number };
}

export interface RuleCode {
  readonly id: RuleCodeId;
  readonly name: string;
  /** Which book the values were reported from. */
  readonly edition: string;
  readonly markings: Markings;
  readonly counts: Counts;
  readonly penalties: Penalties;
  readonly flagDown: FlagDown;
  /** Whether a restart in the attacking end is moved outside the box. */
  readonly restartOutsideBox: Rule<boolean>;
  /** Distance in yards that opponents must keep at a restart before they may play the man. */
  readonly restartDistance: Rule<number>;
  readonly shotClock: Rule<ShotClock | null>;
  /** What a coach of this code should know before he uses man-up plays; absent when there is nothing. */
  readonly note?: string;
}
