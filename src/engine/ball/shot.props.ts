import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levels } from '../people/athlete.ts';
import { createAthlete, createKeeper } from '../people/create-athlete.ts';
import { mirrorCover } from '../people/keeper-cover.ts';
import { keeperLag, keeperPlaceInto } from './keeper.ts';
import { createShotOdds, createShotOutcome, drawShotInto, shotOddsInto } from './shot.ts';
import { defaultShotParameters } from './shot-parameters.ts';
import { createShotTable, shotValue } from './shot-table.ts';
import { createShotSituation, faceKeeperInto, releaseInto } from './shot-view.ts';

const tables = levels.map((level) =>
  createShotTable(createAthlete({ level, hand: 'right', crosse: 'short' }), createKeeper({ level })),
);
const anyTable = fc.constantFrom(...tables);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** The best aim is searched, so neighbouring table entries may be off by this much either way. */
const searched = 0.006;

describe('laws of the shot', () => {
  it('is mirrored to the last bit', () => {
    fc.assert(
      fc.property(
        anyTable,
        between(-14, 14),
        between(-2, 22),
        between(-1, 2),
        between(0, 1),
        (table, x, y, lag, rush) => {
          expect(shotValue(table, -x, y, lag, rush)).toBe(shotValue(table, x, y, lag, rush));
        },
      ),
    );
  });

  it('at a keeper with habits is that at his mirror image, mirrored, and has no step straight in front', () => {
    const level = 'college';
    const shooter = createAthlete({ level, hand: 'right', crosse: 'short' });
    const cover = { highLeft: 0.5, highRight: 1.4, lowLeft: 0.9, lowRight: 1.7 };
    const [table, mirrored] = [cover, mirrorCover(cover)].map((one) =>
      createShotTable(shooter, { ...createKeeper({ level }), cover: one }),
    );
    fc.assert(
      fc.property(between(-14, 14), between(0, 22), between(-1, 2), between(0, 1), (x, y, lag, rush) => {
        expect(shotValue(mirrored!, -x, y, lag, rush)).toBe(shotValue(table!, x, y, lag, rush));
        expect(shotValue(table!, -1e-9, y, lag, rush)).toBeCloseTo(shotValue(table!, 1e-9, y, lag, rush), 6);
      }),
    );
  });

  it('its odds, its draw and where the ball goes are mirrored to the last bit', () => {
    const shooter = createAthlete({ level: 'highSchool', hand: 'left', crosse: 'short' });
    const keeper = createKeeper({ level: 'highSchool' });
    const middle = fc.constant(0);
    fc.assert(
      fc.property(
        fc.oneof(between(-12, 12), middle),
        between(-2, 18),
        fc.oneof(between(-1, 1), middle),
        between(-2.5, 2.5),
        between(-2.5, 2.5),
        between(0, 0.999),
        (x, y, keeperX, across, up, uniform) => {
          const results = [1, -1].map((sense) => {
            const shot = createShotSituation();
            releaseInto(shot, shooter.shotSpeed, shooter.shotScatter, 0.3, 0, 1, defaultShotParameters);
            faceKeeperInto(shot, keeper);
            Object.assign(shot, { x: sense * x, y, keeperX: sense * keeperX, keeperY: 0.8, block: 0.1, sense });
            const odds = createShotOdds();
            const outcome = createShotOutcome();
            shotOddsInto(odds, shot);
            drawShotInto(outcome, odds, shot, sense * across, up, uniform);
            return { ...odds, ...outcome };
          });
          const [here, there] = results;
          expect(there.goal).toBe(here.goal);
          expect(there.aimAcross + here.aimAcross).toBe(0);
          expect(there.result).toBe(here.result);
          expect(there.held).toBe(here.held);
          expect(there.x + here.x).toBe(0);
          expect(there.y).toBe(here.y);
        },
      ),
    );
  });

  it('is worth no less closer, straight in front, a yard and more out', () => {
    fc.assert(
      fc.property(anyTable, between(3, 20), between(3, 20), (table, a, b) => {
        const near = shotValue(table, 0, Math.min(a, b), 0, 0);
        expect(near).toBeGreaterThanOrEqual(shotValue(table, 0, Math.max(a, b), 0, 0) - searched);
      }),
    );
  });

  it('is worth no more from a wider angle at the same distance', () => {
    fc.assert(
      fc.property(anyTable, between(6, 13), between(0, 1.5), between(0, 1.5), (table, distance, a, b) => {
        const value = (angle: number) => shotValue(table, distance * Math.sin(angle), distance * Math.cos(angle), 0, 0);
        // Interpolation between grid lines bends the circle a little more than the search does.
        expect(value(Math.min(a, b))).toBeGreaterThanOrEqual(value(Math.max(a, b)) - 4 * searched);
      }),
    );
  });

  it('is worth no less against a keeper who trails more', () => {
    fc.assert(
      fc.property(anyTable, between(-10, 10), between(3, 16), between(0, 1.6), between(0, 1.6), (table, x, y, a, b) => {
        const less = shotValue(table, x, y, Math.min(a, b), 0);
        expect(shotValue(table, x, y, Math.max(a, b), 0)).toBeGreaterThanOrEqual(less - searched);
      }),
    );
  });

  it('is worth no more in a rush', () => {
    fc.assert(
      fc.property(anyTable, between(-12, 12), between(2, 18), between(0, 1), between(0, 1), (table, x, y, a, b) => {
        const calm = shotValue(table, x, y, 0, Math.min(a, b));
        expect(shotValue(table, x, y, 0, Math.max(a, b))).toBeLessThanOrEqual(calm + searched);
      }),
    );
  });

  it('a better keeper and a wilder shooter never help', () => {
    const level = 'college';
    const usual = createShotTable(createAthlete({ level, hand: 'right', crosse: 'short' }), createKeeper({ level }));
    const good = createShotTable(
      createAthlete({ level, hand: 'right', crosse: 'short' }),
      createKeeper({ level, grade: 5 }),
    );
    const wild = createShotTable(
      createAthlete({ level, hand: 'right', crosse: 'short', grades: { shoot: 1 } }),
      createKeeper({ level }),
    );
    fc.assert(
      fc.property(between(-10, 10), between(2, 18), between(0, 1), (x, y, lag) => {
        expect(shotValue(good, x, y, lag, 0)).toBeLessThanOrEqual(shotValue(usual, x, y, lag, 0) + searched);
        expect(shotValue(wild, x, y, lag, 0)).toBeLessThanOrEqual(shotValue(usual, x, y, lag, 0) + searched);
      }),
    );
  });
});

