import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { hasErrors } from '../diagnostic.ts';
import { parsePlaybook } from '../parse.ts';
import type { Playbook } from '../schema.ts';
import { serializePlaybook } from '../serialize.ts';
import type { PlaybookEdit } from './edit-result.ts';
import {
  addDefender,
  addDutyRow,
  dutyGrid,
  moveDefender,
  removeDefender,
  removeDutyRow,
  setDuty,
  setExtends,
  setShortStick,
} from './edit-schemes.ts';
import { addScheme, removeScheme, renameScheme } from './scheme-list.ts';

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

const net = 'northgate-net';
const netOf = (edit: PlaybookEdit) => edited(edit).schemes!.find((scheme) => scheme.id === net)!;
const rowOf = (edit: PlaybookEdit, ball: string) => netOf(edit).rows.find((row) => row.ball === ball)?.do;
const reason = (edit: PlaybookEdit) => (edit.kind === 'refused' ? edit.reason : 'edited');
const sound = (playbook: Playbook) => !hasErrors(parsePlaybook(serializePlaybook(playbook)).diagnostics);
const withoutMen = (...men: string[]) =>
  men.reduce((book, man) => edited(removeDefender(book, net, man)), demoPlaybook);

describe('a grid of duties', () => {
  test('has a cell for each man and place of the ball', () => {
    const grid = dutyGrid(demoPlaybook, demoPlaybook.schemes![0]!);
    expect(grid.defenders).toEqual(['tr', 'tl', 'lr', 'll', 'c']);
    expect(grid.rows[0]).toEqual({
      ball: 'P',
      duties: [
        { duty: 'ball' },
        { duty: 'split', who: ['P', 'TL'] },
        { duty: 'man', who: 'WR' },
        { duty: 'man', who: 'WL' },
        { duty: 'front', who: 'crease' },
      ],
      unread: [],
    });
  });

  test.each([
    [{ duty: 'ball' }, 'tl ball'],
    [{ duty: 'lock', who: 'C' }, 'tl lock C'],
    [{ duty: 'split', who: ['TL', 'WL'] }, 'tl split TL WL'],
    [{ duty: 'lane', who: 'WR', at: [1.04, 8] }, 'tl lane WR at 1,8'],
    [{ duty: 'pipe', who: 'WL' }, 'tl pipe WL'],
    [{ duty: 'place', at: [-2, 9.26] }, 'tl at -2,9.3'],
    [{ duty: 'front', who: 'crease' }, 'tl front crease'],
  ] as const)('a cell is changed: %j', (own, text) => {
    const edit = setDuty(demoPlaybook, net, 'P', 'tl', own);
    expect(rowOf(edit, 'P')).toEqual(['tr ball', text, 'lr man WR', 'll man WL', 'c front crease']);
    expect(netOf(edit).rows[1]).toBe(demoPlaybook.schemes![0]!.rows[1]);
    expect(sound(edited(edit))).toBe(true);
  });

  test('a phrase of his that cannot be read gives way to his duty', () => {
    const [scheme] = demoPlaybook.schemes!;
    const slip = { ...scheme!, rows: [{ ball: 'P', do: ['tr bal', 'tl man TL'] }] };
    const book = { ...demoPlaybook, schemes: [slip] };
    expect(dutyGrid(book, slip).rows[0]).toMatchObject({ unread: ['tr bal'] });
    expect(rowOf(setDuty(book, net, 'P', 'tr', { duty: 'ball' }), 'P')).toEqual(['tr ball', 'tl man TL']);
  });

  test('the same duty is no change', () => {
    expect(edited(setDuty(demoPlaybook, net, 'P', 'tr', { duty: 'ball' }))).toBe(demoPlaybook);
  });

  test('rows come and go', () => {
    const edit = addDutyRow(demoPlaybook, net, 'crease');
    expect(rowOf(edit, 'crease')).toEqual(['tr at 5,10', 'tl at -5,10', 'lr at 5,3', 'll at -5,3', 'c ball']);
    expect(sound(edited(edit))).toBe(true);
    expect(edited(removeDutyRow(edited(edit), net, 'crease'))).toEqual(demoPlaybook);
  });

  test('men come and go', () => {
    const six = edited(addDefender(demoPlaybook, net, 'x', { x: 0, y: -4 }));
    expect(six.schemes![0]!.men.x).toEqual([0, -4]);
    expect(six.schemes![0]!.rows.every((row) => row.do.at(-1) === 'x at 0,-4')).toBe(true);
    expect(sound(six)).toBe(true);
    expect(edited(removeDefender(six, net, 'x'))).toEqual(demoPlaybook);
    expect(netOf(removeDefender(demoPlaybook, net, 'c'))).not.toHaveProperty('shortSticks');
  });

  test('homes, sticks, how far out', () => {
    expect(netOf(moveDefender(demoPlaybook, net, 'c', { x: 0.04, y: 4.5 })).men.c).toEqual([0, 4.5]);
    expect(netOf(setShortStick(demoPlaybook, net, 'tr', true)).shortSticks).toEqual(['c', 'tr']);
    expect(netOf(setExtends(demoPlaybook, net, 11)).extends).toBe(11);
  });

  test.each([
    ['a spot of no set', setDuty(demoPlaybook, net, 'P', 'tr', { duty: 'man', who: 'ZZ' }), /No set/],
    ['a split of one man', setDuty(demoPlaybook, net, 'P', 'tr', { duty: 'split', who: ['P', 'P'] }), /two different/],
    ['a place off the field', setDuty(demoPlaybook, net, 'P', 'tr', { duty: 'place', at: [0, 99] }), /no place/],
    ['a row that is not there', setDuty(demoPlaybook, net, 'BR', 'tr', { duty: 'ball' }), /no row/],
    ['a row twice', addDutyRow(demoPlaybook, net, 'P'), /has a row/],
    ['a man in another', moveDefender(demoPlaybook, net, 'c', { x: 5, y: 10 }), /tr stands there/],
    ['a name in capitals', addDefender(demoPlaybook, net, 'TX', { x: 0, y: 0 }), /small letters/],
    ['a man too few', removeDefender(withoutMen('c', 'tr'), net, 'tl'), /at least 3/],
    ['a built-in scheme', setExtends(demoPlaybook, 'box-zone', 10), /of its own/],
  ])('refused: %s', (_, edit, words) => {
    expect(reason(edit)).toMatch(words);
  });
});

describe('the list of schemes', () => {
  test('a new one never goes by the name of another or of an opponent', () => {
    const { id: _, name: __, ...start } = demoPlaybook.schemes![0]!;
    expect(addScheme(demoPlaybook, 'Box zone', start)).toHaveProperty('id', 'box-zone-2');
    expect(addScheme(demoPlaybook, 'Copper Falls', start)).toHaveProperty('id', 'copper-falls-2');
    expect(netOf(renameScheme(demoPlaybook, net, 'Net')).name).toBe('Net');
  });

  test('one that goes is believed of nobody', () => {
    const edit = removeScheme(demoPlaybook, net);
    expect(edited(edit).opponents![1]!.schemes).toEqual({ 'five-man-rotation': 1 });
    expect(edited(edit).opponents![0]).toBe(demoPlaybook.opponents![0]);
    expect(edit).toHaveProperty('also', ['Northgate Ospreys is not believed to play it any more.']);
  });
});
