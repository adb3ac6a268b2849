import { create } from 'zustand';
import type { WalkedMovement } from '../../engine/index.ts';
import { emptyHand, type FilmEvent, type FilmHand, type MarkOrder, nextHand } from './film-tool.ts';

/** A film that the coach opened: it stays on his machine, and so is gone when the page is left. */
export interface OpenFilm {
  readonly name: string;
  /** An address that leads to the file on this machine. */
  readonly url: string;
  /** Pixels; 0 until the browser has read them. */
  readonly width: number;
  readonly height: number;
  /** Seconds. */
  readonly length: number;
}

/** A mark that is pointed at from the belief: its time in its man-up, and its number among the defenders. */
export interface LitMark {
  readonly chance: string;
  readonly time: number;
  readonly defender: number;
}

interface FilmState {
  readonly film: OpenFilm | undefined;
  readonly hand: FilmHand;
  /** Where the film stands, s. */
  readonly filmTime: number;
  /** The man-up that is marked. */
  readonly chance: string | undefined;
  /** Where in the film each man-up begins, s; unknown for one that was marked on another day, until somebody says it. */
  readonly begins: Readonly<Record<string, number>>;
  /** The moment that is looked at when there is no film: seconds of the man-up. */
  readonly time: number;
  /** The mark that is chosen on the field, by its name there. */
  readonly selected: string | undefined;
  readonly lit: LitMark | undefined;
  /** What is to be said of the last mark that was set in the film; empty for nothing. */
  readonly notice: string;
  /** The play whose set is on the film; the first that can be drawn when there is none of this id. */
  readonly play: string;
  /** What was believed before, by opponent, where somebody changed it. */
  readonly priors: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** What each opening movement shows of each scheme, by the text of what was asked. */
  readonly walked: ReadonlyMap<string, readonly WalkedMovement[]>;
  readonly change: (part: Partial<Omit<FilmState, 'change' | 'send'>>) => void;
  /** Tells the hand what happened; gives what is to be done with the moment. */
  readonly send: (event: FilmEvent) => MarkOrder | undefined;
}

/** What this screen keeps that is no part of the document. */
export const useFilm = create<FilmState>((set, get) => ({
  film: undefined,
  hand: emptyHand,
  filmTime: 0,
  chance: undefined,
  begins: {},
  time: 0,
  selected: undefined,
  lit: undefined,
  notice: '',
  play: '',
  priors: {},
  walked: new Map(),
  change: (part) => set(part),
  send: (event) => {
    const { hand, order } = nextHand(get().hand, event);
    set({ hand });
    return order;
  },
}));

/** Seconds since the man-up began at which marks are set now: by the film where it is known to begin there. */
export function timeNow({
  film,
  chance,
  begins,
  filmTime,
  time,
}: Pick<FilmState, 'film' | 'chance' | 'begins' | 'filmTime' | 'time'>): number {
  const start = chance === undefined ? undefined : begins[chance];
  return film !== undefined && start !== undefined ? Math.round(100 * (filmTime - start)) / 100 : time;
}
