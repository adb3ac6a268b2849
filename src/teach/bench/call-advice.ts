import { type CallMix, createDraws, drawnCall, type Interval, mixInDoubt, uniform } from '../../engine/index.ts';
import type { Belief } from './scheme-belief.ts';

/** A play from a side. */
export interface Call {
  readonly play: string;
  readonly fromSide: 'left' | 'right';
}

/** Goals a chance against each scheme that was tried, by its id. */
export type GoalsByScheme = Readonly<Record<string, Interval>>;

/** What a call makes against each scheme that it was tried against. */
export interface MeasuredCall extends Call {
  /** With the whole penalty to come. */
  readonly goals_byScheme: GoalsByScheme;
  /** The same with so much less of it left, s; the longest first. None where only the whole was tried. */
  readonly shorter?: readonly { readonly left: number; readonly goals_byScheme: GoalsByScheme }[];
}

/** What the advice goes by beside calls and belief. */
export interface CallGround {
  /** Calls that the unit can run: the most in the mix. */
  readonly learnt: number;
  /** How far the belief is trusted, 0 to 1. */
  readonly trust: number;
  /** What is left until their man is back, s, and the penalty with which the calls were tried; absent: all of it. */
  readonly time?: { readonly left: number; readonly tried: number };
}

/** A call with what it is worth by what is believed, and how often to make it. */
export interface WeighedCall extends Call {
  readonly goals: Interval;
  /** 0 to 1, 1 over all calls. */
  readonly share: number;
}

/** What to call. */
export type CallAdvice =
  | {
      readonly kind: 'measured';
      /** All calls, the most valuable first. */
      readonly calls: readonly WeighedCall[];
      /** Of the mix: goals a chance as is believed, and the least, whatever they choose. */
      readonly asBelieved: number;
      readonly atWorst: number;
      /** Share of the belief on schemes that no call was tried against; it is left out. */
      readonly untried: number;
    }
  /** Nothing was tried against what they may play: the calls in the playbook's order, in turn. */
  | { readonly kind: 'inOrder'; readonly calls: readonly Call[] };

/**
 * What to call: each call's worth by what is believed and by the time that is left, and how often to make it. Who cannot be told from the best by what was tried
 * is called too, as often as it may be the best (`mixInDoubt`).
 */
export function adviseCall(
  calls: readonly Call[],
  measured: readonly MeasuredCall[],
  belief: Belief,
  { learnt, trust, time }: CallGround,
): CallAdvice {
  const known = calls.flatMap((call) => {
    const found = measured.find((one) => isSameCall(one, call));
    return found === undefined ? [] : [{ ...call, goals_byScheme: goalsWithin(found, time) }];
  });
  const schemes = Object.keys(belief).filter(
    (id) =>
      belief[id]! > 0 && known.length > 0 && known.every(({ goals_byScheme }) => goals_byScheme[id] !== undefined),
  );
  const told = schemes.reduce((sum, id) => sum + belief[id]!, 0);
  if (known.length === 0 || told === 0) return { kind: 'inOrder', calls: calls.slice(0, learnt) };
  const weights = schemes.map((id) => belief[id]! / told);
  const table = known.map(({ goals_byScheme }) => schemes.map((id) => goals_byScheme[id]!));
  const mix = mixInDoubt({
    goals_byCallScheme: table.map((row) => row.map(({ mean }) => mean)),
    error_byCallScheme: table.map((row) => row.map(errorOf)),
    weight_byScheme: weights,
    trust,
    mostCalls: learnt,
    seed: mixSeed,
  });
  const weighed = known.map(({ play, fromSide }, at) => ({
    play,
    fromSide,
    goals: meanOver(table[at]!, weights),
    share: mix.share_byCall[at]!,
  }));
  return {
    kind: 'measured',
    calls: [...weighed].sort((one, other) => other.goals.mean - one.goals.mean),
    asBelieved: mix.asBelieved,
    atWorst: mix.atWorst,
    untried: Math.max(0, 1 - told),
  };
}

/** The same calls with the same worth are mixed the same, in every game and in the shell. */
const mixSeed = 1;

/** The standard error behind an interval of 95 times in 100; its lower end may be cut off at no goal. */
function errorOf({ mean, high }: Interval): number {
  return Math.max(0, high - mean) / 1.96;
}

/** Goals with so much time left: straight between the times that were tried, and down to none with no time. */
function goalsWithin({ goals_byScheme, shorter = [] }: MeasuredCall, time: CallGround['time']): GoalsByScheme {
  if (time === undefined || shorter.length === 0) return goals_byScheme;
  const tried = [{ left: time.tried, goals_byScheme }, ...shorter];
  const under = tried.find(({ left }) => left <= time.left);
  const over = tried[(under === undefined ? tried.length : tried.indexOf(under)) - 1];
  if (over === undefined) return goals_byScheme;
  const from = under?.left ?? 0;
  const share = (time.left - from) / (over.left - from);
  const between = (id: string): Interval => {
    const [less, more] = [under?.goals_byScheme[id] ?? nothing, over.goals_byScheme[id]!];
    const at = (end: keyof Interval): number => less[end] + share * (more[end] - less[end]);
    return { mean: at('mean'), low: at('low'), high: at('high') };
  };
  return Object.fromEntries(Object.keys(over.goals_byScheme).map((id) => [id, between(id)]));
}

const nothing: Interval = { mean: 0, low: 0, high: 0 };

/**
 * The call that is drawn the so-many-th time (from 0) in the game of this seed: the same for the same advice, so that to look again is not to draw again. In the
 * order of the playbook they come in turn. `undefined` when there is no call.
 */
export function drawCall(advice: CallAdvice, seed: number, number: number): Call | undefined {
  if (advice.calls.length === 0) return undefined;
  if (advice.kind === 'inOrder') return advice.calls[number % advice.calls.length];
  const mix: CallMix = { share_byCall: advice.calls.map(({ share }) => share), asBelieved: 0, atWorst: 0 };
  return advice.calls[drawnCall(mix, uniform(createDraws(seed), number, 0, callDraw, 0))];
}

/** The kind of these draws among all of their seed. */
const callDraw = 9;

/**
 * What a call makes by what is believed. All schemes were tried with the same luck, so that their errors may go together: half widths are added as
 * they are, which is the widest that the interval can be.
 */
function meanOver(goals: readonly Interval[], weights: readonly number[]): Interval {
  const over = (of: (one: Interval) => number): number =>
    goals.reduce((sum, one, at) => sum + weights[at]! * of(one), 0);
  return { mean: over(({ mean }) => mean), low: over(({ low }) => low), high: over(({ high }) => high) };
}

export function isSameCall(one: Call, other: Call): boolean {
  return one.play === other.play && one.fromSide === other.fromSide;
}
