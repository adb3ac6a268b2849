import { describe, expect, it } from 'vitest';
import { sets } from '../../engine/index.ts';
import type { ChanceMark } from '../../playbook/index.ts';
import { filmOfMarks, readTick, writeTick } from './film-of-marks.ts';

const { spots } = sets['3-3']!;
const mark = (more: Partial<ChanceMark>): ChanceMark => ({
  time: 1,
  holder: 'P',
  defenders: [[0, 5]],
  by: 'film',
  ...more,
});

describe('marks as the engine reads them', () => {
  it('take the ball by its man, else for the man who is nearest to it', () => {
    const { film } = filmOfMarks(spots, [mark({}), { time: 2, ball: [8, 11], defenders: [[1, 2]], by: 'film' }]);
    expect(film?.moments.map(({ ball }) => spots[ball]!.id)).toEqual(['P', 'TR']);
  });

  it('take men of the offense in any order for the spots that they are nearest to in all', () => {
    const offense: [number, number][] = [...spots].reverse().map(({ at }) => [at.x + 0.5, at.y - 0.5]);
    const { film } = filmOfMarks(spots, [mark({ offense })]);
    expect(film?.moments[0]?.offense).toEqual(spots.map(({ at }) => ({ x: at.x + 0.5, y: at.y - 0.5 })));
  });

  it('leave men who were not marked open, and stand moments in the order of their times', () => {
    const { film } = filmOfMarks(spots, [mark({ time: 5 }), mark({ time: 2, offense: [[-8.5, 12]] })]);
    expect(film?.moments.map(({ time }) => time)).toEqual([2, 5]);
    expect(film?.moments[0]?.offense?.filter((place) => place !== null)).toHaveLength(1);
    expect(film?.moments[0]?.offense?.[spots.findIndex(({ id }) => id === 'TL')]).toEqual({ x: -8.5, y: 12 });
  });

  it('tell of a mark that says nothing of the ball, and are no film without a man', () => {
    const { film, leftOut } = filmOfMarks(spots, [{ time: 3, defenders: [[0, 5]], by: 'film' }]);
    expect(film).toBeNull();
    expect(leftOut).toEqual(['The mark at 3 s does not say who has the ball.']);
  });

  it('read ticks among their cues, and leave out words that are no sign', () => {
    const { ticks } = filmOfMarks(spots, [mark({ cues: ['one-in-front', 'not crease-glued', 'open C'] })]);
    expect(ticks.map(writeTick)).toEqual(['one-in-front', 'not crease-glued']);
    expect(readTick('not:two-on-ball')).toEqual({ sign: 'two-on-ball', seen: false });
    expect(readTick('nonsense')).toBeUndefined();
  });
});
