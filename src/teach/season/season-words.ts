import type { Estimate } from '../../engine/index.ts';
import { counted, perChance, percent } from '../../render/index.ts';
import type { ChanceGrouping } from './chance-groups.ts';
import { canCompare, type GroupComparison } from './compare-groups.ts';
import { type Clears, countOf, type GroupNumbers, type LookUsed } from './group-numbers.ts';
import type { ManUpNumbers } from './man-ups.ts';
import { type Naming, namingWords } from './naming.ts';
import type { PlanAndResult, PlanBin } from './plan-and-result.ts';
import type { SeasonPrior } from './season-prior.ts';

// What a sentence concludes is judged by the numbers as they stand in it, rounded: so none contradicts the numbers beside it.

/** An interval of a share so wide, 0 to 1, that one more good day would change what is said. */
const wide = 0.3;

/** Man-ups or chances from which a share is called surely above or below what is usual: of fewer, Wilson's interval is too short for it. */
const fewestSure = 10;

/** A share that was counted, with its interval. */
export interface CountedShare {
  readonly goals: number;
  readonly chances: number;
  readonly raw: Estimate;
}

/** What the goals of some chances say, or the man-ups with a goal of some man-ups, and what they do not. */
export function conversionSentence({ goals, chances, raw }: CountedShare, prior: SeasonPrior): string {
  if (chances === 0) return 'None was written down yet.';
  const share = `${goals} of ${chances}`;
  const range = `${percent(raw.low)} or ${percent(raw.high)}`;
  const usual = `${prior.isGuess ? 'guessed' : 'usual'} ${percent(prior.mean)}`;
  const isEnough = chances >= fewestSure;
  if (isEnough && inHundred(raw.low) > inHundred(prior.mean))
    return `${share}: surely above the ${usual}; in the long run ${rangeWords(raw)}.`;
  if (isEnough && inHundred(raw.high) < inHundred(prior.mean))
    return `${share}: surely below the ${usual}; in the long run ${rangeWords(raw)}.`;
  if (!isEnough || raw.high - raw.low > wide)
    return `${share}: could easily be ${range} in the long run, so luck explains it as well as skill does.`;
  return `${share}: in the long run ${rangeWords(raw)}; it cannot be told from the ${usual}.`;
}

/** How many chances there were in how many man-ups, and what the man-ups with a goal say beside what is usual. */
export function manUpSentence(chances: number, { manUps, scored, raw }: ManUpNumbers, usual: SeasonPrior): string {
  const share = conversionSentence({ goals: scored, chances: manUps, raw }, usual);
  return chances === 0
    ? share
    : `${counted(chances, 'chance')} in ${counted(manUps, 'man-up')}. Man-ups with a goal, ${share}`;
}

/** What the two words mean here, and which chances could not be put together; for below the tables. */
export function countingSentence({ alone }: ManUpNumbers): string {
  const meant = 'A man-up is one penalty; a chance is one possession in it, and a line of the list.';
  return alone === 0
    ? meant
    : `${meant} For ${counted(alone, 'chance')} day, period or clock is not written down: each counts as a man-up of its own.`;
}

/** What can be said of one group beside all others. */
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
      return `${name} brings surely more goals than the others (${counts}): by ${pointsWords(difference.low, difference.high)}.`;
    case 'worse':
      return `${name} brings surely fewer goals than the others (${counts}): by ${pointsWords(-difference.high, -difference.low)}.`;
    case 'unsure':
      if (!canCompare(countOf(numbers), countOf(rest))) return `${name}: too few to be compared (${counts}).`;
      return `${name}: cannot be told from the others (${counts}): anything from ${spanWords(difference)} is possible.`;
    default:
      return exhaustive(verdict);
  }
}

/** Why groups are not compared: what they have in common was written down by how the chance ended. */
export function unevenSentence(by: ChanceGrouping, naming: Naming): string {
  return `${groupingWords[by]} is written down for ${namingWords(naming, 'chances without one')}: what is missing depends on how the chance ended, so nothing can be compared by it. Write it down for every chance.`;
}

/** Looks that are named; the rest were rare. */
const mostLooks = 6;

/** The looks that were taken most and what came of them; undefined when none was written down. Where they are written down mostly of goals, how often each scores is not said. */
export function looksSentence(looks: readonly LookUsed[], uneven: Naming | undefined): string | undefined {
  if (looks.length === 0) return undefined;
  const told = looks
    .slice(0, mostLooks)
    .map(({ name, times, goals }) => (uneven === undefined ? `${name}: ${goals} of ${times}` : `${name}: ${goals}`));
  if (uneven === undefined) return `Looks that were taken most, and the goals from them: ${told.join('; ')}.`;
  return `Goals by look: ${told.join('; ')}. How often each look scores cannot be told: looks are written down for ${namingWords(uneven, 'shots that missed')}.`;
}

