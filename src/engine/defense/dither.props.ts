import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sets } from '../offense/sets.ts';
import { createDutyBoard } from './duty.ts';
import { schemeList } from './schemes.ts';
import { createSchemeView, readOffense } from './view.ts';

/** Men who wait for the ball shift this much to each side, yards. */
const shuffle = 0.2;

const offset = fc.double({ min: -shuffle, max: shuffle, noNaN: true });
const shuffles = fc.array(fc.array(offset, { minLength: 12, maxLength: 12 }), { minLength: 2, maxLength: 8 });

describe.each(schemeList)('$id', (scheme) => {
  test.each(Object.values(sets))('nobody dithers while the men of a $id shuffle where they stand', ({ spots }) => {
    const man = fc.integer({ min: 0, max: 5 });
    fc.assert(
      fc.property(man, man, shuffles, (first, second, looks) => {
        const view = createSchemeView(scheme.defenders);
        const memory = new Int8Array(scheme.memorySize);
        const board = createDutyBoard(scheme.defenders);
        view.timeLeft = 60;
        view.star = 1;
        for (let i = 0; i < 2 * scheme.defenders; i++) view.defense[i] = scheme.home[i];
        const look = (shift: readonly number[]) => {
          for (const [i, { at }] of spots.entries()) {
            view.offense.set([at.x + shift[2 * i], at.y + shift[2 * i + 1]], 2 * i);
          }
          readOffense(view);
          scheme.assign(view, memory, board);
          return { kind: [...board.kind], a: [...board.a], b: [...board.b] };
        };
        view.ball = first;
        look(looks[0]);
        view.previousBall = first;
        view.ball = second;
        const before = look(looks[0]);
        for (const shift of looks) expect(look(shift)).toEqual(before);
      }),
    );
  });
});
