import { useMemo } from 'react';
import { otherSide, type RuleCode, timesBack } from '../../engine/index.ts';
import { menOfScheme, type Playbook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import {
  type Advice,
  adviceFor,
  adviseCall,
  type Belief,
  type BenchGame,
  type BenchState,
  beliefOf,
  type Call,
  type CallAdvice,
  callsOf,
  expectedSchemes,
  foldGame,
  type MeasuredCalls,
  oddsOfTicks,
  type Situation,
  situationOf,
  stateLater,
} from '../../teach/index.ts';
import { readPlayOf } from '../play/play-reading.ts';
import { useNow } from './use-now.ts';

/** A game as it stands at this moment. */
export interface GameNow {
  readonly game: BenchGame;
  readonly code: RuleCode;
  readonly state: BenchState;
  readonly situation: Situation;
  readonly advice: Advice;
  /** Until the next man of the short side is back, s of play; `null` when nobody is short. */
  readonly nextBack: number | null;
}

/** The game now: what was tapped, and the time since. */
export function useGame(playbook: Playbook, game: BenchGame): GameNow {
  const { team, settings } = playbook;
  const code = useMemo(() => ruleCodeOf({ team, ...(settings && { settings }) }), [team, settings]);
  const folded = useMemo(() => foldGame(game, code), [game, code]);
  const now = useNow(folded.clock.running, game);
  const state = useMemo(() => stateLater(folded, code, now), [folded, code, now]);
  const situation = situationOf(state, code);
  const call = state.open?.call;
  const called = playbook.plays.find(({ id }) => id === call?.play);
  const lastTenOf = called?.lastTen === undefined ? null : called.name;
  const advice = adviceFor(situation, { code, state, periods: game.settings.periods, lastTenOf });
  const nextBack = state.manUp === null ? null : (timesBack(code, state.box, otherSide(state.manUp))[0] ?? null);
  return { game, code, state, situation, advice, nextBack };
}

/** The plays that can be called in a game; what has a fault cannot. */
export function useCalls(playbook: Playbook, sides: BenchGame['settings']['sides']): readonly Call[] {
  const { format, version, team, plays, sets, settings } = playbook;
  // Man-ups that are written down change no play: nothing is read anew for them.
  return useMemo(() => {
    const ground: Playbook = { format, version, team, plays: [], ...(sets && { sets }), ...(settings && { settings }) };
    return callsOf({ plays }, sides).filter(
      ({ play }) => readPlayOf(ground, plays.find(({ id }) => id === play)!).isWhole,
    );
  }, [format, version, team, plays, sets, settings, sides]);
}

const noTicks: readonly { readonly cue: string; readonly isSo: boolean }[] = [];

export interface CallNow {
  readonly belief: Belief;
  readonly advice: CallAdvice;
}

/** What they may play, and what to call against it. Empty beliefs are of numbers that no scheme is for. */
export function useCallNow(
  playbook: Playbook,
  { game, state, situation }: GameNow,
  calls: readonly Call[],
  measured: MeasuredCalls | undefined,
): CallNow {
  const { opponent, learnt, trust } = game.settings;
  const defenders = situation.kind === 'manUp' ? situation.strength.defenders : 5;
  const left = wholeSteps(situation.kind === 'manUp' ? situation.edgeLeft : Number.POSITIVE_INFINITY);
  const seenNow = state.open?.side === 'us' ? state.open.seen : null;
  const seenText = state.chances.flatMap(({ side, seen }) => (side === 'us' && seen !== null ? [seen] : [])).join(' ');
  const ticks = state.open?.side === 'us' ? state.open.ticks : noTicks;
  const signs = measured?.opponent === (opponent ?? null) ? measured?.ticks : undefined;
  const belief = useMemo(() => {
    const prior = expectedSchemes(
      playbook,
      playbook.opponents?.find(({ id }) => id === opponent),
      defenders,
    );
    if (Object.keys(prior).length === 0) return {};
    const odds = signs === undefined || ticks.length === 0 ? [] : [oddsOfTicks(playbook, signs, ticks)];
    const seenBefore = seenText.split(' ').filter((id) => menOfScheme(playbook, id)?.length === defenders);
    return beliefOf({ prior, seenBefore, seenNow, odds });
  }, [playbook, opponent, defenders, seenText, seenNow, signs, ticks]);
  const advice = useMemo(() => {
    if (measured === undefined || measured.opponent !== (opponent ?? null))
      return adviseCall(calls, [], belief, { learnt, trust });
    const time = { left, tried: measured.penalty };
    return adviseCall(calls, measured.calls, belief, { learnt, trust, time });
  }, [calls, measured, belief, learnt, trust, opponent, left]);
  return { belief, advice };
}

/** Time left in steps in which worths are seen to change, s: they are found anew once in five seconds and not ten times in one. */
function wholeSteps(left: number): number {
  return 5 * Math.ceil(left / 5);
}

/** A play's name as it is called: with its side where both are called. */
export function callName(playbook: Playbook, { play, fromSide }: Call, sides: BenchGame['settings']['sides']): string {
  const name = playbook.plays.find(({ id }) => id === play)?.name ?? play;
  return sides === 'right' ? name : `${name} ${fromSide}`;
}

/** The engine's play of a call; undefined when the playbook has it no more, or it has a fault now. */
export function playOfCall(playbook: Playbook, call: Call) {
  try {
    return toEnginePlay(playbook, call.play, call.fromSide);
  } catch (error) {
    if (error instanceof TypeError || error instanceof RangeError) return undefined;
    throw error;
  }
}
