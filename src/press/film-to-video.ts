import {
  BufferTarget,
  CanvasSource,
  canEncodeVideo,
  Mp4OutputFormat,
  Output,
  Quality,
  type VideoCodec,
  WebMOutputFormat,
} from 'mediabunny';
import { drawFilmFrame, type Film, type FilmForm, type Pen } from '../render/index.ts';
import { type FilmMaking, giveWay } from './film-making.ts';

/** In what a video is kept. */
export type VideoKind = 'mp4' | 'webm';

/** A way to make a video that this browser knows. */
export interface VideoWay {
  readonly kind: VideoKind;
  readonly codec: Extract<VideoCodec, 'avc' | 'vp9' | 'vp8'>;
}

/** In order of who can play them: a phone of any maker, then any browser. */
const ways: readonly VideoWay[] = [
  { kind: 'mp4', codec: 'avc' },
  { kind: 'webm', codec: 'vp9' },
  { kind: 'webm', codec: 'vp8' },
];

/** Bits a second for flat colours and letters with sharp edges, of which little moves; and how far apart pictures are that stand by themselves, s. */
const quality = new Quality({ bitrate: 2_000_000, bitrateMode: 'variable' });
const keyFrameInterval = 2;

/** The best way for pictures of this size, of the wanted kind or of any; undefined when this browser has no encoder for it. */
export async function videoWay(
  size: Pick<FilmForm, 'width' | 'height'>,
  wanted?: VideoKind,
): Promise<VideoWay | undefined> {
  if (typeof VideoEncoder === 'undefined') return undefined;
  for (const way of ways) {
    if (wanted !== undefined && way.kind !== wanted) continue;
    if (await canEncodeVideo(way.codec, { width: size.width, height: size.height, quality })) return way;
  }
  return undefined;
}

/** What a film is drawn on in a page or in a thread of one. */
export type FilmSurface = HTMLCanvasElement | OffscreenCanvas;

/**
 * A film as a video file, drawn on `canvas`, which gets the film's size. Waits for the encoder when that is behind. Rejects with the signal's reason
 * when it is stopped, and TypeError for a canvas that has no two-dimensional context.
 */
export async function filmToVideo(
  film: Film,
  canvas: FilmSurface,
  { kind, codec }: VideoWay,
  { signal, onProgress }: FilmMaking = {},
): Promise<Uint8Array> {
  canvas.width = film.layout.width;
  canvas.height = film.layout.height;
  const pen = canvas.getContext('2d', { alpha: false }) as Pen | null;
  if (pen === null) throw new TypeError('missing two-dimensional context of the canvas');
  const target = new BufferTarget();
  const format = kind === 'mp4' ? new Mp4OutputFormat({ fastStart: 'in-memory' }) : new WebMOutputFormat();
  const output = new Output({ format, target });
  const source = new CanvasSource(canvas, { codec, quality, keyFrameInterval });
  output.addVideoTrack(source, { frameRate: film.options.rate });
  try {
    await output.start();
    await addFrames(film, pen, source, { signal, onProgress });
    await output.finalize();
  } catch (error) {
    await output.cancel().catch(() => undefined);
    throw error;
  }
  if (target.buffer === null) throw new TypeError('missing bytes of a finished film');
  return new Uint8Array(target.buffer);
}

/** Pictures between two moments at which others have their turn. */
const framesAtOnce = 8;

async function addFrames(
  film: Film,
  pen: Pen,
  source: CanvasSource,
  { signal, onProgress }: { readonly [Name in keyof FilmMaking]: FilmMaking[Name] | undefined },
): Promise<void> {
  const { rate } = film.options;
  for (let frame = 0; frame < film.frames; frame += 1) {
    if (frame % framesAtOnce === 0) await giveWay();
    signal?.throwIfAborted();
    drawFilmFrame(pen, film, frame);
    await source.add(frame / rate, 1 / rate);
    onProgress?.((frame + 1) / film.frames);
  }
}
