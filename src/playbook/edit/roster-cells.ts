import { feet, kmh, type Level, metres, toMph } from '../../engine/index.ts';
import type { Player } from '../schema.ts';
import { type ReadingKind, readingParts } from './reading-parts.ts';

/** What a cell says, or why it says nothing to us. */
export type CellReading<T> =
  | { readonly kind: 'read'; readonly value: T; readonly doubt?: string }
  | { readonly kind: 'unread'; readonly why: string };

/** A jersey number: `12`, `#7`, `00`. */
export function readNumber(text: string): CellReading<number> {
  const digits = /^#?\s*(\d{1,3})$/.exec(text.trim())?.[1];
  return digits === undefined ? unread('is no number from 0 to 999') : read(Number(digits));
}

const handWords: Readonly<Record<string, Player['hand']>> = {
  ...wordsFor('left', ['l', 'left', 'lefty', 'lh', 'left handed', 'left hand']),
  ...wordsFor('right', ['r', 'right', 'righty', 'rh', 'right handed', 'right hand']),
  ...wordsFor('both', ['b', 'both', 'either', 'ambi', 'ambidextrous', 'l r', 'r l', 'lr', 'rl', 'two']),
};

export function readHand(text: string): CellReading<Player['hand']> {
  return lookUp(text, handWords, 'left, right or both (l, r, b)');
}

type Crosse = NonNullable<Player['crosse']>;

const crosseWords: Readonly<Record<string, Crosse>> = {
  ...wordsFor('short', ['s', 'short', 'shorty', 'ss', 'short stick', 'shortstick']),
  ...wordsFor('pole', ['p', 'pole', 'long', 'lp', 'long pole', 'longpole', 'd pole', 'long stick']),
  ...wordsFor('goalkeeper', ['g', 'gk', 'goalie', 'goalkeeper', 'keeper', 'goal']),
};

export function readCrosse(text: string): CellReading<Crosse> {
  return lookUp(text, crosseWords, 'short, pole or goalkeeper');
}

type Role = NonNullable<Player['role']>;

const roleWords: Readonly<Record<string, Role>> = {
  ...wordsFor('attack', ['a', 'att', 'attack', 'attackman', 'attacker']),
  ...wordsFor('midfield', [
    'm',
    'mid',
    'middie',
    'midi',
    'midfield',
    'midfielder',
    'ssdm',
    'dmid',
    'd mid',
    'fogo',
    'face off',
    'faceoff',
  ]),
  ...wordsFor('defense', ['d', 'def', 'defense', 'defence', 'defender', 'defenseman', 'close d', 'close defense']),
  ...wordsFor('lsm', ['lsm', 'long stick mid', 'long stick middie', 'long stick midfield']),
  ...wordsFor('goalkeeper', ['g', 'gk', 'goalie', 'goalkeeper', 'keeper', 'goal']),
};

export function readRole(text: string): CellReading<Role> {
  // Of "A/M" the first counts: what he plays most.
  const [first = '', ...others] = text.split(/[/,;&+]/);
  const reading = lookUp(first, roleWords, 'attack, midfield, defense, lsm or goalkeeper');
  if (reading.kind === 'unread' || others.length === 0) return reading;
  return { ...reading, doubt: `names more than one place; ${reading.value} was taken` };
}

const levelWords: Readonly<Record<string, Level>> = {
  ...wordsFor('8U', ['8u', 'u8']),
  ...wordsFor('10U', ['10u', 'u10']),
  ...wordsFor('12U', ['12u', 'u12']),
  ...wordsFor('14U', ['14u', 'u14', 'middle school']),
  ...wordsFor('highSchool', ['hs', 'high school', 'highschool', 'varsity', 'jv']),
  ...wordsFor('college', ['college', 'university']),
  ...wordsFor('pro', ['pro', 'professional']),
};

export function readLevel(text: string): CellReading<Level> {
  return lookUp(text, levelWords, '8U, 10U, 12U, 14U, high school, college or pro');
}

const yesWords: Readonly<Record<string, boolean>> = {
  ...wordsFor(true, ['y', 'yes', 'x', 'true', '1', 'out', 'injured', 'absent', 'here', 'present', 'available']),
  ...wordsFor(false, ['n', 'no', 'false', '0', '-', 'in', 'ok']),
};

export function readYes(text: string): CellReading<boolean> {
  return lookUp(text, yesWords, 'yes or no');
}

/** School grades, for who grades by letters. */
const letters: Readonly<Record<string, number>> = { a: 5, b: 4, c: 3, d: 2, e: 1, f: 1 };

/** A grade from 1 to 5: `4`, `3.5`, `3,5`, `4/5`, `B`. */
export function readGrade(text: string): CellReading<number> {
  const plain = text.trim().toLowerCase();
  if (Object.hasOwn(letters, plain)) return read(letters[plain]!);
  const number = numberOf(plain.replace(/\s*(\/|of)\s*5$/, ''));
  if (number === undefined) return unread('is no grade from 1 to 5');
  return number >= 1 && number <= 5 ? read(number) : unread('is no grade: they run from 1 (weakest) to 5 (best)');
}

/** Miles an hour in one of each unit in which speeds are measured. */
const mphIn: Readonly<Record<string, number>> = {
  mph: 1,
  kmh: toMph(kmh(1)),
  ms: toMph(metres(1)),
  fps: toMph(feet(1)),
};

