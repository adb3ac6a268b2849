import { describe, expect, it } from 'vitest';
import { sets } from '../offense/sets.ts';
import { movementsOf } from './movement.ts';

const of = (set: string, start: number) => {
  const { spots } = sets[set]!;
  const found = movementsOf(
    spots.map(({ at }) => at),
    start,
    'highSchool',
  );
  const way = (id: string) =>
    found
      .find((one) => one.id === id)
      ?.ball.map((man) => spots[man]!.id)
      .join(' ');
  return { found, way };
};

describe('movements of a set', () => {
  it('go to both ends of a set that is open behind the goal and come back', () => {
    const { way } = of('3-3', 0);
    expect(way('lap-right')).toBe('P TR WR TR P TL WL TL P');
    expect(way('lap-left')).toBe('P TL WL TL P TR WR TR P');
    expect(way('reverse')).toBe('P TR P TL');
    expect(way('skip')).toBe('P WR P');
    expect(way('behind')).toBeUndefined();
  });

  it('go round a set with a man behind the goal, and to him the shorter way', () => {
    const { way } = of('2-3-1', 0);
    expect(way('lap-right')).toBe('TR WR X WL TL TR');
    expect(way('behind')).toBe('TR WR X');
  });

  it('pop nobody where there is no crease man', () => {
    expect(of('3-2-1', 0).found.map(({ id }) => id)).not.toContain('pop');
    expect(of('3-3', 0).found.map(({ id }) => id)).toContain('pop');
  });

  it.each(Object.keys(sets))('of the %s pass only between two men who are not the same, in times that go on', (set) => {
    for (const { film, ball, id } of of(set, 0).found) {
      film.moments.slice(1).forEach(({ time }, at) => {
        expect(time).toBeGreaterThan(film.moments[at]!.time);
      });
      expect(new Set(ball).size).toBeGreaterThan(1);
      const stays = ball.slice(1).filter((man, at) => man === ball[at]);
      expect([id, stays]).toEqual([id, []]);
    }
  });

  it('need six places', () => {
    expect(() => movementsOf([], 0, 'pro')).toThrow(new RangeError('invalid spots: 0 (expected 6)'));
  });
});
