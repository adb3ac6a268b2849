import * as Y from 'yjs';
import { everyMap, type PlaybookMaps } from './playbook-maps.ts';

/** What undo and redo would do now, in the words of the edit; absent when there is nothing to undo or redo. */
export interface StepLabels {
  readonly undo?: string;
  readonly redo?: string;
}

/** Which way a step goes. */
export type StepMove = 'undo' | 'redo';

/** A step that could not be taken back, or done again, because another tab wrote over all that it changed. */
export interface OverwrittenStep {
  readonly move: StepMove;
  readonly label: string;
}

/** What came of an undo or redo. */
export type StepTaken =
  | { readonly kind: 'moved'; readonly label: string }
  | ({ readonly kind: 'overwritten' } & OverwrittenStep)
  | { readonly kind: 'none' };

export interface UndoSteps {
  readonly labels: () => StepLabels;
  /** Runs a change as a step of its own, or as part of the last one when both join under the same name. */
  readonly record: (label: string, joins: string | undefined, change: () => void) => void;
  /** The next change begins a step of its own, whatever it joins. */
  readonly settle: () => void;
  /** Takes the last step back for good, when it joins under this name. Whether it did. */
  readonly abandon: (joins: string) => boolean;
  /** Takes the last step back, or does the last that was taken back again. One that is overwritten is forgotten, and no other moves in its place. */
  readonly take: (move: StepMove) => StepTaken;
}

type StackItem = Y.UndoManager['undoStack'][number];

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
  // Out of reach while one step moves: where another tab wrote over the whole of it, Yjs would move the one before it, without a word.
  const aside: Record<StepMove, StackItem[]> = { undo: [], redo: [] };
  const stackOf = (move: StepMove) => (move === 'undo' ? manager.undoStack : manager.redoStack);
  const last = (move: StepMove) => stackOf(move).at(-1) ?? aside[move].at(-1);
  const take = (move: StepMove): StepTaken => {
    settle();
    const item = last(move);
    if (item === undefined) return { kind: 'none' };
    aside[move] = stackOf(move).splice(0, stackOf(move).length - 1);
    const moved = manager[move]();
    stackOf(move).unshift(...aside[move].splice(0));
    const label = item.meta.get(labelKey) as string;
    return moved === null ? { kind: 'overwritten', move, label } : { kind: 'moved', label };
  };
  return {
    labels: () => ({ ...labelOf('undo', last('undo')), ...labelOf('redo', last('redo')) }),
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
      take('undo');
      manager.clear(false, true);
      return true;
    },
    take,
  };
}

function labelOf(name: StepMove, item: StackItem | undefined): StepLabels {
  return item === undefined ? {} : { [name]: item.meta.get(labelKey) as string };
}
