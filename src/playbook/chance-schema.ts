import * as z from 'zod/mini';
import { limits } from './limits.ts';
import { dayPattern, defenderId, described, id, notes, place, spotId, wholeNumber } from './schema-parts.ts';

/** Whose man-up it was; `others`: of a team that is neither, against this opponent, seen on film. No season counts those. */
export const chanceSides = ['ours', 'theirs', 'others'] as const;

/** How it began: play restarted after the whistle, under a flag that is down, or on the run. */
export const chanceStarts = ['restart', 'flagDown', 'transition'] as const;

/** The last thing that happened. */
export const chanceResults = [
  'goal',
  'saved',
  'wide',
  'pipe',
  'blocked',
  'turnover',
  'shotClock',
  'expired',
  'newFlag',
] as const;

/** How a chance can come to its last shot. */
export const chanceLooks = ['shot', 'feed', 'skip', 'pass'] as const;

/** Where a mark comes from: film, the field beside which somebody stood, or a tick on a list. */
export const markSources = ['film', 'field', 'tick'] as const;

const word = z.string().check(z.minLength(1), z.maxLength(limits.tag));
// What a chance was called against stays as it was written, whatever becomes of the play or the opponent: so no pattern of an id.
const asWritten = z.string().check(z.minLength(1), z.maxLength(limits.id));
const seconds = z.number().check(z.gte(0), z.lte(600));
const goals = z.number().check(z.gte(0), z.lte(10));
const jersey = wholeNumber(0, 999);
const men = z.array(place).check(z.maxLength(limits.marked));

const chanceMarkSchema = z.strictObject({
  time: described(seconds, 'Seconds since the chance began.'),
  ball: described(z.optional(place), 'Where the ball is; one of "ball" and "holder" is needed.'),
  holder: described(z.optional(spotId), 'The spot of the man who has it.'),
  defenders: described(men, 'Where the defenders stand; empty when only cues were ticked.'),
  names: described(
    z.optional(z.array(defenderId).check(z.maxLength(limits.marked))),
    'Their names in the scheme, in the same order.',
  ),
  offense: described(z.optional(men), 'Where the men of the offense stand.'),
  by: described(z.enum(markSources), 'film, field (seen beside it), tick (ticked on a list).'),
  cues: described(z.optional(z.array(word).check(z.maxLength(limits.tags))), 'What was ticked, by short names.'),
});

export const chanceSchema = z.strictObject({
  id,
  side: described(z.enum(chanceSides), 'Whose man-up it was: ours, theirs, or, on a film of the opponent, of others.'),
  date: described(z.optional(z.string().check(z.regex(dayPattern))), 'The day, YYYY-MM-DD.'),
  opponent: described(z.optional(asWritten), 'The other team, by its id, or as it was written.'),
  game: described(z.optional(word), 'A short word that tells two games of one day or opponent apart.'),
  period: z.optional(wholeNumber(1, 20)),
  clock: described(z.optional(z.number().check(z.gte(0), z.lte(3600))), 'Seconds left in the period at its start.'),
  penalty: z.optional(
    z.strictObject({
      seconds: z.number().check(z.gt(0), z.lte(600)),
      fixed: described(z.optional(z.boolean()), 'true: a goal does not end it.'),
      men: described(z.optional(wholeNumber(1, 3)), 'How many men serve; 1 when left out.'),
    }),
  ),
  start: described(z.optional(z.enum(chanceStarts)), 'How it began; by the clock when left out.'),
  unit: described(z.optional(word), 'Which unit was on, in a short word.'),
  call: described(z.optional(asWritten), 'The play that was called, by its id.'),
  fromSide: described(z.optional(z.enum(['left', 'right'])), 'The side that it was run from, looking in at the goal.'),
  scheme: described(z.optional(asWritten), 'The scheme of the defense, as it was seen.'),
  belief: described(
    z.optional(z.record(asWritten, z.number().check(z.gte(0), z.lte(1)))),
    'How likely each scheme was held to be, 0 to 1: what was expected, not what was seen.',
  ),
  byMarks: described(
    z.optional(z.record(asWritten, z.number().check(z.gte(0), z.lte(1)))),
    'How likely each scheme is by the marks alone; the program writes it.',
  ),
  result: described(z.enum(chanceResults), 'The last thing that happened.'),
  shots: described(z.optional(wholeNumber(0, 50)), 'How many were taken; not counted when left out.'),
  onTarget: described(z.optional(wholeNumber(0, 50)), 'How many of them were on goal.'),
  firstShot: described(z.optional(seconds), 'Seconds from its start to the first shot.'),
  passes: described(z.optional(wholeNumber(0, 200)), 'Passes before the first shot.'),
  look: described(
    z.optional(z.strictObject({ kind: z.enum(chanceLooks), from: z.optional(spotId), to: z.optional(spotId) })),
    'The look that was taken: by whom and to whom.',
  ),
  scorer: described(z.optional(jersey), 'Who took the last shot, by his number.'),
  assist: described(z.optional(jersey), 'Who passed to him.'),
  clear: described(z.optional(z.boolean()), 'Of theirs: whether the ball was cleared after the stop.'),
  expected: described(
    z.optional(z.strictObject({ goals, low: goals, high: goals })),
    'Goals a chance that the simulation gave it when it was called, with its interval.',
  ),
  marks: z.optional(z.array(chanceMarkSchema).check(z.maxLength(limits.marks))),
  notes: z.optional(notes),
});

export type ChanceSide = (typeof chanceSides)[number];
export type ChanceStart = (typeof chanceStarts)[number];
export type ChanceResult = (typeof chanceResults)[number];
export type ChanceLookKind = (typeof chanceLooks)[number];
export type ChanceMark = z.infer<typeof chanceMarkSchema>;
