import type { PracticeKind } from '../../playbook/index.ts';

/** How long something of a practice lasts. Seconds but where the name says otherwise. */
export interface PracticeTime {
  /** To get there, to put cones and sticks, to say what comes: once a block. */
  readonly setUp: number;
  /** From one whistle to the next; 0 for what is not counted in reps. */
  readonly perRep: number;
  /** Shorter than the least it is not worth beginning; the usual is what a coach would give it; longer than the most nobody learns more. Minutes, by halves. */
  readonly least: number;
  readonly usual: number;
  readonly most: number;
  /** How much a minute of it is worth beside a minute of the live man-up. */
  readonly share: number;
}

/**
 * The whole time model of a practice, in one place: change it here. Common practice, no source, but for what doctrine gives: a talk of under two minutes,
 * three to five walks, five to ten minutes of skeleton, four to six reps a look against a dummy defense, six to ten live reps on a clock of thirty seconds.
 */
export const practiceTimes: Readonly<Record<PracticeKind, PracticeTime>> = {
  talk: { setUp: 0, perRep: 0, least: 1, usual: 1.5, most: 1.5, share: 0.1 },
  walk: { setUp: 20, perRep: 30, least: 2, usual: 2.5, most: 3, share: 0.3 },
  skeleton: { setUp: 20, perRep: 20, least: 2, usual: 3, most: 8, share: 0.5 },
  keeper: { setUp: 20, perRep: 5, least: 2, usual: 2.5, most: 4, share: 0.2 },
  dummy: { setUp: 30, perRep: 25, least: 2.5, usual: 4.5, most: 9, share: 1 },
  part: { setUp: 30, perRep: 20, least: 2, usual: 3, most: 5, share: 0.9 },
  live: { setUp: 30, perRep: 45, least: 3, usual: 5, most: 8, share: 1 },
  situation: { setUp: 15, perRep: 35, least: 1.5, usual: 1.5, most: 3, share: 0.2 },
  water: { setUp: 0, perRep: 0, least: 1, usual: 1, most: 2, share: 0.1 },
};

/** Reps that a block of so many minutes has room for; 0 for kinds that are not counted in reps. */
export function repsIn(kind: PracticeKind, minutes: number): number {
  const { setUp, perRep } = practiceTimes[kind];
  // A rep is begun when all but a sliver of it fits: 2.5 minutes are five reps of 25 s after 25 s, not four.
  return perRep === 0 ? 0 : Math.max(0, Math.floor((60 * minutes - setUp) / perRep + sliver));
}

/** The shortest block, by halves of a minute, that has room for so many reps. */
export function minutesFor(kind: PracticeKind, reps: number): number {
  const { setUp, perRep } = practiceTimes[kind];
  return Math.ceil((2 * (setUp + reps * perRep)) / 60 - sliver) / 2;
}

/** Share of a rep that rounding may lose. */
const sliver = 1e-6;

/** What is new to a young player comes one at a time (numbers of children's memory: docs/models/practice-plans.md). */
export const newReadsAtOnce = { young: 1, grown: 2 } as const;
/** Reps that a look should get against the dummy defense before another one is begun. */
export const repsALook = 4;
/** Looks that one dummy block goes through at most, and schemes that it shows to the young and to others. */
export const mostDummyLooks = 4;
export const mostSchemesShown = { young: 2, grown: 3 } as const;
/** The least of parts, live man-ups and situations that teaches anything. */
export const leastReps = { part: 4, live: 3, situation: 1 } as const;
