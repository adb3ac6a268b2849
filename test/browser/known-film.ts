import { build } from 'esbuild';
import type { Page } from 'playwright-core';
import {
  compileChance,
  type Homography,
  mapPoint,
  type Point,
  recordTrace,
  type Trace,
} from '../../src/engine/index.ts';
import { demoPlaybook } from '../../src/playbook/index.ts';
import { buildMatchup } from '../../src/worker/index.ts';

/** The film that is made: size, px, and pictures a second. */
const size = { width: 1280, height: 720 } as const;
const rate = 10;

/**
 * The ground as a camera sees it that stands at (x, y, height) and looks at a place: field to picture. Reckoned from that camera (Hartley and Zisserman, Multiple View
 * Geometry, 8.1.1: the columns of P that stand for the ground), not by any code of ours.
 */
export function cameraOf(stand: readonly [number, number, number], toward: Point, focalPx: number): Homography {
  const [cx, cy, cz] = stand;
  const forward = unit([toward.x - cx, toward.y - cy, -cz]);
  // The field's y grows toward midfield and its x to the offense's right as it looks in, down the other way: what a book has to the left is right here.
  const right = unit([-forward[1], forward[0], 0]);
  const [a, b, c] = cross(forward, right);
  const down: Triple = [-a, -b, -c];
  const row = (axis: Triple, middle: number): Triple => {
    const of = (vector: Triple): number => focalPx * dot(axis, vector) + middle * dot(forward, vector);
    const from: Triple = [-cx, -cy, -cz];
    return [of([1, 0, 0]), of([0, 1, 0]), of(from)];
  };
  const depth: Triple = [forward[0], forward[1], dot(forward, [-cx, -cy, -cz])];
  return [row(right, size.width / 2), row(down, size.height / 2), depth];
}

type Triple = [number, number, number];

/** A trial of a play of the demo against a scheme, and where everybody is at a time of it. */
export interface KnownTrial {
  readonly trace: Trace;
  /** Six of the offense, then the defenders. */
  readonly placesAt: (seconds: number) => readonly Point[];
  readonly ballAt: (seconds: number) => Point;
}

export function knownTrial(play: string, scheme: string, trial: number, seed = 7): KnownTrial {
  const built = buildMatchup(demoPlaybook, { play, scheme, side: 'right', penalty: 60, level: null });
  if (built.kind === 'refused') throw new Error(built.reason);
  const trace = recordTrace(compileChance(built.matchup, seed), trial);
  const at = (seconds: number, agent: number): Point => {
    const frame = Math.min(trace.frames - 1, Math.round(seconds / trace.step));
    const from = 2 * (frame * trace.agents + agent);
    return { x: trace.places_byFrame[from], y: trace.places_byFrame[from + 1] };
  };
  // Without the man who is let out of the box: he is not on the field yet.
  const men = 6 + built.matchup.scheme.defenders;
  return {
    trace,
    placesAt: (seconds) => Array.from({ length: men }, (_, agent) => at(seconds, agent)),
    ballAt: (seconds) => {
      const frame = Math.min(trace.frames - 1, Math.round(seconds / trace.step));
      const holder = trace.holder_byFrame[frame];
      return at(seconds, holder >= 0 && holder < 6 ? holder : 0);
    },
  };
}

/** A video file of seconds of a trial by a known camera: lines of the field, six round men, defenders square, the ball yellow. Made in the page's own browser. */
export async function filmOf(
  page: Page,
  { placesAt, ballAt }: KnownTrial,
  camera: Homography,
  lines: readonly (readonly [Point, Point])[],
  { from, to }: { readonly from: number; readonly to: number },
): Promise<Buffer> {
  const seen = (place: Point): readonly [number, number] => {
    const { x, y } = mapPoint(camera, place)!;
    return [x, y];
  };
  const frames = Array.from({ length: Math.round((to - from) * rate) }, (_, frame) => ({
    men: placesAt(from + frame / rate).map(seen),
    ball: seen(ballAt(from + frame / rate)),
  }));
  // As a text, which the page's own rules let through: it is no script of the page.
  await page.evaluate(await encoder());
  const bytes = await page.evaluate(
    async (asked) => {
      const { makeFilm } = window as unknown as { readonly makeFilm: (asked: unknown) => Promise<Uint8Array> };
      const film = await makeFilm(asked);
      let text = '';
      for (const byte of film) text += String.fromCharCode(byte);
      return btoa(text);
    },
    { ...size, rate, frames, lines: lines.map(([from, to]) => [seen(from), seen(to)]) },
  );
  return Buffer.from(bytes, 'base64');
}

async function encoder(): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: encoderSource, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    format: 'iife',
    write: false,
  });
  return outputFiles[0].text;
}

const encoderSource = `
import { BufferTarget, CanvasSource, Output, Quality, WebMOutputFormat } from 'mediabunny';
window.makeFilm = async ({ width, height, rate, frames, lines }) => {
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d', { alpha: false });
  const output = new Output({ format: new WebMOutputFormat(), target: new BufferTarget() });
  const quality = new Quality({ bitrate: 3_000_000, bitrateMode: 'variable' });
  const source = new CanvasSource(canvas, { codec: 'vp8', quality, keyFrameInterval: 0.5 });
  output.addVideoTrack(source, { frameRate: rate });
  await output.start();
  for (const [at, { men, ball }] of frames.entries()) {
    pen.fillStyle = '#2f6b3a';
    pen.fillRect(0, 0, width, height);
    pen.strokeStyle = '#fff';
    pen.lineWidth = 3;
    for (const [[ax, ay], [bx, by]] of lines) {
      pen.beginPath();
      pen.moveTo(ax, ay);
      pen.lineTo(bx, by);
      pen.stroke();
    }
    for (const [who, [x, y]] of men.entries()) {
      pen.fillStyle = who < 6 ? '#1c4a7d' : '#c8431a';
      pen.fillRect(x - 5, y - 26, 10, 26);
    }
    pen.fillStyle = '#ffe14d';
    pen.beginPath();
    pen.arc(ball[0], ball[1], 5, 0, 7);
    pen.fill();
    await source.add(at / rate, 1 / rate);
  }
  await output.finalize();
  return new Uint8Array(output.target.buffer);
};
`;

function dot(one: Triple, other: Triple): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

function cross([a, b, c]: Triple, [d, e, f]: Triple): Triple {
  return [b * f - c * e, c * d - a * f, a * e - b * d];
}

function unit(vector: Triple): Triple {
  const length = Math.hypot(...vector);
  return vector.map((value) => value / length) as Triple;
}
