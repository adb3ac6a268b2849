import { describe, expect, it } from 'vitest';
import { fitLeastSquares, fitManyLeastSquares } from './least-squares.ts';

// Longley 1967 (J Am Stat Assoc 62:819): employment, then price deflator, national product, unemployed, armed forces, population, year.
const longley = [
  [60323, 83, 234289, 2356, 1590, 107608, 1947],
  [61122, 88.5, 259426, 2325, 1456, 108632, 1948],
  [60171, 88.2, 258054, 3682, 1616, 109773, 1949],
  [61187, 89.5, 284599, 3351, 1650, 110929, 1950],
  [63221, 96.2, 328975, 2099, 3099, 112075, 1951],
  [63639, 98.1, 346999, 1932, 3594, 113270, 1952],
  [64989, 99, 365385, 1870, 3547, 115094, 1953],
  [63761, 100, 363112, 3578, 3350, 116219, 1954],
  [66019, 101.2, 397469, 2904, 3048, 117388, 1955],
  [67857, 104.6, 419180, 2822, 2857, 118734, 1956],
  [68169, 108.4, 442769, 2936, 2798, 120445, 1957],
  [66513, 110.8, 444546, 4681, 2637, 121950, 1958],
  [68655, 112.6, 482704, 3813, 2552, 123366, 1959],
  [69564, 114.2, 502601, 3931, 2514, 125368, 1960],
  [69331, 115.7, 518173, 4806, 2572, 127852, 1961],
  [70551, 116.9, 554894, 4007, 2827, 130081, 1962],
];

describe('least squares', () => {
  it('gives nothing to a column that tells nothing, and all to the next', () => {
    expect([...fitLeastSquares(Float64Array.of(0, 1, 0, 1), 2, Float64Array.of(2, 4))]).toEqual([
      0,
      expect.closeTo(3, 12),
    ]);
    // The second column is twice the first.
    const rows = Float64Array.of(1, 2, 0, 1, 2, 1, 1, 2, 2);
    const found = fitLeastSquares(rows, 3, Float64Array.of(1, 3, 5));
    expect([...found]).toEqual([expect.closeTo(1, 12), 0, expect.closeTo(2, 12)]);
  });

  it('fits several targets as it fits each alone', () => {
    const rows = Float64Array.from(longley.flatMap(([, ...values]) => [1, ...values]));
    const targets = [0, 1, 2].map((column) => Float64Array.from(longley, (row) => row[column]!));
    const alone = targets.map((target) => fitLeastSquares(rows, 7, target, 3));
    expect(fitManyLeastSquares(rows, 7, targets, 3)).toEqual(alone);
  });

  it('comes to the certified coefficients of a hard case', () => {
    // NIST Statistical Reference Datasets, linear regression, Longley: certified values, written down from memory.
    const certified = [
      -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359,
      -0.0511041056535807, 1829.15146461355,
    ];
    const rows = Float64Array.from(longley.flatMap(([, ...values]) => [1, ...values]));
    const found = fitLeastSquares(
      rows,
      7,
      Float64Array.from(longley, ([employed]) => employed!),
    );
    certified.forEach((value, at) => {
      expect(found[at]! / value).toBeCloseTo(1, 7);
    });
  });

  it('gives nothing to a column that says what another says', () => {
    const found = fitLeastSquares(Float64Array.from([1, 2, 2, 4, 3, 6]), 2, Float64Array.from([2, 4, 6]));
    expect(found[0]! + 2 * found[1]!).toBeCloseTo(2, 9);
  });

  it('draws coefficients toward nothing: of one column of ones, n / (n + ridge) of the mean', () => {
    const [drawn] = fitLeastSquares(new Float64Array(8).fill(1), 1, new Float64Array(8).fill(3), 4);
    expect(drawn).toBeCloseTo((3 * 8) / 12, 12);
  });

  it('refuses sizes that do not fit', () => {
    expect(() => fitLeastSquares(new Float64Array(5), 2, new Float64Array(2))).toThrow(RangeError);
  });
});
