import { createFilm, type FilmScript, filmFont, type Pen } from '../../render/index.ts';
import { pageFontFiles } from '../press/page-fonts.ts';

/** A film as a GIF, drawn without a browser. Rejects with the signal's reason when it is stopped. */
export async function filmGif(
  script: FilmScript,
  signal: AbortSignal,
  onProgress: (share: number) => void,
): Promise<Uint8Array> {
  // Loaded when a film is wanted: every other command would wait for it.
  const [{ createCanvas, GlobalFonts }, { filmToGif }] = await Promise.all([
    import('@napi-rs/canvas'),
    import('../../press/film-to-gif.ts'),
  ]);
  const family = filmFont.split(',')[0]!;
  for (const path of Object.values(pageFontFiles)) GlobalFonts.registerFromPath(path, family);
  const film = createFilm(script);
  const pen = createCanvas(film.layout.width, film.layout.height).getContext('2d');
  const readable = pen as unknown as Pen & Pick<typeof pen, 'getImageData'>;
  return filmToGif(film, readable, { signal, onProgress });
}
