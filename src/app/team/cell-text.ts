import { centimetres, feet, inches, kmh, mph, toMetres, toMph } from '../../engine/index.ts';
import { type Player, type ReadingKind, readingParts } from '../../playbook/index.ts';
import type { Units } from './team-state.ts';

/** What a cell's text means, or a sentence that says why it means nothing. */
export type Read<T> =
  | { readonly kind: 'read'; readonly value: T }
  | { readonly kind: 'problem'; readonly text: string };

/** A jersey number; a # before it does no harm. */
export function readJersey(text: string): Read<number> {
  const digits = text.trim().replace(/^#\s*/, '');
  if (digits === '') return problem('He needs a number: a whole number from 0 to 999.');
  return /^\d{1,3}$/.test(digits)
    ? read(Number(digits))
    : problem(`“${text.trim()}” is no jersey number. It is a whole number from 0 to 999.`);
}

/** A grade; empty is none. */
export function readGrade(text: string): Read<number | undefined> {
  if (text.trim() === '') return read(undefined);
  const value = Number(text.trim().replace(',', '.'));
  return value >= 1 && value <= 5
    ? read(value)
    : problem('A grade goes from 1 (weakest of the level) to 5 (best). Empty counts as 3, the usual.');
}

/** Readings of the same thing, apart by spaces; empty is none. Speeds come out in miles an hour, whatever they were typed in. */
export function readReadings(
  text: string,
  unit: ReadingKind,
  speed: Units['speed'],
): Read<readonly number[] | undefined> {
  // A unit belongs to the number before it; the stroke of km/h parts nothing.
  const joined = text.replace(/(\d)\s*(s|sec|mph|km\/?h|kph)\b/gi, (_, digit, name) => digit + name.replace('/', ''));
  const parts = readingParts(joined, unit);
  if (parts.length === 0) return read(undefined);
  const values: number[] = [];
  for (const part of parts) {
    const found = /^(\d+(?:\.\d*)?|\.\d+)(s|sec|mph|kmh|kph)?$/i.exec(part);
    const value = Number(found?.[1]);
    if (found === null || !(value > 0))
      return problem(`“${part}” is no reading. Type numbers with spaces between them.`);
    if (value > 1000) return problem(`${part} is too much for a reading.`);
    values.push(inFileUnit(value, unit, found[2] === undefined ? speed : unitNamed(found[2], speed)));
  }
  return values.length > 50 ? problem('50 readings are kept at most; the newest say most.') : read(values);
}

export function printReadings(values: readonly number[] | undefined, unit: ReadingKind, speed: Units['speed']): string {
  return (values ?? []).map((value) => String(shown(value, unit, speed))).join(' ');
}

/** One value as it is shown: a speed in the coach's unit to a tenth. */
export function shown(value: number, unit: ReadingKind, speed: Units['speed']): number {
  if (unit !== 'speed') return round(value, 100);
  return round(speed === 'kmh' ? toMetres(mph(value)) * 3.6 : value, 10);
}

type OnGoal = NonNullable<NonNullable<Player['measured']>['onGoal']>;

/** "34 of 50", "34/50" or "34 50". */
export function readOnGoal(text: string): Read<OnGoal | undefined> {
  if (text.trim() === '') return read(undefined);
  const found = /^(\d{1,5})\s*(?:\/|of|\s)\s*(\d{1,5})$/.exec(text.trim());
  const [hits, shots] = [Number(found?.[1]), Number(found?.[2])];
  if (found === null) return problem('Type how many were on goal of how many shots, such as 34 of 50.');
  if (shots < 1 || shots > 10_000) return problem('Count 1 to 10 000 shots.');
  return hits <= shots ? read({ hits, shots }) : problem(`${hits} on goal are more than the ${shots} shots.`);
}

export function printOnGoal(value: OnGoal | undefined): string {
  return value === undefined ? '' : `${value.hits} of ${value.shots}`;
}

/** A height in the coach's unit, or in another when it is plain which: 178, 1.78, 5'10", 5 10. In centimetres. */
export function readHeight(text: string, unit: Units['height']): Read<number | undefined> {
  if (text.trim() === '') return read(undefined);
  const value = heightOf(text.trim().toLowerCase().replace(',', '.'), unit);
  const example = unit === 'cm' ? '178' : '5 10';
  if (value === undefined) return problem(`“${text.trim()}” is no height. Type it like ${example}.`);
  return value >= 90 && value <= 230
    ? read(round(value, 10))
    : problem(`A height lies between 90 and 230 cm. Type it like ${example}.`);
}

export function printHeight(value: number | undefined, unit: Units['height']): string {
  if (value === undefined) return '';
  if (unit === 'cm') return String(round(value, 10));
  const whole = Math.round(centimetres(value) * inchesPerYard);
  return `${Math.floor(whole / 12)}′${whole % 12}″`;
}

const inchesPerYard = 36;

function heightOf(text: string, unit: Units['height']): number | undefined {
  const plain = /^(\d+(?:\.\d+)?)\s*(cm|m|in|"|″)?$/.exec(text);
  if (plain !== null) {
    const value = Number(plain[1]);
    if (plain[2] === 'cm' || (plain[2] === undefined && value >= 90)) return value;
    if (plain[2] === 'm' || (unit === 'cm' && plain[2] === undefined && value < 3)) return value * 100;
    if (plain[2] !== undefined || (unit === 'ftIn' && value >= 36)) return inCentimetres(inches(value));
    return unit === 'ftIn' && value >= 3 && value < 8 && Number.isInteger(value)
      ? inCentimetres(feet(value))
      : undefined;
  }
  const both = /^(\d)\s*(?:'|′|’|ft|-|\s)\s*(\d{1,2}(?:\.\d+)?)?\s*(?:"|″|”|in|'')?$/.exec(text);
  const rest = Number(both?.[2] ?? 0);
  return both === null || rest >= 12 ? undefined : inCentimetres(feet(Number(both[1])) + inches(rest));
}

function inCentimetres(yards: number): number {
  return toMetres(yards) * 100;
}

function unitNamed(name: string, speed: Units['speed']): Units['speed'] {
  if (/^k/i.test(name)) return 'kmh';
  return /^m/i.test(name) ? 'mph' : speed;
}

function inFileUnit(value: number, unit: ReadingKind, speed: Units['speed']): number {
  return unit === 'speed' && speed === 'kmh' ? round(toMph(kmh(value)), 100) : value;
}

function round(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}

function read<T>(value: T): Read<T> {
  return { kind: 'read', value };
}

function problem(text: string): { readonly kind: 'problem'; readonly text: string } {
  return { kind: 'problem', text };
}
