import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import type { Playbook, Player } from '../schema.ts';
import type { PlaybookEdit } from './edit-result.ts';
import {
  addPlayer,
  changePlayer,
  movePlayer,
  removePlayer,
  setAbsent,
  setDepth,
  takeInPlayers,
} from './edit-roster.ts';

const { team } = demoPlaybook;
const odell = team.roster.find((player) => player.number === 4)!;
const rex: Player = { number: 3, name: 'Rex Alder', hand: 'right' };

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

const reason = (edit: PlaybookEdit) => (edit.kind === 'refused' ? edit.reason : 'edited');
const numbers = (edit: PlaybookEdit) => edited(edit).team.roster.map((player) => player.number);

describe('the roster', () => {
  test('a player is added, and taken out again', () => {
    const book = edited(addPlayer(demoPlaybook, rex));
    expect(book.team.roster.at(-1)).toBe(rex);
    expect(book.team.roster[0]).toBe(team.roster[0]);
    expect(book.plays).toBe(demoPlaybook.plays);
    expect(edited(removePlayer(book, 3))).toEqual(demoPlaybook);
  });

  test('a new number is followed by the depth chart', () => {
    const book = edited(changePlayer(demoPlaybook, 4, { ...odell, number: 44 }));
    expect(book.team.depth).toEqual({ X: [44, 19] });
  });

  test('who leaves is out of the depth chart, and it is told', () => {
    const edit = removePlayer(demoPlaybook, 4);
    expect(edited(edit).team.depth).toEqual({ X: [19] });
    expect(edit).toHaveProperty('also', ['Odell Marsh is out of the depth chart at X.']);
    expect(edited(removePlayer(edited(edit), 19)).team).not.toHaveProperty('depth');
    expect(edited(changePlayer(demoPlaybook, 4, { ...odell, crosse: 'goalkeeper' })).team.depth).toEqual({ X: [19] });
  });

  test('the same again is no change', () => {
    const { grades, ...rest } = odell;
    expect(edited(changePlayer(demoPlaybook, 4, { grades, ...rest } as Player))).toBe(demoPlaybook);
    expect(edited(setAbsent(demoPlaybook, 4, false))).toBe(demoPlaybook);
    expect(edited(setDepth(demoPlaybook, 'X', [4, 19, 4]))).toBe(demoPlaybook);
  });

  test('absent and back', () => {
    const book = edited(setAbsent(demoPlaybook, 4, true));
    expect(book.team.roster[1]).toEqual({ ...odell, absent: true });
    expect(edited(setAbsent(book, 4, false))).toEqual(demoPlaybook);
  });

  test('depth and order', () => {
    expect(edited(setDepth(demoPlaybook, 'TR', [7])).team.depth).toEqual({ X: [4, 19], TR: [7] });
    expect(edited(setDepth(demoPlaybook, 'X', [])).team).not.toHaveProperty('depth');
    expect(numbers(movePlayer(demoPlaybook, 28, 0)).slice(0, 2)).toEqual([28, 1]);
  });

  test.each([
    ['a number that is worn', addPlayer(demoPlaybook, { ...rex, number: 7 }), /Ravi Lindqvist wears 7 already/],
    ['a number that another wears', changePlayer(demoPlaybook, 4, { ...odell, number: 7 }), /wears 7 already/],
    ['half a number', addPlayer(demoPlaybook, { ...rex, number: 3.5 }), /whole number/],
    ['no name', addPlayer(demoPlaybook, { ...rex, name: '' }), /needs a name/],
    ['a grade of six', addPlayer(demoPlaybook, { ...rex, grades: { speed: 6 } }), /between 1 and 5/],
    ['a shot of no speed', addPlayer(demoPlaybook, { ...rex, measured: { shotSpeedMph: [] } }), /measurement/],
    ['nobody', removePlayer(demoPlaybook, 99), /Nobody/],
    ['nobody at a spot', setDepth(demoPlaybook, 'X', [99]), /Nobody on the roster wears 99/],
    ['the goalkeeper at a spot', setDepth(demoPlaybook, 'X', [1]), /goalkeeper/],
    ['the same number twice in a table', takeInPlayers(demoPlaybook, [rex, rex]), /twice/],
  ])('refused: %s', (_, edit, words) => {
    expect(reason(edit)).toMatch(words);
  });
});

describe('players from a table', () => {
  test('who is known keeps what the table does not say', () => {
    const book = edited(
      takeInPlayers(demoPlaybook, [{ number: 4, name: 'Odell Marsh', hand: 'left', grades: { shoot: 3 } }, rex]),
    );
    expect(book.team.roster[1]).toEqual({ ...odell, hand: 'left', grades: { ...odell.grades, shoot: 3 } });
    expect(book.team.roster.at(-1)).toEqual(rex);
    expect(book.team.roster[2]).toBe(team.roster[2]);
    expect(book.team.depth).toBe(team.depth);
  });

  test('or they are the whole roster', () => {
    const book = edited(takeInPlayers(demoPlaybook, [rex, odell], 'replace'));
    expect(book.team.roster).toEqual([rex, odell]);
    expect(book.team.depth).toEqual({ X: [4] });
  });
});
