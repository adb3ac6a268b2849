import { describe, expect, it } from 'vitest';
import { sets } from '../../engine/index.ts';
import { demoPlaybook } from '../../playbook/index.ts';
import { frameAt } from '../../render/index.ts';
import { creaseMan, rowPicture } from './row-picture.ts';

const ground = { name: '3-3', spots: sets['3-3']!.spots };
const picture = (ball: string, over = ground) => rowPicture(demoPlaybook, 'northgate-net', ball, over);

describe('a row on the field', () => {
  it('has everybody where the duties put him, and the ball at its place', () => {
    const { trace, names, carrier, over } = picture('TR')!;
    expect([over, carrier, names.defense]).toEqual(['3-3', 'TR', ['tr', 'tl', 'lr', 'll', 'c']]);
    const frame = frameAt(trace, 0);
    expect(frame.offense).toEqual(sets['3-3']!.spots.map(({ at }) => at));
    expect(frame.holder).toEqual({ kind: 'attacker', index: 1 });
    expect(frame.duties.map(({ duty, a }) => [duty, names.offense[a]])).toEqual([
      ['ball', 'TR'],
      ['man', 'TL'],
      ['man', 'WR'],
      ['pipe', 'WL'],
      ['front', 'C'],
    ]);
    // The ball man between the ball and the goal, a stick off.
    const [ballMan] = frame.defense;
    const ball = sets['3-3']!.spots[1]!.at;
    expect(Math.hypot(ballMan!.x - ball.x, ballMan!.y - ball.y)).toBeLessThan(4);
    expect(Math.hypot(ballMan!.x, ballMan!.y)).toBeLessThan(Math.hypot(ball.x, ball.y));
  });

  it('is drawn over a set that has its place when the play has nobody there', () => {
    const behind = picture('X')!;
    expect(behind.over).not.toBe('3-3');
    expect(behind.spots.some(({ id }) => id === 'X')).toBe(true);
  });

  it('is nothing for a place that no set has, and for a scheme that is none of ours', () => {
    expect(picture('Q9')).toBeUndefined();
    expect(rowPicture(demoPlaybook, 'nobody', 'P', ground)).toBeUndefined();
  });
});

it.each([
  ['3-3', 'C'],
  ['4-2', undefined],
  ['1-4-1', expect.stringMatching(/^C[RL]$/)],
])('on the crease of a %s stands %s', (set, man) => {
  expect(creaseMan(sets[set]!.spots)).toEqual(man);
});
