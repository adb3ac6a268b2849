import { create } from 'zustand';
import { createRowKeys } from './row-keys.ts';

export type TeamView = 'roster' | 'lineUp';
export type RosterColumns = 'grades' | 'measured';

/** In what the coach reads and types; kept in the file as the file's format says. */
export interface Units {
  readonly speed: 'mph' | 'kmh';
  readonly height: 'cm' | 'ftIn';
}

interface TeamState {
  readonly view: TeamView;
  readonly columns: RosterColumns;
  readonly units: Units;
  /** Row whose man is open in the panel. */
  readonly open: string | undefined;
  /** Play whose spots are filled; the one that was worked on last when undefined. */
  readonly play: string | undefined;
  /** What stands in cells that cannot be read yet, by `draftKey`: nothing that was typed is lost. */
  readonly drafts: Readonly<Record<string, string>>;
  readonly change: (part: Partial<Pick<TeamState, 'view' | 'columns' | 'open' | 'play'>>) => void;
  readonly chooseUnits: (units: Partial<Units>) => void;
  /** Keeps a draft, or drops it when `text` is undefined. */
  readonly draft: (key: string, text: string | undefined) => void;
}

const storageKey = 'sliderule:units';
const usualUnits: Units = { speed: 'mph', height: 'ftIn' };

/** The state of the Team place that is no part of the document. */
export const useTeam = create<TeamState>((set) => ({
  view: 'roster',
  columns: 'grades',
  units: remembered(),
  open: undefined,
  play: undefined,
  drafts: {},
  change: (part) => set(part),
  chooseUnits: (part) =>
    set((state) => {
      const units = { ...state.units, ...part };
      remember(units);
      return { units };
    }),
  draft: (key, text) =>
    set((state) => {
      if (state.drafts[key] === text) return state;
      const { [key]: _, ...drafts } = state.drafts;
      return { drafts: text === undefined ? drafts : { ...drafts, [key]: text } };
    }),
}));

/** The names of the roster's rows; they live as long as the page, so that drafts find their men again. */
export const rosterKeys = createRowKeys();

export function draftKey(row: string, column: string): string {
  return `${row} ${column}`;
}

function remembered(): Units {
  try {
    const [speed, height] = (window.localStorage.getItem(storageKey) ?? '').split(' ');
    return {
      speed: speed === 'kmh' ? 'kmh' : usualUnits.speed,
      height: height === 'cm' ? 'cm' : usualUnits.height,
    };
  } catch {
    return usualUnits;
  }
}

// Where nothing may be kept, the units are chosen anew next time.
function remember({ speed, height }: Units): void {
  try {
    window.localStorage.setItem(storageKey, `${speed} ${height}`);
  } catch {
    // Nothing else hangs on it.
  }
}
