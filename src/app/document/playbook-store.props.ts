import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyAll, change, changes } from '../../playbook/edited-playbook.fixture.ts';
import { demoPlaybook, isPlaybookShaped, parseUnfinished, serializePlaybook } from '../../playbook/index.ts';
import { indexedDbPersistence } from './indexed-db-persistence.ts';
import { createPlaybookStore } from './playbook-store.ts';

const playbook = changes.map((list) => applyAll(demoPlaybook, list));

/** An edit, maybe one that joins the one before, or a step back or forward. */
const action = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({ kind: fc.constant('edit' as const), change, joins: fc.constantFrom(undefined, 'a', 'b') }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constantFrom('undo' as const, 'redo' as const, 'settle' as const) }) },
);

async function storeOf(initial: typeof demoPlaybook) {
  const store = createPlaybookStore({ name: 'laws', persistence: indexedDbPersistence({}), initial });
  await store.whenReady;
  return store;
}

describe('undo', () => {
  test('of everything gives exactly what was there, and redo of everything what there was', async () => {
    await fc.assert(
      fc.asyncProperty(playbook, fc.array(action, { maxLength: 25 }), async (initial, actions) => {
        const store = await storeOf(initial);
        const begin = serializePlaybook(store.playbook);
        for (const one of actions) {
          if (one.kind === 'edit') store.edit('Edit', one.change, one.joins === undefined ? {} : { joins: one.joins });
          else store[one.kind]();
        }
        while (store.redo() !== undefined);
        const end = serializePlaybook(store.playbook);
        while (store.undo() !== undefined);
        expect(serializePlaybook(store.playbook)).toBe(begin);
        expect(store.playbook).toEqual(initial);
        while (store.redo() !== undefined);
        expect(serializePlaybook(store.playbook)).toBe(end);
        expect(isPlaybookShaped(store.playbook)).toBe(true);
        await store.close();
      }),
    );
  });

  test('of one step gives what was there before it', async () => {
    await fc.assert(
      fc.asyncProperty(playbook, fc.array(change, { maxLength: 15 }), async (initial, list) => {
        const store = await storeOf(initial);
        const seen = [serializePlaybook(store.playbook)];
        for (const one of list) if (store.edit('Edit', one)) seen.push(serializePlaybook(store.playbook));
        for (const before of seen.reverse()) {
          expect(serializePlaybook(store.playbook)).toBe(before);
          store.undo();
        }
        expect(store.undo()).toBeUndefined();
        await store.close();
      }),
    );
  });
});

test('what is exported at any time can be opened again as it was', async () => {
  await fc.assert(
    fc.asyncProperty(playbook, async (initial) => {
      const store = await storeOf(initial);
      expect(parseUnfinished(store.exportText()).value).toEqual(store.playbook);
      await store.close();
    }),
  );
});
