import { filmFile } from './film-file.ts';
import { loadFilmLetters } from './film-letters.ts';
import type { FilmNews, FilmTask } from './film-task.ts';

// A thread that makes one film and ends: the page, which goes on meanwhile, ends it earlier when nobody wants it any more.

/** What is used of a thread's own scope. Written out, because its types and those of a page cannot stand beside each other. */
interface ThreadScope {
  readonly fonts?: FontFaceSet;
  onmessage: ((event: MessageEvent<FilmTask>) => void) | null;
  postMessage(news: FilmNews, transfer?: readonly Transferable[]): void;
}
const scope = globalThis as unknown as ThreadScope;

scope.onmessage = ({ data }) => {
  void make(data).catch((error: unknown) => {
    scope.postMessage({ kind: 'failed', reason: error instanceof Error ? error.message : String(error) });
  });
};

async function make(task: FilmTask): Promise<void> {
  if (scope.fonts !== undefined) await loadFilmLetters(scope.fonts);
  const news = await filmFile(task, new OffscreenCanvas(1, 1), {
    onProgress: (share) => scope.postMessage({ kind: 'progress', share }),
  });
  scope.postMessage(news, news.kind === 'made' ? [news.film.bytes.buffer] : []);
}
