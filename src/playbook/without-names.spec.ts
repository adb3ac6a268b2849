import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import type { Playbook, Player } from './schema.ts';
import { withoutNames } from './without-names.ts';

const player = (number: number, name: string, notes?: string): Player => ({
  number,
  name,
  hand: 'right',
  ...(notes !== undefined && { notes }),
});

function hidden(notes: string, ...roster: readonly Player[]): Playbook {
  return withoutNames({ ...demoPlaybook, notes, team: { ...demoPlaybook.team, roster: [...roster] } });
}

describe('withoutNames', () => {
  test.each<[string, string, string]>([
    ['the whole name', 'Ask Will Mason about it', 'Ask No. 7 about it'],
    ['a part of it', 'Ask Mason, not Will.', 'Ask No. 7, not No. 7.'],
    ['of two who share a part, the first', 'The Masons: Mason', 'The Masons: No. 7'],
    ['the longer name first', 'Jo-Ann and Jo', 'No. 9 and No. 12'],
    ['letters beyond A to Z', 'Zoë passes', 'No. 14 passes'],
    ['no other word', 'They will mason; Willow', 'They will mason; Willow'],
    ['signs of patterns', 'A+ and C. J. (Red)', 'A+ and No. 20'],
    ['no number in place of a number', 'No. 7', 'No. 7'],
  ])('%s', (_, notes, expected) => {
    const roster = [
      player(7, 'Will Mason'),
      player(8, 'Al Mason'),
      player(9, 'Jo-Ann'),
      player(12, 'Jo'),
      player(14, 'Zoë'),
      player(20, 'C. J. (Red)'),
    ];
    expect(hidden(notes, ...roster).notes).toBe(expected);
  });

  test('leaves numbers, grades and plays, and takes notes on players', () => {
    const { team, plays } = withoutNames(demoPlaybook);
    expect(plays).toEqual(demoPlaybook.plays);
    expect(team.roster).toEqual(
      demoPlaybook.team.roster.map(({ notes: _, ...rest }) => ({ ...rest, name: `No. ${rest.number}` })),
    );
    expect(hidden('', player(7, 'Will', 'Asthma')).team.roster).toEqual([player(7, 'No. 7')]);
  });

  test('hides names in what was written of games and goalkeepers, and leaves numbers and ids of man-ups', () => {
    const chance = {
      id: 'mason',
      side: 'ours',
      result: 'goal',
      scorer: 7,
      call: 'mason',
      game: 'At Mason',
      unit: 'Mason',
      notes: 'Mason!',
    };
    const { chances, opponents } = withoutNames({
      ...demoPlaybook,
      team: { ...demoPlaybook.team, roster: [player(7, 'Will Mason')] },
      chances: [chance as NonNullable<Playbook['chances']>[number]],
      opponents: [{ id: 'x', name: 'X', keeperNotes: 'Mason knows him.' }],
    });
    expect(chances).toEqual([{ ...chance, game: 'At No. 7', unit: 'No. 7', notes: 'No. 7!' }]);
    expect(opponents![0]!.keeperNotes).toBe('No. 7 knows him.');
  });

  test('a roster without names changes nothing', () => {
    expect(hidden('Any text', player(7, ''), player(8, '8')).notes).toBe('Any text');
  });
});
