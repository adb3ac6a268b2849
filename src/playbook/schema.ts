import * as z from 'zod/mini';
import { disciplineNames, levels, ruleCodeIds } from '../engine/index.ts';
import { chanceSchema } from './chance-schema.ts';
import {
  actionPattern,
  ballPlacePattern,
  cuePattern,
  defenderPattern,
  dutyPattern,
  readActionPattern,
  triggerPattern,
} from './language/patterns.ts';
import { limits } from './limits.ts';
import {
  beatId,
  dayPattern,
  defenderId,
  described,
  id,
  name,
  notes,
  phrase,
  place,
  spotId,
  wholeNumber,
  yards,
} from './schema-parts.ts';

// One schema is the source of the document's types, of the exported JSON Schema and of the shape checks.
// What a shape cannot say (names that exist, beats that can start) is checked after it, in checks/.

const grade = described(z.number().check(z.gte(1), z.lte(5)), '1 weakest of the level, 3 usual, 5 best.');
const jerseys = z.array(wholeNumber(0, 999)).check(z.minLength(1), z.maxLength(limits.players));

const gradesSchema = described(
  z.strictObject({
    speed: described(z.optional(grade), 'Top speed and start.'),
    catch: z.optional(grade),
    pass: described(z.optional(grade), 'Speed and accuracy of passes.'),
    feed: described(z.optional(grade), 'Accuracy and quickness of passes inside.'),
    shoot: described(z.optional(grade), 'Speed and accuracy of shots.'),
    inside: described(z.optional(grade), 'Quickness from catch to shot.'),
    handle: described(z.optional(grade), 'Quickness from catch to pass.'),
    offHand: z.optional(grade),
    sense: described(z.optional(grade), 'Reads the game: reacts sooner, bites on fewer fakes.'),
  }),
  'Each that is left out counts as 3.',
);

const readings = z
  .array(z.number().check(z.positive(), z.lte(1000)))
  .check(z.minLength(1), z.maxLength(limits.readings));

const measuredSchema = described(
  z.strictObject({
    sprint20ydSeconds: described(z.optional(readings), '20 yards from a standing start, each try.'),
    passSpeedMph: z.optional(readings),
    shotSpeedMph: z.optional(readings),
    wallBallIn30s: described(z.optional(readings), 'Catches off a wall in 30 seconds, each try.'),
    onGoal: described(
      z.optional(z.strictObject({ hits: wholeNumber(0, 10_000), shots: wholeNumber(1, 10_000) })),
      'Shots with time and room: how many were on goal.',
    ),
    heightCm: z.optional(z.number().check(z.gte(90), z.lte(230))),
  }),
  'Each reading as it was taken; a measurement counts instead of the grade of what it measures.',
);

/** The mark of one copy that was handed out. */
const copyPattern = /^[a-z0-9]+$/;

/** What a player is in the whole game. For people and the roster's table; at a man-up his crosse and grades count. */
export const playerRoles = ['attack', 'midfield', 'defense', 'lsm', 'goalkeeper'] as const;

export const playerSchema = z.strictObject({
  number: wholeNumber(0, 999),
  name,
  hand: z.enum(['left', 'right', 'both']),
  crosse: described(z.optional(z.enum(['short', 'pole', 'goalkeeper'])), 'short when left out.'),
  grades: z.optional(gradesSchema),
  measured: z.optional(measuredSchema),
  absent: described(z.optional(z.boolean()), 'true: leave him out for now.'),
  role: described(
    z.optional(z.enum(playerRoles)),
    'What he plays in the whole game, for people; the simulation does not read it.',
  ),
  level: described(
    z.optional(z.enum(levels)),
    'When he plays above or below his team; that of the team when left out.',
  ),
  notes: z.optional(notes),
});

const teamSchema = z.strictObject({
  name,
  level: z.enum(levels),
  ruleCode: described(
    z.optional(z.enum(ruleCodeIds)),
    'The rules that are played by; those of the level when left out.',
  ),
  roster: z.array(playerSchema).check(z.maxLength(limits.players)),
  depth: described(
    z.optional(z.record(spotId, jerseys)),
    'Jersey numbers in order for each spot that the coach wants to fix.',
  ),
  notes: z.optional(notes),
});

const need = z.optional(wholeNumber(0, 3));
const needs = z.strictObject({ feed: need, shoot: need, inside: need, handle: need });

