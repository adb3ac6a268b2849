import * as Y from 'yjs';
import type { TabChannel } from './storage.ts';

/** Origin of changes that another tab made. */
export const otherTab = Symbol('other tab');

type TabMessage =
  /** A tab came: what it has. The others answer with what it lacks. */
  | { readonly kind: 'hello'; readonly vector: Uint8Array }
  /** What the other lacks, and what this tab has. */
  | { readonly kind: 'state'; readonly update: Uint8Array; readonly vector: Uint8Array }
  | { readonly kind: 'update'; readonly update: Uint8Array };

/**
 * Holds a document in step with the same document in other tabs: each change goes to all, and a tab that comes gets what it lacks and gives what the
 * others lack. A message that cannot be read is passed over. Gives a function that ends it.
 */
export function syncTabs(doc: Y.Doc, channel: TabChannel): () => void {
  const post = (message: TabMessage): void => channel.post(message);
  const send = (update: Uint8Array, origin: unknown): void => {
    if (origin !== otherTab) post({ kind: 'update', update });
  };
  channel.listen((data) => {
    const message = maybeMessage(data);
    if (message === undefined) return;
    try {
      hear(doc, message, post);
    } catch {
      // A damaged message is none; what it held comes again with the next "state".
    }
  });
  doc.on('update', send);
  post({ kind: 'hello', vector: Y.encodeStateVector(doc) });
  return () => {
    doc.off('update', send);
    channel.close();
  };
}

function hear(doc: Y.Doc, message: TabMessage, post: (message: TabMessage) => void): void {
  if (message.kind === 'hello') {
    const update = Y.encodeStateAsUpdate(doc, message.vector);
    post({ kind: 'state', update, vector: Y.encodeStateVector(doc) });
    return;
  }
  Y.applyUpdate(doc, message.update, otherTab);
  // Sent even when the vectors are equal: what was only deleted here shows in no vector.
  if (message.kind === 'state') post({ kind: 'update', update: Y.encodeStateAsUpdate(doc, message.vector) });
}

function maybeMessage(data: unknown): TabMessage | undefined {
  if (typeof data !== 'object' || data === null || !('kind' in data)) return undefined;
  const { kind, update, vector } = data as Record<string, unknown>;
  if (kind === 'hello' && vector instanceof Uint8Array) return { kind, vector };
  if (kind === 'state' && update instanceof Uint8Array && vector instanceof Uint8Array) return { kind, update, vector };
  if (kind === 'update' && update instanceof Uint8Array) return { kind, update };
  return undefined;
}
