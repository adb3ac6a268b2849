import { SingleBar } from 'cli-progress';
import type { Io } from './io.ts';

/** Moves a line on the terminal while long work runs. */
export interface Progress {
  /** So many more pieces of work are known now. */
  readonly plan: (pieces: number) => void;
  /** One more piece is done. */
  readonly step: () => void;
  /** Takes the line away, so that what follows starts on a clean one. */
  readonly stop: () => void;
}

/** A progress line on standard error when that is a terminal; nothing at all otherwise. */
export function startProgress(io: Io, label: string): Progress {
  if (io.progressStream === null) return { plan: () => undefined, step: () => undefined, stop: () => undefined };
  const bar = new SingleBar({
    format: `${label} [{bar}] {value} of {total}`,
    barCompleteChar: '=',
    barIncompleteChar: ' ',
    barsize: 24,
    hideCursor: true,
    clearOnComplete: true,
    stream: io.progressStream,
  });
  let total = 0;
  bar.start(1, 0);
  return {
    plan: (pieces) => {
      total += pieces;
      bar.setTotal(Math.max(1, total));
    },
    step: () => bar.increment(),
    stop: () => bar.stop(),
  };
}