const ownSetSchema = z.strictObject({
  id,
  name,
  spots: described(
    z.record(
      spotId,
      z.strictObject({
        at: place,
        hand: described(
          z.optional(z.enum(['left', 'right', 'either'])),
          'Hand that should be inside; by the side when left out.',
        ),
        needs: described(z.optional(needs), '0 nothing to 3 everything; 0 when left out.'),
        safety: described(z.optional(z.enum(['backUp', 'getBack', 'none'])), 'none when left out.'),
      }),
    ),
    'Exactly six.',
  ),
  notes: z.optional(notes),
});

const beatSchema = z.strictObject({
  id: beatId,
  on: described(
    phrase(triggerPattern),
    'What starts it: start, catch SPOT, pass SPOT [to SPOT], arrive SPOT, call BEAT + SECONDS.',
  ),
  do: described(
    z.array(phrase(actionPattern)).check(z.maxLength(limits.actions)),
    'What each man does, all at once: "TR pass TL", "C pop to 6,9".',
  ),
});

const readSchema = z.strictObject({
  carrier: spotId,
  during: described(z.optional(beatId), 'Only while this is the newest beat; always when left out.'),
  if: described(
    z.array(phrase(cuePattern)).check(z.maxLength(limits.cues)),
    'Cues that must all hold: free, pressed, next steps, my man leaves, crease up, far low looks away, far low crosses, open SPOT, left SPOT, lane taken SPOT.',
  ),
  then: described(
    phrase(readActionPattern),
    'What the carrier does: pass SPOT, skip SPOT, feed SPOT, shoot, carry to x,y, step to x,y, fake SPOT, hold SECONDS.',
  ),
});

const beats = z.array(beatSchema).check(z.maxLength(limits.beats));
const reads = z.array(readSchema).check(z.maxLength(limits.reads));

export const playSchema = z.strictObject({
  id,
  name,
  set: described(
    z.string().check(z.minLength(1), z.maxLength(limits.id)),
    'A set by its name, counted top-down, or the id of an own set.',
  ),
  spots: described(z.optional(z.record(spotId, place)), 'Spots that stand elsewhere than in the set.'),
  start: z.strictObject({
    ball: spotId,
    restart: described(z.tuple([yards, yards]), 'Where the ball is put in play after the whistle, outside the box.'),
  }),
  beats: beats.check(z.minLength(1)),
  reads: z.optional(reads),
  reset: z.strictObject({
    ball: spotId,
    then: described(z.enum(['again', 'free']), 'again: run the play anew; free: play what comes open.'),
  }),
  lastTen: described(
    z.optional(z.strictObject({ beats: z.optional(beats), reads: z.optional(reads) })),
    'What replaces beats and reads with ten seconds of the penalty left.',
  ),
  tags: described(
    z.optional(z.array(z.string().check(z.minLength(1), z.maxLength(limits.tag))).check(z.maxLength(limits.tags))),
    'Short words to find the play by, for people.',
  ),
  archived: described(z.optional(z.boolean()), 'true: put away, but not forgotten.'),
  notes: z.optional(notes),
});

const ownSchemeSchema = z.strictObject({
  id,
  name,
  men: described(z.record(defenderId, place), 'Each defender and his home.'),
  shortSticks: described(
    z.optional(z.array(defenderId).check(z.maxLength(6))),
    'Who carries a short stick; the others carry poles.',
  ),
  extends: described(
    z.optional(z.number().check(z.gte(5), z.lte(20))),
    'How far from the goal the ball man meets a carrier, yards from the middle of the goal; 12 when left out.',
  ),
  rows: z
    .array(
      z.strictObject({
        ball: described(z.string().check(z.regex(ballPlacePattern)), 'Where the ball is: a spot, or "crease".'),
        do: described(
          z.array(phrase(dutyPattern)).check(z.maxLength(6)),
          'One duty a man: "tr ball", "tl split P TL", "lr man WR", "c front crease", "ll pipe WL", "c at 0,5".',
        ),
      }),
    )
    .check(z.minLength(1), z.maxLength(limits.rows)),
  notes: z.optional(notes),
});

const disciplineName = z.enum(disciplineNames);

const keeperShotSchema = z.strictObject({
  at: described(
    z.tuple([z.number().check(z.gte(-6), z.lte(6)), z.number().check(z.gte(0), z.lte(8))]),
    '[x, y] in feet from the middle of the goal mouth at the ground, as the shooter sees it: +x his right, +y up. The mouth is 6 by 6.',
  ),
  result: z.enum(['goal', 'saved']),
});

