import { z } from 'zod';
import { disciplineNames, levels, ruleCodeIds } from '../engine/index.ts';
import {
  actionPattern,
  ballPlacePattern,
  beatIdPattern,
  cuePattern,
  defenderPattern,
  dutyPattern,
  idPattern,
  readActionPattern,
  spotIdPattern,
  triggerPattern,
} from './language/patterns.ts';
import { limits } from './limits.ts';

// One schema is the source of the document's types, of the exported JSON Schema and of the shape checks.
// What a shape cannot say (names that exist, beats that can start) is checked after it, in checks/.

const id = z.string().regex(idPattern).max(limits.id).describe('Short name: small letters, digits and dashes.');
const spotId = z.string().regex(spotIdPattern).describe('Spot of the set: capital letters and digits, like TR or X.');
const beatId = z
  .string()
  .regex(beatIdPattern)
  .max(limits.id)
  .describe('Name of a beat: small letters, digits and dashes.');
const name = z.string().min(1).max(limits.name);
const notes = z.string().max(limits.note).describe('Anything for people; the simulation does not read it.');
const yards = z.number().min(-100).max(100);
const place = z
  .tuple([yards, yards])
  .describe("[x, y] in yards from the middle of the goal line: +x the offense's right looking in, +y toward midfield.");
const grade = z.number().min(1).max(5).describe('1 weakest of the level, 3 usual, 5 best.');

const gradesSchema = z
  .strictObject({
    speed: grade.optional().describe('Top speed and start.'),
    catch: grade.optional(),
    pass: grade.optional().describe('Speed and accuracy of passes.'),
    feed: grade.optional().describe('Accuracy and quickness of passes inside.'),
    shoot: grade.optional().describe('Speed and accuracy of shots.'),
    inside: grade.optional().describe('Quickness from catch to shot.'),
    handle: grade.optional().describe('Quickness from catch to pass.'),
    offHand: grade.optional(),
    sense: grade.optional().describe('Reads the game: reacts sooner, bites on fewer fakes.'),
  })
  .describe('Each that is left out counts as 3.');

const readings = z.array(z.number().positive().max(1000)).min(1).max(limits.readings);

const measuredSchema = z
  .strictObject({
    sprint20ydSeconds: readings.optional().describe('20 yards from a standing start, each try.'),
    passSpeedMph: readings.optional(),
    shotSpeedMph: readings.optional(),
    wallBallIn30s: readings.optional().describe('Catches off a wall in 30 seconds, each try.'),
    onGoal: z
      .strictObject({ hits: z.int().min(0).max(10_000), shots: z.int().min(1).max(10_000) })
      .optional()
      .describe('Shots with time and room: how many were on goal.'),
    heightCm: z.number().min(90).max(230).optional(),
  })
  .describe('Each reading as it was taken; a measurement counts instead of the grade of what it measures.');

/** The mark of one copy that was handed out. */
const copyPattern = /^[a-z0-9]+$/;

/** What a player is in the whole game. For people and the roster's table; at a man-up his crosse and grades count. */
export const playerRoles = ['attack', 'midfield', 'defense', 'lsm', 'goalkeeper'] as const;

const playerSchema = z.strictObject({
  number: z.int().min(0).max(999),
  name,
  hand: z.enum(['left', 'right', 'both']),
  crosse: z.enum(['short', 'pole', 'goalkeeper']).optional().describe('short when left out.'),
  grades: gradesSchema.optional(),
  measured: measuredSchema.optional(),
  absent: z.boolean().optional().describe('true: leave him out for now.'),
  role: z
    .enum(playerRoles)
    .optional()
    .describe('What he plays in the whole game, for people; the simulation does not read it.'),
  level: z.enum(levels).optional().describe('When he plays above or below his team; that of the team when left out.'),
  notes: notes.optional(),
});

const teamSchema = z.strictObject({
  name,
  level: z.enum(levels),
  ruleCode: z.enum(ruleCodeIds).optional().describe('The rules that are played by; those of the level when left out.'),
  roster: z.array(playerSchema).max(limits.players),
  depth: z
    .record(spotId, z.array(z.int().min(0).max(999)).min(1).max(limits.players))
    .optional()
    .describe('Jersey numbers in order for each spot that the coach wants to fix.'),
  notes: notes.optional(),
});

const needs = z.strictObject({
  feed: z.int().min(0).max(3).optional(),
  shoot: z.int().min(0).max(3).optional(),
  inside: z.int().min(0).max(3).optional(),
  handle: z.int().min(0).max(3).optional(),
});

const ownSetSchema = z.strictObject({
  id,
  name,
  spots: z
    .record(
      spotId,
      z.strictObject({
        at: place,
        hand: z
          .enum(['left', 'right', 'either'])
          .optional()
          .describe('Hand that should be inside; by the side when left out.'),
        needs: needs.optional().describe('0 nothing to 3 everything; 0 when left out.'),
        safety: z.enum(['backUp', 'getBack', 'none']).optional().describe('none when left out.'),
      }),
    )
    .describe('Exactly six.'),
  notes: notes.optional(),
});

