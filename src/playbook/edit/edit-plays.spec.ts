import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { hasErrors } from '../diagnostic.ts';
import { limits } from '../limits.ts';
import { parsePlaybook } from '../parse.ts';
import type { Playbook } from '../schema.ts';
import { serializePlaybook } from '../serialize.ts';
import {
  archivePlay,
  copyMirrored,
  copyPlay,
  deletePlay,
  editPlay,
  movePlay,
  newPlay,
  renamePlay,
  tagPlay,
} from './edit-plays.ts';
import type { PlaybookEdit } from './edit-result.ts';
import { moveSpot } from './edit-spots.ts';

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

const ids = (edit: PlaybookEdit) => edited(edit).plays.map((play) => play.id);
const idOf = (edit: PlaybookEdit) => (edit.kind === 'edited' ? edit.id : edit.reason);

describe('the list of plays', () => {
  test('an edit of one play leaves the others and the rest as they are', () => {
    const edit = editPlay(demoPlaybook, 'quarry', (play, ground) => moveSpot(play, ground, 'TR', { x: 8, y: 14 }));
    const book = edited(edit);
    expect(book.plays[1]!.spots).toEqual({ TR: [8, 14] });
    expect(book.plays[0]).toBe(demoPlaybook.plays[0]);
    expect(book.team).toBe(demoPlaybook.team);
    const same = editPlay(demoPlaybook, 'quarry', (play, ground) => moveSpot(play, ground, 'TR', { x: 7, y: 14 }));
    expect(edited(same)).toBe(demoPlaybook);
  });

  test('copies stand after the original under an id of their own', () => {
    const copy = copyPlay(demoPlaybook, 'quarry');
    expect(ids(copy)).toEqual(['lantern', 'quarry', 'quarry-copy', 'ferry']);
    expect(edited(copy).plays[2]!.name).toBe('Quarry (copy)');
    expect(edited(copy).plays[2]!.beats).toBe(demoPlaybook.plays[1]!.beats);
    expect(edited(copyPlay(edited(copy), 'quarry')).plays[2]!.name).toBe('Quarry (copy 2)');
    expect(idOf(copyPlay(demoPlaybook, 'quarry', 'Ferry!'))).toBe('ferry-2');
    expect(edited(copyMirrored(demoPlaybook, 'quarry')).plays[2]!.start).toEqual({ ball: 'TL', restart: [-21, 14] });
  });

  test.each(['3-3', '2-3-1', '1-3-2', '1-4-1', '2-2-2-low', '2-2-2-behind', '3-2-1', '4-2', 'diamond'])(
    'a new play from the set %s is one that can be read',
    (set) => {
      const book = edited(newPlay(demoPlaybook, ' Skiff ', set));
      expect(book.plays.at(-1)).toMatchObject({ id: 'skiff', name: 'Skiff', set });
      const { value, diagnostics } = parsePlaybook(serializePlaybook(book));
      expect(hasErrors(diagnostics)).toBe(false);
      expect(value).toEqual(book);
    },
  );

  test('names, tags and the archive', () => {
    expect(edited(renamePlay(demoPlaybook, 'ferry', 'Barge')).plays[2]).toMatchObject({ id: 'ferry', name: 'Barge' });
    const tagged = edited(tagPlay(demoPlaybook, 'ferry', ['short', ' 12U ', 'short', '']));
    expect(tagged.plays[2]!.tags).toEqual(['short', '12U']);
    expect(edited(tagPlay(tagged, 'ferry', ['short', '12U']))).toBe(tagged);
    expect(edited(tagPlay(tagged, 'ferry', []))).toEqual(demoPlaybook);
    const away = edited(archivePlay(demoPlaybook, 'ferry', true));
    expect(away.plays[2]!.archived).toBe(true);
    expect(edited(archivePlay(away, 'ferry', false))).toEqual(demoPlaybook);
    expect(ids(deletePlay(demoPlaybook, 'lantern'))).toEqual(['quarry', 'ferry']);
    expect(ids(movePlay(demoPlaybook, 'lantern', 1))).toEqual(['quarry', 'lantern', 'ferry']);
  });

  test.each([
    ['no name', newPlay(demoPlaybook, '  ', '3-3'), /needs a name/],
    ['no such set', newPlay(demoPlaybook, 'Skiff', 'constructor'), /No set/],
    ['no such play', copyPlay(demoPlaybook, 'skiff'), /no play "skiff"/],
    ['a name that is too long', renamePlay(demoPlaybook, 'ferry', 'x'.repeat(81)), /at most 80/],
    [
      'too many tags',
      tagPlay(
        demoPlaybook,
        'ferry',
        Array.from({ length: 13 }, (_, i) => `t${i}`),
      ),
      /at most 12/,
    ],
    [
      'one play too many',
      newPlay(
        {
          ...demoPlaybook,
          plays: Array.from({ length: limits.plays }, (_, i) => ({ ...demoPlaybook.plays[0]!, id: `p-${i}` })),
        },
        'Skiff',
        '3-3',
      ),
      /at most \d+ plays/,
    ],
  ])('refused: %s', (_, edit, words) => {
    expect(idOf(edit)).toMatch(words);
  });
});