/** Speeds in miles an hour, each try: `58 61 60`, `95 km/h`, `26 m/s`. `unit` is that of the column. */
export function readSpeeds(text: string, unit: string): CellReading<number[]> {
  const { numbers, unit: own } = readings(text, 'speed', /(mph|km\/?h|kph|m\/s|fps|ft\/s)/i);
  if (numbers === undefined) return unread('holds no speeds');
  const named = speedUnit(own ?? unit);
  const factor = Object.hasOwn(mphIn, named) ? mphIn[named] : undefined;
  if (factor === undefined) return unread(`has a unit that is not known: ${own ?? unit}`);
  // To a hundredth, as fine as any radar.
  return read(numbers.map((number) => (factor === 1 ? number : Math.round(number * factor * 100) / 100)));
}

function speedUnit(unit: string): string {
  const plain = unit.toLowerCase();
  if (plain === '' || plain === 'mph') return 'mph';
  if (/^k(m\/?h|ph)$/.test(plain)) return 'kmh';
  if (plain === 'fps' || plain === 'ft/s') return 'fps';
  return plain === 'm/s' ? 'ms' : plain;
}

/** Times over 20 yards in seconds, each try. */
export function readTimes(text: string): CellReading<number[]> {
  const { numbers } = readings(text, 'seconds', /(seconds|secs?|s)\b/i);
  return numbers === undefined ? unread('holds no times in seconds') : read(numbers);
}

/** Counts, each try. */
export function readCounts(text: string): CellReading<number[]> {
  const { numbers } = readings(text, 'count', /(catches|reps)/i);
  return numbers === undefined ? unread('holds no counts') : read(numbers);
}

/** Shots on goal out of shots: `34/50`, `34 of 50`. */
export function readOnGoal(text: string): CellReading<{ hits: number; shots: number }> {
  const found = /^(\d+)\s*(?:\/|of|out of|-)\s*(\d+)$/i.exec(text.trim());
  if (found === null) return unread('does not say how many of how many, like 34/50');
  const [hits, shots] = [Number(found[1]), Number(found[2])];
  return shots > 0 && hits <= shots ? read({ hits, shots }) : unread('has more on goal than shots');
}

/** Height in centimetres: `178`, `178 cm`, `1.78 m`, `5'10"`, `5-10`, `5 ft 10 in`, `70 in`. `unit` is that of the column. */
export function readHeight(text: string, unit: string): CellReading<number> {
  const plain = text.trim().toLowerCase().replace(/[’′]/g, "'").replace(/[”″]/g, '"');
  const feetInches = /^(\d)\s*(?:'|ft\.?|feet|-)\s*(?:(\d{1,2}(?:\.\d+)?)\s*(?:"|''|in\.?|inches)?)?$/.exec(plain);
  if (feetInches !== null) return inRange((Number(feetInches[1]) * 12 + Number(feetInches[2] ?? 0)) * cmPerInch);
  const found = /^(\d+(?:[.,]\d+)?)\s*(cm|m|in\.?|inches|"|ft|feet)?$/.exec(plain);
  const number = found === null ? undefined : numberOf(found[1]!);
  if (number === undefined) return unread(heightWords);
  const named = (found?.[2] ?? unit).replace('.', '');
  if (named === 'cm') return inRange(number);
  if (named === 'm') return inRange(number * 100);
  if (named === 'in' || named === 'inches' || named === '"') return inRange(number * cmPerInch);
  // 5.10 may be five feet ten or five feet one and a bit.
  if (named === 'ft' || named === 'feet')
    return Number.isInteger(number) ? inRange(number * 12 * cmPerInch) : unread(heightWords);
  if (number >= leastCm) return inRange(number);
  if (number >= leastInches) return inRange(number * cmPerInch);
  return number > 0.9 && number < 2.3 ? inRange(number * 100) : unread(heightWords);
}

const heightWords = `is no height that can be read: write 178 cm, 1.78 m or 5'10"`;
/** Exact by definition. */
const cmPerInch = 2.54;
/** A bare number of at least so much is centimetres, else inches of at least so much. */
const leastCm = 90;
const leastInches = 36;
/** As the playbook keeps heights. */
const mostCm = 230;

function inRange(cm: number): CellReading<number> {
  const rounded = Math.round(cm * 10) / 10;
  return rounded >= leastCm && rounded <= mostCm ? read(rounded) : unread('is no height of a man or boy');
}

/** Several readings in one cell, and the unit that stands with them. */
function readings(
  text: string,
  kind: ReadingKind,
  units: RegExp,
): { readonly numbers: number[] | undefined; readonly unit: string | undefined } {
  const unit = units.exec(text)?.[1];
  const bare = text.replace(new RegExp(units, 'gi'), ' ').trim();
  const numbers = readingParts(bare, kind).map(numberOf);
  const usable = numbers.length > 0 && numbers.every((number) => number !== undefined && number > 0 && number <= 1000);
  return { numbers: usable ? (numbers as number[]) : undefined, unit };
}

function numberOf(text: string): number | undefined {
  const plain = text.trim().replace(',', '.');
  return /^\d+(\.\d+)?$|^\.\d+$/.test(plain) ? Number(plain) : undefined;
}

function lookUp<T>(text: string, words: Readonly<Record<string, T>>, expected: string): CellReading<T> {
  const plain = text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}-]+/gu, ' ')
    .replace(/(?<=\p{L})-/gu, ' ')
    .trim();
  return Object.hasOwn(words, plain) ? read(words[plain]!) : unread(`is none of ${expected}`);
}

function wordsFor<T>(value: T, words: readonly string[]): Readonly<Record<string, T>> {
  return Object.fromEntries(words.map((word) => [word, value]));
}

function read<T>(value: T): CellReading<T> {
  return { kind: 'read', value };
}

function unread(why: string): { readonly kind: 'unread'; readonly why: string } {
  return { kind: 'unread', why };
}
