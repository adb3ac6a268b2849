import { create } from 'zustand';
import type { Play } from '../../engine/index.ts';
import type { ReadsStudy, WeighedSetup } from '../../worker/index.ts';
import type { AgainstChoice } from './reads-question.ts';

/** What was found, and of what. */
export interface FoundReads {
  readonly study: ReadsStudy;
  /** The play as it was asked about. */
  readonly play: Play;
  /** What was asked of the simulation, a setup a scheme. */
  readonly setups: readonly WeighedSetup[];
  /** Man-ups against each scheme that were learnt from, and as many that were measured in. */
  readonly trials: number;
  /** Whether these are the first and rough ones. */
  readonly isRough: boolean;
  /** Play, team, man and schemes that it was found for, as text: another text is another question. */
  readonly question: string;
}

/** What the search is at. */
export type ReadsSearch =
  | { readonly kind: 'idle' }
  /** Requests of a round that are answered, of all that are planned. */
  | { readonly kind: 'finding'; readonly trials: number; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  /** The play hardly ever brings this man the ball. */
  | { readonly kind: 'never'; readonly carrier: string }
  | { readonly kind: 'failed'; readonly reason: string };

interface ReadsState {
  /** The man who was chosen; the play's starter when it has no such spot. */
  readonly carrier: string | undefined;
  /** Against what reads are found; the schemes of the Play screen when it is not there any more. */
  readonly against: AgainstChoice;
  /** How many of ten man-ups the coach expects each scheme in, where he said so. */
  readonly ownMix: Readonly<Record<string, number>>;
  /** Most reads on the card; what is worth holding in mind, and can be at the level, when undefined. */
  readonly cardReads: number | undefined;
  readonly search: ReadsSearch;
  /** Kept while the coach is elsewhere. */
  readonly found: FoundReads | undefined;
  readonly change: (part: Partial<Omit<ReadsState, 'change'>>) => void;
}

/** The state of this place that is no part of the document. */
export const useReads = create<ReadsState>((set) => ({
  carrier: undefined,
  against: { kind: 'alike' },
  ownMix: {},
  cardReads: undefined,
  search: { kind: 'idle' },
  found: undefined,
  change: (part) => set(part),
}));
