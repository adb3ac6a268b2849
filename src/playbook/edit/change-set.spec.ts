import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { hasErrors } from '../diagnostic.ts';
import { parsePlaybook } from '../parse.ts';
import type { Playbook, PlayEntry } from '../schema.ts';
import { serializePlaybook } from '../serialize.ts';
import { toEnginePlay } from '../to-engine.ts';
import { changeSet } from './change-set.ts';
import type { PlayEdit } from './edit-result.ts';
import { keepAsSet } from './keep-set.ts';
import { groundOf } from './play-ground.ts';

const ground = groundOf(demoPlaybook);
const [lantern, quarry] = demoPlaybook.plays as [PlayEntry, PlayEntry];

function edited(edit: PlayEdit): PlayEntry {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.play;
}

describe('another set', () => {
  test('with the same names keeps all that is done', () => {
    const edit = changeSet(quarry, ground, '2-2-2-behind', { WR: 'BR', WL: 'BL' });
    expect(edit).toHaveProperty('also', []);
    const play = edited(edit);
    expect(play.set).toBe('2-2-2-behind');
    expect(play.beats.map((beat) => beat.on)).toEqual([
      'start',
      'catch TL',
      'catch BL',
      'call curl + 0.8',
      'arrive CR',
      'catch CR',
    ]);
    expect(play.beats[2]!.do[1]).toBe('CR cut via 0,8.5 to -3.5,5');
    expect(toEnginePlay({ ...demoPlaybook, plays: [play] }, 'quarry').spots.map((spot) => spot.id)).toContain('BL');
  });

  test('says what is lost with the men who are not there', () => {
    const edit = changeSet(lantern, ground, '3-3');
    const play = edited(edit);
    expect(play).not.toHaveProperty('spots');
    expect(play.beats.find((beat) => beat.id === 'look')).toEqual({
      id: 'look',
      on: 'call behind + 1',
      do: ['C pop to -1,8', 'TR replace to 5,13'],
    });
    expect(edit.kind === 'edited' && edit.also).toEqual([
      'Everybody starts where the new set has him.',
      'Lost from "behind": WL pass X.',
      'Lost from "look": X carry to 5,-4.',
      '"look" starts on "call behind + 1" now, because X is no spot of the set.',
      'Lost from "finish": X skip TR.',
      '"finish" starts on "call look + 1" now, because X is no spot of the set.',
      'Lost: the read of X that ends in "feed WR".',
      'Lost: the read of X that ends in "feed C".',
      'Lost: the read of X that ends in "feed C".',
      'Lost: the read of X that ends in "skip TL".',
    ]);
  });

  test('a man who starts with the ball and is not there is replaced', () => {
    const play = edited(changeSet(lantern, ground, '1-3-2'));
    expect(play.start.ball).toBe('P');
    expect(play.reset.ball).toBe('P');
  });

  test('a place by the name of a man who is gone stays a place', () => {
    const one: PlayEntry = {
      ...lantern,
      beats: [{ id: 'go', on: 'start', do: ['C flash to WR', 'C fake WR'] }],
      reads: [],
    };
    const play = edited(changeSet({ ...one, set: '2-3-1' }, ground, 'diamond', { WR: 'P', TR: 'WR' }));
    expect(play.beats[0]!.do).toEqual(['C flash to P', 'C fake P']);
    expect(
      edited(changeSet({ ...one, beats: [{ id: 'go', on: 'start', do: ['C flash to X'] }] }, ground, '3-3')).beats[0]!
        .do,
    ).toEqual(['C flash to 0,-6']);
  });

  test.each([
    ['an unknown set', changeSet(lantern, ground, 'nowhere'), /No set/],
    ['two men in one', changeSet(lantern, ground, '3-3', { TR: 'P', TL: 'P' }), /Two men/],
    ['a man who is not in the set', changeSet(lantern, ground, '3-3', { X: 'BR' }), /no spot BR/],
  ])('refused: %s', (_, edit, words) => {
    expect(edit.kind === 'refused' && edit.reason).toMatch(words);
  });
});

describe('a formation that is kept', () => {
  test('is a set of its own from which the play runs as before', () => {
    const edit = keepAsSet(demoPlaybook, 'lantern', 'Deep X');
    if (edit.kind === 'refused') throw new Error(edit.reason);
    const book: Playbook = edit.playbook;
    expect(edit.id).toBe('deep-x');
    expect(book.sets![0]!.spots.X).toEqual({ at: [0, -6], needs: { feed: 3, handle: 3 }, safety: 'backUp' });
    expect(book.plays[0]).not.toHaveProperty('spots');
    expect(toEnginePlay(book, 'lantern')).toEqual(toEnginePlay(demoPlaybook, 'lantern'));
    expect(hasErrors(parsePlaybook(serializePlaybook(book)).diagnostics)).toBe(false);
  });

  test('never takes the name of a set that is built in', () => {
    const edit = keepAsSet(demoPlaybook, 'lantern', 'circle');
    expect(edit.kind === 'edited' && edit.id).toBe('own-circle');
    expect(keepAsSet(demoPlaybook, 'lantern', ' ')).toMatchObject({ kind: 'refused' });
  });
});
