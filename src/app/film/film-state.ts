import { create } from 'zustand';
import type { WalkedMovement } from '../../engine/index.ts';
import { emptyHand, type FilmEvent, type FilmHand, type MarkOrder, nextHand } from './film-tool.ts';

/** A film that the coach opened: it stays on his machine, and so is gone when the page is left. */
export interface OpenFilm {
  readonly name: string;
  /** What it is told apart by when it is opened again: its marks of the camera are kept under this. */
  readonly key: string;
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

/** All that belongs to the film of one opponent, and to what is marked of him. */
interface FilmSession {
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
}

interface FilmState extends FilmSession {
  /** The opponent to whom all of this belongs; undefined before the first. */
  readonly of: string | undefined;
  /** What belongs to the others, as it was left. */
  readonly others: ReadonlyMap<string, FilmSession>;
  /** The play whose set is on the film; the first that can be drawn when there is none of this id. */
  readonly play: string;
  /** What each opening movement shows of each scheme, by the text of what was asked. */
  readonly walked: ReadonlyMap<string, readonly WalkedMovement[]>;
  readonly change: (part: Partial<Omit<FilmState, 'change' | 'send' | 'turnTo'>>) => void;
  /** Turns to another opponent's film, and finds it as it was left. */
  readonly turnTo: (opponent: string) => void;
  /** Tells the hand what happened; gives what is to be done with the moment. */
  readonly send: (event: FilmEvent) => MarkOrder | undefined;
}

const noFilm: FilmSession = {
  film: undefined,
  hand: emptyHand,
  filmTime: 0,
  chance: undefined,
  begins: {},
  time: 0,
  selected: undefined,
  lit: undefined,
  notice: '',
};

/** What this screen keeps that is no part of the document. */
export const useFilm = create<FilmState>((set, get) => ({
  ...noFilm,
  of: undefined,
  others: new Map(),
  play: '',
  walked: new Map(),
  change: (part) => set(part),
  turnTo: (opponent) => {
    const { of, others, film, hand, filmTime, chance, begins, time, selected, lit, notice } = get();
    if (of === opponent) return;
    const left = new Map(others);
    if (of !== undefined) left.set(of, { film, hand, filmTime, chance, begins, time, selected, lit, notice });
    set({ ...(left.get(opponent) ?? noFilm), of: opponent, others: left });
  },
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
