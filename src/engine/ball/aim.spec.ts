import { describe, expect, it } from 'vitest';
import { bestAimInto, createAim, followAim, onTargetOdds, saveOdds } from './aim.ts';
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
