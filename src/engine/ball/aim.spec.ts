import { describe, expect, it } from 'vitest';
import { bestAimInto, createAim, followAim, onTargetOdds, saveOdds, saveOddsAt } from './aim.ts';
import { ellipseOdds, rectangleOdds } from './placement-odds.ts';
import { defaultShotParameters } from './shot-parameters.ts';
import { createShotView, goalHeight, type ShotView } from './shot-view.ts';

/** A shooter straight in front; the keeper covers an ellipse around (keeperAcross, .93). */
function viewOf(deviation: number, keeperAcross: number, reach = 0.6): ShotView {
  return {
    ...createShotView(),
    distance: 10,
    left: -1,
    right: 1,
    deviation,
    keeperAcross,
    keeperUp: 0.93,
    bodyWidth: reach,
    bodyHeight: reach * 1.5,
    reachWidth: reach,
    reachHeight: reach * 1.5,
  };
}

const sure = { ...defaultShotParameters, bodyOdds: 1, reachOdds: 1 };
const area = { left: -1, right: 1, bottom: 0, top: goalHeight };

function best(view: ShotView, parameters = sure) {
  const aim = createAim();
  bestAimInto(aim, view, parameters);
  return aim;
}

describe('quick odds against the exact integral', () => {
  // Tolerances: table of the normal 1e-5; six strips of the ellipse. A pro scatters .47 yd on a shot from 3 yd.
  it.each([
    [0.2, 0.02],
    [0.35, 0.006],
    [0.6, 0.003],
    [1, 0.003],
  ])('scatter %f yd', (deviation, tolerance) => {
    for (const keeperAcross of [-0.7, 0, 0.4]) {
      for (const [across, up] of [
        [0.6, 0.4],
        [-0.5, 1.6],
        [0, 1],
      ]) {
        const view = viewOf(deviation, keeperAcross);
        const scatter = { meanX: across, meanY: up, deviationX: deviation, deviationY: deviation, correlation: 0 };
        const ellipse = { x: keeperAcross, y: 0.93, halfWidth: 0.6, halfHeight: 0.9 };
        expect(Math.abs(onTargetOdds(view, across, up) - rectangleOdds(scatter, area))).toBeLessThan(5e-5);
        expect(Math.abs(saveOdds(view, across, up, sure) - ellipseOdds(scatter, ellipse, area))).toBeLessThan(
          tolerance,
        );
      }
    }
  });
});

describe('best aim', () => {
  it('with no scatter scores away from the keeper for sure', () => {
    const aim = best(viewOf(0.02, -0.5));
    expect(aim.goal).toBeGreaterThan(0.999);
    expect(aim.across).toBeGreaterThan(0.15);
  });

  it('goes to the side the keeper is not on', () => {
    expect(best(viewOf(0.3, -0.4)).across).toBeGreaterThan(0.4);
    expect(best(viewOf(0.3, 0.4)).across).toBeLessThan(-0.4);
  });

  it('is pulled inward as scatter grows (Tibshirani, Price and Taylor 2011)', () => {
    const tight = best(viewOf(0.1, -0.2)).across;
    const loose = best(viewOf(0.5, -0.2)).across;
    const wild = best(viewOf(1.5, -0.2)).across;
    expect(tight).toBeGreaterThan(loose);
    expect(loose).toBeGreaterThan(wild);
  });

  it('is not beaten by any point of a fine grid by more than .004', () => {
    for (const [deviation, keeperAcross] of [
      [0.2, 0],
      [0.4, -0.3],
      [0.7, 0.5],
    ]) {
      const view = viewOf(deviation, keeperAcross);
      let top = 0;
      for (let across = -1; across <= 1; across += 0.04) {
        for (let up = 0; up <= 2; up += 0.04) {
          top = Math.max(top, onTargetOdds(view, across, up) - saveOdds(view, across, up, sure));
        }
      }
      expect(best(view).goal).toBeGreaterThan(top - 0.004);
    }
  });

  it('followed from a neighbour finds the same', () => {
    const aim = best(viewOf(0.4, -0.3));
    followAim(aim, viewOf(0.4, 0.1), sure);
    expect(aim.goal).toBeGreaterThan(best(viewOf(0.4, 0.1)).goal - 0.004);
  });
});

describe('a keeper with habits', () => {
  const alike = { highLeft: 1, highRight: 1, lowLeft: 1, lowRight: 1 };
  const usual = defaultShotParameters;

  it('who has none of them is the keeper that he was', () => {
    for (const [across, up] of [
      [0.6, 0.4],
      [-0.2, 1.3],
    ] as const) {
      const view = viewOf(0.5, 0.1);
      const alone = saveOdds(view, across, up, usual);
      expect(saveOdds({ ...view, cover: alike }, across, up, usual)).toBeCloseTo(alone, 2);
      expect(saveOddsAt({ ...view, cover: alike }, across, up, usual)).toBeCloseTo(
        saveOddsAt(view, across, up, usual),
        12,
      );
    }
  });

  it.each([
    ['highLeft', -1, 1],
    ['highRight', 1, 1],
    ['lowLeft', -1, -1],
    ['lowRight', 1, -1],
  ] as const)('is aimed at where he stops less: %s', (weak, across, up) => {
    const view = { ...viewOf(0.4, 0, 0.9), cover: { highLeft: 2, highRight: 2, lowLeft: 2, lowRight: 2, [weak]: 0.3 } };
    const aim = best(view, usual);
    expect(Math.sign(aim.across)).toBe(across);
    expect(Math.sign(aim.up - goalHeight / 2)).toBe(up);
    expect(aim.goal).toBeGreaterThan(best({ ...view, cover: { ...view.cover, [weak]: 2 } }, usual).goal);
  });

  it('stops as many balls drawn one by one as the odds say', () => {
    const cover = { highLeft: 0.4, highRight: 1.6, lowLeft: 1.2, lowRight: 0.7 };
    const view = { ...viewOf(0.5, 0.2, 0.8), bodyWidth: 0.5, bodyHeight: 0.7, cover };
    let sum = 0;
    let weights = 0;
    for (let across = view.left; across < view.right; across += 0.01) {
      for (let up = 0; up < goalHeight; up += 0.01) {
        const weight = Math.exp(-((across - 0.3) ** 2 + (up - 1.2) ** 2) / (2 * 0.5 ** 2));
        sum += weight * saveOddsAt(view, across, up, usual);
        weights += weight;
      }
    }
    const onTarget = onTargetOdds(view, 0.3, 1.2);
    expect(saveOdds(view, 0.3, 1.2, usual)).toBeCloseTo((onTarget * sum) / weights, 2);
  });
});
