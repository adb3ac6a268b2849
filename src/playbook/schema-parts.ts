import * as z from 'zod/mini';
import { beatIdPattern, defenderPattern, idPattern, spotIdPattern } from './language/patterns.ts';
import { limits } from './limits.ts';

// What many parts of the schema are made of.

/** A phrase of the play language that matches a pattern. */
export const phrase = (pattern: RegExp) => z.string().check(z.maxLength(limits.phrase), z.regex(pattern));
export const yards = z.number().check(z.gte(-100), z.lte(100));
export const wholeNumber = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));

export const id = described(
  z.string().check(z.regex(idPattern), z.maxLength(limits.id)),
  'Short name: small letters, digits and dashes.',
);
export const spotId = described(
  z.string().check(z.regex(spotIdPattern)),
  'Spot of the set: capital letters and digits, like TR or X.',
);
export const beatId = described(
  z.string().check(z.regex(beatIdPattern), z.maxLength(limits.id)),
  'Name of a beat: small letters, digits and dashes.',
);
export const name = z.string().check(z.minLength(1), z.maxLength(limits.name));
export const notes = described(
  z.string().check(z.maxLength(limits.note)),
  'Anything for people; the simulation does not read it.',
);
export const place = described(
  z.tuple([yards, yards]),
  "[x, y] in yards from the middle of the goal line: +x the offense's right looking in, +y toward midfield.",
);
/** A day: YYYY-MM-DD. Whether the month has that day is checked after the shape. */
export const dayPattern = /^\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01])$/;

export const defenderId = described(
  z.string().check(z.regex(defenderPattern)),
  'A defender: small letters, like tr or c.',
);

/** The same shape, with words for whoever reads the exported JSON Schema. */
export function described<Shape extends z.ZodMiniType>(shape: Shape, words: string): Shape {
  z.globalRegistry.add(shape, { description: words });
  return shape;
}
