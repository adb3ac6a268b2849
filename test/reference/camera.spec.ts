import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { fitHomography, mapPoint, type Point, type PointPair } from '../../src/engine/index.ts';

// OpenCV, the reference: its findHomography without a robust method is the least squares of all marks, refined by steps, in numbers of 32 bits. It runs in a process of its own:
// its module answers as a promise that never ends, which no test runner can import.
const program = `
import { readFileSync } from 'node:fs';
import cv from '@techstark/opencv-js';
cv.onRuntimeInitialized = () => {
  const [from, to] = JSON.parse(readFileSync(0, 'utf8')).map((points) => cv.matFromArray(points.length, 1, cv.CV_64FC2, points.flat()));
  process.stdout.write(JSON.stringify([...cv.findHomography(from, to).data64F]), () => process.exit(0));
};
`;

function reference(pairs: readonly PointPair[]): readonly number[] {
  const points = [pairs.map(({ from }) => [from.x, from.y]), pairs.map(({ to }) => [to.x, to.y])];
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
    input: JSON.stringify(points),
    encoding: 'utf8',
    timeout: 30_000,
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout);
}

/** Field points that a camera 12 yd up shows, with a pattern of marking errors of so many pixels. */
function marks(points: readonly Point[], error: number): readonly PointPair[] {
  return points.map(({ x, y }, at) => {
    const depth = -0.0126968 * x + 0.02031488 * y + 1;
    const seen = {
      x: (12.9654184 * x + 35.22375217 * y + 802.78533259) / depth + error * Math.sin(7 * at),
      y: (-2.98020074 * x + 4.76832119 * y + 602.01714361) / depth + error * Math.cos(5 * at),
    };
    return { from: seen, to: { x, y } };
  });
}

const corners: readonly Point[] = [-20, 20].flatMap((x) => [-15, 0, 20, 40].map((y) => ({ x, y })));

it('is that of a computer vision library for four marks, which both take exactly', () => {
  const four = [corners[0]!, corners[2]!, corners[5]!, corners[7]!];
  const found = fitHomography(marks(four, 2));
  expect(found.kind).toBe('fitted');
  if (found.kind === 'none') return;
  const theirs = reference(marks(four, 2));
  for (const [at, value] of found.homography.flat().entries())
    expect(Math.abs(value / theirs[at]! - 1)).toBeLessThan(1e-5);
});

it('puts a man where the library puts him, within a tenth of a yard, from eight marks that are two pixels off', () => {
  const pairs = marks(corners, 2);
  const found = fitHomography(pairs);
  if (found.kind === 'none') throw new Error(found.reason);
  const [a, b, c, d, e, f, g, h, i] = reference(pairs) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (const { from } of marks(
    [
      { x: 0, y: 5 },
      { x: -8, y: 14 },
      { x: 10, y: 20 },
    ],
    0,
  )) {
    const ours = mapPoint(found.homography, from)!;
    const depth = g * from.x + h * from.y + i;
    const theirs = { x: (a * from.x + b * from.y + c) / depth, y: (d * from.x + e * from.y + f) / depth };
    expect(Math.hypot(ours.x - theirs.x, ours.y - theirs.y)).toBeLessThan(0.1);
  }
});
