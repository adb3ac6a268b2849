import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { limits } from '../limits.ts';
import type { Practice } from '../schema.ts';
import {
  addPractice,
  changePractice,
  dropBlock,
  moveBlock,
  noteBlock,
  removePractice,
  setBlockMinutes,
  setBlockReps,
} from './edit-practices.ts';

const plan: Omit<Practice, 'id'> = {
  name: ' Tuesday ',
  minutes: 20,
  players: 14,
  plays: ['lantern'],
  blocks: [
    { kind: 'talk', minutes: 1.5, play: 'lantern' },
    { kind: 'walk', minutes: 3, play: 'lantern', reps: 3 },
    { kind: 'live', minutes: 5, play: 'lantern', reps: 5 },
  ],
};

const kinds = (practice: Practice): string => practice.blocks.map(({ kind }) => kind).join(' ');

function kept(count = 1) {
  let playbook = demoPlaybook;
  for (let at = 0; at < count; at++) {
    const edit = addPractice(playbook, plan);
    if (edit.kind === 'refused') return { playbook, refused: edit.reason };
    playbook = edit.playbook;
  }
  return { playbook, refused: undefined };
}

describe('plans', () => {
  test('each gets an id of its own, and the other parts stay the same objects', () => {
    const { playbook } = kept(2);
    expect(playbook.practices?.map(({ id, name }) => [id, name])).toEqual([
      ['tuesday', 'Tuesday'],
      ['tuesday-2', 'Tuesday'],
    ]);
    expect(playbook.plays).toBe(demoPlaybook.plays);
  });
  test('there are bounds, and they are told', () => {
    expect(kept(limits.practices + 1).refused).toContain(String(limits.practices));
    expect(addPractice(demoPlaybook, { ...plan, name: ' ' }).kind).toBe('refused');
  });
  test('one is changed and taken out by its id, and one that is gone is told', () => {
    const { playbook } = kept();
    const changed = changePractice(playbook, 'tuesday', (practice) => ({ ...practice, minutes: 30, id: 'x' }));
    expect(changed.kind === 'edited' && changed.playbook.practices).toMatchObject([{ id: 'tuesday', minutes: 30 }]);
    const none = changePractice(playbook, 'tuesday', (practice) => practice);
    expect(none.kind === 'edited' && none.playbook).toBe(playbook);
    const gone = removePractice(playbook, 'tuesday');
    expect(gone.kind === 'edited' && gone.playbook.practices).toEqual([]);
    expect(changePractice(playbook, 'gone', (practice) => practice).kind).toBe('refused');
    expect(removePractice(playbook, 'gone').kind).toBe('refused');
  });
});

describe('blocks', () => {
  const practice: Practice = { ...plan, id: 'tuesday' };
  test('minutes go by halves, stay within bounds, and are marked as set by hand', () => {
    expect(setBlockMinutes(practice, 1, 4.3).blocks[1]).toMatchObject({ minutes: 4.5, fixed: true });
    expect(setBlockMinutes(practice, 1, -3).blocks[1]?.minutes).toBe(0.5);
    expect(setBlockMinutes(practice, 1, 9999).blocks[1]?.minutes).toBe(limits.practiceMinutes);
    expect(setBlockMinutes(practice, 1, Number.NaN)).toBe(practice);
    expect(setBlockMinutes(practice, 9, 4)).toBe(practice);
  });
  test('reps are whole', () => {
    expect(setBlockReps(practice, 1, 4.6).blocks[1]?.reps).toBe(5);
    expect(setBlockReps(practice, 1, -1).blocks[1]?.reps).toBe(0);
  });
  test('notes come and go', () => {
    const noted = noteBlock(practice, 0, 'Whiteboard.');
    expect(noted.blocks[0]?.note).toBe('Whiteboard.');
    expect(noteBlock(noted, 0, ' ')).toEqual(practice);
  });
  test('order', () => {
    expect(kinds(moveBlock(practice, 0, 2))).toBe('walk live talk');
    expect(kinds(moveBlock(practice, 2, 0))).toBe('live talk walk');
    expect(moveBlock(practice, 0, 3)).toBe(practice);
    expect(kinds(dropBlock(practice, 1))).toBe('talk live');
    expect(dropBlock(practice, 3)).toBe(practice);
  });
});
