import * as gifenc from 'gifenc';
import { drawFilmFrame, type Film, filmColours, type Pen } from '../render/index.ts';
import { type FilmMaking, giveWay } from './film-making.ts';
import { type FlatPalette, flatPalette, palettedInto } from './flat-palette.ts';

/** A canvas's context whose pixels can be read: four bytes each, red, green, blue and opacity. */
export interface ReadablePen extends Pen {
  getImageData(x: number, y: number, width: number, height: number): { readonly data: Uint8ClampedArray };
}

// Node gives the whole of an older module as `default`, a page's builder its parts.
const GIFEncoder = gifenc.GIFEncoder ?? gifenc.default.GIFEncoder;

/**
 * A film as a GIF that runs without end, drawn with `pen` on a canvas of the film's own size. Each picture holds only what changed since the one before, and a
 * picture in which nothing did only makes that one stand longer. Rejects with the signal's reason when it is stopped.
 */
export async function filmToGif(
  film: Film,
  pen: ReadablePen,
  { signal, onProgress }: FilmMaking = {},
): Promise<Uint8Array> {
  const { width, height } = film.layout;
  const palette = flatPalette(filmColours());
  const encoder = GIFEncoder();
  let before: Uint8Array | undefined;
  let waiting: Waiting | undefined;
  const write = ({ colours, hundredths }: Waiting, isFirst: boolean): void =>
    encoder.writeFrame(colours, width, height, {
      ...frameSettings(palette, isFirst),
      delay: hundredths * 10,
    });
  for (let frame = 0; frame < film.frames; frame += 1) {
    await giveWay();
    signal?.throwIfAborted();
    drawFilmFrame(pen, film, frame);
    const now = new Uint8Array(width * height);
    palettedInto(pen.getImageData(0, 0, width, height).data, palette, now);
    const colours = before === undefined ? now : changes(before, now, palette.unchanged);
    const hundredths = hundredthsOf(film, frame);
    if (colours === undefined && waiting !== undefined) {
      waiting = { ...waiting, hundredths: waiting.hundredths + hundredths };
    } else if (colours !== undefined) {
      if (waiting !== undefined) write(waiting, waiting.isFirst);
      waiting = { colours, hundredths, isFirst: before === undefined };
    }
    before = now;
    onProgress?.((frame + 1) / film.frames);
  }
  if (waiting !== undefined) write(waiting, waiting.isFirst);
  encoder.finish();
  return encoder.bytes();
}

/** A picture whose time is not known yet. */
interface Waiting {
  readonly colours: Uint8Array;
  readonly hundredths: number;
  readonly isFirst: boolean;
}

function frameSettings({ colours, unchanged, depth }: FlatPalette, isFirst: boolean) {
  const every = { colorDepth: depth, dispose: 1, repeat: 0 } as const;
  return isFirst ? { ...every, palette: colours } : { ...every, transparent: true, transparentIndex: unchanged };
}

/** What is other than before, with `unchanged` for all the rest; nothing when all is as it was. */
function changes(before: Uint8Array, now: Uint8Array, unchanged: number): Uint8Array | undefined {
  const colours = new Uint8Array(now.length);
  let isChanged = false;
  for (let pixel = 0; pixel < now.length; pixel += 1) {
    const isSame = now[pixel] === before[pixel];
    colours[pixel] = isSame ? unchanged : now[pixel]!;
    isChanged ||= !isSame;
  }
  return isChanged ? colours : undefined;
}

// A GIF counts in hundredths of a second: what one picture loses by rounding the next one gains, so that all together last as long as the film.
function hundredthsOf({ options: { rate } }: Film, frame: number): number {
  return Math.round(((frame + 1) * 100) / rate) - Math.round((frame * 100) / rate);
}
