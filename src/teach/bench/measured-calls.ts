import { type Interval, inputHash, type Level } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { type MeasureOptions, manDownSchemeIds, onePlayText, penaltyOf, type TrialPool } from '../../worker/index.ts';
import { measurePlays } from '../sheets/measure-plays.ts';
import type { MeasuredTicks } from './bench-ticks.ts';
import type { Call, MeasuredCall } from './call-advice.ts';

/** What calls make, found before the game, to be used without simulation. */
export interface MeasuredCalls {
  readonly opponent: string | null;
  /** The penalty that they were tried with, s, and chances against each scheme. */
  readonly penalty: number;
  readonly trials: number;
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
}

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
 * Finds what every call makes against every scheme. Rejects as `measurePlays` does; `onCall` is told what is known so far, so that who stops has something.
 */
export async function measureCalls(
  pool: TrialPool,
  playbook: Playbook,
  { calls, schemes, opponent, trials, seed, penalty = null, level = null }: CallsAsked,
  options: MeasureOptions & { readonly onCall?: (found: MeasuredCalls) => void } = {},
): Promise<MeasuredCalls> {
  let found: MeasuredCalls = { opponent: opponent ?? null, penalty: penalty ?? penaltyOf(playbook), trials, calls: [] };
  for (const call of calls) {
    const [measured] = await measurePlays(
      pool,
      playbook,
      {
        plays: [call.play],
        schemes,
        side: call.fromSide,
        penalty,
        level,
        seed,
        trials,
        ...(opponent !== undefined && { opponent }),
      },
      options,
    );
    const goals_byScheme: Record<string, Interval> = {};
    for (const { scheme, goalsPerChance } of measured!.results) goals_byScheme[scheme] = goalsPerChance;
    found = {
      ...found,
      calls: [...found.calls, { ...call, goals_byScheme, hash: hashOfCall(playbook, call, opponent) }],
    };
    options.onCall?.(found);
  }
  return found;
}

/** Stands for all of the playbook that what a call makes depends on: another hash, another answer. */
export function hashOfCall(playbook: Playbook, { play }: Call, opponent: string | undefined): string {
  const text = onePlayText(playbook, { play, scheme: '', ...(opponent !== undefined && { opponent }) });
  return inputHash({ text, schemes: playbook.schemes ?? [] });
}

/** Calls that were changed, or not tried yet, since the others were: what is known of them is old, or nothing. */
export function outdatedCalls(playbook: Playbook, measured: MeasuredCalls, calls: readonly Call[]): readonly Call[] {
  return calls.filter((call) => {
    const known = measured.calls.find(({ play, fromSide }) => play === call.play && fromSide === call.fromSide);
    return known?.hash !== hashOfCall(playbook, call, measured.opponent ?? undefined);
  });
}
