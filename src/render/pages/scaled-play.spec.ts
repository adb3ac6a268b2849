import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoPlaybook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { drawnField } from '../field-scene.ts';
import { openingPicture, playSteps } from '../play-steps.ts';
import { scaledField, scaledPlay } from './scaled-play.ts';
import { spotPictures } from './spot-picture.ts';

const share = fc.double({ min: 0.1, max: 3, noNaN: true });

describe.each(demoPlaybook.plays.map(({ id }) => id))('%s on a smaller ground', (id) => {
  const play = toEnginePlay(demoPlaybook, id);
  it('has every man as much nearer to the goal, in every step', () => {
    fc.assert(
      fc.property(share, (by) => {
        const whole = [openingPicture(play), ...playSteps(play).map(({ after }) => after)];
        const small = scaledPlay(play, by);
        const less = [openingPicture(small), ...playSteps(small).map(({ after }) => after)];
        for (const [at, { places, ball }] of whole.entries()) {
          expect(less[at]!.ball).toBe(ball);
          for (const [spot, { x, y }] of Object.entries(places)) {
            expect(less[at]!.places[spot]!.x).toBeCloseTo(by * x, 9);
            expect(less[at]!.places[spot]!.y).toBeCloseTo(by * y, 9);
          }
        }
      }),
    );
  });

  it('is itself when nothing is changed', () => {
    expect(scaledPlay(play, 1)).toEqual(play);
  });
});

it('the lines on the ground come as much nearer', () => {
  const field = drawnField(ruleCodeOf(demoPlaybook).markings);
  const half = scaledField(field, 0.5);
  for (const [line, value] of Object.entries(field)) {
    expect(half[line as keyof typeof half]).toBe(value === null ? null : value / 2);
  }
});

describe('a picture for one man', () => {
  const field = drawnField(ruleCodeOf(demoPlaybook).markings);
  const play = toEnginePlay(demoPlaybook, 'lantern');

  it('keeps a carry long enough for its zigzag, however small the picture is', () => {
    const number = playSteps(play).findIndex(({ beat }) => beat.actions.some(({ kind }) => kind === 'carry')) + 1;
    for (const width of [60, 120, 173, 262]) {
      const { scene } = spotPictures(play, field, width).move('X', number);
      const carries = scene.items.flatMap((item) => (item.style === 'carry' && item.kind === 'path' ? [item] : []));
      expect(Math.max(...carries.map(({ steps }) => steps.length))).toBeGreaterThan(2);
    }
  });

  it('holds every man in its view', () => {
    for (const width of [100, 173, 262]) {
      const { scene, faded } = spotPictures(play, field, width).home('C');
      const { left, top, width: across, height } = scene.view;
      for (const item of [...scene.items, ...faded]) {
        if (item.kind !== 'circle' || item.style === 'creaseArea') continue;
        expect(item.centre.x - item.radius).toBeGreaterThanOrEqual(left);
        expect(item.centre.x + item.radius).toBeLessThanOrEqual(left + across);
        expect(item.centre.y - item.radius).toBeGreaterThanOrEqual(top);
        expect(item.centre.y + item.radius).toBeLessThanOrEqual(top + height);
      }
    }
  });

  it('has no step that the play does not have', () => {
    expect(() => spotPictures(play, field, 200).move('X', 7)).toThrow(RangeError);
  });
});
