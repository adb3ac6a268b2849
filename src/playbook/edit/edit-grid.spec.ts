import { describe, expect, test } from 'vitest';
import { sets } from '../../engine/index.ts';
import { demoPlaybook } from '../demo.ts';
import { parsePlaybook } from '../parse.ts';
import type { Playbook, SchemeEntry } from '../schema.ts';
import { serializePlaybook } from '../serialize.ts';
import { mirrorDutyRow, moveHome, noteScheme, renameDefender } from './edit-grid.ts';
import { setSchemeWeight } from './edit-opponents.ts';
import type { PlaybookEdit } from './edit-result.ts';
import { addDutyRow, removeDefender, removeDutyRow } from './edit-schemes.ts';
import { forgetUnknownMen } from './forget-unknown-men.ts';
import { copyScheme, newScheme } from './new-scheme.ts';

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

const net = (playbook: Playbook): SchemeEntry => playbook.schemes!.find(({ id }) => id === 'northgate-net')!;
const row = (playbook: Playbook, ball: string) => net(playbook).rows.find((each) => each.ball === ball)?.do;

function problems(playbook: Playbook) {
  return parsePlaybook(serializePlaybook(playbook)).diagnostics.filter(
    ({ severity, path }) => severity !== 'note' && /^(schemes|opponents)/.test(path),
  );
}

describe('a new scheme', () => {
  test.each(Object.keys(sets))('against %s has somebody at the ball in every row, and the others at home', (set) => {
    const edit = newScheme(demoPlaybook, ' Blank ', set);
    expect(edit).toMatchObject({ id: 'blank' });
    const made = edited(edit).schemes!.at(-1)!;
    expect(problems(edited(edit))).toEqual([]);
    expect(made.rows.map(({ ball }) => ball).sort()).toEqual(sets[set]!.spots.map(({ id }) => id).sort());
    for (const each of made.rows) {
      expect(each.do).toHaveLength(5);
      expect(each.do.filter((text) => text.endsWith(' ball'))).toHaveLength(1);
    }
  });

  test('goes by no name that is a scheme or an opponent already', () => {
    expect(newScheme(demoPlaybook, 'Copper Falls', '3-3')).toMatchObject({ id: 'copper-falls-2' });
    expect(newScheme(demoPlaybook, 'Jump', '3-3')).toMatchObject({ id: 'jump-2' });
    expect(newScheme(demoPlaybook, ' ', '3-3').kind).toBe('refused');
    expect(newScheme(demoPlaybook, 'Net', '9-9').kind).toBe('refused');
  });

  test('can be a copy, of which nothing hangs on the first', () => {
    const book = edited(copyScheme(demoPlaybook, 'northgate-net'));
    expect(book.schemes![0]).toBe(demoPlaybook.schemes![0]);
    expect(book.schemes![1]!.rows).toEqual(net(demoPlaybook).rows);
    expect(book.schemes![1]!.name).toBe("Northgate's net: low man behind (copy)");
    expect(copyScheme(demoPlaybook, 'jump').kind).toBe('refused');
  });
});

describe('a row', () => {
  test('is mirrored to the other side, in place of what was there', () => {
    const book = edited(mirrorDutyRow(demoPlaybook, 'northgate-net', 'TR'));
    expect(row(book, 'TL')).toEqual(['tr man TR', 'tl ball', 'lr pipe WR', 'll man WL', 'c front crease']);
    expect(net(book).rows[0]).toBe(net(demoPlaybook).rows[0]);
    expect(edited(mirrorDutyRow(book, 'northgate-net', 'TR'))).toBe(book);
  });

  test('is mirrored into a row of its own where there is none', () => {
    const bare = edited(removeDutyRow(demoPlaybook, 'northgate-net', 'WL'));
    const book = edited(mirrorDutyRow(bare, 'northgate-net', 'WR'));
    expect(net(book).rows.map(({ ball }) => ball)).toEqual(['P', 'TR', 'TL', 'WR', 'WL', 'X']);
    expect(row(book, 'WL')).toEqual(['tr at 0,8', 'tl man TL', 'lr pipe WR', 'll ball', 'c front crease']);
    expect(problems(book)).toEqual([]);
  });

  test.each(['P', 'X', 'C'])('at %s has no other side, or is not there', (ball) => {
    expect(mirrorDutyRow(demoPlaybook, 'northgate-net', ball).kind).toBe('refused');
  });
});

describe('the men', () => {
  test('who are told to stay at home go with it', () => {
    const home = edited(addDutyRow(demoPlaybook, 'northgate-net', 'C'));
    const book = edited(moveHome(home, 'northgate-net', 'tl', { x: -4.04, y: 9 }));
    expect(net(book).men.tl).toEqual([-4, 9]);
    expect(row(book, 'C')).toContain('tl at -4,9');
    expect(net(book).rows[0]).toBe(net(home).rows[0]);
    expect(moveHome(home, 'northgate-net', 'c', { x: Number.NaN, y: 0 }).kind).toBe('refused');
    expect(moveHome(home, 'northgate-net', 'nobody', { x: 0, y: 0 }).kind).toBe('refused');
  });

  test('are called otherwise in every duty, and in what is said of them', () => {
    const said: Playbook = {
      ...demoPlaybook,
      opponents: [{ id: 'n', name: 'N', schemes: { 'northgate-net': 1 }, discipline: { ll: 'loose', all: 'sharp' } }],
    };
    const book = edited(renameDefender(said, 'northgate-net', 'll', 'LOW'));
    expect(Object.keys(net(book).men)).toEqual(['tr', 'tl', 'lr', 'low', 'c']);
    expect(row(book, 'X')).toEqual(['low ball', 'lr man WR', 'tl man WL', 'tr split TR TL', 'c lock crease']);
    const tidy = edited(forgetUnknownMen(book));
    expect(tidy.opponents![0]!.discipline).toEqual({ all: 'sharp', low: 'loose' });
    expect(problems(tidy)).toEqual([]);
    for (const name of ['c', 'low left', '', '7'])
      expect(renameDefender(said, 'northgate-net', 'll', name).kind).toBe('refused');
  });

  test('whom no scheme of an opponent has any more are forgotten, and that is told', () => {
    expect(forgetUnknownMen(demoPlaybook).playbook).toBe(demoPlaybook);
    const only = edited(setSchemeWeight(demoPlaybook, 'northgate', 'five-man-rotation', 0));
    const said: Playbook = {
      ...only,
      opponents: only.opponents!.map((one) => (one.id === 'northgate' ? { ...one, discipline: { c: 'loose' } } : one)),
    };
    const gone = edited(removeDefender(said, 'northgate-net', 'c'));
    expect(problems(gone)).not.toEqual([]);
    const tidy = forgetUnknownMen(gone);
    expect(tidy.also).toEqual(['Northgate Ospreys has no c any more: what was said of his discipline is left out.']);
    expect(tidy.playbook.opponents![1]).not.toHaveProperty('discipline');
    expect(tidy.playbook.opponents![0]).toBe(demoPlaybook.opponents![0]);
    expect(problems(tidy.playbook)).toEqual([]);
  });
});

test('a note is kept, and an empty one taken out', () => {
  expect(net(edited(noteScheme(demoPlaybook, 'northgate-net', 'Seen once.'))).notes).toBe('Seen once.');
  expect(net(edited(noteScheme(demoPlaybook, 'northgate-net', '')))).not.toHaveProperty('notes');
  expect(noteScheme(demoPlaybook, 'northgate-net', 'x'.repeat(2001)).kind).toBe('refused');
});
