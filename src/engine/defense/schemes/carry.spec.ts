import { expect, test } from 'vitest';
import { sets } from '../../offense/sets.ts';
import { createDutyBoard, type DutyBoard, duty } from '../duty.ts';
import { type SchemeId, schemes } from '../schemes.ts';
import { createSchemeView, readOffense } from '../view.ts';

const { spots } = sets['3-3'];
const indexOf = (id: string) => spots.findIndex((spot) => spot.id === id);

/** A 3-3 against a scheme: pass to a spot, or let its man run with the ball along a path. */
function drill(id: SchemeId) {
  const scheme = schemes[id];
  const view = createSchemeView(scheme.defenders);
  const memory = new Int8Array(scheme.memorySize);
  const board = createDutyBoard(scheme.defenders);
  for (const [i, { at }] of spots.entries()) view.offense.set([at.x, at.y], 2 * i);
  for (let i = 0; i < scheme.defenders; i++) view.defense.set([scheme.home[2 * i], scheme.home[2 * i + 1]], 2 * i);
  view.timeLeft = 60;
  const look = () => {
    readOffense(view);
    scheme.assign(view, memory, board);
  };
  return {
    board,
    pass(to: string) {
      view.previousBall = view.ball;
      view.ball = indexOf(to);
      view.carrying = false;
      look();
    },
    /** Ten looks on the way from where the man is to (x, y). */
    carry(who: string, x: number, y: number) {
      const man = indexOf(who);
      const fromX = view.offense[2 * man];
      const fromY = view.offense[2 * man + 1];
      view.carrying = true;
      for (let step = 1; step <= 10; step++) {
        view.offense.set([fromX + ((x - fromX) * step) / 10, fromY + ((y - fromY) * step) / 10], 2 * man);
        look();
      }
    },
    onBall: () => namesWith(scheme.names, board, (i) => board.kind[i] === duty.ball),
    has: (who: string) => namesWith(scheme.names, board, (i) => board.a[i] === indexOf(who)),
  };
}

function namesWith(names: readonly string[], _: DutyBoard, test: (i: number) => boolean): string {
  return names.filter((_name, i) => test(i)).join(' ');
}

// Doctrine of carries (common practice, no source): a zone passes the carrier off, a rotation pushes the neighbour on, a man follows.

test('zone: the corner escorts the carrier to the middle, and the other corner takes him past it', () => {
  for (const id of ['box-zone', 'zone-2-3'] as const) {
    const d = drill(id);
    d.pass('TR');
    d.carry('TR', 1, 13);
    expect(d.onBall(), id).toBe('tr');
    d.carry('TR', -5, 12);
    expect(d.onBall(), id).toBe('tl');
  }
});

test('zone: a carrier who goes down his side is passed from the top corner to the low one', () => {
  const d = drill('box-zone');
  d.pass('TR');
  d.carry('TR', 10, 5);
  expect(d.onBall()).toBe('lr');
});

test('crease string: it answers a pass to the point, but not a carrier whom the corner brings there', () => {
  const passed = drill('box-string');
  passed.pass('TR');
  passed.pass('P');
  expect(passed.onBall()).toBe('c');
  const carried = drill('box-string');
  carried.pass('TR');
  carried.carry('TR', 0, 13);
  expect(carried.onBall()).toBe('tr');
  expect(carried.has('C')).toContain('c');
});

test('four-man rotation: the ball man stays with the carrier and pushes the neighbour on', () => {
  const d = drill('four-man-rotation');
  d.pass('TR');
  expect([d.onBall(), d.has('P')]).toEqual(['tr', 'tl']);
  d.carry('TR', -4, 13);
  expect(d.onBall()).toBe('tr');
  // The carrier has gone past the point, who is now the man behind him.
  expect(d.has('TL')).toBe('tl');
});

test('five-man rotation: at the seam the point man says "I got ball" and the first man bumps back', () => {
  const d = drill('five-man-rotation');
  d.pass('TR');
  expect(d.onBall()).toBe('tr');
  d.carry('TR', 4.5, 13);
  expect(d.onBall()).toBe('tr');
  d.carry('TR', 1, 13);
  expect(d.onBall()).toBe('pt');
  expect(d.has('TR')).toBe('pt');
  // Back in the lane that he left, on the side of the ball where the wing is.
  expect(d.has('WR')).toContain('tr');
});

test('shutoff: the lock man goes with the star wherever he goes, and plays him when he has the ball', () => {
  const d = drill('shutoff');
  d.pass('P');
  expect(d.has('TR')).toContain('lock');
  d.pass('TR');
  d.carry('TR', -9, 3);
  expect(d.onBall()).toBe('lock');
});

test('jump: a carrier who drifts into a corner is doubled and the man left behind shut off', () => {
  const d = drill('jump');
  d.pass('TR');
  d.pass('WR');
  expect(d.onBall().split(' ')).toHaveLength(1);
  d.carry('WR', 10, 3);
  expect(d.onBall().split(' ')).toHaveLength(2);
  const [shut] = [...d.board.kind.keys()].filter(
    (i) => d.board.kind[i] === duty.lock && d.board.a[i] === indexOf('TR'),
  );
  expect(shut).toBeDefined();
});

test('settled six: the crease man slides to a carrier who has beaten his man, and the farthest man fills', () => {
  const d = drill('settled-six');
  d.pass('TR');
  expect(d.onBall()).toBe('tr');
  // The drill leaves his defender behind at (5, 11).
  d.carry('TR', 4.5, 7.5);
  expect(d.onBall()).toBe('tr c');
  expect(d.has('C')).not.toBe('');
});

test('locked crease: he follows his man out when nobody comes in, and lets him go when somebody does', () => {
  const d = drill('four-man-rotation');
  d.pass('TR');
  d.carry('C', -6, 10);
  expect(d.has('C')).toBe('c');
  d.carry('P', 0, 6);
  expect(d.has('P')).toContain('c');
});
