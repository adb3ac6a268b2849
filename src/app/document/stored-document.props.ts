import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { change } from '../../playbook/edited-playbook.fixture.ts';
import { demoPlaybook, isPlaybookShaped } from '../../playbook/index.ts';
import { mapsOf, projectPlaybook, seedUpdate, writePlaybook } from './playbook-maps.ts';
import { readUpdates } from './stored-document.ts';

/** The log of some edits of the demo, and the playbook that it ends with. */
const log = fc.array(change, { maxLength: 6 }).map((list) => {
  const doc = new Y.Doc();
  const updates: Uint8Array[] = [];
  doc.on('update', (update) => updates.push(update));
  Y.applyUpdate(doc, seedUpdate(demoPlaybook));
  const read = () => projectPlaybook(mapsOf(doc));
  for (const [at, one] of list.entries()) {
    let count = 0;
    const from = read();
    doc.transact(() => writePlaybook(mapsOf(doc), from, one(from.playbook), () => `${at}-${count++}`));
  }
  return { updates, playbook: read().playbook };
});

/** What may happen to stored bytes: some are other bytes, the end is missing, or something lies behind it. */
const damage = fc.oneof(
  fc
    .array(fc.tuple(fc.nat(), fc.nat({ max: 255 })), { minLength: 1, maxLength: 5 })
    .map((hits) => (bytes: Uint8Array) => {
      const copy = bytes.slice();
      for (const [at, byte] of hits) copy[at % copy.length] = byte;
      return copy;
    }),
  fc.nat().map((length) => (bytes: Uint8Array) => bytes.slice(0, length % bytes.length)),
  fc.uint8Array({ maxLength: 50 }).map((noise) => () => noise),
);

function playbookIn(update: Uint8Array): unknown {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, update);
  return projectPlaybook(mapsOf(doc)).playbook;
}

describe('stored updates', () => {
  test('that are sound give the playbook, in whatever order they were kept', () => {
    fc.assert(
      fc.property(log, fc.boolean(), ({ updates, playbook }, turned) => {
        const reading = readUpdates(turned ? [...updates].reverse() : updates);
        if (reading.kind !== 'whole') throw new Error(reading.kind);
        expect(playbookIn(reading.update)).toEqual(playbook);
      }),
    );
  });

  test('that are damaged never throw, and what is given for them is a playbook', () => {
    fc.assert(
      fc.property(log, damage, fc.nat(), ({ updates }, harm, which) => {
        const harmed = updates.map((update, i) => (i === which % updates.length ? harm(update) : update));
        const reading = readUpdates(harmed);
        const given =
          reading.kind === 'whole' ? reading.update : reading.kind === 'broken' ? reading.salvaged : undefined;
        if (given !== undefined) expect(isPlaybookShaped(playbookIn(given))).toBe(true);
      }),
    );
  });

  test('of which the first is missing are not taken for whole', () => {
    // A later one that only removed something may be missing without a trace: removals have no number in Yjs.
    fc.assert(
      fc.property(log, ({ updates }) => {
        fc.pre(updates.length > 1);
        expect(readUpdates(updates.slice(1)).kind).toBe('broken');
      }),
    );
  });
});
