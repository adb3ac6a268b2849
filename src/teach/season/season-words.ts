import { counted, perChance, percent } from '../../render/index.ts';
import type { ChanceGrouping } from './chance-groups.ts';
import type { GroupComparison } from './compare-groups.ts';
import type { GroupNumbers } from './group-numbers.ts';
import type { PlanAndResult, PlanBin } from './plan-and-result.ts';
import type { SeasonPrior } from './season-prior.ts';

/** An interval of a share so wide, 0 to 1, that one more good day would change what is said. */
const wide = 0.3;

/** What the goals of some man-ups say, and what they do not. */
export function conversionSentence({ goals, chances, raw }: GroupNumbers, prior: SeasonPrior): string {
  if (chances === 0) return 'None was written down yet.';
  const share = `${goals} of ${chances}`;
  const range = `${percent(raw.low)} or ${percent(raw.high)}`;
  const usual = `${prior.isGuess ? 'guessed' : 'usual'} ${percent(prior.mean)}`;
  if (raw.low > prior.mean) return `${share}: surely above the ${usual}; in the long run ${rangeWords(raw)}.`;
  if (raw.high < prior.mean) return `${share}: surely below the ${usual}; in the long run ${rangeWords(raw)}.`;
  if (raw.high - raw.low > wide)
    return `${share}: could easily be ${range} in the long run, so luck explains it as well as skill does.`;
  return `${share}: in the long run ${rangeWords(raw)}; it cannot be told from the ${usual}.`;
}

/** What can be said of one group beside all others. `of` says whose goals these are: more of theirs is worse for us. */
export function comparisonSentence(
  name: string,
  { difference, verdict }: GroupComparison,
  numbers: GroupNumbers,
  rest: GroupNumbers,
): string {
  if (rest.chances === 0 || numbers.chances === 0) return `${name}: there is nothing to compare it with.`;
  const counts = `${numbers.goals} of ${numbers.chances}, the others ${rest.goals} of ${rest.chances}`;
  switch (verdict) {
    case 'better':
      return `${name} brings surely more goals than the others (${counts}): by ${points(difference.low, difference.high)}.`;
    case 'worse':
      return `${name} brings surely fewer goals than the others (${counts}): by ${points(-difference.high, -difference.low)}.`;
    case 'unsure':
      return `${name}: cannot be told from the others (${counts}): anything from ${signed(difference.low)} to ${signed(difference.high)} is possible.`;
    default:
      return exhaustive(verdict);
  }
}

/** As few forecasts as say anything of whether the simulation is right. */
export const fewestForecasts = 10;

/** Whether what came fits what the simulation said. */
export function planSentence(plan: PlanAndResult | undefined): string {
  if (plan === undefined)
    return 'No man-up has a forecast yet. One that is called from the simulation keeps what was expected of it.';
  const { chances, goals, expected } = plan;
  const told = `${counted(goals, 'goal')} in ${counted(chances, 'man-up')}; the simulation expected ${tenthOf(expected.mean)}`;
  if (chances < fewestForecasts) return `${told}. That is too few to say whether it is right.`;
  const luck = `${tenthOf(expected.low)} to ${tenthOf(expected.high)} would be luck`;
  if (goals > expected.high) return `${told}, and ${luck}: it expects too little of this team.`;
  if (goals < expected.low) return `${told}, and ${luck}: it expects too much of this team.`;
  return `${told}, and ${luck}: that fits.`;
}

/** Whether the forecasts tell one man-up from another. */
export function brierSentence({ chances, brier, brierIfRight, brierOfShare, gain }: PlanAndResult): string {
  const score = `Brier score ${thousandths(brier)}; ${thousandths(brierIfRight)} if the simulation is right, ${thousandths(brierOfShare)} for who always says the same`;
  if (chances < fewestForecasts) return `${score}. Too few to say more.`;
  if (gain !== undefined && gain.low > 0) return `${score}: it surely tells better man-ups from worse ones.`;
  if (gain !== undefined && gain.high < 0)
    return `${score}: it surely misleads; saying always the same would be better.`;
  return `${score}: whether it tells better man-ups from worse ones cannot be told yet.`;
}

/** "0.36 (0.31-0.41)" as a share: "36 % (31 to 41)". */
export function shareText({
  mean,
  low,
  high,
}: {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}): string {
  return `${percent(mean)} (${Math.round(low * 100)} to ${Math.round(high * 100)})`;
}

/** "1.4", and a dash when no shots were counted. */
export function shotsText({ shots }: GroupNumbers): string {
  return shots.chances === 0 ? '–' : perChance(shots.shots / shots.chances);
}

/** "12 s (8 to 19)": half of the first shots came within. */
export function firstShotText({ firstShot }: GroupNumbers): string {
  if (firstShot === undefined) return '–';
  const { median, q1, q3 } = firstShot;
  return `${Math.round(median)} s (${Math.round(q1)} to ${Math.round(q3)})`;
}

/** What stands at the head of the first column, by what man-ups are put together. */
export const groupingWords: Readonly<Record<ChanceGrouping, string>> = {
  call: 'Call',
  scheme: 'Scheme',
  unit: 'Unit',
  opponent: 'Opponent',
  side: 'Side',
  period: 'Period',
};

/** "30 to 40 %", "50 % and more": of how many goals a man-up a bin is. */
export function planBinText({ from, to }: Pick<PlanBin, 'from' | 'to'>): string {
  if (to === Number.POSITIVE_INFINITY) return `${percent(from)} and more`;
  return from === 0 ? `below ${percent(to)}` : `${Math.round(from * 100)} to ${percent(to)}`;
}

function rangeWords({ low, high }: { readonly low: number; readonly high: number }): string {
  return `between ${percent(low)} and ${percent(high)}`;
}

function points(least: number, most: number): string {
  return `${Math.round(least * 100)} to ${counted(Math.round(most * 100), 'goal')} in 100`;
}

function signed(difference: number): string {
  const rounded = Math.round(difference * 100);
  if (rounded === 0) return 'no difference';
  return `${counted(Math.abs(rounded), 'goal')} in 100 ${rounded < 0 ? 'fewer' : 'more'}`;
}

function tenthOf(value: number): string {
  return (Math.round(value * 10) / 10).toFixed(1);
}

function thousandths(value: number): string {
  return (Math.round(value * 1000) / 1000).toFixed(3);
}

function exhaustive(verdict: never): never {
  throw new TypeError(`unknown verdict: ${JSON.stringify(verdict)}`);
}
