import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirrorSpotId } from '../offense/mirror.ts';
import { sets } from '../offense/sets.ts';
import { doorstepRadius } from './cover.ts';
import { createDutyBoard, type DutyBoard, duty } from './duty.ts';
import { createDutySheet } from './duty-sheet.ts';
import { createOwnScheme } from './own-scheme.ts';
import type { Scheme, SchemeView } from './scheme.ts';
import { schemeList } from './schemes.ts';
import { targetInto } from './targets.ts';
import { createSchemeView, readOffense } from './view.ts';

/** A place anywhere a man can be in the attack: beside and behind the goal, inside, and out to the restart. */
const anywhere = fc.tuple(fc.double({ min: -20, max: 20, noNaN: true }), fc.double({ min: -12, max: 25, noNaN: true }));

/** Six men starting from a set or anywhere, then a few looks with the men run on and the ball passed, carried or loose. */
const story = fc.record({
  start: fc.oneof(
    fc.constantFrom(...Object.values(sets)).map(({ spots }) => spots.map(({ at }) => [at.x, at.y] as [number, number])),
    fc.array(anywhere, { minLength: 6, maxLength: 6 }),
  ),
  looks: fc.array(
    fc.record({
      ball: fc.integer({ min: -1, max: 5 }),
      mover: fc.integer({ min: 0, max: 5 }),
      to: anywhere,
      carrying: fc.boolean(),
      timeLeft: fc.constantFrom(60, 30, 9),
    }),
    { minLength: 1, maxLength: 12 },
  ),
  defense: fc.array(anywhere, { minLength: 6, maxLength: 6 }),
  star: fc.integer({ min: -1, max: 5 }),
});
type Story = typeof story extends fc.Arbitrary<infer T> ? T : never;

interface Look {
  readonly view: SchemeView;
  readonly board: DutyBoard;
  readonly memory: Int8Array;
  readonly ball: number;
}

/** Play a story against a scheme and hand each look to `check`. */
function tell(
  scheme: Scheme,
  { start, looks, defense, star }: Story,
  sense: 1 | -1,
  check: (look: Look) => void,
): void {
  const view = createSchemeView(scheme.defenders);
  const memory = new Int8Array(scheme.memorySize);
  view.sense = sense;
  view.star = star;
  for (const [i, [x, y]] of start.entries()) view.offense.set([sense * x, y], 2 * i);
  for (const [i, [x, y]] of defense.slice(0, scheme.defenders).entries()) view.defense.set([sense * x, y], 2 * i);
  let last = -1;
  for (const look of looks) {
    if (look.ball !== view.ball && view.ball >= 0) view.previousBall = view.ball;
    view.ball = look.ball;
    view.carrying = look.carrying;
    view.timeLeft = look.timeLeft;
    view.offense.set([sense * look.to[0], look.to[1]], 2 * look.mover);
    readOffense(view);
    const board = createDutyBoard(scheme.defenders);
    board.kind.fill(99);
    scheme.assign(view, memory, board);
    if (look.ball >= 0) last = look.ball;
    check({ view, board, memory, ball: look.ball >= 0 ? look.ball : last });
  }
}

/** A coach's grid with holes in it, to be held to the same laws (ours). */
const own = createOwnScheme(
  {
    id: 'own',
    name: 'Own',
    defenders: [
      { name: 'a', home: [4, 9], stick: 'pole' },
      { name: 'b', home: [-4, 9], stick: 'pole' },
      { name: 'c', home: [4, 3], stick: 'pole' },
      { name: 'd', home: [-4, 3], stick: 'short' },
    ],
    rows: {
      top: {
        a: { duty: 'ball' },
        b: { duty: 'split', who: ['topLeft', 'wingLeft'] },
        c: { duty: 'lock', who: 'crease' },
      },
      wingLeft: { a: { duty: 'lane', who: 'top' }, d: { duty: 'ball' }, b: { duty: 'pipe', who: 'behind' } },
      behind: { c: { duty: 'front', who: 'crease' }, d: { duty: 'man', who: 'wingLeft' } },
    },
  },
  [],
).scheme!;