/** How often we cleared after a stop, of those of which it is written down; undefined when of none. */
export function clearsSentence({ cleared, stops, unknown }: Clears): string | undefined {
  if (stops === 0) return undefined;
  const rest = unknown === 0 ? '' : ` (for ${unknown} more it is not written down)`;
  return `After a stop we cleared ${cleared} of ${stops}${rest}.`;
}

/** As few forecasts as say anything of whether the simulation is right. */
export const fewestForecasts = 10;

/** Whether what came fits what the simulation said. */
export function planSentence(plan: PlanAndResult | undefined): string {
  if (plan === undefined)
    return 'No chance has a forecast yet. One that is called from the simulation keeps what was expected of it.';
  const { chances, goals, expected } = plan;
  const told = `${counted(goals, 'goal')} in ${counted(chances, 'chance')}; the simulation expected ${tenthOf(expected.mean)}`;
  if (chances < fewestForecasts) return `${told}. That is too few to say whether it is right.`;
  const luck = `${tenthOf(expected.low)} to ${tenthOf(expected.high)} would be luck`;
  if (goals > Number(tenthOf(expected.high))) return `${told}, and ${luck}: it expects too little of this team.`;
  if (goals < Number(tenthOf(expected.low))) return `${told}, and ${luck}: it expects too much of this team.`;
  return `${told}, and ${luck}: that fits.`;
}

/** Whether the forecasts tell one chance from another, as a coach says it. */
export function forecastSentence({ chances, goals, brier, brierOfShare, gain }: PlanAndResult): string {
  const same = `who says ${percent(goals / chances)} of every chance`;
  if (chances < fewestForecasts) return 'There are too few to say whether it tells better chances from worse ones.';
  if (gain !== undefined && gain.low > 0 && Number(thousandths(brier)) < Number(thousandths(brierOfShare)))
    return `It surely tells better chances from worse ones: it is nearer to what came than ${same}.`;
  if (gain !== undefined && gain.high < 0 && Number(thousandths(brier)) > Number(thousandths(brierOfShare)))
    return `It surely misleads from chance to chance: ${same} is nearer to what came.`;
  return 'Whether it tells better chances from worse ones cannot be told yet.';
}

/** The same as numbers, for those who know them. */
export function brierSentence({ brier, brierIfRight, brierOfShare }: PlanAndResult): string {
  return `For those who want it: Brier score ${thousandths(brier)} (the mean squared miss; smaller is better); ${thousandths(brierIfRight)} would be usual if the simulation is right, ${thousandths(brierOfShare)} for who always says the same.`;
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
  return `${percent(mean)} (${inHundred(low)} to ${inHundred(high)})`;
}

/** "1.4", and a dash when no shots were counted. */
export function shotsText({ shots }: GroupNumbers): string {
  return shots.chances === 0 ? '–' : perChance(shots.shots / shots.chances);
}

/** "12 s (8 to 19)": half of the first shots came within; of one or two that cannot be said, and "15 s (only one)" says so. */
export function firstShotText({ firstShot }: GroupNumbers): string {
  if (firstShot === undefined) return '–';
  const { timed, median, q1, q3 } = firstShot;
  if (timed <= 2) return `${Math.round(median)} s (only ${timed === 1 ? 'one' : 'two'})`;
  return `${Math.round(median)} s (${Math.round(q1)} to ${Math.round(q3)})`;
}

/** What stands at the head of the first column, by what chances are put together. */
export const groupingWords: Readonly<Record<ChanceGrouping, string>> = {
  call: 'Call',
  scheme: 'Scheme',
  unit: 'Unit',
  opponent: 'Opponent',
  side: 'Side',
  period: 'Period',
};

/** "30 to 40 %", "50 % and more": of how many goals a chance a bin is. */
export function planBinText({ from, to }: Pick<PlanBin, 'from' | 'to'>): string {
  if (to === Number.POSITIVE_INFINITY) return `${percent(from)} and more`;
  return from === 0 ? `below ${percent(to)}` : `${inHundred(from)} to ${percent(to)}`;
}

/** "0.31": what was expected in a bin, below its end however near it comes. */
export function binMeanText({ expected, to }: Pick<PlanBin, 'expected' | 'to'>): string {
  const near = expected.toFixed(2);
  return Number(near) < to ? near : (Math.floor(expected * 100) / 100).toFixed(2);
}

function rangeWords({ low, high }: { readonly low: number; readonly high: number }): string {
  return `between ${percent(low)} and ${percent(high)}`;
}

/** "5 to 32 goals in 100 chances". */
export function pointsWords(least: number, most: number): string {
  return `${inHundred(least)} to ${counted(inHundred(most), 'goal')} in 100 chances`;
}

/** "32 fewer to 5 more goals in 100 chances", of a difference that may go both ways. */
export function spanWords({ low, high }: { readonly low: number; readonly high: number }): string {
  const some = (share: number): string => (inHundred(share) === 0 ? 'no' : String(Math.abs(inHundred(share))));
  return `${some(low)} fewer to ${some(high)} more goals in 100 chances`;
}

function inHundred(share: number): number {
  return Math.round(share * 100);
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
