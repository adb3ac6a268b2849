import { useEffect, useState } from 'react';
import type { RuleCode } from '../../engine/index.ts';
import {
  type BenchState,
  chanceRecords,
  foldGame,
  type KeptGame,
  stateLater,
  writeChances,
} from '../../teach/index.ts';
import type { PlaybookStore } from '../document/playbook-store.ts';
import { useDesk } from '../shell/desk.tsx';
import { latest, noteWritten, nowSeconds } from './bench-store.ts';

/** Writes each man-up into the playbook as it ends, or as its taps change; gives a sentence when there is no room for it. */
export function useWrittenChances(kept: KeptGame, state: BenchState, code: RuleCode): string {
  const { store } = useDesk();
  const [fault, setFault] = useState('');
  // A change of what is over, and nothing else, has something written.
  const text = JSON.stringify(chanceRecords(kept.game, state.chances));
  useEffect(() => {
    if (text === '') return;
    void store.whenReady.then(() => oneTabAtATime(() => setFault(writeNow(store, code))));
  }, [store, code, text]);
  return fault;
}

function writeNow(store: PlaybookStore, code: RuleCode): string {
  const kept = latest();
  if (kept === undefined) return '';
  const { chances } = stateLater(foldGame(kept.game, code), code, nowSeconds());
  const { playbook, written, left } = writeChances(store.playbook, chanceRecords(kept.game, chances), kept.written);
  if (playbook !== store.playbook) store.edit('Write down a man-up', () => playbook);
  if (written !== kept.written) noteWritten(written);
  if (left === 0) return '';
  return 'The playbook is full of man-ups: this one is kept with the game only. Begin a new season with a copy of the playbook.';
}

/** Two tabs would write the same man-up twice: where the browser knows locks, the second waits and then finds it written. */
async function oneTabAtATime(write: () => void): Promise<void> {
  if (navigator.locks === undefined) write();
  else await navigator.locks.request('sliderule:bench', write);
}
