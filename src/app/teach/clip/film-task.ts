import type { FilmScript } from '../../../render/index.ts';

/** What kind of file a film becomes here. */
export type FilmFileKind = 'video' | 'gif';

/** A film in memory. */
export interface MadeFilm {
  readonly bytes: Uint8Array;
  /** Of the file's name, and its media type. */
  readonly ending: 'mp4' | 'webm' | 'gif';
  readonly type: string;
}

/** What a thread is asked. */
export interface FilmTask {
  readonly script: FilmScript;
  readonly kind: FilmFileKind;
}

/** What it says of it. */
export type FilmNews =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'made'; readonly film: MadeFilm }
  /** This browser has no encoder for a video. */
  | { readonly kind: 'noEncoder' }
  | { readonly kind: 'failed'; readonly reason: string };
