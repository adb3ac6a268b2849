import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chance, demoPlaybook, ruleCodeOf } from '../../playbook/index.ts';
import { gameOf } from '../bench/bench-taps.fixture.ts';
import { chanceRecords } from '../bench/chance-records.ts';
import { foldGame } from '../bench/fold-game.ts';
import { countManUps, manUpsOf } from './man-ups.ts';

/** "2 8:20 restart saved 120 fixed": period, clock, how it began, how it ended, its penalty. */
function chanceOf(text: string, at: number): Chance {
  const [period, clock, start, result, seconds, more] = text.split(' ');
  const [minutes, rest] = clock!.split(':').map(Number);
  return {
    id: String.fromCharCode(97 + at),
    side: 'ours',
    date: '2026-03-14',
    opponent: 'copper-falls',
    period: Number(period),
    clock: 60 * minutes! + rest!,
    ...(start !== '-' && { start: start as NonNullable<Chance['start']> }),
    ...(seconds !== undefined && { penalty: { seconds: Number(seconds), ...(more === 'fixed' && { fixed: true }) } }),
    result: result as Chance['result'],
  };
}

const groups = (chances: readonly Chance[]): string =>
  manUpsOf(chances)
    .map((those) => those.map(({ id }) => id).join(''))
    .join(' ');

describe('chances of one man-up', () => {
  it.each([
    [
      'one penalty of 2:00, three times on again',
      ['2 8:20 restart saved 120', '2 7:50 transition wide 120', '2 7:00 transition goal 120'],
      'abc',
    ],
    ['two penalties', ['2 8:20 restart saved 60', '2 6:50 restart goal 60'], 'a b'],
    ['a new foul in the same minute', ['2 8:20 restart newFlag 60', '2 8:00 restart goal 60'], 'a b'],
    ['a goal that let him out, and a man-up after it', ['2 8:20 restart goal 60', '2 8:00 transition saved 60'], 'a b'],
    ['a goal in a penalty that stays', ['2 8:20 restart goal 60 fixed', '2 8:00 transition saved 60 fixed'], 'ab'],
    ['long after the penalty', ['2 8:20 restart saved 60', '2 7:00 transition saved 60'], 'a b'],
    [
      'a flag, then the penalty',
      ['2 8:20 flagDown saved', '2 8:02 restart saved 60', '2 7:10 transition goal 60'],
      'abc',
    ],
    ['a flag in a penalty is another', ['2 8:20 restart saved 60', '2 8:00 flagDown goal'], 'a b'],
    ['over the end of a period', ['1 0:20 restart saved 60', '2 11:50 transition goal 60'], 'ab'],
    ['nothing said of how they began, within the time', ['2 8:20 - saved 60', '2 7:50 - goal 60'], 'ab'],
    ['the same behind one that ran out', ['2 8:20 - expired 60', '2 7:50 - goal 60'], 'a b'],
    ['no length: a minute', ['2 8:20 restart saved', '2 7:25 transition goal', '2 7:00 transition goal'], 'ab c'],
    ['out of order', ['2 7:50 transition goal 60', '2 8:20 restart saved 60'], 'ba'],
  ] as const)('%s', (_, lines, expected) => {
    expect(groups(lines.map(chanceOf))).toBe(expected);
  });

  it('are of one side, day, opponent and game', () => {
    const [a, b] = ['2 8:20 restart saved 60', '2 8:00 transition goal 60'].map(chanceOf) as [Chance, Chance];
    expect(groups([a, b])).toBe('ab');
    for (const other of [
      { side: 'theirs' },
      { date: '2026-03-15' },
      { opponent: 'Harbor' },
      { game: 'second' },
    ] as const)
      expect(groups([a, { ...b, ...other }])).toBe('a b');
  });

  // What the bench wrote of three penalties came to five man-ups: each possession was counted as one.
  it('are put together as the bench writes them', () => {
    const game = gameOf([
      ...['0 start', '10 fouls them 120', '10 start', '20 result saved', '30 begun', '45 result wide', '60 begun'],
      ...['80 result turnover', '200 fouls them 60', '200 start', '215 result goal', '300 fouls them 60', '300 start'],
      '320 result saved',
    ]);
    const { chances } = foldGame(game, ruleCodeOf(demoPlaybook));
    const records = chanceRecords(game, chances);
    expect(records).toHaveLength(5);
    expect(manUpsOf(records).map((those) => those.length)).toEqual([3, 1, 1]);
  });

  it('hold each chance once, whatever is written down', () => {
    const any = fc.record(
      {
        date: fc.constantFrom('2026-03-14', '2026-03-15'),
        period: fc.integer({ min: 1, max: 5 }),
        clock: fc.integer({ min: 0, max: 720 }),
        start: fc.constantFrom('restart' as const, 'flagDown' as const, 'transition' as const),
        penalty: fc.record({ seconds: fc.constantFrom(30, 60, 120), fixed: fc.boolean() }),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(
        fc.array(fc.tuple(any, fc.constantFrom('goal' as const, 'saved' as const, 'expired' as const))),
        (list) => {
          const chances = list.map(([more, result], at): Chance => ({ id: `${at}`, side: 'ours', result, ...more }));
          const ids = manUpsOf(chances).flatMap((those) => those.map(({ id }) => id));
          expect([...ids].sort()).toEqual(chances.map(({ id }) => id).sort());
          expect(countManUps(chances).scored).toBeLessThanOrEqual(
            chances.filter(({ result }) => result === 'goal').length,
          );
        },
      ),
    );
  });

  it('without times follow as they are written, only where they say that they go on', () => {
    const plain = (id: string, start?: Chance['start']): Chance => ({
      id,
      side: 'ours',
      result: 'saved',
      ...(start && { start }),
    });
    expect(groups([plain('a'), plain('b'), plain('c', 'transition')])).toBe('a bc');
  });
});
