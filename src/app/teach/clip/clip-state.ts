import { create } from 'zustand';
import type { FilmFormName } from '../../../render/index.ts';
import type { ClipAgainst, ClipFormat } from './clip-choices.ts';

interface ClipState {
  readonly format: ClipFormat;
  readonly against: ClipAgainst;
  /** Form of a film; what suits the format when undefined. */
  readonly form: FilmFormName | undefined;
  /** Seconds of the play a second of a film. */
  readonly speed: number;
  /** Names beside the numbers: never by itself, for the sake of minors. */
  readonly withNames: boolean;
  readonly change: (part: Partial<Omit<ClipState, 'change'>>) => void;
}

/** What the coach chose of a clip. No part of the document: lost with the page, and nothing is lost with it. */
export const useClipChoices = create<ClipState>((set) => ({
  format: 'page',
  against: { kind: 'usual' },
  form: undefined,
  speed: 0.5,
  withNames: false,
  change: (part) => set(part),
}));
