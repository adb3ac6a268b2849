import { create } from 'zustand';
import {
  type BenchGame,
  type BenchSettings,
  type BenchTap,
  type KeptGame,
  type MeasuredCalls,
  tapped,
  untapped,
  type WrittenChances,
} from '../../teach/index.ts';
import {
  forgetLastGame,
  keepCalls,
  keepGame,
  listenToTabs,
  putGameAway,
  readCalls,
  readGame,
  type StorageFault,
  setBrokenAside,
} from './bench-storage.ts';

/** What measuring the calls is at. */
export type CallSearch =
  | { readonly kind: 'idle' }
  | { readonly kind: 'finding'; readonly answered: number; readonly planned: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string };

interface BenchStore {
  /** The game that is on; undefined before one begins. */
  readonly kept: KeptGame | undefined;
  /** Why the game that was kept cannot be read; empty mostly. */
  readonly broken: string;
  readonly fault: StorageFault;
  readonly calls: MeasuredCalls | undefined;
  readonly search: CallSearch;
  readonly change: (part: { readonly search: CallSearch; readonly found?: MeasuredCalls }) => void;
}

/** The game on this device, the same in all tabs. */
export const useBench = create<BenchStore>((set) => ({
  ...readNow(),
  fault: '',
  calls: readCalls(),
  search: { kind: 'idle' },
  change: ({ search, found }) => {
    if (found === undefined) set({ search });
    else set({ search, calls: found, fault: keepCalls(found) });
  },
}));

function readNow(): Pick<BenchStore, 'kept' | 'broken'> {
  const reading = readGame();
  if (reading.kind === 'game') return { kept: reading.kept, broken: '' };
  return { kept: undefined, broken: reading.kind === 'broken' ? reading.why : '' };
}

/** Holds this tab in step with the others; gives a function that ends it. */
export function followTabs(): () => void {
  return listenToTabs(() => useBench.setState(readNow()));
}

/** Begins a game. */
export function beginGame(settings: BenchSettings, id: string, seed: number): void {
  keep({ game: { id, seed, settings, events: [] }, written: {} });
}

/** One tap, now. It goes behind the taps of every other tab. */
export function tap(...taps: readonly BenchTap[]): void {
  changeGame((game) => taps.reduce((before, one) => tapped(before, one, nowSeconds()), game));
}

/** Takes the newest tap back. */
export function undoTap(): void {
  changeGame(untapped);
}

/** What of the game stands in the playbook now. */
export function noteWritten(written: WrittenChances): void {
  const kept = latest();
  if (kept !== undefined) keep({ ...kept, written });
}

/** The game is over. */
export function endGame(): void {
  const kept = latest();
  if (kept === undefined) return;
  const fault = putGameAway(kept);
  useBench.setState(fault === '' ? { kept: undefined, fault } : { fault });
}

/** The game that ended last goes on. */
export function resumeGame(): void {
  const reading = readGame('last');
  if (reading.kind !== 'game') return;
  keep(reading.kept);
  forgetLastGame();
}

/** Makes room for a new game where the kept one cannot be read. */
export function leaveBroken(): void {
  setBrokenAside();
  useBench.setState(readNow());
}

/** Seconds since 1970 by the clock of the device. */
export function nowSeconds(): number {
  return Date.now() / 1000;
}

/** The newest state of the game, also when another tab has just changed it; that of this page where the browser keeps nothing. */
export function latest(): KeptGame | undefined {
  const { kept, fault } = useBench.getState();
  if (fault !== '') return kept;
  const reading = readGame();
  return reading.kind === 'game' ? reading.kept : kept;
}

function changeGame(change: (game: BenchGame) => BenchGame): void {
  const kept = latest();
  if (kept === undefined) return;
  const game = change(kept.game);
  if (game !== kept.game) keep({ ...kept, game });
}

function keep(kept: KeptGame): void {
  useBench.setState({ kept, broken: '', fault: keepGame(kept) });
}
