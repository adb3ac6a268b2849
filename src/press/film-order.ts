import type { FilmScript } from '../render/index.ts';
import type { VideoKind } from './film-to-video.ts';

/** What the program of the film's page (`film-page.ts`) is asked to make. */
export interface FilmOrder {
  readonly script: FilmScript;
  readonly kind: VideoKind;
}

/** Why there is no film: this browser has no encoder for it, or something went wrong. */
export interface FilmRefusal {
  readonly kind: 'noEncoder' | 'failed';
  readonly reason: string;
}
