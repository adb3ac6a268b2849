import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { readChanceTable } from './chance-table.ts';

/** A table with bars between its cells and a row a line. */
function read(...lines: readonly string[]) {
  return readChanceTable(
    demoPlaybook,
    lines.map((line) => line.split('|').map((cell) => cell.replaceAll('~', '\n'))),
  );
}

describe('a table of man-ups', () => {
  it('is read by the names of its columns, in any order', () => {
    expect(
      read(
        'Result|Against|Play|Time left|First shot seconds|Look|Shooter|Defense',
        'GOAL|copper falls|LANTERN|7:11|14.5|feed x to c|#12|Jump',
      ),
    ).toEqual({
      chances: [
        {
          side: 'ours',
          result: 'goal',
          opponent: 'copper-falls',
          call: 'lantern',
          clock: 431,
          firstShot: 14.5,
          look: { kind: 'feed', from: 'X', to: 'C' },
          scorer: 12,
          scheme: 'jump',
        },
      ],
      problems: [],
      notes: [],
    });
  });

  it.each([
    ['no columns', ['goal|ours'], 1, 'no column "result"'],
    ['a column twice', ['result|call|play', 'goal|a|b'], 1, 'Two columns say "call": call and play'],
    ['nothing', [''], 1, 'empty'],
    ['no rows', ['result'], 1, 'no man-up below'],
    ['an unknown result', ['result', 'goal', 'scored'], 3, '"scored" is not one of goal, saved'],
    ['no result', ['result|side', '|ours'], 2, 'Say how the man-up ended'],
    ['a day that is none', ['result|date', 'goal|2026-02-30'], 2, '"2026-02-30" is no day'],
    ['a clock that is none', ['result|clock', 'goal|7:61'], 2, 'no time on the clock'],
    ['a period of half', ['result|period', 'goal|1.5'], 2, 'no whole number from 1 to 20'],
    ['more on goal than shots', ['result|shots|on target', 'goal|1|2'], 2, 'more than "shots"'],
    ['half an expectation', ['result|expected', 'goal|0.4'], 2, 'needs "expected", "expected low"'],
    ['a fixed penalty of no length', ['result|fixed', 'goal|yes'], 2, 'penalty: It is empty'],
    ['a look that is none', ['result|look', 'goal|dunk'], 2, 'is no look'],
    ['a name too long', ['result|opponent', `goal|${'a'.repeat(41)}`], 2, '41 letters; 40'],
    ['a cell too many', ['result|side', 'goal|ours|x'], 2, 'more cells than there are columns'],
    ['the line after a note of three', ['result|notes', 'goal|a~b~c', 'gaol|'], 5, '"gaol"'],
    ['the line after an empty one', ['result', '', 'gaol'], 3, '"gaol"'],
  ])('%s is told with its line', (_, lines, line, words) => {
    const { problems } = read(...lines);
    expect(problems[0]?.line).toBe(line);
    expect(problems[0]?.text).toContain(words);
  });

  it('takes every problem of a row, and passes over columns that are none of ours', () => {
    const { problems, notes } = read('result|shots|weather|period', 'gaol|many|rain|0');
    expect(problems.map(({ text }) => text.split(':')[0])).toEqual(['result', 'shots', 'period']);
    expect(notes).toEqual(['Columns that were passed over: weather.']);
  });
});
