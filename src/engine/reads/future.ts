import { drawKind } from '../chance/draw-kinds.ts';
import type { ChanceModel } from '../chance/model.ts';
import { block, createDraws } from '../random/draws.ts';

/** A step of a trial. */
export interface TrialStep {
  readonly trial: number;
  readonly step: number;
}

/**
 * The same model with luck that is fresh: one of many ways in which a trial could go on from a step. What has happened up to there is not drawn
 * again, so a state that was brought there by `model` goes on by this one. The luck has an address as every draw has (seed, trial, step, future), so it is the
 * same for every action that is tried there, on every thread and in the mirror.
 *
 * It shares the model's memory: one of the two is used at a time. `future` is a whole number from 0.
 */
export function futureOf(model: ChanceModel, { trial, step }: TrialStep, future: number): ChanceModel {
  block(model.draws, trial, step, drawKind.future, future);
  const [low, high] = model.draws.words;
  // 53 bits, as many as a seed has.
  return { ...model, draws: createDraws(low! + (high! >>> 11) * 2 ** 32) };
}
