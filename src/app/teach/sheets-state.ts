import { create } from 'zustand';
import type { PaperName } from '../../render/index.ts';
import type { MeasuredPlay, SheetKind } from '../../teach/index.ts';

/** What the trials behind the pages are at. */
export type WorthsSearch =
  | { readonly kind: 'idle' }
  /** Requests that are answered, of all that are planned so far. */
  | { readonly kind: 'finding'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string };

interface SheetsState {
  readonly kind: SheetKind;
  readonly paper: PaperName;
  /** Names beside the numbers: never by itself, for the sake of minors. */
  readonly withNames: boolean;
  /** Whose page is shown; the first of the playbook when undefined or not there any more. */
  readonly opponent: string | undefined;
  readonly search: WorthsSearch;
  /** What plays make, by the question that was asked about each. Kept while the coach is elsewhere. */
  readonly found: ReadonlyMap<string, MeasuredPlay>;
  readonly change: (part: Partial<Omit<SheetsState, 'change'>>) => void;
}

/** The state of the sheets that is no part of the document. */
export const useSheets = create<SheetsState>((set) => ({
  kind: 'sheet',
  paper: 'letter',
  withNames: false,
  opponent: undefined,
  search: { kind: 'idle' },
  found: new Map(),
  change: (part) => set(part),
}));
