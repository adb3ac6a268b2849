import { create } from 'zustand';
import type { Playbook } from '../../playbook/index.ts';
import type { ChanceGrouping } from '../../teach/index.ts';
import type { ChanceFilter } from './filter-chances.ts';
import { everything } from './filter-chances.ts';

/** What of the season is in sight: what it says, the chances themselves, or its pages. */
export const seasonViews = ['says', 'list', 'paper'] as const;
export type SeasonView = (typeof seasonViews)[number];

export interface SeasonState {
  readonly view: SeasonView;
  readonly filter: ChanceFilter;
  readonly by: ChanceGrouping;
  /** The chance that is written: an id, `new`, or none. */
  readonly writing: string | undefined;
  /** The text of a table that is looked at before it is taken in; none when undefined. */
  readonly table: string | undefined;
  /** What was done or refused last, in a sentence. */
  readonly said: string;
  /** The playbook that it is true of: after Undo, or another edit, it is not shown any more. Undefined for what is true of any. */
  readonly saidOf: Playbook | undefined;
  readonly change: (part: Partial<Omit<SeasonState, 'change'>>) => void;
}

/** The state of the Season place that is no part of the document. */
export const useSeason = create<SeasonState>((set) => ({
  view: 'says',
  filter: everything,
  by: 'call',
  writing: undefined,
  table: undefined,
  said: '',
  saidOf: undefined,
  // What is said anew is true of any playbook, unless it comes with one.
  change: (part) => set('said' in part ? { saidOf: undefined, ...part } : part),
}));

/** In place of an id, for a chance that is not kept yet. */
export const newOne = 'new one';
