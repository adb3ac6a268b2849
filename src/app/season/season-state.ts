import { create } from 'zustand';
import type { ChanceGrouping } from '../../teach/index.ts';
import type { ChanceFilter } from './filter-chances.ts';
import { everything } from './filter-chances.ts';

/** What of the season is in sight: what it says, the man-ups themselves, or its pages. */
export const seasonViews = ['says', 'list', 'paper'] as const;
export type SeasonView = (typeof seasonViews)[number];

export interface SeasonState {
  readonly view: SeasonView;
  readonly filter: ChanceFilter;
  readonly by: ChanceGrouping;
  /** The man-up that is written: an id, `new`, or none. */
  readonly writing: string | undefined;
  /** The text of a table that is looked at before it is taken in; none when undefined. */
  readonly table: string | undefined;
  /** What was done or refused last, in a sentence. */
  readonly said: string;
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
  change: (part) => set(part),
}));

/** In place of an id, for a man-up that is not kept yet. */
export const newOne = 'new one';
