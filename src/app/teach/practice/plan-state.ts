import { create } from 'zustand';
import type { PaperName } from '../../../render/index.ts';
import type { PlayFindings, plannedFrom } from '../../../teach/index.ts';
import type { DraftPlan } from './draft-plan.ts';

/** What the making of a plan is at. */
export type PlanSearch =
  | { readonly kind: 'idle' }
  /** Requests that are answered, of all that are planned so far. */
  | { readonly kind: 'finding'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string };

/** What is known of the plays that were asked about, and by which question. */
export interface FoundPlan {
  readonly question: string;
  readonly findings: readonly PlayFindings[];
  /** Which skill is worth most, as a sentence; undefined when nobody asked. */
  readonly skill?: string;
}

type PlanWishes = Parameters<typeof plannedFrom>[2];

interface PlanState {
  readonly minutes: number;
  /** All of the roster who are not absent when undefined. */
  readonly players: number | undefined;
  readonly keeper: PlanWishes['keeper'];
  /** Which of two in a week. */
  readonly session: NonNullable<PlanWishes['session']>;
  /** Id of the opponent; all schemes with one man down when undefined or not there any more. */
  readonly opponent: string | undefined;
  /** A second play that is practised too. */
  readonly also: string | undefined;
  /** Whether it is also asked which skill is worth most, which takes a minute or more. */
  readonly withSkill: boolean;
  readonly paper: PaperName;
  readonly search: PlanSearch;
  readonly found: FoundPlan | undefined;
  /** Each plan before the last change, the newest last: what is not kept yet has no other undo. */
  readonly drafts: readonly DraftPlan[];
  /** Which kept plan is shown; the draft when undefined. */
  readonly shown: string | undefined;
  /** What was refused last, in a sentence. */
  readonly said: string;
  readonly change: (part: Partial<Omit<PlanState, 'change'>>) => void;
}

/** The state of the practice plans that is no part of the document. */
export const usePlans = create<PlanState>((set) => ({
  minutes: 20,
  players: undefined,
  keeper: 'warm',
  session: 'first',
  opponent: undefined,
  also: undefined,
  withSkill: false,
  paper: 'letter',
  search: { kind: 'idle' },
  found: undefined,
  drafts: [],
  shown: undefined,
  said: '',
  change: (part) => set(part),
}));
