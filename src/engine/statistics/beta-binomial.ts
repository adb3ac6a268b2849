import { betaQuantile } from './beta-distribution.ts';
import { logGamma } from './log-gamma.ts';
import { type Estimate, twoSided } from './wilson-interval.ts';

/** What is usual before anything was counted: a share `mean`, worth as much as `weight` tries. */
export interface SharePrior {
  readonly mean: number;
  readonly weight: number;
}

/**
 * A share drawn toward what is usual: posterior mean and central interval of a beta-binomial model.
 *
 * Mean (hits + weight mean) / (tries + weight). RangeError for hits outside 0 to tries, a prior mean outside 0 to 1 (both
 * excluded) or a weight that is not above 0. With prior .37 worth 40, 3 of 5 becomes .396.
 *
 * Source: Gelman et al., Bayesian Data Analysis, section 2.4 and 5.1.
 */
export function shrunkShare(hits: number, tries: number, prior: SharePrior, confidence = 0.95): Estimate {
  if (!(hits >= 0 && hits <= tries && tries < Infinity)) {
    throw new RangeError(`invalid count: ${hits} of ${tries} (expected hits from 0 to tries)`);
  }
  if (!(prior.mean > 0 && prior.mean < 1 && prior.weight > 0 && prior.weight < Infinity)) {
    throw new RangeError(`invalid prior: mean ${prior.mean}, weight ${prior.weight}`);
  }
  twoSided(confidence);
  const a = hits + prior.weight * prior.mean;
  const b = tries - hits + prior.weight * (1 - prior.mean);
  const tail = (1 - confidence) / 2;
  return { mean: a / (a + b), low: betaQuantile(tail, a, b), high: betaQuantile(1 - tail, a, b) };
}

/** Odds of exactly `hits` of `tries` when the share itself is Beta(a, b) distributed; 0 for hits outside 0 to tries. */
export function betaBinomialOdds(hits: number, tries: number, a: number, b: number): number {
  if (!(hits >= 0 && hits <= tries)) return 0;
  const logChoose = logGamma(tries + 1) - logGamma(hits + 1) - logGamma(tries - hits + 1);
  return Math.exp(logChoose + logBeta(hits + a, tries - hits + b) - logBeta(a, b));
}

function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}
