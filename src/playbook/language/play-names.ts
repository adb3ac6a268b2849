import type { Point } from '../../engine/index.ts';
import type { DiagnosticCode } from '../diagnostic-codes.ts';
import { nearestName } from './nearest-name.ts';
import { spotIdPattern } from './patterns.ts';
import type { PhraseReader, Token } from './phrase.ts';

/** What the phrases of one play may name, and which places on the field are allowed. */
export interface PlayNames {
  /** Homes of the play's spots by id. */
  readonly spots: ReadonlyMap<string, Point>;
  readonly beats: ReadonlySet<string>;
  /** Said after "unknown spot", for a set that other coaches number differently; empty for most. */
  readonly spotHint: string;
  /** Why a man without the goalkeeper's right may not be told to go there; undefined when he may. */
  placeFault(point: Point): { readonly code: DiagnosticCode; readonly message: string } | undefined;
}

/** Read a spot's name; reports an unknown one and reads on. */
export function readSpot(reader: PhraseReader, names: PlayNames, what = 'a spot'): string {
  const token = readSpotWord(reader, what);
  checkSpot(reader, names, token);
  return token.text;
}

/** Read a spot that must be another man than `self`. */
export function readOtherSpot(reader: PhraseReader, names: PlayNames, self: string, verb: string): string {
  const token = readSpotWord(reader, 'a spot');
  checkSpot(reader, names, token);
  if (token.text === self)
    reader.fault('self-target', token.offset, `${self} cannot ${verb} himself. Name another spot.`);
  return token.text;
}

export function readBeat(reader: PhraseReader, names: PlayNames): string {
  const token = reader.anyWord('the id of a beat');
  if (!names.beats.has(token.text)) reader.fault('beat-unknown', token.offset, unknownBeat(token.text, names));
  return token.text;
}

/** Read `x,y` or a spot's name, which stands for its home. */
export function readPlace(reader: PhraseReader, names: PlayNames): Point {
  const token = reader.peek();
  if (token?.kind === 'word') {
    readSpotWord(reader, 'a place (x,y in yards, or a spot)');
    checkSpot(reader, names, token);
    return names.spots.get(token.text) ?? { x: 0, y: 0 };
  }
  const x = reader.number('a place (x,y in yards, or a spot)');
  reader.symbol('comma');
  const y = reader.number('the y of the place, in yards');
  const point = { x: x.value, y: y.value };
  const fault = names.placeFault(point);
  if (fault !== undefined) reader.fault(fault.code, x.offset, fault.message);
  return point;
}

export function unknownBeat(id: string, names: Pick<PlayNames, 'beats'>): string {
  const near = nearestName(id, names.beats);
  return `No beat has the id "${id}".${near === undefined ? '' : ` Did you mean "${near}"?`} The beats here are ${[...names.beats].join(', ') || 'none'}.`;
}

export function unknownSpot(id: string, names: Pick<PlayNames, 'spots' | 'spotHint'>): string {
  const near = nearestName(id, names.spots.keys());
  const guess = near === undefined ? '' : ` Did you mean ${near}?`;
  return `The play has no spot "${id}".${guess} Its spots are ${[...names.spots.keys()].join(', ')}.${names.spotHint}`;
}

/** A word that is written as spots are; anything else is a slip in the phrase rather than a wrong name. */
function readSpotWord(reader: PhraseReader, what: string): Token {
  const token = reader.peek();
  if (token?.kind === 'word' && !spotIdPattern.test(token.text)) return reader.stop(`${what} in capital letters`);
  return reader.anyWord(what);
}

function checkSpot(reader: PhraseReader, names: PlayNames, token: Token): void {
  if (!names.spots.has(token.text)) reader.fault('spot-unknown', token.offset, unknownSpot(token.text, names));
}
