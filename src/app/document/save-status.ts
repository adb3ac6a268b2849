/** How safe what was typed is just now. */
export interface SaveStatus {
  readonly kind: SaveKind;
  /** The same for the coach: what is so, and what to do. */
  readonly sentence: string;
}

export type SaveKind = 'loading' | 'saved' | 'saving' | 'storageFull' | 'unavailable' | 'broken';

/** One value a kind, so that a status that did not change is the same object. */
export const saveStatuses: Readonly<Record<SaveKind, SaveStatus>> = {
  loading: { kind: 'loading', sentence: 'The playbook is being opened.' },
  saved: { kind: 'saved', sentence: 'Everything is saved on this device.' },
  saving: { kind: 'saving', sentence: 'Saving.' },
  storageFull: {
    kind: 'storageFull',
    sentence:
      'This device has no room left, so the last changes are not saved. You can go on, but export the playbook before you close this page, or free some room: then it is saved by itself.',
  },
  unavailable: {
    kind: 'unavailable',
    sentence:
      'The browser does not let this page save on this device, as in a private window. You can go on, but export the playbook before you close this page.',
  },
  broken: {
    kind: 'broken',
    sentence:
      'What was saved on this device could not be read whole. Nothing of it was deleted: download it as it is. What you see now is the best that could be read, and is saved beside it.',
  },
};
