import { describe, expect, it } from 'vitest';
import { type Chance, demoPlaybook } from '../../playbook/index.ts';
import { keepChange } from './keep-change.ts';

describe('a chance that is changed in the form', () => {
  it('keeps what no field shows, and loses what was emptied', () => {
    const unshown = {
      belief: { jump: 0.9 },
      marks: [{ time: 4, ball: [0, -5] as [number, number], defenders: [], by: 'tick' as const, cues: ['open C'] }],
    };
    const chance: Chance = { id: 'c', side: 'ours', result: 'goal', call: 'lantern', scorer: 4, ...unshown };
    const edit = keepChange({ ...demoPlaybook, chances: [chance] }, 'c', { side: 'ours', result: 'saved', scorer: 4 });
    if (edit.kind === 'refused') throw new Error(edit.reason);
    expect(edit.playbook.chances).toEqual([{ id: 'c', side: 'ours', result: 'saved', scorer: 4, ...unshown }]);
  });
});
