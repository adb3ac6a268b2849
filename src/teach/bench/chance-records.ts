import { canonicalJson } from '../../engine/index.ts';
import { type Chance, limits, type Playbook } from '../../playbook/index.ts';
import { type BenchChance, isShotResult } from './bench-chance.ts';
import type { BenchGame } from './bench-event.ts';

/** The man-ups of a game that are over, as the playbook keeps them. Ticks are in the belief alone: where the ball was then, nobody wrote down. Their ids are those of the game with their number: the same taps give the same. */
export function chanceRecords({ id, settings }: BenchGame, chances: readonly BenchChance[]): readonly Chance[] {
  return chances.map((chance, at) => ({ id: `${id}-${at + 1}`, ...recordOf(chance, settings) }));
}

function recordOf(chance: BenchChance, { date, opponent }: BenchGame['settings']): Omit<Chance, 'id'> {
  const { side, start, period, left, from, penalty, call, seen, look, scorer, firstShot } = chance;
  const result = chance.result ?? 'expired';
  const shots = chance.shots + (isShotResult(result) ? 1 : 0);
  return {
    side: side === 'us' ? 'ours' : 'theirs',
    date,
    ...(opponent !== undefined && { opponent }),
    period,
    clock: Math.round(left),
    ...(penalty !== null && {
      penalty: {
        seconds: penalty.seconds,
        ...(penalty.fixed && { fixed: true }),
        ...(penalty.men > 1 && { men: Math.min(3, penalty.men) }),
      },
    }),
    start,
    ...(call !== null && { call: call.play, fromSide: call.fromSide }),
    ...(seen !== null && { scheme: seen }),
    ...(call?.belief !== undefined && { belief: roundedShares(call.belief) }),
    result,
    shots,
    ...(firstShot !== null && firstShot > from && { firstShot: Math.round(firstShot - from) }),
    ...(look !== null && { look: { ...look } }),
    ...(scorer !== null && { scorer }),
    ...(call?.expected !== undefined && { expected: call.expected }),
  };
}

function roundedShares(belief: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(belief)
      .map(([id, share]) => [id, Math.round(1000 * share) / 1000] as const)
      .filter(([, share]) => share > 0),
  );
}

/** What was written into the playbook of a game, by the man-up's id: its text then, to see whether the taps say otherwise now. */
export type WrittenChances = Readonly<Record<string, string>>;

/** The playbook with a game's man-ups, and what is written in it now. */
export interface WrittenGame {
  readonly playbook: Playbook;
  readonly written: WrittenChances;
  /** Man-ups for which there is no room. */
  readonly left: number;
}

/**
 * Writes what is new or different since it was last written, and takes out what was taken back. What a coach changed or deleted elsewhere since stays as
 * he left it, as long as no tap changes that very man-up; what he added to it (notes, an assist) stays even then.
 */
export function writeChances(playbook: Playbook, records: readonly Chance[], before: WrittenChances): WrittenGame {
  const texts = Object.fromEntries(records.map((record) => [record.id, canonicalJson(record)]));
  const changed = new Map(records.filter(({ id }) => before[id] !== texts[id]).map((record) => [record.id, record]));
  const gone = new Set(Object.keys(before).filter((id) => texts[id] === undefined));
  const chances = playbook.chances ?? [];
  if (changed.size === 0 && gone.size === 0) return { playbook, written: before, left: 0 };
  const kept = chances
    .filter(({ id }) => !gone.has(id))
    .map((chance) => {
      const record = changed.get(chance.id);
      return record === undefined ? chance : overwritten(chance, record);
    });
  const there = new Set(chances.map(({ id }) => id));
  const added = [...changed.values()].filter(({ id }) => !there.has(id));
  const room = Math.max(0, limits.chances - kept.length);
  const fitting = added.slice(0, room);
  const left = added.length - fitting.length;
  const written = Object.fromEntries(
    Object.entries(texts).filter(([id]) => !added.slice(room).some((one) => one.id === id)),
  );
  return { playbook: { ...playbook, chances: [...kept, ...fitting] }, written, left };
}

/** Parts that the bench knows: of them its word counts; of the others that of whoever wrote them. */
const ofTheBench: readonly (keyof Chance)[] = [
  'side',
  'date',
  'opponent',
  'period',
  'clock',
  'penalty',
  'start',
  'call',
  'fromSide',
  'scheme',
  'belief',
  'result',
  'shots',
  'firstShot',
  'look',
  'scorer',
  'expected',
];

function overwritten(chance: Chance, record: Chance): Chance {
  const others = Object.entries(chance).filter(([key]) => !ofTheBench.includes(key as keyof Chance));
  return { ...(Object.fromEntries(others) as unknown as Chance), ...record };
}
