import type { BenchEvent, BenchGame, BenchSettings } from './bench-event.ts';
import type { WrittenChances } from './chance-records.ts';

/** A game as it is kept on the device: itself, and what of it is in the playbook. */
export interface KeptGame {
  readonly game: BenchGame;
  readonly written: WrittenChances;
}

/** What was kept. */
export type KeptReading =
  | { readonly kind: 'none' }
  | { readonly kind: 'game'; readonly kept: KeptGame }
  /** It cannot be read: in a sentence, why. */
  | { readonly kind: 'broken'; readonly why: string };

/** Of the form that is written now. */
const version = 1;

/** The text that is kept of a game. */
export function keptGameText(kept: KeptGame): string {
  return JSON.stringify({ format: 'sliderule-bench', version, ...kept });
}

/** Reads what was kept; never throws. A game of which the last taps are damaged is not taken in part: its clocks would be wrong. */
export function readKeptGame(text: string | null): KeptReading {
  if (text === null || text === '') return { kind: 'none' };
  let read: unknown;
  try {
    read = JSON.parse(text);
  } catch {
    return { kind: 'broken', why: 'what was kept is not whole' };
  }
  if (!isRecord(read) || read.format !== 'sliderule-bench')
    return { kind: 'broken', why: 'it is no game of the bench' };
  if (read.version !== version) return { kind: 'broken', why: 'it was kept by another version of Sliderule' };
  const { game, written } = read;
  if (!isGame(game)) return { kind: 'broken', why: faultOf(game) };
  const isWritten = isRecord(written) && Object.values(written).every((one) => typeof one === 'string');
  return { kind: 'game', kept: { game, written: isWritten ? (written as WrittenChances) : {} } };
}

function faultOf(game: unknown): string {
  if (!isRecord(game) || !Array.isArray(game.events)) return 'it has no taps';
  const at = game.events.findIndex((event) => !isEvent(event));
  return at === -1 ? 'its settings are damaged' : `tap ${at + 1} of ${game.events.length} is damaged`;
}

function isGame(game: unknown): game is BenchGame {
  if (!isRecord(game) || typeof game.id !== 'string' || !isCount(game.seed) || !isSettings(game.settings)) return false;
  return Array.isArray(game.events) && game.events.every(isEvent);
}

function isSettings(value: unknown): value is BenchSettings {
  if (!isRecord(value)) return false;
  const { opponent, date, periodSeconds, periods, runningTime, sides, learnt, trust } = value;
  return (
    (opponent === undefined || typeof opponent === 'string') &&
    typeof date === 'string' &&
    isTime(periodSeconds) &&
    isCount(periods) &&
    typeof runningTime === 'boolean' &&
    isOneOf(sides, ['right', 'left', 'both']) &&
    isCount(learnt) &&
    learnt >= 1 &&
    isTime(trust) &&
    trust <= 1
  );
}

function isEvent(value: unknown): value is BenchEvent {
  if (!isRecord(value) || !isTime(value.wall) || typeof value.kind !== 'string') return false;
  const isSo = Object.hasOwn(checks, value.kind) ? checks[value.kind as BenchEvent['kind']] : undefined;
  return isSo?.(value) ?? false;
}

type Fields = Readonly<Record<string, unknown>>;

const isSide = (value: unknown): boolean => isOneOf(value, ['us', 'them']);

const checks: Readonly<Record<BenchEvent['kind'], (event: Fields) => boolean>> = {
  clock: ({ does }) => isOneOf(does, ['start', 'stop']),
  clockSet: ({ period, left }) => isCount(period) && isTime(left),
  period: ({ period }) => isCount(period),
  flag: ({ on }) => isSide(on),
  flagOff: () => true,
  fouls: ({ penalties, simultaneous }) =>
    typeof simultaneous === 'boolean' && Array.isArray(penalties) && penalties.length > 0 && penalties.every(isPenalty),
  letGo: ({ penalty }) => isCount(penalty),
  boxSet: ({ penalty, left }) => isCount(penalty) && isTime(left) && left > 0,
  goal: ({ by }) => isSide(by),
  begun: () => true,
  called: ({ play, fromSide, drawn }) =>
    typeof play === 'string' && isOneOf(fromSide, ['left', 'right']) && typeof drawn === 'boolean',
  seen: ({ scheme }) => typeof scheme === 'string',
  ticked: ({ cue, isSo }) => typeof cue === 'string' && typeof isSo === 'boolean',
  shot: () => true,
  result: ({ result }) => typeof result === 'string',
  look: ({ look }) => look === null || (isRecord(look) && typeof look.kind === 'string'),
  absent: ({ man, isAbsent }) => isCount(man) && typeof isAbsent === 'boolean',
  timeout: ({ by }) => isSide(by),
};

function isPenalty(value: unknown): boolean {
  if (!isRecord(value)) return false;
  const { side, man, seconds, fixedSeconds } = value;
  return (
    isSide(side) &&
    (man === null || isCount(man)) &&
    isTime(seconds) &&
    seconds > 0 &&
    isTime(fixedSeconds) &&
    fixedSeconds <= seconds
  );
}

function isRecord(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isTime(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value) && value >= 0;
}

function isCount(value: unknown): value is number {
  return isTime(value) && Number.isInteger(value);
}

function isOneOf(value: unknown, all: readonly string[]): boolean {
  return typeof value === 'string' && all.includes(value);
}
