import { describe, expect, test } from 'vitest';
import { currentVersion, type Migration, migrate, migrations } from './migrate.ts';

/** Steps that leave a trace of their order. */
const steps: readonly Migration[] = [
  { from: 1, summary: 'a became b', apply: ({ a, ...rest }) => ({ ...rest, b: a }) },
  { from: 2, summary: 'b doubled', apply: (old) => ({ ...old, b: [old.b, old.b] }) },
];

describe('migrate', () => {
  test('our steps are contiguous from 1 and end at the version that is written', () => {
    expect(migrations.map((step) => step.from)).toEqual(migrations.map((_, i) => i + 1));
    expect(currentVersion).toBe(migrations.length + 1);
  });

  test.each([
    [
      { version: 1, a: 7 },
      { version: 3, b: [7, 7] },
    ],
    [
      { version: 2, b: 7 },
      { version: 3, b: [7, 7] },
    ],
    [
      { version: 3, b: 7 },
      { version: 3, b: 7 },
    ],
  ])('%j', (old, value) => {
    expect(migrate(old, steps)).toEqual({ kind: 'current', value });
  });

  test('leaves the old document as it was', () => {
    const old = Object.freeze({ version: 1, a: 7 });
    migrate(old, steps);
    expect(old).toEqual({ version: 1, a: 7 });
  });

  test.each([
    [{ version: 4 }, { kind: 'newer', version: 4 }],
    [{ version: 0 }, { kind: 'invalid' }],
    [{ version: 1.5 }, { kind: 'invalid' }],
    [{ version: '1' }, { kind: 'invalid' }],
    [{}, { kind: 'invalid' }],
  ])('%j is refused', (document, result) => {
    expect(migrate(document, steps)).toEqual(result);
  });

  test('refuses steps with a gap', () => {
    expect(() => migrate({ version: 1 }, [steps[1]!])).toThrow('starts from version 2 (expected 1)');
  });
});
