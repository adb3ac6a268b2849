import * as Y from 'yjs';
import { everyMap, type PlaybookMaps } from './playbook-maps.ts';

/** What undo and redo would do now, in the words of the edit; absent when there is nothing to undo or redo. */
export interface StepLabels {
  readonly undo?: string;
  readonly redo?: string;
}

export interface UndoSteps {
  readonly labels: () => StepLabels;
  /** Runs a change as a step of its own, or as part of the last one when both join under the same name. */
  readonly record: (label: string, joins: string | undefined, change: () => void) => void;
  /** The next change begins a step of its own, whatever it joins. */
  readonly settle: () => void;
  /** Takes the last step back for good, when it joins under this name. Whether it did. */
  readonly abandon: (joins: string) => boolean;
  /** Takes the last step back, or the last that was taken back does again. Its label; undefined when there is none. */
  readonly undo: () => string | undefined;
  readonly redo: () => string | undefined;
}

const labelKey = 'label';

/** Undo of the changes made in this tab. What another tab changed since stays. */
export function createUndoSteps(doc: Y.Doc, maps: PlaybookMaps): UndoSteps {
  const origin = Symbol('edit in this tab');
  const manager = new Y.UndoManager([...everyMap(maps)], {
    doc,
    trackedOrigins: new Set([origin]),
    // Time joins nothing: two quick edits are two steps, and typing with a pause is one.
    captureTimeout: Number.MAX_SAFE_INTEGER,
  });
  let joined: string | undefined;
  let current = '';
  let wrote = false;
  manager.on('stack-item-added', ({ stackItem, origin: by }) => {
    wrote = true;
    // A step that is taken back, or done again, lies on the other stack as a new item, and keeps its name.
    const label = by === origin ? current : manager.currStackItem?.meta.get(labelKey);
    stackItem.meta.set(labelKey, label ?? '');
  });
  manager.on('stack-item-updated', () => {
    wrote = true;
  });
  const settle = (): void => {
    joined = undefined;
    manager.stopCapturing();
  };
  const take = (move: () => Y.UndoManager['undoStack'][number] | null): string | undefined => {
    settle();
    return move()?.meta.get(labelKey) as string | undefined;
  };
  return {
    labels: () => ({
      ...labelOf('undo', manager.undoStack.at(-1)),
      ...labelOf('redo', manager.redoStack.at(-1)),
    }),
    record: (label, joins, change) => {
      const continues = joins !== undefined && joins === joined;
      if (!continues) settle();
      current = label;
      wrote = false;
      doc.transact(change, origin);
      if (wrote) joined = joins;
    },
    settle,
    abandon: (joins) => {
      if (joins !== joined) return false;
      settle();
      // Out of reach meanwhile: where another tab wrote over the whole of the step, Yjs would take back the one before it.
      const earlier = manager.undoStack.splice(0, manager.undoStack.length - 1);
      manager.undo();
      manager.undoStack.unshift(...earlier);
      manager.clear(false, true);
      return true;
    },
    undo: () => take(() => manager.undo()),
    redo: () => take(() => manager.redo()),
  };
}

function labelOf(name: 'undo' | 'redo', item: Y.UndoManager['undoStack'][number] | undefined): StepLabels {
  return item === undefined ? {} : { [name]: item.meta.get(labelKey) as string };
}
