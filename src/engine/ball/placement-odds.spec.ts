import { describe, expect, it } from 'vitest';
import { normalCdf, quickNormalCdf } from './normal-cdf.ts';
import { ellipseOdds, everywhere, type Rectangle, rectangleOdds, type Scatter } from './placement-odds.ts';

const standard = (correlation = 0): Scatter => ({ meanX: 0, meanY: 0, deviationX: 1, deviationY: 1, correlation });
const round = (meanX: number, meanY: number, deviation: number): Scatter => ({
  meanX,
  meanY,
  deviationX: deviation,
  deviationY: deviation,
  correlation: 0,
});
const square: Rectangle = { left: -1, right: 1, bottom: -1, top: 1 };
const circle = (radius: number, x = 0) => ({ x, y: 0, halfWidth: radius, halfHeight: radius });

describe('normal distribution', () => {
  it.each([
    // Abramowitz and Stegun 26.1-26.2 / any table of the normal distribution.
    [0, 0.5],
    [1, 0.8413447460685429],
    [-1.959963984540054, 0.025],
    [3, 0.9986501019683699],
  ])('Phi(%f)', (z, value) => {
    expect(normalCdf(z)).toBeCloseTo(value, 13);
  });

  it.each([
    [-5, 2.866515718791939e-7],
    [-10, 7.619853024160527e-24],
  ])('far tail Phi(%d) in relative terms', (z, value) => {
    expect(Math.abs(normalCdf(z) / value - 1)).toBeLessThan(1e-8);
  });

  it('the table keeps its stated error and never leaves 0 to 1', () => {
    for (let z = -7; z <= 7; z += 0.0037) expect(Math.abs(quickNormalCdf(z) - normalCdf(z))).toBeLessThan(1e-5);
    expect(quickNormalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(quickNormalCdf(Number.POSITIVE_INFINITY)).toBe(1);
  });
});

describe('mass of a bivariate normal', () => {
  it.each([
    ['square, rho 0', standard(), square, 0.466064942674],
    ['square, rho .5', standard(0.5), square, 0.497971777839],
    // 1/4 + asin(rho) / 2 pi.
    ['quadrant, rho .5', standard(0.5), { ...everywhere, left: 0, bottom: 0 }, 1 / 3],
    ['below (.5, 1), rho .3', standard(0.3), { ...everywhere, right: 0.5, top: 1 }, 0.6093086778],
  ] as const)('%s', (_, scatter, area, value) => {
    expect(rectangleOdds(scatter, area)).toBeCloseTo(value, 11);
  });

  it.each([
    // Centred: 1 - e^{-r^2 / 2}; offset: non-central chi square.
    [circle(1), 1 - Math.exp(-0.5), 12],
    [circle(2), 0.864664716763, 11],
    [circle(1, 1), 0.267120196203, 11],
    [circle(1, 2), 0.081892303631, 11],
  ])('circle %o', (area, value, digits) => {
    expect(ellipseOdds(standard(), area)).toBeCloseTo(value, digits);
  });

  it('turns with the axes: an ellipse under stretched scatter is a circle', () => {
    const scatter = { meanX: 0, meanY: 0, deviationX: 2, deviationY: 0.5, correlation: 0 };
    expect(ellipseOdds(scatter, { x: 0, y: 0, halfWidth: 2, halfHeight: 0.5 })).toBeCloseTo(1 - Math.exp(-0.5), 11);
  });

  it('clips: half a circle on each side of a line', () => {
    const left = ellipseOdds(standard(0.4), circle(1.3, 0.2), { ...everywhere, right: 0.1 });
    const right = ellipseOdds(standard(0.4), circle(1.3, 0.2), { ...everywhere, left: 0.1 });
    const below = ellipseOdds(standard(0.4), circle(1.3, 0.2), { ...everywhere, top: -0.3 });
    const above = ellipseOdds(standard(0.4), circle(1.3, 0.2), { ...everywhere, bottom: -0.3 });
    const all = ellipseOdds(standard(0.4), circle(1.3, 0.2));
    expect(left + right).toBeCloseTo(all, 11);
    expect(below + above).toBeCloseTo(all, 11);
  });

  it('nothing is nothing', () => {
    expect(ellipseOdds(standard(), circle(0))).toBe(0);
    expect(rectangleOdds(standard(), { ...square, left: 1, right: -1 })).toBe(0);
    expect(ellipseOdds(standard(), circle(1, 50), square)).toBe(0);
  });
});

/** Goal 1.83 m square, x within .915 of the middle; keeper's reach an ellipse. Metres. Values computed apart by quadrature. */
const goal: Rectangle = { left: -0.915, right: 0.915, bottom: 0, top: 1.83 };
const keeper = (x: number) => ({ x, y: 0.85, halfWidth: 0.55, halfHeight: 0.85 });

describe('shots on a goal of six feet by six', () => {
  it.each([
    { scatter: round(0.65, 0.3, 0.25), keeper: keeper(0), on: 0.75699392, hit: 0.16998472, goal: 0.5870092 },
    { scatter: round(0, 0.915, 0.3), keeper: keeper(0), on: 0.99542841, hit: 0.89991829, goal: 0.09551012 },
    { scatter: round(0.65, 1.5, 0.25), keeper: keeper(0.1), on: 0.77551577, hit: 0.21205268, goal: 0.5634631 },
  ])('aimed at ($scatter.meanX, $scatter.meanY)', ({ scatter, keeper: covered, on, hit, goal: in_ }) => {
    const target = rectangleOdds(scatter, goal);
    const stopped = ellipseOdds(scatter, covered, goal);
    expect(target).toBeCloseTo(on, 8);
    expect(stopped).toBeCloseTo(hit, 8);
    expect(Math.abs(target - stopped - in_)).toBeLessThan(1.5e-8);
  });

  it('wider scatter, fewer on target', () => {
    expect(rectangleOdds(round(0.65, 0.3, 0.4), goal)).toBeCloseTo(0.5769869, 7);
  });
});
