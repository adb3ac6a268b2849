import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addChances, chanceResults, demoPlaybook, type NewChance } from '../../playbook/index.ts';
import { newChances, readChanceTable, writeChanceTable } from './chance-table.ts';

const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
// What begins or ends in a blank is trimmed, as every table's cell is.
const words = fc
  .string({ minLength: 1, maxLength: 20 })
  .map((text) => text.trim())
  .filter((text) => text !== '' && !text.startsWith("'"));

const chance: fc.Arbitrary<NewChance> = fc
  .record({
    side: fc.constantFrom('ours' as const, 'theirs' as const),
    date: optional(fc.constantFrom('2026-02-28', '2024-02-29', '2026-12-31')),
    opponent: optional(fc.constantFrom('copper-falls', 'Harbor, Prep', 'said "North"')),
    game: optional(words),
    period: optional(fc.integer({ min: 1, max: 20 })),
    clock: optional(fc.integer({ min: 0, max: 3600 })),
    penalty: optional(
      fc.record({
        seconds: fc.integer({ min: 1, max: 300 }),
        fixed: fc.boolean(),
        men: fc.integer({ min: 1, max: 3 }),
      }),
    ),
    start: optional(fc.constantFrom('restart' as const, 'flagDown' as const, 'transition' as const)),
    call: optional(fc.constantFrom('lantern', 'gone')),
    fromSide: optional(fc.constantFrom('left' as const, 'right' as const)),
    scheme: optional(fc.constantFrom('jump', 'Their own')),
    result: fc.constantFrom(...chanceResults),
    shots: optional(fc.integer({ min: 3, max: 50 })),
    onTarget: optional(fc.integer({ min: 0, max: 3 })),
    firstShot: optional(fc.double({ min: 0, max: 600, noNaN: true })),
    passes: optional(fc.integer({ min: 0, max: 200 })),
    look: optional(
      fc.constantFrom(
        { kind: 'feed' as const, from: 'X', to: 'C' },
        { kind: 'shot' as const },
        { kind: 'skip' as const, to: 'WL' },
        { kind: 'pass' as const, from: 'TR' },
      ),
    ),
    scorer: optional(fc.integer({ min: 0, max: 999 })),
    assist: optional(fc.integer({ min: 0, max: 999 })),
    clear: optional(fc.boolean()),
    expected: optional(fc.constantFrom({ goals: 0.36, low: 0.3, high: 0.4125 }, { goals: 1e-7, low: 0, high: 1 })),
    notes: optional(fc.oneof(words, fc.constantFrom('=1+1', '"quoted", and\nmore', '-5'))),
  })
  .map((value) => JSON.parse(JSON.stringify(value)) as NewChance);

const list = fc.array(chance, { minLength: 1, maxLength: 12 });

describe('laws', () => {
  it('what is written as a table is read again as it was', () => {
    fc.assert(
      fc.property(list, (chances) => {
        const cells = writeChanceTable(chances.map((each) => ({ id: 'c', ...each })));
        expect(readChanceTable(demoPlaybook, cells)).toMatchObject({ chances, problems: [], notes: [], badLines: 0 });
      }),
    );
  });

  it('a table that was taken in brings nothing more the second time', () => {
    fc.assert(
      fc.property(list, list, (before, more) => {
        const edit = addChances(demoPlaybook, before);
        if (edit.kind === 'refused') throw new Error(edit.reason);
        expect(newChances(edit.playbook, before)).toEqual([]);
        const fresh = newChances(edit.playbook, [...before, ...more]);
        expect(fresh).toHaveLength(more.length);
      }),
    );
  });

  it('reading never fails, whatever the cells', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.oneof(words, fc.constantFrom('result', 'side', 'goal', '')))), (cells) => {
        const { chances, problems } = readChanceTable(demoPlaybook, cells);
        expect(chances.length + problems.length).toBeGreaterThanOrEqual(cells.length === 0 ? 1 : 0);
      }),
    );
  });
});
