import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curvedArrow, pathLength, smoothSteps, trimEnd, trimStart, zigzagArrow } from './arrow.ts';
import type { Primitive } from './scene.ts';

const point = fc.record({
  x: fc.double({ min: -30, max: 30, noNaN: true }),
  y: fc.double({ min: -15, max: 40, noNaN: true }),
});
const path = fc.array(point, { minLength: 2, maxLength: 6 });
const gap = fc.double({ min: 0, max: 60, noNaN: true });

describe('paths', () => {
  it('are shorter by what is cut off, at either end', () => {
    fc.assert(
      fc.property(path, gap, (points, cut) => {
        const left = Math.max(0, pathLength(points) - cut);
        expect(pathLength(trimEnd(points, cut))).toBeCloseTo(left, 6);
        expect(pathLength(trimStart(points, cut))).toBeCloseTo(left, 6);
      }),
    );
  });

  it('run through every point when they are smoothed', () => {
    fc.assert(
      fc.property(path, (points) => {
        const through = smoothSteps(points).flatMap((step) => (step.kind === 'close' ? [] : [step.to]));
        expect(through).toEqual(points);
      }),
    );
  });
});

describe('arrows', () => {
  it('end with their tip where the way ends, or draw nothing for want of room', () => {
    fc.assert(
      fc.property(path, fc.constantFrom(curvedArrow, zigzagArrow), (points, arrow) => {
        const items = arrow('run', 'runHead', points);
        if (items.length > 0) expect(tipOf(items.at(-1)!)).toEqual(points.at(-1));
        else expect(pathLength(points)).toBeLessThan(0.5);
      }),
    );
  });

  it('never hold a coordinate that is no number', () => {
    fc.assert(
      fc.property(path, fc.constantFrom(curvedArrow, zigzagArrow), (points, arrow) => {
        expect(arrow('run', 'runHead', points).flatMap(numbersOf).every(Number.isFinite)).toBe(true);
      }),
    );
  });
});

function tipOf(head: Primitive): unknown {
  const [first] = head.kind === 'path' ? head.steps : [];
  return first !== undefined && first.kind !== 'close' ? first.to : undefined;
}

function numbersOf(item: Primitive): readonly number[] {
  if (item.kind !== 'path') return [];
  return item.steps.flatMap((step) => (step.kind === 'close' ? [] : [step.to.x, step.to.y]));
}