describe.each([...schemeList, own])('$id', (scheme) => {
  test('gives every man a duty about men who exist, at a finite place', () => {
    fc.assert(
      fc.property(story, (told) =>
        tell(scheme, told, 1, ({ board }) => {
          for (let i = 0; i < scheme.defenders; i++) {
            expect(Object.values(duty)).toContain(board.kind[i]);
            expect(board.a[i]).toBeGreaterThanOrEqual(board.kind[i] === duty.place ? -1 : 0);
            expect(board.a[i]).toBeLessThan(6);
            expect(board.b[i]).toBeGreaterThanOrEqual(board.kind[i] === duty.split ? 0 : -1);
            expect(board.b[i]).toBeLessThan(6);
            expect(Number.isFinite(board.x[i]!) && Number.isFinite(board.y[i]!)).toBe(true);
            if (board.kind[i] === duty.split) expect(board.a[i]).not.toBe(board.b[i]);
          }
        }),
      ),
    );
  });

  test('leaves no ball in front of the goal line without a man', () => {
    fc.assert(
      fc.property(story, (told) =>
        tell(scheme, told, 1, ({ view, board, ball }) => {
          if (ball < 0 || view.offense[2 * ball + 1]! < 0) return;
          const onBall = [...board.kind].some((kind, i) => kind === duty.ball && board.a[i] === ball);
          expect(onBall).toBe(true);
        }),
      ),
    );
  });

  test('leaves no man alone at the doorstep while it has men enough', () => {
    fc.assert(
      fc.property(story, (told) =>
        tell(scheme, told, 1, ({ view, board, ball }) => {
          const there = [0, 1, 2, 3, 4, 5].filter((man) => man !== ball && isDoorstep(view, man));
          if (there.length + 2 > scheme.defenders) return;
          for (const man of there) expect([...board.a, ...board.b]).toContain(man);
        }),
      ),
    );
  });

  test('mirrors exactly', () => {
    fc.assert(
      fc.property(story, (told) => {
        const plain: unknown[] = [];
        const turned: unknown[] = [];
        tell(scheme, told, 1, ({ board }) => plain.push(words(board, 1)));
        tell(scheme, told, -1, ({ board }) => turned.push(words(board, -1)));
        expect(turned).toEqual(plain);
      }),
    );
  });

  test('asks the same again when nothing has changed', () => {
    fc.assert(
      fc.property(story, (told) =>
        tell(scheme, told, 1, ({ view, board, memory }) => {
          const again = createDutyBoard(scheme.defenders);
          readOffense(view);
          scheme.assign(view, Int8Array.from(memory), again);
          expect(words(again, 1)).toEqual(words(board, 1));
        }),
      ),
    );
  });

  test('asks men to be at finite places, not behind the goal, and not past its reach', () => {
    const out = new Float64Array(2);
    const params = { extends: scheme.extends, standoff: 1.8, sense: 1 } as const;
    fc.assert(
      fc.property(story, (told) =>
        tell(scheme, told, 1, ({ view, board, ball }) => {
          if (ball < 0) return;
          for (let i = 0; i < scheme.defenders; i++) {
            targetInto(out, board, i, view.offense, view.offense.subarray(2 * ball, 2 * ball + 2), params);
            expect(Number.isFinite(out[0]!) && Number.isFinite(out[1]!)).toBe(true);
            // A lock goes wherever his man goes.
            if (board.kind[i] === duty.lock) continue;
            expect(out[1]).toBeGreaterThan(0.5);
            expect(Math.hypot(out[0]!, out[1]!)).toBeLessThanOrEqual(scheme.extends + 1);
          }
        }),
      ),
    );
  });
});

describe.each(schemeList)('$id', (scheme) => {
  test.each(Object.values(sets))(
    'knows no right from left against a $id once the ball has been on a side',
    ({ spots }) => {
      const ids = spots.map((spot) => spot.id);
      const sided = ids.filter((id) => id !== mirrorSpotId(id) && !id.startsWith('C'));
      const balls = fc.tuple(fc.constantFrom(...sided), fc.array(fc.constantFrom(...ids), { maxLength: 8 }));
      fc.assert(
        fc.property(balls, ([first, rest]) => {
          const star = sided[0]!;
          const plain = createDutySheet(scheme, spots, [first, ...rest], { star });
          const other = createDutySheet(scheme, spots, [first, ...rest].map(mirrorSpotId), {
            star: mirrorSpotId(star),
          });
          const open = (sheet: typeof plain) => sheet.rows.map((row) => [...row.open].sort());
          expect(open(other)).toEqual(open(plain).map((row) => row.map(mirrorSpotId).sort()));
        }),
      );
    },
  );
});

function isDoorstep(view: SchemeView, man: number): boolean {
  const y = view.offense[2 * man + 1]!;
  return y >= 0 && Math.hypot(view.offense[2 * man]!, y) <= doorstepRadius;
}

function words(board: DutyBoard, sense: 1 | -1) {
  return {
    kind: [...board.kind],
    a: [...board.a],
    b: [...board.b],
    x: [...board.x].map((x) => sense * x + 0),
    y: [...board.y],
  };
}
