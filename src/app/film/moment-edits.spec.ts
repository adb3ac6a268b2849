import { describe, expect, it } from 'vitest';
import type { Chance } from '../../playbook/index.ts';
import { markMan, momentsOf, mostOfOneSide, repeatMoment } from './moment-edits.ts';

const bare: Chance = { id: 'c', side: 'others', result: 'saved' };

function marked(chance: Chance, what: 'ball' | 'defender' | 'attacker', time = 1): Chance {
  const edit = markMan(chance, time, { kind: 'set', what, at: { x: 0, y: 8 } }, 'field');
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.chance;
}

describe('men of a moment', () => {
  const six = Array.from({ length: mostOfOneSide }).reduce<Chance>(
    (chance) => marked(marked(chance, 'defender'), 'attacker'),
    marked(bare, 'ball'),
  );

  it('are no more than can be on the field, and that is said', () => {
    for (const what of ['defender', 'attacker'] as const) {
      const edit = markMan(six, 1, { kind: 'set', what, at: { x: 1, y: 1 } }, 'field');
      expect(edit.kind === 'refused' && edit.reason).toContain(`6 ${what}s are marked, and no more than 6 can be`);
    }
    // A copy of a moment is full, too.
    const later = repeatMoment(six, 1, 2);
    if (later.kind === 'refused') throw new Error(later.reason);
    expect(() => marked(later.chance, 'defender', 2)).toThrow('6 defenders are marked');
  });

  it('say something else when they change: what their marks told is left out', () => {
    const told: Chance = { ...six, byMarks: { jump: 0.9 } };
    const moved = markMan(told, 1, { kind: 'move', who: { kind: 'defender', at: 0 }, at: { x: 5, y: 5 } }, 'field');
    expect(moved.kind === 'edited' && moved.chance).not.toHaveProperty('byMarks');
    expect(moved.kind === 'edited' && momentsOf(moved.chance)[0]!.defenders[0]).toEqual([5, 5]);
  });
});
