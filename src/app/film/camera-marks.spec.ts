import { describe, expect, it } from 'vitest';
import { mapPoint, type Point, ruleCodes } from '../../engine/index.ts';
import { type CameraMarks, cameraAt, dropMark, marksAt, setLine, setPlace, withOwnMarks } from './camera-marks.ts';
import { cameraSentence, doubtSentence, placeDoubt } from './camera-words.ts';
import { drawnLines, knownField } from './known-places.ts';

const field = knownField(ruleCodes.nfhs.markings);
/** A camera of the engine's homography tests: at (25, -30), 12 yd high, by hand. */
const seen = ({ x, y }: Point): Point =>
  mapPoint(
    [
      [12.9654184, 35.22375217, 802.78533259],
      [-2.98020074, 4.76832119, 602.01714361],
      [-0.0126968, 0.02031488, 1],
    ],
    { x, y },
  )!;
const marked = (ids: readonly string[], time = 0): readonly CameraMarks[] =>
  ids.reduce<readonly CameraMarks[]>(
    (views, id) => setPlace(views, time, id, seen(field.places.find((one) => one.id === id)!.at)),
    [],
  );

describe('marks of the camera', () => {
  it('hold from their frame on, and before the first of them too', () => {
    const views = withOwnMarks(marked(['net'], 4), 9);
    expect([0, 4, 8.9, 9, 20].map((time) => marksAt(views, time)?.time)).toEqual([4, 4, 4, 9, 9]);
    expect(marksAt([], 3)).toBeUndefined();
  });

  it('tell where places are, of points and lines of the rule code', () => {
    const line = field.lines.find(({ id }) => id === 'top-line')!;
    const views = setLine(marked(['left-post', 'right-post', 'box-end-left', 'net']), 0, 'top-line', [
      seen(line.ends[0]),
      seen({ x: 3, y: line.ends[1].y }),
    ]);
    const fit = cameraAt(views, 0, field);
    if (fit.kind === 'none') throw new Error(fit.reason);
    const { x, y } = mapPoint(fit.toField, seen({ x: 6, y: 9 }))!;
    expect(Math.hypot(x - 6, y - 9)).toBeLessThan(0.01);
    expect(cameraSentence(fit, 5)).toMatch(/^The marks agree within a tenth of a yard/);
  });

  it('go away one by one, the last of a frame with its frame', () => {
    const views = marked(['net', 'left-post']);
    expect(dropMark(dropMark(views, 0, 'net'), 0, 'left-post')).toEqual([]);
  });

  it('are said to be too few, and of what there is to doubt', () => {
    expect(cameraSentence(cameraAt([], 0, field), 0)).toMatch(/^Four places or lines are needed/);
    expect(cameraSentence(cameraAt(marked(['net']), 0, field), 1)).toMatch(/^3 more places or lines are needed/);
    expect(doubtSentence({ kind: 'poor', yards: 2.34, wrong: 'net' }, field)).toBe(
      'The marks contradict each other by up to 2.3 yd. Most likely wrong: back corner of the net on the ground.',
    );
  });

  it('say of a man that his place is coarse, or far from what is marked, or nothing', () => {
    const at = { x: 0, y: 0 };
    expect(placeDoubt({ at, yardsAPixel: 0.7, outside: 0 })).toMatch(/one pixel is worth 0\.7 yd/);
    expect(placeDoubt({ at, yardsAPixel: 0.1, outside: 12 })).toMatch(/12\.0 yd outside/);
    expect(placeDoubt({ at, yardsAPixel: 0.1, outside: 3 })).toBeUndefined();
  });
});

describe('what can be marked', () => {
  it.each(Object.keys(ruleCodes) as (keyof typeof ruleCodes)[])(
    'of %s are places on its lines, each named once',
    (code) => {
      const { places, lines } = knownField(ruleCodes[code].markings);
      const names = [...places, ...lines].map(({ words }) => words);
      expect(new Set(names).size).toBe(names.length);
      expect(places.length).toBeGreaterThanOrEqual(8);
      for (const [from, to] of drawnLines(ruleCodes[code].markings))
        expect([from.x, from.y, to.x, to.y].every(Number.isFinite)).toBe(true);
    },
  );
});
