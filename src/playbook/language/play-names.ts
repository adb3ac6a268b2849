import type { Point } from '../../engine/index.ts';
import type { DiagnosticCode } from '../diagnostic-codes.ts';
import { nearestName } from './nearest-name.ts';
import { spotIdPattern } from './patterns.ts';
import { type PhraseReader, type Token, unknownName } from './phrase.ts';

/** What the phrases of one play may name, and which places on the field are allowed. */
export interface PlayNames {
  /** Homes of the play's spots by id. */
  readonly spots: ReadonlyMap<string, Point>;
  readonly beats: ReadonlySet<string>;
  /** The set that other coaches mean by this set's name, whose spots a play may name by mistake; absent for most. */
  readonly mixUp?: SetMixUp;
  /** The set is not known, so that any spot may be right. */
  readonly anySpot?: true;
  /** Why a man without the goalkeeper's right may not be told to go there; undefined when he may. */
  placeFault(point: Point): { readonly code: DiagnosticCode; readonly message: string } | undefined;
}

/** Two sets that go by one name: what a play may have mixed up. */
export interface SetMixUp {
  /** What the set is called that was not meant here. */
  readonly id: string;
  /** Spots of the set that was not meant here. */
  readonly spots: ReadonlySet<string>;
  /** Which set the name means here, and what the other one is called. */
  readonly words: string;
}

/** Read a spot's name; reports an unknown one and reads on with the likeliest, or with `unknownName`. */
export function readSpot(reader: PhraseReader, names: PlayNames, what = 'a spot', question?: string): string {
  return knownSpot(reader, names, readSpotWord(reader, names, what, question));
}

/** Read a spot that must be another man than `self`. */
export function readOtherSpot(
  reader: PhraseReader,
  names: PlayNames,
  self: string,
  verb: string,
  question?: string,
): string {
  const token = readSpotWord(reader, names, 'a spot', question);
  if (token.text !== self) {
    const spot = knownSpot(reader, names, token);
    return spot === self ? unknownName : spot;
  }
  knownSpot(reader, names, token);
  reader.fault('self-target', token.offset, `${self} cannot ${verb} himself. Name another spot.`);
  return unknownName;
}

export function readBeat(reader: PhraseReader, names: PlayNames): string {
  const token = reader.anyWord('the id of a step', 'after which step?');
  if (names.beats.has(token.text)) return token.text;
  reader.fault('beat-unknown', token.offset, unknownBeat(token.text, names));
  return nearestName(token.text, names.beats) ?? unknownName;
}

/** Read `x,y` or a spot's name, which stands for its home. */
export function readPlace(reader: PhraseReader, names: PlayNames): Point {
  const token = reader.peek();
  if (token?.kind === 'word') {
    const spot = knownSpot(reader, names, readSpotWord(reader, names, 'a place (x,y in yards, or a spot)'));
    return names.spots.get(spot) ?? nowhere;
  }
  const x = reader.number('a place (x,y in yards, or a spot)', 'where to?');
  reader.symbol('comma');
  const y = reader.number('the y of the place, in yards', 'how far up the field? A place is x,y.');
  const point = { x: x.value, y: y.value };
  const fault = names.placeFault(point);
  if (fault !== undefined) reader.fault(fault.code, x.offset, fault.message);
  return point;
}

export function unknownBeat(id: string, names: Pick<PlayNames, 'beats'>): string {
  const near = nearestName(id, names.beats);
  return `No step has the id "${id}".${near === undefined ? '' : ` Did you mean "${near}"?`} The steps here are ${[...names.beats].join(', ') || 'none'}.`;
}

type SpotNames = Pick<PlayNames, 'spots' | 'mixUp' | 'anySpot'>;

/** Whether a play may name this spot. */
export function isSpot(id: string, names: SpotNames): boolean {
  return names.anySpot === true || names.spots.has(id);
}

export function unknownSpot(id: string, names: SpotNames): string {
  const near = likelySpot(id, names);
  const guess = near === undefined ? '' : ` Did you mean ${near}?`;
  const lecture = near === undefined && names.mixUp?.spots.has(id) === true ? ` ${names.mixUp.words}` : '';
  return `The play has no spot "${id}".${guess} Its spots are ${[...names.spots.keys()].join(', ')}.${lecture}`;
}

/** The spot that was most likely meant. A spot of the other set of that name is no slip of the finger: the set is the mistake. */
export function likelySpot(id: string, names: SpotNames): string | undefined {
  return names.mixUp?.spots.has(id) === true ? undefined : nearestName(id, names.spots.keys());
}

/** A place that nothing is known about: the checks of places leave it out. */
export const nowhere: Point = { x: Number.NaN, y: Number.NaN };

/** A word that is written as spots are; anything else is a slip in the phrase rather than a wrong name. */
function readSpotWord(reader: PhraseReader, names: PlayNames, what: string, question?: string): Token {
  const token = reader.peek();
  if (token?.kind !== 'word' || spotIdPattern.test(token.text)) return reader.anyWord(what, question);
  const meant = token.text.toUpperCase();
  if (!names.spots.has(meant)) return reader.stop(`${what} in capital letters`);
  reader.slip(`${meant} in capital letters`);
  return { ...reader.anyWord(what), text: meant };
}

/** The spot that a word names, after reporting a wrong one the likeliest. */
function knownSpot(reader: PhraseReader, names: PlayNames, token: Token): string {
  if (isSpot(token.text, names)) return token.text;
  reader.fault('spot-unknown', token.offset, unknownSpot(token.text, names));
  return likelySpot(token.text, names) ?? unknownName;
}
