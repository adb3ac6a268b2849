import { buildDecisionTable } from './build-decision-table.ts';
import type { DecisionTable } from './decision-table.ts';
import type { CarrierChance } from './gather-decisions.ts';
import type { Keeping } from './learn-keeping.ts';

/** What was gathered against one scheme: chances of a man with the ball unless told otherwise. */
export interface SchemeChances<Chance = CarrierChance> {
  readonly scheme: string;
  /** How likely the scheme is to be met; all together more than nothing. */
  readonly weight: number;
  /** Trials that were run for it. */
  readonly trials: number;
  readonly chances: readonly Chance[];
}

export function allChances<Chance>(gathered: readonly SchemeChances<Chance>[]): readonly Chance[] {
  return gathered.flatMap(({ chances }) => chances);
}

/** What each chance counts for: its scheme's weight, spread over all trials of the scheme. */
export function weightsOf(gathered: readonly SchemeChances<unknown>[]): Float64Array {
  return Float64Array.from(gathered.flatMap((one) => one.chances.map(() => one.weight / one.trials)));
}

/** The table of all chances by their weights. RangeError when there is none. */
export function tableOf(carrier: number, gathered: readonly SchemeChances[], keeping: Keeping): DecisionTable {
  return buildDecisionTable(carrier, allChances(gathered), keeping, weightsOf(gathered));
}

/** Share of the man-ups in which the play comes to it, the schemes by their weights. */
export function shareThatComes(gathered: readonly SchemeChances<unknown>[]): number {
  const all = gathered.reduce((sum, { weight }) => sum + weight, 0);
  return gathered.reduce((sum, { weight, trials, chances }) => sum + (weight * chances.length) / trials, 0) / all;
}

/** Where one scheme's chances lie among all: `from` included, `to` excluded. */
export interface SchemeSpan {
  readonly scheme: string;
  readonly from: number;
  readonly to: number;
}

/** The spans in the order of the schemes; schemes without a chance and those that are never met are left out. */
export function spansOf(gathered: readonly SchemeChances<unknown>[]): readonly SchemeSpan[] {
  let from = 0;
  return gathered.flatMap(({ scheme, weight, chances }) => {
    const span = { scheme, from, to: from + chances.length };
    from = span.to;
    return chances.length === 0 || weight === 0 ? [] : [span];
  });
}

/** Whether a chance lies in a span. */
export function isIn({ from, to }: SchemeSpan): (chance: number) => boolean {
  return (chance) => chance >= from && chance < to;
}
