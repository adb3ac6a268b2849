import { type Estimate, twoSided } from './wilson-interval.ts';

/** A forecast of a yes, from 0 to 1, and whether it came. */
export interface Forecast {
  readonly odds: number;
  readonly came: boolean;
}

/**
 * The Brier score: mean squared distance of forecasts from what came, 0 best, 1 worst; undefined without forecasts. Odds of .7 score .09 when it comes and .49
 * when it does not. RangeError for odds outside 0 to 1.
 *
 * Source: Brier 1950, Monthly Weather Review 78:1, in the form for a yes or no.
 */
export function brierScore(forecasts: readonly Forecast[]): number | undefined {
  if (forecasts.length === 0) return undefined;
  return mean(forecasts, ({ odds, came }) => (odds - (came ? 1 : 0)) ** 2);
}

/** The score that the same forecasts have on average if they are right: mean of p (1 - p); undefined without forecasts. */
export function brierIfRight(forecasts: readonly Forecast[]): number | undefined {
  if (forecasts.length === 0) return undefined;
  return mean(forecasts, ({ odds }) => odds * (1 - odds));
}

/**
 * How often a yes should come if the forecasts are right, with the range in which it then lies `confidence` of the time: the sum of unlike tosses, by the normal
 * curve, and never outside 0 to their number. `confidence` above 0 and below 1, .95 when absent.
 */
export function expectedHits(forecasts: readonly Forecast[], confidence = 0.95): Estimate {
  const z = twoSided(confidence);
  const sum = forecasts.reduce((all, one) => all + checked(one).odds, 0);
  const spread = Math.sqrt(forecasts.reduce((all, { odds }) => all + odds * (1 - odds), 0));
  return {
    mean: sum,
    low: Math.max(0, sum - z * spread),
    high: Math.min(forecasts.length, sum + z * spread),
  };
}

function mean(forecasts: readonly Forecast[], of: (forecast: Forecast) => number): number {
  return forecasts.reduce((sum, forecast) => sum + of(checked(forecast)), 0) / forecasts.length;
}

function checked(forecast: Forecast): Forecast {
  if (!(forecast.odds >= 0 && forecast.odds <= 1))
    throw new RangeError(`invalid odds: ${forecast.odds} (expected 0 to 1)`);
  return forecast;
}
