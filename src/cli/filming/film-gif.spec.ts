import omggif from 'omggif';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Trace } from '../../engine/index.ts';
import { demoPlaybook } from '../../playbook/index.ts';
import {
  createFilm,
  type Film,
  type FilmScript,
  filmMoment,
  filmPlace,
  frameAt,
  palettes,
} from '../../render/index.ts';
import { filmScript, playClip, watchedForClip } from '../../teach/index.ts';
import { onePlayText } from '../../worker/index.ts';
import { createTrialPool } from '../../worker/node.ts';
import { filmGif } from './film-gif.ts';

// Read back by omggif, which did not write it; the men are looked for where the trace has them, from which the clip was made.

const asked = { play: 'quarry', side: 'right', penalty: null, level: null, seed: 1 } as const;
const pool = createTrialPool({ threads: 1, worker: new URL('../../../dist/trial-worker.js', import.meta.url) });
afterAll(() => pool.close());

let script: FilmScript;
let film: Film;
let trace: Trace;
let bytes: Uint8Array;
const shares: number[] = [];
beforeAll(async () => {
  const made = await playClip(pool, demoPlaybook, { ...asked, schemes: ['jump'], withNames: false });
  if (made.kind !== 'made') throw new TypeError('the play does not begin');
  script = filmScript(demoPlaybook, made.clip, { form: 'card', rate: 12.5, speed: 1 });
  film = createFilm(script);
  const setup = { ...asked, scheme: 'jump', document: onePlayText(demoPlaybook, { play: 'quarry', scheme: 'jump' }) };
  const [answer] = await pool.answer([{ kind: 'furthest', setup, watched: watchedForClip }]);
  if (answer?.kind !== 'furthest' || answer.found === null) throw new TypeError('the play does not begin');
  trace = answer.found.script.trace;
  bytes = await filmGif(script, new AbortController().signal, (share) => shares.push(share));
});

describe('a GIF', () => {
  it('has the size and the length of the film, and runs without end', () => {
    const gif = new omggif.GifReader(bytes);
    expect([gif.width, gif.height, gif.loopCount()]).toEqual([640, 800, 0]);
    expect(delaysOf(gif).reduce((sum, delay) => sum + delay, 0)).toBe(Math.round(film.seconds * 100));
    // A title that stands is one picture.
    expect(delaysOf(gif)[0]).toBeGreaterThanOrEqual(300);
    expect(gif.numFrames()).toBeLessThan(film.frames);
    expect(bytes.length).toBeLessThan(2_000_000);
  });

  it('has the men where the trace has them', () => {
    let compared = 0;
    let elsewhere = 0;
    const rings: number[] = [];
    eachPicture((pixels, frame) => {
      const { isTitle, time } = filmMoment(film, frame);
      if (isTitle) return;
      const { offense, defense } = frameAt(trace, time);
      const present = defense.slice(0, film.parts[0]!.scheme.defenders.length);
      for (const at of present) {
        const isCovered = offense.some((man) => Math.hypot(man.x - at.x, man.y - at.y) < 2.2);
        if (isCovered) continue;
        compared += 1;
        expect(isCross(pixels, at), `a cross at ${at.x} ${at.y}, ${time} s`).toBe(true);
        if (isCross(pixels, { x: at.x + 1.5, y: at.y })) elsewhere += 1;
      }
      rings.push(...offense.map((at) => ringShare(pixels, at)));
    });
    // Where men crowd at the goal, others hide a part of a circle.
    expect(Math.min(...rings)).toBeGreaterThan(0.4);
    expect(rings.filter((share) => share > 0.85).length / rings.length).toBeGreaterThan(0.85);
    // What is found where nobody stands is now and then another man.
    expect(compared).toBeGreaterThan(200);
    expect(elsewhere / compared).toBeLessThan(0.15);
  });

  it('tells how far it is, and is the same each time', async () => {
    expect(shares).toHaveLength(film.frames);
    expect(shares.at(-1)).toBe(1);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    const again = await filmGif(script, new AbortController().signal, () => undefined);
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true);
  });

  it('stops when it is told to', async () => {
    const stop = new AbortController();
    let told = 0;
    const made = filmGif(script, stop.signal, () => {
      told += 1;
      if (told === 3) stop.abort(new Error('enough'));
    });
    await expect(made).rejects.toThrow('enough');
    expect(told).toBe(3);
  });
});

function delaysOf(gif: InstanceType<typeof omggif.GifReader>): readonly number[] {
  return Array.from({ length: gif.numFrames() }, (_, frame) => gif.frameInfo(frame).delay);
}

/** Each picture of the GIF as it is seen, with a picture of the film that it stands for. */
function eachPicture(look: (pixels: Uint8Array, frame: number) => void): void {
  const gif = new omggif.GifReader(bytes);
  const pixels = new Uint8Array(gif.width * gif.height * 4);
  let hundredths = 0;
  for (const [frame, delay] of delaysOf(gif).entries()) {
    gif.decodeAndBlitFrameRGBA(frame, pixels);
    look(pixels, Math.round((hundredths * film.options.rate) / 100));
    hundredths += delay;
  }
}

interface At {
  readonly x: number;
  readonly y: number;
}

function isNear(pixels: Uint8Array, x: number, y: number, hex: string, reach: number): boolean {
  const wanted = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  for (let dy = -reach; dy <= reach; dy += 1) {
    for (let dx = -reach; dx <= reach; dx += 1) {
      const pixel = 4 * ((Math.round(y) + dy) * film.layout.width + Math.round(x) + dx);
      if (wanted.every((value, channel) => Math.abs(pixels[pixel + channel]! - value) < 40)) return true;
    }
  }
  return false;
}

/** Half a cross of the defense's colour to each side of its middle, as it is drawn. */
function isCross(pixels: Uint8Array, at: At): boolean {
  const { x, y } = filmPlace(film, 0, at);
  const arm = (0.45 * film.layout.field.width) / film.view_byPart[0]!.width;
  const ends = [
    [-arm, -arm],
    [arm, arm],
    [-arm, arm],
    [arm, -arm],
  ] as const;
  const { defense } = palettes.paper;
  return (
    isNear(pixels, x, y, defense, 3) &&
    ends.filter(([dx, dy]) => isNear(pixels, x + dx, y + dy, defense, 3)).length >= 2
  );
}

/** How much of the edge of an attacker's circle has his colour: ball, words and other men may cover a part. */
function ringShare(pixels: Uint8Array, at: At): number {
  const { x, y } = filmPlace(film, 0, at);
  const radius = (1.05 * film.layout.field.width) / film.view_byPart[0]!.width;
  const points = Array.from({ length: 24 }, (_, turn) => (2 * Math.PI * turn) / 24);
  const found = points.filter((turn) =>
    isNear(pixels, x + radius * Math.cos(turn), y + radius * Math.sin(turn), palettes.paper.offense, 2),
  );
  return found.length / points.length;
}