describe('laws of the keeper', () => {
  it('in his place he has no lag, moved sideways he has just that', () => {
    const place = new Float64Array(2);
    fc.assert(
      fc.property(between(-12, 12), between(-10, 18), between(-1, 1), (x, y, off) => {
        fc.pre(Math.hypot(x, y) > 0.5 && x !== 0);
        keeperPlaceInto(place, x, y);
        expect(keeperLag(place[0], place[1], x, y)).toBeCloseTo(0, 12);
        const distance = Math.hypot(x, y);
        const side = x > 0 ? -1 : 1;
        const lag = keeperLag(place[0] + (side * off * y) / distance, place[1] - (side * off * x) / distance, x, y);
        expect(lag).toBeCloseTo(off, 9);
      }),
    );
  });

  it('mirrors, and stays within his arc', () => {
    const here = new Float64Array(2);
    const there = new Float64Array(2);
    fc.assert(
      fc.property(between(-15, 15), between(-15, 20), (x, y) => {
        keeperPlaceInto(here, x, y);
        keeperPlaceInto(there, -x, y);
        expect(there[0] + here[0]).toBe(0);
        expect(there[1]).toBe(here[1]);
        expect(Math.abs(here[0])).toBeLessThanOrEqual(0.8 + 1e-12);
        expect(here[1]).toBeGreaterThanOrEqual(0.3);
        expect(here[1]).toBeLessThanOrEqual(1.05 + 1e-12);
      }),
    );
  });
});
