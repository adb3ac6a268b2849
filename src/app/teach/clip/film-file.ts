import { createFilm, type Film } from '../../../render/index.ts';
import type { FilmNews, FilmTask, MadeFilm } from './film-task.ts';

/** A canvas of the page or of a thread. */
export type FilmSurface = HTMLCanvasElement | OffscreenCanvas;

/** How the work is watched and ended. */
export interface FilmWatch {
  readonly signal?: AbortSignal;
  readonly onProgress: (share: number) => void;
}

/** Does a task on `canvas`, wherever that is. What makes the file is loaded when it is asked for. Rejects with the signal's reason when it is stopped. */
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
  const { filmToGif } = await import('../../../press/film-to-gif.ts');
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
  const { filmToVideo, videoWay } = await import('../../../press/film-to-video.ts');
  const way = await videoWay(film.layout);
  if (way === undefined) return undefined;
  return { bytes: await filmToVideo(film, canvas, way, watch), ending: way.kind, type: `video/${way.kind}` };
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind of film: ${JSON.stringify(kind)}`);
}
