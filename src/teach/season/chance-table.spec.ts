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

describe('a table of chances', () => {
  it('is read by the names of its columns, in any order', () => {
    expect(
      read(
        'Result|Against|Play|Time left|First shot seconds|Look|Shooter|Defense',
        'GOAL|copper falls|LANTERN|7:11|14.5|feed x to c|#12|Jump',
      ),
    ).toMatchObject({
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
    ['no rows', ['result'], 1, 'no chance below'],
    ['an unknown result', ['result', 'goal', 'scored'], 3, '"scored" is not one of goal, saved, shot wide'],
    ['no result', ['result|side', '|ours'], 2, 'Say how the chance ended'],
    ['a day that is none', ['result|date', 'goal|2026-02-30'], 2, '"2026-02-30" is no day'],
    ['a clock that is none', ['result|clock', 'goal|7:61'], 2, 'no time on the clock'],
    ['a period of half', ['result|period', 'goal|1.5'], 2, 'no whole number from 1 to 20, or OT'],
    ['more on goal than shots', ['result|shots|on target', 'goal|1|2'], 2, 'more than "shots"'],
    ['half an expectation', ['result|expected|expected low', 'goal|0.4|0.3'], 2, 'needs "expected low" and'],
    ['a range around nothing', ['result|expected low|expected high', 'goal|0.3|0.5'], 2, 'expected:'],
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

  it('gives the good lines beside the bad ones, and counts both', () => {
    const reading = read('result|shots', 'goal|1', 'gaol|many', 'saved|2', '|');
    expect(reading.chances.map(({ result }) => result)).toEqual(['goal', 'saved']);
    expect(reading).toMatchObject({ lines: 3, badLines: 1 });
    expect(reading.problems.map(({ line }) => line)).toEqual([3, 3]);
  });

  it.each([
    ['result', 'penalty ran out', { result: 'expired' }],
    ['result', 'Shot clock ran out', { result: 'shotClock' }],
    ['result', 'off the pipe', { result: 'pipe' }],
    ['result|start', 'goal|on the run', { start: 'transition' }],
    ['result|start', 'goal|Flag down', { start: 'flagDown' }],
    ['result|period', 'goal|OT', { period: 5 }],
    ['result|period', 'goal|2OT', { period: 6 }],
    ['result|period', 'goal|ot 2', { period: 6 }],
    ['result|period', 'goal|Q3', { period: 3 }],
    ['result|expected', 'goal|0.4', { expected: { goals: 0.4, low: 0.4, high: 0.4 } }],
    ['result|date', 'goal|3/17/2026', { date: '2026-03-17' }],
    ['result|date', 'goal|17/3/2026', { date: '2026-03-17' }],
    ['result|date', 'goal|17.3.26', { date: '2026-03-17' }],
    ['result|date', 'goal|4.3.2026', { date: '2026-03-04' }],
    ['result|date', 'goal|2026/3/4', { date: '2026-03-04' }],
    ['result|date', 'goal|3/3/2026', { date: '2026-03-03' }],
  ] as const)('%s: "%s" is read as people write it', (head, line, expected) => {
    const { chances, problems } = read(head, line);
    expect(problems).toEqual([]);
    expect(chances[0]).toMatchObject(expected);
  });

  it('asks once which of two a day is, unless another day of the table shows it', () => {
    const asked = read('result|date', 'goal|3/4/2026', 'saved|3/17/2026');
    expect(asked.chances.map(({ date }) => date)).toEqual(['2026-03-04', '2026-03-17']);
    expect(asked.notes).toEqual(['Days were read with the month first, as 3/17/2026 shows.']);
    const unclear = ['result|date', 'goal|3/4/2026', 'saved|5/6/2026'].map((line) => line.split('|'));
    expect(readChanceTable(demoPlaybook, unclear)).toMatchObject({ asksDays: true, chances: [], badLines: 2 });
    for (const [days, dates] of [
      ['monthFirst', ['2026-03-04', '2026-05-06']],
      ['dayFirst', ['2026-04-03', '2026-06-05']],
    ] as const) {
      const told = readChanceTable(demoPlaybook, unclear, { days });
      expect(told).toMatchObject({ asksDays: false, problems: [] });
      expect(told.chances.map(({ date }) => date)).toEqual(dates);
    }
    // Days that speak against each other decide nothing for the others.
    expect(read('result|date', 'goal|3/17/2026', 'goal|17/3/2026', 'goal|3/4/2026')).toMatchObject({
      asksDays: true,
      badLines: 1,
    });
  });

  it('warns of what is likely a slip, with how often, and takes it all the same', () => {
    const { chances, problems, warnings } = read(
      'result|call|scheme|scorer|shots|opponent|side',
      'goal|lantern|jump|99|0|copper falls|ours',
      'goal|Lattern|jmup|99|1|Copper Fals|ours',
      'saved|Lattern|jump||1|copper falls|ours',
      // Whose number theirs are, nobody knows.
      'saved||jump|77|1|copper falls|theirs',
    );
    expect([chances.length, problems]).toEqual([4, []]);
    expect(warnings).toEqual([
      'opponent: 1 line names one that the playbook does not have: Copper Fals.',
      'call: 2 lines name one that the playbook does not have: Lattern (2).',
      'scheme: 1 line names one that the playbook does not have: jmup.',
      'scorer: 2 lines have a number that is not in the roster: 99 (2).',
      'shots: 1 line ends in a shot and counts 0 shots.',
    ]);
  });
});
