import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { applyAll, change, changes } from '../../playbook/edited-playbook.fixture.ts';
import { demoPlaybook, isPlaybookShaped, type Playbook, serializePlaybook } from '../../playbook/index.ts';
import { entitiesOf, listNames } from './entity-lists.ts';
import { mapsOf, projectPlaybook, seedUpdate, writePlaybook } from './playbook-maps.ts';

function documentOf(playbook: Playbook): Y.Doc {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, seedUpdate(playbook));
  return doc;
}

const read = (doc: Y.Doc) => projectPlaybook(mapsOf(doc)).playbook;

let keys = 0;
const newKey = () => `key-${keys++}`;

function write(doc: Y.Doc, to: Playbook): void {
  doc.transact(() => writePlaybook(mapsOf(doc), projectPlaybook(mapsOf(doc)), to, newKey));
}

const playbook = changes.map((list) => applyAll(demoPlaybook, list));

describe('a playbook in a document', () => {
  test('comes out as it was put in', () => {
    fc.assert(
      fc.property(playbook, (value) => {
        const doc = documentOf(value);
        expect(read(doc)).toEqual(value);
        expect(isPlaybookShaped(read(doc))).toBe(true);
        expect(serializePlaybook(read(documentOf(read(doc))))).toBe(serializePlaybook(read(doc)));
      }),
    );
  });

  test('comes out as it was put over another one', () => {
    fc.assert(
      fc.property(playbook, playbook, (one, other) => {
        const doc = documentOf(one);
        write(doc, other);
        expect(read(doc)).toEqual(other);
      }),
    );
  });

  test('is the same bytes each time it begins anew', () => {
    fc.assert(
      fc.property(playbook, (value) => {
        expect(seedUpdate(structuredClone(value))).toEqual(seedUpdate(value));
        const doc = documentOf(value);
        Y.applyUpdate(doc, seedUpdate(value));
        expect(read(doc)).toEqual(value);
      }),
    );
  });

  test('read in part after a change is what is read whole, and keeps the identity of what stayed', () => {
    fc.assert(
      fc.property(playbook, fc.array(change, { minLength: 1, maxLength: 4 }), (start, list) => {
        const doc = documentOf(start);
        const maps = mapsOf(doc);
        let projection = projectPlaybook(maps);
        const changed = new Set<unknown>();
        doc.on('afterTransaction', ({ changed: types }: Y.Transaction) => {
          for (const type of types.keys()) changed.add(type);
        });
        for (const one of list) {
          const before = projection;
          changed.clear();
          const to = one(before.playbook);
          doc.transact(() => writePlaybook(maps, before, to, newKey));
          projection = projectPlaybook(maps, before, changed);
          expect(projection).toEqual(projectPlaybook(maps));
          const kept = new Set<unknown>(listNames.flatMap((name) => entitiesOf(before.playbook, name)));
          for (const name of listNames) {
            // What the change itself kept, the document keeps.
            for (const entity of entitiesOf(to, name)) {
              if (kept.has(entity)) expect(entitiesOf(projection.playbook, name)).toContain(entity);
            }
          }
        }
      }),
    );
  });

  test('that two people changed at once comes out the same for both', () => {
    fc.assert(
      fc.property(playbook, changes, changes, (start, left, right) => {
        const [one, two] = [documentOf(start), documentOf(start)];
        for (const change of left) write(one, change(read(one)));
        for (const change of right) write(two, change(read(two)));
        const [from, to] = [Y.encodeStateAsUpdate(one), Y.encodeStateAsUpdate(two)];
        Y.applyUpdate(one, to);
        Y.applyUpdate(two, from);
        expect(read(one)).toEqual(read(two));
        expect(isPlaybookShaped(read(one))).toBe(true);
      }),
    );
  });
});