const beatSchema = z.strictObject({
  id: beatId,
  on: z
    .string()
    .max(limits.phrase)
    .regex(triggerPattern)
    .describe('What starts it: start, catch SPOT, pass SPOT [to SPOT], arrive SPOT, call BEAT + SECONDS.'),
  do: z
    .array(z.string().max(limits.phrase).regex(actionPattern))
    .max(limits.actions)
    .describe('What each man does, all at once: "TR pass TL", "C pop to 6,9".'),
});

const readSchema = z.strictObject({
  carrier: spotId,
  during: beatId.optional().describe('Only while this is the newest beat; always when left out.'),
  if: z
    .array(z.string().max(limits.phrase).regex(cuePattern))
    .max(limits.cues)
    .describe('Cues that must all hold: free, pressed, open SPOT, left SPOT.'),
  then: z
    .string()
    .max(limits.phrase)
    .regex(readActionPattern)
    .describe(
      'What the carrier does: pass SPOT, skip SPOT, feed SPOT, shoot, carry to x,y, step to x,y, fake SPOT, hold SECONDS.',
    ),
});

const beats = z.array(beatSchema).max(limits.beats);
const reads = z.array(readSchema).max(limits.reads);

export const playSchema = z.strictObject({
  id,
  name,
  set: z.string().min(1).max(limits.id).describe('A set by its name, counted top-down, or the id of an own set.'),
  spots: z.record(spotId, place).optional().describe('Spots that stand elsewhere than in the set.'),
  start: z.strictObject({
    ball: spotId,
    restart: place.describe('Where the ball is put in play after the whistle, outside the box.'),
  }),
  beats: beats.min(1),
  reads: reads.optional(),
  reset: z.strictObject({
    ball: spotId,
    then: z.enum(['again', 'free']).describe('again: run the play anew; free: play what comes open.'),
  }),
  lastTen: z
    .strictObject({ beats: beats.optional(), reads: reads.optional() })
    .optional()
    .describe('What replaces beats and reads with ten seconds of the penalty left.'),
  tags: z
    .array(z.string().min(1).max(limits.tag))
    .max(limits.tags)
    .optional()
    .describe('Short words to find the play by, for people.'),
  archived: z.boolean().optional().describe('true: put away, but not forgotten.'),
  notes: notes.optional(),
});

const defenderId = z.string().regex(defenderPattern).describe('A defender: small letters, like tr or c.');

const ownSchemeSchema = z.strictObject({
  id,
  name,
  men: z.record(defenderId, place).describe('Each defender and his home.'),
  shortSticks: z.array(defenderId).max(6).optional().describe('Who carries a short stick; the others carry poles.'),
  extends: z
    .number()
    .min(5)
    .max(20)
    .optional()
    .describe(
      'How far from the goal the ball man meets a carrier, yards from the middle of the goal; 12 when left out.',
    ),
  rows: z
    .array(
      z.strictObject({
        ball: z.string().regex(ballPlacePattern).describe('Where the ball is: a spot, or "crease".'),
        do: z
          .array(z.string().max(limits.phrase).regex(dutyPattern))
          .max(6)
          .describe(
            'One duty a man: "tr ball", "tl split P TL", "lr man WR", "c front crease", "ll pipe WL", "c at 0,5".',
          ),
      }),
    )
    .min(1)
    .max(limits.rows),
  notes: notes.optional(),
});

const disciplineName = z.enum(disciplineNames);

const opponentSchema = z.strictObject({
  id,
  name,
  schemes: z
    .record(z.string().max(limits.id), z.number().positive().max(1000))
    .optional()
    .describe('Schemes they are believed to play, with weights.'),
  discipline: z
    .record(z.string().regex(defenderPattern), disciplineName)
    .optional()
    .describe(
      'How well they play it: "all" for everybody, a defender\'s name for one man. By the level when left out.',
    ),
  notes: notes.optional(),
});

const settingsSchema = z.strictObject({
  penaltySeconds: z
    .number()
    .min(5)
    .max(300)
    .optional()
    .describe('The penalty that plays are tested with; that of a technical foul when left out.'),
  rules: z
    .record(z.string().max(limits.id), z.union([z.number(), z.boolean(), z.null()]))
    .optional()
    .describe(
      'Rule values of your league where they differ from the rule code, such as "penalties.goalReleases": true.',
    ),
});

export const playbookSchema = z
  .strictObject({
    format: z.literal('sliderule-playbook'),
    version: z.literal(1),
    team: teamSchema,
    sets: z.array(ownSetSchema).max(limits.sets).optional(),
    plays: z.array(playSchema).max(limits.plays),
    schemes: z.array(ownSchemeSchema).max(limits.schemes).optional(),
    opponents: z.array(opponentSchema).max(limits.opponents).optional(),
    chances: z.array(z.never()).max(0).optional().describe('Kept for chances that were charted; empty in version 1.'),
    settings: settingsSchema.optional(),
    notes: notes.optional(),
    copies: z
      .array(z.string().regex(copyPattern).max(limits.id))
      .max(limits.copies)
      .optional()
      .describe('Marks of the copies that this file comes from, oldest first; the program writes them.'),
  })
  .describe('A Sliderule playbook: team, plays, own sets and schemes, opponents, settings.');

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
export type Settings = z.infer<typeof settingsSchema>;
