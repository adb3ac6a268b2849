import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { groundOf } from './play-ground.ts';
import { snapGroundOf, snapPlace } from './snap-place.ts';

const ground = groundOf(demoPlaybook);
const snaps = snapGroundOf(demoPlaybook, demoPlaybook.plays[0]!, ground, 'C');

// The lantern's men: TR 7,14 TL -7,14 WR 11,4 WL -11,4 X 0,-6; high-school lines (14U): box 20 wide and high, pipes at x 1 and -1, crease 3.
describe('a place that is pointed at catches on', () => {
  test.each([
    ['where another man stands', 7.2, 13.8, 7, 14, 'where TR stands'],
    ['a pipe', 1.2, 0.1, 1, 0, 'right pipe'],
    ['the middle', 0.3, 8.2, 0, 8, 'middle'],
    ['the same depth', 2.1, 14.3, 2, 14, 'level with TR'],
    ['the same side, and the half-yard', -6.8, 9.1, -7, 9, 'in line with TL'],
    ['the crossing of two men', 7.1, 4.2, 7, 4, 'in line with TR, level with WR'],
    ['the goal line extended', 8.1, 0.2, 8, 0, 'goal line extended'],
    ['the restraining line', 4.6, 19.8, 4.5, 20, 'restraining line'],
    ['the line of the box', 19.8, 9.1, 20, 9, 'right line of the box'],
    ['the edge of the crease', 2.2, 2.2, 2.2, 2.2, 'edge of the crease'],
    ['the edge of the crease from inside', -2, 2, -2.2, 2.2, 'edge of the crease'],
    ['the edge in line with a pipe', 1.1, 2.7, 1, 2.9, 'in line with the right pipe, edge of the crease'],
    ['the edge on the goal line', 3.2, 0.2, 3, 0, 'goal line extended, edge of the crease'],
    ['the edge in the middle, behind', 0.1, -2.8, 0, -3, 'middle, edge of the crease'],
    ['whole half-yards', 4.6, 9.2, 4.5, 9, ''],
  ])('%s', (_, x, y, toX, toY, words) => {
    const snapped = snapPlace({ x, y }, snaps, 0.4);
    expect(snapped.point).toEqual({ x: toX, y: toY });
    expect(snapped.words).toBe(words);
  });

  test('nothing when it is not near enough', () => {
    expect(snapPlace({ x: 4.62, y: 9.18 }, snaps, 0.1).point).toEqual({ x: 4.6, y: 9.2 });
  });
});
