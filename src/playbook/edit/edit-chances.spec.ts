import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import { limits } from '../limits.ts';
import type { Playbook } from '../schema.ts';
import { addChance, addChances, changeChance, type NewChance, removeChances } from './edit-chances.ts';
import type { PlaybookEdit } from './edit-result.ts';

const chance = (more: Partial<NewChance> = {}): NewChance => ({
  side: 'ours',
  date: '2026-03-14',
  opponent: 'Harbor',
  period: 2,
  clock: 431.5,
  result: 'goal',
  ...more,
});

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

const idsOf = (playbook: Playbook) => playbook.chances?.map(({ id }) => id);

describe('a man-up that is written down', () => {
  const one = edited(addChance(demoPlaybook, chance()));

  it('gets an id of day, opponent and clock, and another when that is taken', () => {
    expect(idsOf(one)).toEqual(['2026-03-14-harbor-p2-431']);
    const two = edited(addChance(one, chance({ result: 'saved' })));
    expect(idsOf(two)).toEqual(['2026-03-14-harbor-p2-431', '2026-03-14-harbor-p2-431-2']);
    expect(idsOf(edited(addChance(demoPlaybook, { side: 'theirs', result: 'expired' })))).toEqual(['man-up']);
  });

  it('comes with others in their order, all or none', () => {
    const many = Array.from({ length: 3 }, (_, period) => chance({ period: period + 1 }));
    expect(idsOf(edited(addChances(one, many)))).toHaveLength(4);
    expect(edited(addChances(one, []))).toBe(one);
    const full = {
      ...one,
      chances: Array.from({ length: limits.chances - 1 }, (_, n) => ({ id: `c${n}`, ...chance() })),
    };
    expect(addChances(full, many)).toMatchObject({ kind: 'refused', reason: expect.stringContaining('at most 5000') });
    expect(edited(addChance(full, chance())).chances).toHaveLength(limits.chances);
  });

  it('is changed under its id, and what is not changed stays the same object', () => {
    const [id] = idsOf(one)!;
    expect(edited(changeChance(one, id!, (each) => each))).toBe(one);
    const changed = edited(changeChance(one, id!, (each) => ({ ...each, id: 'other', result: 'wide' })));
    expect(changed.chances).toEqual([{ id, ...chance({ result: 'wide' }) }]);
    expect(changed.plays).toBe(one.plays);
  });

  it('is taken out, and asked for again refused in a sentence', () => {
    const [id] = idsOf(one)!;
    const none = edited(removeChances(one, [id!, 'gone']));
    expect(none.chances).toEqual([]);
    expect(removeChances(none, [id!])).toMatchObject({ kind: 'refused', reason: expect.stringContaining(id!) });
    expect(changeChance(none, id!, (each) => each)).toMatchObject({ kind: 'refused' });
  });
});
