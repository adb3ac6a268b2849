import { describe, expect, it } from 'vitest';
import { handMadeScript } from '../render/clip/hand-made-script.fixture.ts';
import { handMadeNames, handMadePlay } from '../render/hand-made.fixture.ts';
import { clipOfScript } from '../render/index.ts';
import { type Camera, followCamera, matrixOf, onPicture, unitCamera, unitView } from './camera.ts';
import { ballAt, filmOf, manAt } from './film.ts';

const film = filmOf(clipOfScript(handMadeScript(), handMadePlay, handMadeNames, ''));
const size = { width: 1000, height: 900 };
const goal = { x: 0, y: 0 };
const men = [0, 1, 2, 3, 4, 5];
const times = [0, 0.5, 1, 1.5, 2];
const moments = men.flatMap((man) => times.map((time) => ({ man, time })));

describe('the view of one man', () => {
  it.each(moments)('has man $man at the bottom and the goal straight above him at $time s', ({ man, time }) => {
    const camera = followCamera(film, man, time, size);
    const me = onPicture(camera, manAt(film, man, time));
    const there = onPicture(camera, goal);
    // His places are averaged over a moment: he is a step off the middle at most.
    expect(Math.abs(me.x - size.width / 2)).toBeLessThan(camera.scale);
    expect(me.y).toBeGreaterThan(size.height * 0.6);
    expect(me.y).toBeLessThan(size.height);
    expect(there.x).toBeCloseTo(size.width / 2, 6);
    expect(there.y).toBeGreaterThan(0);
    expect(there.y).toBeLessThan(me.y);
  });

  it.each(moments)('holds the ball (man $man, $time s)', ({ man, time }) => {
    const { x, y } = onPicture(followCamera(film, man, time, size), ballAt(film, time));
    expect(x).toBeGreaterThan(0);
    expect(x).toBeLessThan(size.width);
    expect(y).toBeGreaterThan(0);
    expect(y).toBeLessThan(size.height);
  });

  it('has on his right hand what is on his right hand', () => {
    // P at the top of the field looks at the goal as the unit does: the right of the offense is on the right.
    const top = followCamera(film, 0, 0, size);
    expect(onPicture(top, { x: 8, y: 4 }).x).toBeGreaterThan(onPicture(top, { x: -8, y: 4 }).x);
    // Behind the goal he looks the other way: everything is turned by half a circle and nothing is mirrored.
    const behind = { ...film, x_byMan: film.x_byMan.map(() => [0]), y_byMan: film.y_byMan.map(() => [-6]) };
    const turned = followCamera(behind, 0, 0, size);
    expect(onPicture(turned, { x: 8, y: 4 }).x).toBeLessThan(onPicture(turned, { x: -8, y: 4 }).x);
  });

  it('has a way to the goal even in the middle of it', () => {
    const inGoal = { ...film, x_byMan: film.x_byMan.map(() => [0]), y_byMan: film.y_byMan.map(() => [0]) };
    const { turn, scale } = followCamera(inGoal, 0, 0, size);
    expect(turn).toBe(0);
    expect(scale).toBeGreaterThan(0);
  });
});

describe('any view', () => {
  const cameras: readonly Camera[] = [unitCamera(unitView(film), size), followCamera(film, 4, 1, size)];

  it.each(cameras)('keeps shapes: all lengths grow alike ($turn)', (camera) => {
    const [a, b] = [
      { x: 3, y: -4 },
      { x: -7, y: 11 },
    ];
    const [shownA, shownB] = [onPicture(camera, a), onPicture(camera, b)];
    const length = Math.hypot(a.x - b.x, a.y - b.y);
    expect(Math.hypot(shownA.x - shownB.x, shownA.y - shownB.y) / length).toBeCloseTo(camera.scale, 9);
  });

  it.each(cameras)('is the same by its matrix ($turn)', (camera) => {
    const [a, b, c, d, e, f] = matrixOf(camera);
    for (const { x, y } of [goal, { x: 5, y: 2 }, { x: -9, y: 17 }]) {
      const shown = onPicture(camera, { x, y });
      expect(a * x + c * y + e).toBeCloseTo(shown.x, 9);
      expect(b * x + d * y + f).toBeCloseTo(shown.y, 9);
    }
  });

  it('of the unit holds all of its ways, up to a bound', () => {
    const camera = unitCamera(unitView(film), size);
    for (const { man, time } of moments) {
      const { x, y } = onPicture(camera, manAt(film, man, time));
      expect(x > 0 && x < size.width && y > 0 && y < size.height).toBe(true);
    }
    const far = { ...film, x_byMan: film.x_byMan.map((track, man) => (man === 0 ? [90] : track)) };
    expect(unitView(far).width).toBe(40);
  });
});