const opponentSchema = z.strictObject({
  id,
  name,
  schemes: described(
    z.optional(z.record(z.string().check(z.maxLength(limits.id)), z.number().check(z.positive(), z.lte(1000)))),
    'Schemes they are believed to play, with weights.',
  ),
  discipline: described(
    z.optional(z.record(z.string().check(z.regex(defenderPattern)), disciplineName)),
    'How well they play it: "all" for everybody, a defender\'s name for one man. By the level when left out.',
  ),
  counted: described(
    z.optional(z.record(z.string().check(z.maxLength(limits.id)), wholeNumber(0, limits.chances))),
    'Man-ups that the weights above count already, by scheme; the program writes them.',
  ),
  before: described(
    z.optional(z.record(z.string().check(z.maxLength(limits.id)), z.number().check(z.gte(0), z.lte(1000)))),
    'Weights before marks of man-ups moved those above; the program writes them.',
  ),
  keeper: described(
    z.optional(z.array(keeperShotSchema).check(z.maxLength(limits.keeperShots))),
    'Shots on goal that their goalkeeper faced, and where they came in.',
  ),
  keeperNotes: z.optional(notes),
  notes: z.optional(notes),
});

/** What a stretch of practice is, in the usual order of teaching: from words to a live man-up. */
export const practiceKinds = [
  'talk',
  'keeper',
  'walk',
  'skeleton',
  'dummy',
  'part',
  'live',
  'situation',
  'water',
] as const;

/** Situations of a game that are played out, each from its whistle. */
export const practiceSituations = ['lastTen', 'flagDown', 'restart'] as const;

const practiceRunSchema = z.strictObject({
  look: described(
    z.optional(z.array(spotId).check(z.minLength(1), z.maxLength(2))),
    'Who throws and to whom; one man for a shot of his own. The whole play when left out.',
  ),
  scheme: z.optional(z.string().check(z.minLength(1), z.maxLength(limits.id))),
  reps: wholeNumber(1, limits.reps),
});

const practiceBlockSchema = z.strictObject({
  kind: described(
    z.enum(practiceKinds),
    'talk at the board, keeper warm-up, walk-through, skeleton without defense, dummy defense, part with fewer men, live, situation, water.',
  ),
  play: described(z.optional(id), 'The play that is run, by its id; none for water and the warm-up of the keeper.'),
  minutes: described(z.number().check(z.gte(0.5), z.lte(limits.practiceMinutes)), 'How long it lasts.'),
  reps: described(z.optional(wholeNumber(0, limits.reps)), 'How often it is run; none when left out.'),
  scheme: described(
    z.optional(z.string().check(z.minLength(1), z.maxLength(limits.id))),
    'The scheme that the defense shows.',
  ),
  spots: described(
    z.optional(z.array(spotId).check(z.minLength(1), z.maxLength(6))),
    'Who takes part, the ball first: all six when left out.',
  ),
  runs: described(
    z.optional(z.array(practiceRunSchema).check(z.maxLength(limits.runs))),
    'How the reps are shared out: which look, against what.',
  ),
  situation: z.optional(z.enum(practiceSituations)),
  fixed: described(z.optional(z.boolean()), 'true: the minutes were set by hand and stay when the rest is fitted.'),
  why: described(
    z.optional(z.string().check(z.maxLength(limits.why))),
    'Why it is there, as it was found when the plan was made.',
  ),
  note: z.optional(notes),
});

const practiceSchema = z.strictObject({
  id,
  name,
  date: described(z.optional(z.string().check(z.regex(dayPattern))), 'The day, YYYY-MM-DD.'),
  minutes: described(z.number().check(z.gte(1), z.lte(limits.practiceMinutes)), 'How long there is.'),
  players: described(wholeNumber(0, limits.players), 'How many come, the goalkeeper not counted.'),
  keeper: described(z.optional(z.boolean()), 'false: no goalkeeper comes, so that nobody shoots at a keeper.'),
  plays: described(z.array(id).check(z.maxLength(limits.practicePlays)), 'The plays that are practised, by their ids.'),
  blocks: z.array(practiceBlockSchema).check(z.maxLength(limits.blocks)),
  leftOut: described(
    z.optional(z.array(z.string().check(z.maxLength(limits.why))).check(z.maxLength(limits.blocks))),
    'What there was no time for, in words.',
  ),
  notes: z.optional(notes),
});

/** How quickly a player chose, roughly: in the first third of his time, in the second, later. */
export const quizPaces = ['quick', 'steady', 'slow'] as const;

const quizQuestionSchema = z.strictObject({
  carrier: described(spotId, 'The man with the ball.'),
  scheme: described(z.string().check(z.minLength(1), z.maxLength(limits.id)), 'The scheme that is met.'),
  right: described(z.string().check(z.minLength(1), z.maxLength(limits.why)), 'The best choice, in words.'),
});

