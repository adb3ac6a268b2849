import { filmToGif } from '../../../press/film-to-gif.ts';
import { type FilmSurface, filmToVideo, videoWay } from '../../../press/film-to-video.ts';
import { createFilm, type Film } from '../../../render/index.ts';
import type { FilmNews, FilmTask, MadeFilm } from './film-task.ts';

/** How the work is watched and ended. */
export interface FilmWatch {
  readonly signal?: AbortSignal;
  readonly onProgress: (share: number) => void;
}

/**
 * Does a task on `canvas`, wherever that is. All that makes files is loaded with it: a thread of a page cannot load a part later, as the page's own way
 * to do so needs the page. Rejects with the signal's reason when it is stopped.
 */
export async function filmFile(
  { script, kind }: FilmTask,
  canvas: FilmSurface,
  watch: FilmWatch,
): Promise<Extract<FilmNews, { kind: 'made' | 'noEncoder' }>> {
  const film = createFilm(script);
  switch (kind) {
    case 'gif':
      return { kind: 'made', film: await gifOf(film, canvas, watch) };
    case 'video': {
      const made = await videoOf(film, canvas, watch);
      return made === undefined ? { kind: 'noEncoder' } : { kind: 'made', film: made };
    }
    default:
      return exhaustive(kind);
  }
}

async function gifOf(film: Film, canvas: FilmSurface, watch: FilmWatch): Promise<MadeFilm> {
  canvas.width = film.layout.width;
  canvas.height = film.layout.height;
  const pen = canvas.getContext('2d', { willReadFrequently: true }) as
    | CanvasRenderingContext2D
    | OffscreenCanvasRenderingContext2D
    | null;
  if (pen === null) throw new TypeError('this browser has no canvas to draw on');
  return { bytes: await filmToGif(film, pen, watch), ending: 'gif', type: 'image/gif' };
}

async function videoOf(film: Film, canvas: FilmSurface, watch: FilmWatch): Promise<MadeFilm | undefined> {
  const way = await videoWay(film.layout);
  if (way === undefined) return undefined;
  return { bytes: await filmToVideo(film, canvas, way, watch), ending: way.kind, type: `video/${way.kind}` };
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind of film: ${JSON.stringify(kind)}`);
}
