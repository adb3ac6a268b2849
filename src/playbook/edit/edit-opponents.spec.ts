import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import type { Playbook } from '../schema.ts';
import {
  addOpponent,
  menOfOpponent,
  noteOpponent,
  removeOpponent,
  renameOpponent,
  setDiscipline,
  setSchemeShare,
  setSchemesBefore,
  setSchemeWeight,
} from './edit-opponents.ts';
import type { PlaybookEdit } from './edit-result.ts';

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

const falls = (edit: PlaybookEdit) => edited(edit).opponents!.find((each) => each.id === 'copper-falls');
const reason = (edit: PlaybookEdit) => (edit.kind === 'refused' ? edit.reason : 'edited');

describe('opponents', () => {
  test('one more, and gone again', () => {
    const edit = addOpponent(demoPlaybook, 'Box zone');
    // "box-zone" is a scheme, and nobody could tell which is meant.
    expect(edit).toHaveProperty('id', 'box-zone-2');
    expect(edited(removeOpponent(edited(edit), 'box-zone-2'))).toEqual(demoPlaybook);
    expect(edited(edit).opponents![0]).toBe(demoPlaybook.opponents![0]);
  });

  test('weights of schemes', () => {
    expect(falls(setSchemeWeight(demoPlaybook, 'copper-falls', 'five-man-rotation', 2))!.schemes).toEqual({
      'box-zone': 3,
      'box-string': 1,
      'five-man-rotation': 2,
    });
    const one = edited(setSchemeWeight(demoPlaybook, 'copper-falls', 'box-zone', 0));
    expect(falls(setSchemeWeight(one, 'copper-falls', 'box-string', 0))).not.toHaveProperty('schemes');
    expect(edited(setSchemeWeight(demoPlaybook, 'copper-falls', 'box-zone', 3))).toBe(demoPlaybook);
    expect(edited(setSchemeWeight(demoPlaybook, 'copper-falls', 'five-man-rotation', 0))).toBe(demoPlaybook);
  });

  test('shares of schemes, the others staying beside each other', () => {
    const mixed = edited(setSchemeWeight(demoPlaybook, 'copper-falls', 'jump', 2));
    const shares = (share: number) => {
      const { schemes = {} } = falls(setSchemeShare(mixed, 'copper-falls', 'jump', share))!;
      const all = Object.values(schemes).reduce((sum, weight) => sum + weight, 0);
      return { jump: schemes.jump! / all, others: schemes['box-zone']! / schemes['box-string']! };
    };
    for (const share of [0.01, 0.22, 0.74, 0.99]) {
      expect(shares(share).jump).toBeCloseTo(share, 4);
      expect(shares(share).others).toBeCloseTo(3, 4);
    }
    // So large that no weight could be larger: the others give way.
    const heavy = edited(setSchemeWeight(mixed, 'copper-falls', 'box-zone', 1000));
    const { schemes } = falls(setSchemeShare(heavy, 'copper-falls', 'jump', 0.9))!;
    expect(schemes!.jump! / (schemes!.jump! + schemes!['box-zone']! + schemes!['box-string']!)).toBeCloseTo(0.9, 4);
  });

  test('what was believed before marks goes with what is said of the mix', () => {
    const before = { 'box-zone': 60, 'box-string': 30, jump: 10 };
    const kept = edited(setSchemesBefore(demoPlaybook, 'copper-falls', before));
    // From 3 to 6 beside 1: twice the odds.
    expect(falls(setSchemeWeight(kept, 'copper-falls', 'box-zone', 6))!.before).toEqual({ ...before, 'box-zone': 120 });
    expect(falls(setSchemeWeight(kept, 'copper-falls', 'box-zone', 0))!.before).toEqual({ 'box-string': 30, jump: 10 });
    // One of four beside three: a quarter, also before.
    const { jump } = falls(setSchemeWeight(kept, 'copper-falls', 'jump', 1))!.before!;
    expect(jump! / (90 + jump!)).toBeCloseTo(0.2, 6);
    expect(falls(setSchemesBefore(kept, 'copper-falls', undefined))).not.toHaveProperty('before');
    expect(reason(setSchemesBefore(kept, 'copper-falls', { jump: 0 }))).toMatch(/needs a weight above 0/);
  });

  test('discipline, of all and of one', () => {
    expect(falls(setDiscipline(demoPlaybook, 'copper-falls', 'tr', 'sharp'))!.discipline).toEqual({
      all: 'ordinary',
      c: 'loose',
      tr: 'sharp',
    });
    expect(falls(setDiscipline(demoPlaybook, 'copper-falls', 'c', undefined))!.discipline).toEqual({ all: 'ordinary' });
    expect(edited(setDiscipline(demoPlaybook, 'copper-falls', 'c', 'loose'))).toBe(demoPlaybook);
    expect(menOfOpponent(demoPlaybook, demoPlaybook.opponents![1]!)).toEqual(['tr', 'tl', 'lr', 'll', 'c', 'pt']);
  });

  test('name and notes', () => {
    expect(falls(renameOpponent(demoPlaybook, 'copper-falls', ' Falls '))).toMatchObject({ name: 'Falls' });
    expect(falls(noteOpponent(demoPlaybook, 'copper-falls', ''))).not.toHaveProperty('notes');
  });

  test.each([
    ['a scheme that nobody knows', setSchemeWeight(demoPlaybook, 'copper-falls', 'box', 1), /No scheme/],
    ['a weight under nothing', setSchemeWeight(demoPlaybook, 'copper-falls', 'box-zone', -1), /0 to 1000/],
    ['a man whom they do not have', setDiscipline(demoPlaybook, 'copper-falls', 'zz', 'sharp'), /None of the schemes/],
    ['an opponent who is gone', setSchemeWeight(demoPlaybook, 'nobody', 'box-zone', 1), /no opponent/],
    ['no name', addOpponent(demoPlaybook, ' '), /needs a name/],
  ])('refused: %s', (_, edit, words) => {
    expect(reason(edit)).toMatch(words);
  });
});
