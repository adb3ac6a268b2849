import { inputHash, type Level } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { type MeasureOptions, manDownSchemeIds, onePlayText, penaltyOf, type TrialPool } from '../../worker/index.ts';
import { measurePlays } from '../sheets/measure-plays.ts';
import type { MeasuredTicks } from './bench-ticks.ts';
import type { Call, GoalsByScheme, MeasuredCall } from './call-advice.ts';

/** What calls make, found before the game, to be used without simulation. */
export interface MeasuredCalls {
  readonly opponent: string | null;
  /** The penalty that they were tried with, s, and chances against each scheme. */
  readonly penalty: number;
  readonly trials: number;
  /** Numbers of ours who were out of the game when the calls were tried. */
  readonly out?: readonly number[];
  /** What signs say of their scheme; absent when it was not found. */
  readonly ticks?: MeasuredTicks;
  readonly calls: readonly (MeasuredCall & { readonly hash: string })[];
}

/** What is to be found out. */
export interface CallsAsked {
  readonly calls: readonly Call[];
  readonly schemes: readonly string[];
  readonly opponent?: string;
  readonly trials: number;
  readonly seed: number;
  /** The playbook's own when absent or `null`. */
  readonly penalty?: number | null;
  /** The team's own when absent or `null`. */
  readonly level?: Level | null;
  /** Numbers of ours who are out of the game. */
  readonly out?: readonly number[];
  /** Less time than the whole penalty with which the calls are tried too, s; what is not less is left out. */
  readonly shorter?: readonly number[];
}

/** When a bench decides anew: half a minute and ten seconds are left (common practice, no source). */
export const usualShorter: readonly number[] = [30, 10];

/** Enough for .03 either way (see `measurePlays`). */
export const usualCallTrials = 300;

/** Every call that may be made: plays that are not put away, from the sides that are wanted; in the playbook's order. */
export function callsOf({ plays }: Pick<Playbook, 'plays'>, sides: 'right' | 'left' | 'both'): readonly Call[] {
  const wanted: readonly Call['fromSide'][] = sides === 'both' ? ['right', 'left'] : [sides];
  return plays
    .filter(({ archived }) => archived !== true)
    .flatMap(({ id }) => wanted.map((fromSide) => ({ play: id, fromSide })));
}

/** Schemes that calls are tried against: those that the opponent is known to play first, then all others with a man down or more. */
export function schemesToTry(playbook: Playbook, opponent: string | undefined): readonly string[] {
  const known = playbook.opponents?.find(({ id }) => id === opponent)?.schemes ?? {};
  const all = manDownSchemeIds(playbook);
  return [...new Set([...Object.keys(known).filter((id) => all.includes(id)), ...all])];
}

/**
 * Finds what every call makes against every scheme, first with the whole penalty, then with less of it. Rejects as `measurePlays` does; `onCall` is told what is known so
 * far, so that who stops has something.
 */
export async function measureCalls(
  pool: TrialPool,
  whole: Playbook,
  asked: CallsAsked,
  options: MeasureOptions & { readonly onCall?: (found: MeasuredCalls) => void } = {},
): Promise<MeasuredCalls> {
  const { calls, opponent, trials, out = [], shorter = [] } = asked;
  const playbook = withoutMen(whole, out);
  const penalty = asked.penalty ?? penaltyOf(playbook);
  let found: MeasuredCalls = { opponent: opponent ?? null, penalty, trials, out, calls: [] };
  for (const call of calls) {
    const goals_byScheme = await goalsOf(pool, playbook, call, asked, asked.penalty ?? null, options);
    const hash = hashOfCall(playbook, call, opponent);
    found = { ...found, calls: [...found.calls, { ...call, goals_byScheme, hash }] };
    options.onCall?.(found);
  }
  for (const left of shorter.filter((one) => one < penalty)) {
    for (const [at, call] of found.calls.entries()) {
      const goals_byScheme = await goalsOf(pool, playbook, call, asked, left, options);
      const more = { ...call, shorter: [...(call.shorter ?? []), { left, goals_byScheme }] };
      found = { ...found, calls: found.calls.map((one, number) => (number === at ? more : one)) };
      options.onCall?.(found);
    }
  }
  return found;
}

async function goalsOf(
  pool: TrialPool,
  playbook: Playbook,
  { play, fromSide }: Call,
  { schemes, level = null, seed, trials, opponent }: CallsAsked,
  penalty: number | null,
  options: MeasureOptions,
): Promise<GoalsByScheme> {
  const asked = { schemes, side: fromSide, penalty, level, seed, trials, ...(opponent !== undefined && { opponent }) };
  const [measured] = await measurePlays(pool, playbook, { ...asked, plays: [play] }, options);
  return Object.fromEntries(measured!.results.map(({ scheme, goalsPerChance }) => [scheme, goalsPerChance]));
}

/** The playbook as it is while these men of ours are out. */
export function withoutMen(playbook: Playbook, out: readonly number[]): Playbook {
  if (out.length === 0) return playbook;
  const roster = playbook.team.roster.map((player) =>
    out.includes(player.number) && player.absent !== true ? { ...player, absent: true } : player,
  );
  return { ...playbook, team: { ...playbook.team, roster } };
}

/** Stands for all of the playbook that what a call makes depends on: another hash, another answer. */
export function hashOfCall(playbook: Playbook, { play }: Call, opponent: string | undefined): string {
  const text = onePlayText(playbook, { play, scheme: '', ...(opponent !== undefined && { opponent }) });
  return inputHash({ text, schemes: playbook.schemes ?? [] });
}

/** Calls that were changed, or not tried yet, since the others were: what is known of them is old, or nothing. */
export function outdatedCalls(whole: Playbook, measured: MeasuredCalls, calls: readonly Call[]): readonly Call[] {
  const playbook = withoutMen(whole, measured.out ?? []);
  return calls.filter((call) => {
    const known = measured.calls.find(({ play, fromSide }) => play === call.play && fromSide === call.fromSide);
    return known?.hash !== hashOfCall(playbook, call, measured.opponent ?? undefined);
  });
}
