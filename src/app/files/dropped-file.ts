import { create } from 'zustand';

interface DroppedFile {
  /** A file that was dropped somewhere, until the Playbook place takes it. */
  readonly file: File | undefined;
  readonly put: (file: File | undefined) => void;
}

export const useDroppedFile = create<DroppedFile>()((set) => ({
  file: undefined,
  put: (file) => set({ file }),
}));
