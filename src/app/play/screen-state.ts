import { create } from 'zustand';
import type { ScriptName, Side } from '../../playbook/index.ts';

/** What the large field shows: the play as it is written, step by step, or what happens when it is played. */
export type FieldMode = 'write' | 'watch';

/** What is drawn over the people while watching. */
export const layerNames = ['duties', 'reach', 'lanes', 'heat'] as const;
export type LayerName = (typeof layerNames)[number];

/** What the coach is told, once: what was refused, what else an edit changed. */
export interface Notice {
  readonly text: string;
  readonly tone: 'said' | 'refused';
}

/** One trial of many: its script alone up to where the look opens, or the whole chance with the look taken. */
export interface WatchedTrial {
  readonly of: 'script' | 'chance';
  readonly trial: number;
  /** Seconds after the first beat at which to begin, and at which to stand still, if at all. */
  readonly from: number;
  readonly until: number | undefined;
  /** What there is to see in it, in words. */
  readonly words: string;
}

interface ScreenState {
  /** The play that was on the screen last: whoever comes back from another place finds it there. */
  readonly play: string | undefined;
  readonly mode: FieldMode;
  /** Which script is written on: the play's own, or what takes its place with ten seconds left. */
  readonly script: ScriptName;
  /** Step of the script that is written on: 0 is the set. */
  readonly step: number;
  readonly selected: string | undefined;
  readonly side: Side;
  /** Scheme that the large field shows while watching. */
  readonly scheme: string;
  /** Schemes that the play runs against; null for all with a man less. */
  readonly chosen: readonly string[] | null;
  readonly layers: ReadonlySet<LayerName>;
  /** The trial that the large field shows in place of the usual one: one of those behind a look's count. */
  readonly trial: WatchedTrial | undefined;
  readonly notice: Notice | undefined;
  readonly change: (part: Partial<Omit<ScreenState, 'change'>>) => void;
}

/** The state of the Play screen that is no part of the document: lost with the page, and nothing is lost with it. */
export const useScreen = create<ScreenState>((set) => ({
  play: undefined,
  mode: 'write',
  script: 'main',
  step: 0,
  selected: undefined,
  side: 'right',
  scheme: 'box-zone',
  chosen: null,
  layers: new Set<LayerName>(['duties', 'lanes']),
  trial: undefined,
  notice: undefined,
  change: (part) => set(part),
}));
