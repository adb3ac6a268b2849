import {
  addValue,
  betaBinomialOdds,
  betaQuantile,
  createMoments,
  shrunkShare,
  varianceOf,
  wilsonInterval,
} from '../../src/engine/index.ts';
import { type Group, nearRow, printedRow, type Row } from './row.ts';

const wilson = [
  [81, 263, 0.255289, 0.36621],
  [15, 148, 0.062386, 0.160487],
  [0, 20, 0, 0.161125],
  [1, 29, 0.006113, 0.171755],
  [8, 10, 0.490162, 0.943318],
  [5, 10, 0.236593, 0.763407],
  [0, 10, 0, 0.277533],
] as const;

/** Quantiles of the beta distribution that bound 8 of 10: Clopper and Pearson's exact interval, and Jeffreys'. */
const bounds = [
  ['exact, low', 0.025, 8, 3, 0.443905],
  ['exact, high', 0.975, 9, 2, 0.974789],
  ['Jeffreys, low', 0.025, 8.5, 2.5, 0.497226],
  ['Jeffreys, high', 0.975, 8.5, 2.5, 0.955941],
] as const;

export function statisticsGroup(): Group {
  return {
    id: 'statistics',
    title: 'Statistics',
    about: 'Intervals, shrinkage and shared luck.',
    rows: [
      ...wilson.flatMap(wilsonRows),
      ...bounds.map(boundRow),
      ...ratRows(),
      betaBinomialRow(),
      ...sharedLuckRows(),
    ],
  };
}

function wilsonRows([hits, tries, low, high]: (typeof wilson)[number]): readonly Row[] {
  const ours = wilsonInterval(hits, tries);
  const source = 'Newcombe 1998, method 3';
  return [
    printedRow({ id: `wilson-${hits}-${tries}-low`, what: `${hits} of ${tries}, low`, source }, low, ours.low, 6),
    printedRow({ id: `wilson-${hits}-${tries}-high`, what: `${hits} of ${tries}, high`, source }, high, ours.high, 6),
  ];
}

function boundRow([name, p, a, b, value]: (typeof bounds)[number]): Row {
  return printedRow(
    { id: `beta-${name.replace(', ', '-')}`, what: `8 of 10, ${name}`, source: 'Clopper-Pearson, Jeffreys' },
    value,
    betaQuantile(p, a, b),
    6,
  );
}

function ratRows(): readonly Row[] {
  const source = 'Bayesian Data Analysis 5.1, rat tumours';
  const { mean, low, high } = shrunkShare(4, 14, { mean: 0.14, weight: 10 });
  return [
    printedRow({ id: 'rats-mean', what: 'Beta(1.4, 8.6) and 4 of 14: mean', source }, 0.225, mean, 3),
    printedRow(
      { id: 'rats-spread', what: 'its standard deviation, from the mean and 24 tries', source },
      0.083516,
      Math.sqrt((mean * (1 - mean)) / 25),
      6,
    ),
    nearRow(
      { id: 'rats-inside', what: 'share of its 95 % interval between the quantiles', source },
      0.95,
      betaShare(low, high),
      1e-6,
      6,
    ),
  ];
}

/** Mass of Beta(5.4, 18.6) between two points, by Simpson's rule: knows nothing of the quantiles. */
function betaShare(low: number, high: number): number {
  const density = (x: number) => x ** 4.4 * (1 - x) ** 17.6;
  return simpson(density, low, high) / simpson(density, 0, 1);
}

function simpson(f: (x: number) => number, from: number, to: number): number {
  const steps = 20_000;
  const step = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let index = 1; index < steps; index++) sum += (index % 2 === 0 ? 2 : 4) * f(from + index * step);
  return (sum * step) / 3;
}

function betaBinomialRow(): Row {
  return printedRow(
    { id: 'beta-binomial', what: 'beta-binomial odds of 3 of 10 with (2, 3)', source: 'scipy betabinom.pmf' },
    0.143856143856,
    betaBinomialOdds(3, 10, 2, 3),
    12,
  );
}

/** X = e^U and Y = e^(1.1 U): variance of their difference with one U for both and with two, on a fine grid of U. */
function sharedLuckRows(): readonly Row[] {
  const n = 2000;
  const grid = Array.from({ length: n }, (_, index) => (index + 0.5) / n);
  const shared = createMoments();
  const first = createMoments();
  const second = createMoments();
  for (const u of grid) {
    addValue(shared, Math.exp(u) - Math.exp(1.1 * u));
    addValue(first, Math.exp(u));
    addValue(second, Math.exp(1.1 * u));
  }
  const source = 'closed form';
  return [
    nearRow(
      { id: 'luck-shared', what: 'variance of e^U - e^(1.1 U), one U', source },
      0.00658668,
      varianceOf(shared),
      1e-5,
      6,
    ),
    nearRow(
      { id: 'luck-apart', what: 'the same with two, the sum of the variances', source },
      0.570198,
      varianceOf(first) + varianceOf(second),
      5e-4,
      4,
    ),
  ];
}