const quizAnswerSchema = z.strictObject({
  asked: described(wholeNumber(0, 3), 'How often it was asked; 3 for three times and more, 0 when it was not asked.'),
  right: described(wholeNumber(0, 3), 'How often the answer was right, at most as often as it was asked.'),
  pace: described(
    z.optional(z.enum(quizPaces)),
    'How quickly he chose the first time; left out when he was not asked.',
  ),
});

const quizResultSchema = z.strictObject({
  number: described(wholeNumber(0, 999), 'Jersey number; no name.'),
  round: described(wholeNumber(1, 32), 'Which round of his it was; after 32 it begins anew.'),
  answers: described(
    z.array(quizAnswerSchema).check(z.minLength(1), z.maxLength(limits.questions)),
    'One for each question, in their order.',
  ),
});

const quizSchema = z.strictObject({
  id: described(id, 'The four letters of the quiz, small.'),
  name,
  play: described(id, 'The play that it asks about, by its id.'),
  spot: described(z.optional(spotId), 'The man whose reads it asks about; the whole unit when left out.'),
  questions: z.array(quizQuestionSchema).check(z.minLength(1), z.maxLength(limits.questions)),
  results: described(
    z.array(quizResultSchema).check(z.maxLength(limits.results)),
    'Rounds that came back, in the order in which they were loaded.',
  ),
  notes: z.optional(notes),
});

const settingsSchema = z.strictObject({
  penaltySeconds: described(
    z.optional(z.number().check(z.gte(5), z.lte(300))),
    'The penalty that plays are tested with; that of a technical foul when left out.',
  ),
  rules: described(
    z.optional(z.record(z.string().check(z.maxLength(limits.id)), z.union([z.number(), z.boolean(), z.null()]))),
    'Rule values of your league where they differ from the rule code, such as "penalties.goalReleases": true.',
  ),
});

export const playbookSchema = described(
  z.strictObject({
    format: z.literal('sliderule-playbook'),
    version: z.literal(1),
    team: teamSchema,
    sets: z.optional(z.array(ownSetSchema).check(z.maxLength(limits.sets))),
    plays: z.array(playSchema).check(z.maxLength(limits.plays)),
    schemes: z.optional(z.array(ownSchemeSchema).check(z.maxLength(limits.schemes))),
    opponents: z.optional(z.array(opponentSchema).check(z.maxLength(limits.opponents))),
    practices: z.optional(z.array(practiceSchema).check(z.maxLength(limits.practices))),
    quizzes: described(
      z.optional(z.array(quizSchema).check(z.maxLength(limits.quizzes))),
      'Quizzes that were handed out, and what came back; the program writes them.',
    ),
    chances: described(
      z.optional(z.array(chanceSchema).check(z.maxLength(limits.chances))),
      'Man-ups as they were played, ours and theirs.',
    ),
    settings: z.optional(settingsSchema),
    notes: z.optional(notes),
    copies: described(
      z.optional(
        z.array(z.string().check(z.regex(copyPattern), z.maxLength(limits.id))).check(z.maxLength(limits.copies)),
      ),
      'Marks of the copies that this file comes from, oldest first; the program writes them.',
    ),
  }),
  'A Sliderule playbook: team, plays, own sets and schemes, opponents, practice plans, quizzes, chances, settings.',
);

export type Playbook = z.infer<typeof playbookSchema>;
export type Player = z.infer<typeof playerSchema>;
export type PlayerRole = (typeof playerRoles)[number];
export type Team = z.infer<typeof teamSchema>;
export type OwnSet = z.infer<typeof ownSetSchema>;
export type PlayEntry = z.infer<typeof playSchema>;
export type BeatEntry = z.infer<typeof beatSchema>;
export type ReadEntry = z.infer<typeof readSchema>;
export type SchemeEntry = z.infer<typeof ownSchemeSchema>;
export type Opponent = z.infer<typeof opponentSchema>;
export type Practice = z.infer<typeof practiceSchema>;
export type PracticeBlock = z.infer<typeof practiceBlockSchema>;
export type PracticeRun = z.infer<typeof practiceRunSchema>;
export type PracticeKind = (typeof practiceKinds)[number];
export type PracticeSituation = (typeof practiceSituations)[number];
export type QuizEntry = z.infer<typeof quizSchema>;
export type QuizResult = z.infer<typeof quizResultSchema>;
export type QuizAnswer = z.infer<typeof quizAnswerSchema>;
export type QuizPace = (typeof quizPaces)[number];
export type KeeperShot = z.infer<typeof keeperShotSchema>;
export type Chance = z.infer<typeof chanceSchema>;
export type Settings = z.infer<typeof settingsSchema>;
