import { describe, expect, it } from 'vitest';
import type { Point } from '../geometry/point.ts';
import {
  type CameraFit,
  doubtsOfCamera,
  type FittedCamera,
  fitCamera,
  type PlaceMark,
  pixelOf,
  placeOnField,
  segmentOnFilm,
} from './fit-camera.ts';
import { type Homography, mapPoint } from './homography.ts';

/** A camera at (25, -30), 12 yd high, 1200 px of focal length, that looks at (0, 10). Reckoned by hand from that camera. */
const oblique: Homography = [
  [12.9654184, 35.22375217, 802.78533259],
  [-2.98020074, 4.76832119, 602.01714361],
  [-0.0126968, 0.02031488, 1],
];

const seen = (x: number, y: number): Point => mapPoint(oblique, { x, y })!;
const mark = (x: number, y: number, off: Point = { x: 0, y: 0 }): PlaceMark => {
  const at = seen(x, y);
  return { id: `${x} ${y}`, seen: { x: at.x + off.x, y: at.y + off.y }, place: { x, y } };
};
const fitted = (fit: CameraFit): FittedCamera => {
  if (fit.kind === 'none') throw new Error(fit.reason);
  return fit;
};
const corners = [mark(-20, 20), mark(20, 20), mark(-1, 0), mark(1, 0), mark(-20, -15)];
const kinds = (camera: FittedCamera): readonly string[] => doubtsOfCamera(camera).map(({ kind }) => kind);

describe('a camera by its marks', () => {
  it('has every man within a tenth of a yard when marks are on whole pixels', () => {
    const rounded = corners.map(({ seen: at, ...rest }) => ({
      ...rest,
      seen: { x: Math.round(at.x), y: Math.round(at.y) },
    }));
    const camera = fitted(fitCamera(rounded));
    for (const [x, y] of [
      [0, 11],
      [-9, 6],
      [10, 3],
      [0, 4],
      [-4, -6],
    ] as const) {
      const found = placeOnField(camera, seen(x, y))!;
      expect(Math.hypot(found.at.x - x, found.at.y - y), `${x} ${y}`).toBeLessThan(0.1);
    }
    expect(kinds(camera)).toEqual([]);
  });

  it('says that nothing checks four marks', () => {
    expect(kinds(fitted(fitCamera(corners.slice(0, 4))))).toEqual(['unchecked']);
  });

  it('says which of them is wrong when one is', () => {
    const camera = fitted(fitCamera([...corners, mark(20, -15, { x: 260, y: -90 })]));
    expect(doubtsOfCamera(camera)[0]).toMatchObject({ kind: 'poor', wrong: '20 -15' });
    expect(camera.errors.reduce((most, one) => (one.yards > most.yards ? one : most)).yards).toBeGreaterThan(1);
  });

  it('doubts marks of which all but one lie nearly on one line', () => {
    const onGoalLine = [mark(-20, 0), mark(-1, 0.2), mark(1, -0.2), mark(9, 0.1), mark(0, 20)];
    expect(kinds(fitted(fitCamera(onGoalLine)))).toContain('onLine');
  });

  it('takes lines for places, by any two pixels of them', () => {
    const line = (id: string, one: readonly [number, number], other: readonly [number, number]) => ({
      id,
      seen: [seen(...one), seen(...other)] as const,
      line: [
        { x: one[0], y: one[1] },
        { x: other[0], y: other[1] },
      ] as const,
    });
    const camera = fitted(
      fitCamera(
        [mark(-1, 0), mark(1, 0), mark(-3, 0)],
        [line('top', [-20, 20], [3, 20]), line('left', [-20, -4], [-20, 12]), line('end', [-20, -15], [14, -15])],
      ),
    );
    const found = placeOnField(camera, seen(4, 9))!;
    expect(Math.hypot(found.at.x - 4, found.at.y - 9)).toBeLessThan(1e-4);
    expect(camera.errors).toHaveLength(6);
    expect(camera.error).toBeLessThan(1e-4);
  });

  it('is none where marks contradict each other, or are too few', () => {
    expect(fitCamera(corners.slice(0, 3))).toMatchObject({ kind: 'none' });
    const crossed = corners.map((one, at) => ({ ...one, seen: corners[(at * 2) % corners.length]!.seen }));
    const fit = fitCamera(crossed);
    // Either it is refused or it is told that it is poor.
    expect(fit.kind === 'none' || kinds(fit)[0] === 'poor').toBe(true);
  });
});

describe('a pixel of a frame', () => {
  const camera = fitted(fitCamera(corners));

  it('lies nowhere on the ground above the horizon', () => {
    // This camera is level with the horizon at 540 px less 1200 px times the slope at which it looks down.
    const down = 12 / Math.hypot(25, 40);
    const horizon = 540 - 1200 * down;
    expect(placeOnField(camera, { x: 900, y: horizon - 20 })).toBeUndefined();
    expect(placeOnField(camera, { x: 900, y: horizon + 20 })).toBeDefined();
  });

  it('is worth more yards the farther away, and is known to be outside of what was marked', () => {
    const near = placeOnField(camera, seen(0, 2))!;
    const far = placeOnField(camera, seen(-25, 36))!;
    expect(far.yardsAPixel).toBeGreaterThan(2 * near.yardsAPixel);
    expect(near.outside).toBe(0);
    expect(far.outside).toBeGreaterThan(10);
  });

  it('is where a place is seen', () => {
    const at = pixelOf(camera, { x: 3, y: 7 })!;
    const by = seen(3, 7);
    expect(Math.hypot(at.x - by.x, at.y - by.y)).toBeLessThan(1e-3);
  });

  it('of a line ends before what is behind the camera', () => {
    // The camera stands behind the end line: what is farther back than it is not in its picture.
    const cut = segmentOnFilm(camera, { x: 25, y: -60 }, { x: 0, y: 10 })!;
    expect(cut.flatMap(({ x, y }) => [x, y]).every(Number.isFinite)).toBe(true);
    const end = seen(0, 10);
    expect(Math.hypot(cut[1].x - end.x, cut[1].y - end.y)).toBeLessThan(1e-3);
    expect(segmentOnFilm(camera, { x: 25, y: -60 }, { x: 20, y: -70 })).toBeUndefined();
  });
});
