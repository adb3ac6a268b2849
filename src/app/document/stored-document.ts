import * as Y from 'yjs';
import { isPlaybookShaped } from '../../playbook/index.ts';
import { mapsOf, projectPlaybook } from './playbook-maps.ts';

/** What became of stored updates when they were read. */
export type Reading =
  | { readonly kind: 'nothing' }
  /** One update that holds it all. */
  | { readonly kind: 'whole'; readonly update: Uint8Array }
  /** Some could not be read; `salvaged` holds the rest where that is a playbook. */
  | { readonly kind: 'broken'; readonly salvaged?: Uint8Array };

/**
 * Puts stored updates together in a document of their own, so that damaged ones cannot harm the one that is worked on. They are broken when
 * one cannot be decoded, when one builds on another that is not there, or when what they hold is no playbook.
 */
export function readUpdates(updates: readonly unknown[]): Reading {
  if (updates.length === 0) return { kind: 'nothing' };
  const doc = new Y.Doc();
  // In one transaction, or each of thousands of updates would be cleaned up after by itself.
  const applied = doc.transact(() => updates.map((update) => applies(doc, update)));
  const isPlaybook = isPlaybookShaped(safely(() => projectPlaybook(mapsOf(doc)).playbook));
  const isWhole = applied.every((one) => one) && doc.store.pendingStructs === null && doc.store.pendingDs === null;
  const update = isPlaybook ? safely(() => encodeSound(doc)) : undefined;
  doc.destroy();
  if (update === undefined) return { kind: 'broken' };
  return isWhole ? { kind: 'whole', update } : { kind: 'broken', salvaged: update };
}

function applies(doc: Y.Doc, update: unknown): boolean {
  if (!(update instanceof Uint8Array)) return false;
  const outcome = safely(() => {
    Y.applyUpdate(doc, update);
    return true;
  });
  return outcome ?? false;
}

/** The state without what waits for missing updates: that would wait for ever. */
function encodeSound(doc: Y.Doc): Uint8Array {
  doc.store.pendingStructs = null;
  doc.store.pendingDs = null;
  return Y.encodeStateAsUpdate(doc);
}

function safely<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
