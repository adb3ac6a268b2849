import { type Level, levels } from '../engine/index.ts';
import { badUse } from './failure.ts';

/** What commander hands over for the options that several commands share: texts as typed. */
export interface RawConditions {
  readonly side?: string;
  readonly penalty?: string;
  readonly trials?: string;
  readonly seed?: string;
  readonly level?: string;
  readonly threads?: string;
}

/** The same, checked. `null` stands for what the playbook says, or for what is usual. */
export interface Conditions {
  readonly side: 'left' | 'right';
  /** Seconds. */
  readonly penalty: number | null;
  readonly trials: number | null;
  readonly seed: number;
  readonly level: Level | null;
  readonly threads: number | null;
}

export const defaultSeed = 1;

/** Largest seed: what 32 bits hold. */
const largestSeed = 2 ** 32 - 1;
/** More trials than this tell nothing new and take hours. */
const mostTrials = 1_000_000;

/** Fails with a plain sentence for the first option that makes no sense. */
export function readConditions(raw: RawConditions): Conditions {
  return {
    side: readSide(raw.side),
    penalty: raw.penalty === undefined ? null : wholeNumber('--penalty', raw.penalty, 5, 300, 'seconds'),
    trials: raw.trials === undefined ? null : wholeNumber('--trials', raw.trials, 1, mostTrials),
    seed: raw.seed === undefined ? defaultSeed : wholeNumber('--seed', raw.seed, 0, largestSeed),
    level: readLevel(raw.level),
    threads: raw.threads === undefined ? null : wholeNumber('--threads', raw.threads, 1, 256),
  };
}

/** A whole number from `low` to `high` (both included) written in digits. */
export function wholeNumber(option: string, raw: string, low: number, high: number, unit = ''): number {
  const value = /^\d{1,15}$/.test(raw) ? Number(raw) : Number.NaN;
  if (!(value >= low && value <= high)) {
    const what = unit === '' ? 'a whole number' : `a whole number of ${unit}`;
    throw badUse(`invalid ${option}: ${shown(raw)} (expected ${what} from ${low} to ${high}).`);
  }
  return value;
}

function readSide(raw: string | undefined): 'left' | 'right' {
  if (raw === undefined || raw === 'right') return 'right';
  if (raw === 'left') return 'left';
  throw badUse(`invalid --side: ${shown(raw)} (expected left or right, as the offense sees it looking in).`);
}

function readLevel(raw: string | undefined): Level | null {
  if (raw === undefined) return null;
  const level = levels.find((one) => one.toLowerCase() === raw.toLowerCase());
  if (level === undefined) throw badUse(`invalid --level: ${shown(raw)} (expected ${levels.join(', ')}).`);
  return level;
}

export function shown(raw: string): string {
  return JSON.stringify(raw.slice(0, 40)).slice(1, -1) || '(nothing)';
}
