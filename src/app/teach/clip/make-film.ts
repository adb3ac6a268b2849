import type { FilmNews, FilmTask } from './film-task.ts';

/** How a film is waited for. */
export interface FilmOrder {
  readonly signal: AbortSignal;
  readonly onProgress: (share: number) => void;
}

/** How a film ends that was not stopped. */
export type FilmEnd = Exclude<FilmNews, { kind: 'progress' }>;

/**
 * Makes a film in a thread of its own, so that the page goes on; on the page where a browser has no canvas for threads. Rejects with the signal's reason when it
 * is stopped, at once.
 */
export async function makeFilm(task: FilmTask, order: FilmOrder): Promise<FilmEnd> {
  order.signal.throwIfAborted();
  if (typeof OffscreenCanvas === 'undefined' || !hasPen(new OffscreenCanvas(1, 1))) return onPage(task, order);
  return inThread(task, order);
}

// One of the browsers has such a canvas for years, but with nothing to draw on it.
function hasPen(canvas: OffscreenCanvas): boolean {
  return canvas.getContext('2d') !== null;
}

async function onPage(task: FilmTask, order: FilmOrder): Promise<FilmEnd> {
  const [{ filmFile }, { loadFilmLetters }] = await Promise.all([
    import('./film-file.ts'),
    import('./film-letters.ts'),
  ]);
  await loadFilmLetters(document.fonts);
  try {
    return await filmFile(task, document.createElement('canvas'), order);
  } catch (error) {
    order.signal.throwIfAborted();
    return { kind: 'failed', reason: error instanceof Error ? error.message : String(error) };
  }
}

function inThread(task: FilmTask, { signal, onProgress }: FilmOrder): Promise<FilmEnd> {
  const thread = new Worker(new URL('./film-worker.ts', import.meta.url), { type: 'module', name: 'film' });
  return new Promise<FilmEnd>((resolve, reject) => {
    signal.addEventListener('abort', () => reject(signal.reason), { once: true });
    thread.onerror = () => resolve({ kind: 'failed', reason: 'the thread that films could not be started' });
    thread.onmessage = ({ data }: MessageEvent<FilmNews>) => {
      if (data.kind === 'progress') onProgress(data.share);
      else resolve(data);
    };
    thread.postMessage(task);
  }).finally(() => thread.terminate());
}
