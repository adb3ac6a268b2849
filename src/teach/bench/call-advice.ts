import { type CallMix, createDraws, drawnCall, type Interval, mixCalls, uniform } from '../../engine/index.ts';
import type { Belief } from './scheme-belief.ts';

/** A play from a side. */
export interface Call {
  readonly play: string;
  readonly fromSide: 'left' | 'right';
}

/** What a call makes against each scheme that it was tried against, goals a chance. */
export interface MeasuredCall extends Call {
  readonly goals_byScheme: Readonly<Record<string, Interval>>;
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

/** The call to make first where the calls can't be told apart: their order is that of the playbook. */
export function adviseCall(
  calls: readonly Call[],
  measured: readonly MeasuredCall[],
  belief: Belief,
  { learnt, trust }: { readonly learnt: number; readonly trust: number },
): CallAdvice {
  const known = calls.flatMap((call) => measured.find((one) => isSameCall(one, call)) ?? []);
  const schemes = Object.keys(belief).filter(
    (id) =>
      belief[id]! > 0 && known.length > 0 && known.every(({ goals_byScheme }) => goals_byScheme[id] !== undefined),
  );
  const told = schemes.reduce((sum, id) => sum + belief[id]!, 0);
  if (known.length === 0 || told === 0) return { kind: 'inOrder', calls: calls.slice(0, learnt) };
  const weights = schemes.map((id) => belief[id]! / told);
  const mix = mixCalls({
    goals_byCallScheme: known.map(({ goals_byScheme }) => schemes.map((id) => goals_byScheme[id]!.mean)),
    weight_byScheme: weights,
    trust,
    mostCalls: learnt,
  });
  const weighed = known.map((call, at) => ({
    play: call.play,
    fromSide: call.fromSide,
    goals: meanOver(
      schemes.map((id) => call.goals_byScheme[id]!),
      weights,
    ),
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
