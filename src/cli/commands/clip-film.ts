import type { Playbook } from '../../playbook/index.ts';
import { type Clip, createFilm, type FilmOptions } from '../../render/index.ts';
import { filmScript } from '../../teach/index.ts';
import { filmByBrowser } from '../filming/film-by-browser.ts';
import { filmGif } from '../filming/film-gif.ts';
import type { Io } from '../io.ts';
import { startProgress } from '../progress.ts';
import type { ClipFormat } from './clip-format.ts';

/** A film in memory, and how long it is, s. */
export interface WrittenFilm {
  readonly bytes: Uint8Array;
  readonly seconds: number;
}

/** Hundredths: how finely the line on the terminal moves. */
const steps = 100;

/** A clip as a film, made here or by a browser of this machine. */
export async function clipFilm(
  io: Io,
  playbook: Playbook,
  clip: Clip,
  format: Exclude<ClipFormat, 'html'>,
  options: FilmOptions,
): Promise<WrittenFilm> {
  const script = filmScript(playbook, clip, options);
  const progress = startProgress(io, 'Filming');
  progress.plan(steps);
  let told = 0;
  const onProgress = (share: number): void => {
    for (; told < Math.floor(share * steps); told += 1) progress.step();
  };
  try {
    const bytes =
      format === 'gif'
        ? await filmGif(script, io.signal, onProgress)
        : await filmByBrowser(io, { script, kind: format }, onProgress);
    return { bytes, seconds: createFilm(script).seconds };
  } finally {
    progress.stop();
  }
}
