import { createFilm, filmFont } from '../render/index.ts';
import type { FilmOrder, FilmRefusal } from './film-order.ts';
import { filmToVideo, videoWay } from './film-to-video.ts';

// The program of the page that the command line opens in a browser to have a film made: it fetches what to draw, draws and encodes it, and sends the bytes back. It
// knows no address but that of its own page.

const letters = { regular: '400', bold: '700' } as const;

void make().catch((error: unknown) => refuse('failed', error instanceof Error ? error.message : String(error)));

async function make(): Promise<void> {
  const order = (await (await fetch('order')).json()) as FilmOrder;
  await loadLetters();
  const film = createFilm(order.script);
  const way = await videoWay(film.layout, order.kind);
  if (way === undefined) {
    await refuse('noEncoder', `no encoder for ${order.kind}`);
    return;
  }
  let told = 0;
  const bytes = await filmToVideo(film, document.createElement('canvas'), way, {
    onProgress: (share) => {
      // A message for each picture would take longer than the picture.
      if (share < told + 0.02 && share < 1) return;
      told = share;
      void fetch('progress', { method: 'POST', body: String(share) });
    },
  });
  await fetch('film', { method: 'POST', body: new Blob([bytes as BlobPart]) });
}

async function loadLetters(): Promise<void> {
  const family = filmFont.split(',')[0]!;
  const faces = Object.entries(letters).map(([name, weight]) => new FontFace(family, `url(${name})`, { weight }));
  for (const face of await Promise.all(faces.map((face) => face.load()))) document.fonts.add(face);
}

async function refuse(kind: FilmRefusal['kind'], reason: string): Promise<void> {
  const refusal: FilmRefusal = { kind, reason };
  await fetch('refused', { method: 'POST', body: JSON.stringify(refusal) });
}
