import { SingleBar } from 'cli-progress';
import type { Io } from './io.ts';

/** Moves a line on the terminal while long work runs. */
export interface Progress {
  /** One more of the whole is done. */
  readonly step: () => void;
  /** Takes the line away, so that what follows starts on a clean one. */
  readonly stop: () => void;
}

/** A progress line on standard error when that is a terminal; nothing at all otherwise. */
export function startProgress(io: Io, label: string, total: number): Progress {
  if (io.progressStream === null) return { step: () => undefined, stop: () => undefined };
  const bar = new SingleBar({
    format: `${label} [{bar}] {percentage} %  {value} of {total}`,
    barCompleteChar: '=',
    barIncompleteChar: ' ',
    barsize: 24,
    hideCursor: true,
    clearOnComplete: true,
    stream: io.progressStream,
  });
  bar.start(total, 0);
  return { step: () => bar.increment(), stop: () => bar.stop() };
}
