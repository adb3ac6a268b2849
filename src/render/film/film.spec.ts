import { describe, expect, it } from 'vitest';
import type { ClipCaption } from '../clip/clip.ts';
import { clipOfScript } from '../clip/clip-of-script.ts';
import { handMadeScript } from '../clip/hand-made-script.fixture.ts';
import { handMadeField, handMadeNames, handMadePlay } from '../hand-made.fixture.ts';
import { textWidth } from '../pages/measure-text.ts';
import { RecordingPen } from '../recording-pen.fixture.ts';
import { frameAt, traceEnd } from '../trace-frame.ts';
import { drawFilmFrame, filmPlace } from './draw-film.ts';
import {
  createFilm,
  defaultFilmOptions,
  type Film,
  type FilmOptions,
  filmMoment,
  restSeconds,
  titleSeconds,
} from './film.ts';
import { filmFormNames, filmForms } from './film-form.ts';
import type { FilmMark, FilmText } from './film-marks.ts';
import { momentAt, openMenOf } from './film-part.ts';
import { filmTitle } from './film-title.ts';
import { filmWords, saidAt } from './film-words.ts';

const script = handMadeScript();
const scheme = clipOfScript(script, handMadePlay, handMadeNames, 'This is one simulated man-up and no promise.');

function film(options: Partial<FilmOptions> = {}, schemes = [scheme], play = 'Far corner'): Film {
  const spots = handMadePlay.spots.map(({ id }) => id);
  const men = spots.map((_, at) => `number ${at + 1}`);
  const clip = { play, team: 'Tamarack Harriers', spots, men, follow: -1, schemes };
  return createFilm({ clip, field: handMadeField, options: { ...defaultFilmOptions, ...options } });
}

describe('a film', () => {
  it.each([
    [30, 0.5],
    [30, 1],
    [12.5, 0.5],
    [10, 1],
  ])('shows each title, then the play, then its last picture, at %d pictures a second and speed %d', (rate, speed) => {
    const both = film({ rate, speed }, [scheme, { ...scheme, name: 'Jump' }]);
    const { end } = both.parts[0]!;
    const moments = Array.from({ length: both.frames }, (_, frame) => filmMoment(both, frame));
    expect(both.seconds).toBeCloseTo(both.frames / rate, 9);
    for (const part of [0, 1]) {
      const own = moments.filter((moment) => moment.part === part);
      expect(own).toHaveLength(both.frames_byPart[part]!);
      const titles = own.filter(({ isTitle }) => isTitle).length;
      expect(Math.abs(titles / rate - titleSeconds)).toBeLessThanOrEqual(1 / rate);
      const times = own.slice(titles).map(({ time }) => time);
      expect(times[0]).toBeLessThan(1e-6 + speed / rate);
      expect(times.at(-1)).toBe(end);
      expect(Math.abs(times.filter((time) => time === end).length / rate - restSeconds)).toBeLessThanOrEqual(2 / rate);
      // As much of the play passes from picture to picture, until it stands.
      for (const [at, time] of times.entries())
        if (time < end) expect(time).toBeCloseTo(times[0]! + (at * speed) / rate, 9);
    }
    expect(moments.map(({ part }) => part)).toEqual([...moments.map(({ part }) => part)].sort());
    expect(filmMoment(both, -1)).toEqual(moments[0]);
    expect(filmMoment(both, both.frames + 5)).toEqual(moments.at(-1));
  });

  it('is none without a scheme, and none at no speed', () => {
    expect(() => film({}, [])).toThrow(RangeError);
    for (const options of [{ speed: 0 }, { rate: Number.NaN }, { rate: Number.POSITIVE_INFINITY }])
      expect(() => film(options)).toThrow(RangeError);
  });

  it('crosses as JSON without a loss', () => {
    const { clip, field, options } = film();
    const crossed = createFilm(JSON.parse(JSON.stringify({ clip, field, options })));
    const [here, there] = [new RecordingPen(), new RecordingPen()];
    drawFilmFrame(here, film(), 130);
    drawFilmFrame(there, crossed, 130);
    expect(there.drawn).toEqual(here.drawn);
    expect(here.isBalanced).toBe(true);
  });
});

describe('the men of a film', () => {
  const [part] = film().parts;
  const times = Array.from({ length: 34 }, (_, at) => at * 0.05).filter((time) => time <= traceEnd(script.trace));

  it('are where the trace has them, to the eye', () => {
    // .05 yd by rounding, and what the smoothing takes off a corner (`smoothAt`).
    const near = 0.2;
    for (const time of times) {
      const [ours, theirs] = [momentAt(part!, time), frameAt(script.trace, time)];
      for (const [index, at] of theirs.offense.entries()) {
        expect(Math.abs(ours.offense[index]!.x - at.x)).toBeLessThan(near);
        expect(Math.abs(ours.offense[index]!.y - at.y)).toBeLessThan(near);
      }
      expect(Math.abs(ours.keeper.x - theirs.keeper.x)).toBeLessThan(near);
    }
  });

  it('do not tremble: the step of a man who runs evenly changes by less than half of what a clip rounds', () => {
    const track = [0, ...Array.from({ length: 40 }, (_, at) => (at % 3 === 0 ? 5 : 6))];
    const even = film({}, [
      {
        ...scheme,
        samples: 41,
        x_byMan: scheme.x_byMan.map(() => track),
        y_byMan: scheme.y_byMan.map(() => track.map(() => 0)),
      },
    ]);
    const xs = Array.from({ length: 90 }, (_, at) => momentAt(even.parts[0]!, 0.5 + at / 30).offense[0]!.x);
    const steps = xs.slice(1).map((x, at) => x - xs[at]!);
    // Straight from sample to sample they would be .167 and .2 yd, and change from one picture to the next by .033.
    const changes = steps.slice(1).map((step, at) => Math.abs(step - steps[at]!));
    expect(Math.max(...changes)).toBeLessThan(0.013);
  });

  it('have the ball, and are open, when the trace says so', () => {
    for (const time of [0.1, 1.1, 1.4])
      expect(momentAt(part!, time).holder).toEqual(frameAt(script.trace, time).holder);
    expect(openMenOf(part!, 0.45)).toEqual([{ who: 4, word: 'open' }]);
    expect(openMenOf(part!, 0.75)).toEqual([]);
  });

  it('are drawn in the looks of every drawing, with the same words', () => {
    const pen = new RecordingPen();
    const one = film({ speed: 1 });
    drawFilmFrame(pen, one, titleSeconds * 30 + 12);
    const words = pen.drawn.filter(({ how }) => how === 'fillText').map(({ what }) => what);
    for (const { id } of handMadePlay.spots) expect(words.some((word) => word.startsWith(`${id} `))).toBe(true);
    expect(pen.drawn.every(({ font }) => font === '' || font.includes('Inter'))).toBe(true);
    const { x, y } = filmPlace(one, 0, momentAt(one.parts[0]!, 0.4).offense[0]!);
    const rings = pen.drawn
      .filter(({ what }) => what.startsWith('circle '))
      .map(({ what }) => what.split(' ').map(Number));
    expect(rings.some(([, cx, cy]) => Math.hypot(cx! - x, cy! - y) < 0.1)).toBe(true);
  });
});

describe('the names of the defenders', () => {
  // Five who cross each other in the middle, again and again.
  const crowd = (at: number, sample: number): number => Math.round(30 * Math.sin(sample / 7 + at * 1.3));
  const samples = 120;
  const trackOf = (place: (sample: number) => number) =>
    Array.from({ length: samples }, (_, sample) => place(sample) - (sample === 0 ? 0 : place(sample - 1)));
  const still = trackOf(() => 0);
  const moving = {
    ...scheme,
    samples,
    defenders: scheme.defenders,
    open: [],
    captions: [],
    x_byMan: scheme.x_byMan.map((_, man) => (man < 6 ? trackOf(() => 60 - 24 * man) : trackOf((at) => crowd(man, at)))),
    y_byMan: scheme.y_byMan.map((_, man) => (man < 6 ? trackOf(() => 150) : trackOf((at) => 60 + crowd(man + 3, at)))),
    ballX: still,
    ballY: still,
  };

  it('keep their places while they can, and never lie on letters', () => {
    const one = film({ speed: 1 }, [moving]);
    const left = new Map<string, string>();
    const since = new Map<string, number>();
    let short = 0;
    let written = 0;
    for (let frame = titleSeconds * 30; frame < one.frames; frame += 1) {
      const pen = new RecordingPen();
      drawFilmFrame(pen, one, frame);
      const { time } = filmMoment(one, frame);
      const men = momentAt(one.parts[0]!, time).defense.map((at) => filmPlace(one, 0, at));
      for (const [index, name] of scheme.defenders.entries()) {
        const word = pen.drawn.find(({ how, what }) => how === 'fillText' && what.startsWith(`${name} `));
        if (word === undefined) continue;
        written += 1;
        const [x, y] = word.what
          .slice(name.length + 1)
          .split(' ')
          .map(Number);
        const side = [x! - men[index]!.x, y! - men[index]!.y].map((off) => Math.round(off / 12)).join();
        if (left.get(name) !== side && frame - (since.get(name) ?? -100) < 10) short += 1;
        if (left.get(name) !== side) since.set(name, frame);
        left.set(name, side);
      }
    }
    expect(written).toBeGreaterThan(500);
    // A name that lies on letters moves at once; nothing else makes it move within a third of a second. Placed anew in each picture they do so 14 times.
    expect(short).toBeLessThan(5);
  });
});

describe('what is said', () => {
  const captions: readonly ClipCaption[] = [
    [0.5, 'A pass.'],
    [1.2, 'A catch.'],
    [1.4, 'A step.'],
    [3, 'A shot.'],
  ];

  it.each([
    [0.4, [], []],
    [0.5, ['A pass.'], []],
    [1.3, ['A catch.'], ['A pass.']],
    [1.4, ['A catch.', 'A step.'], ['A pass.']],
    [9, ['A shot.'], ['A pass.', 'A catch.', 'A step.']],
  ])('at %d s is the last thing with what came with it', (time, now, before) => {
    const said = saidAt(captions, time);
    expect(said.now.map(([, text]) => text)).toEqual(now);
    expect(said.before.map(([, text]) => text)).toEqual(before);
  });

  it('is the largest thing beside the field, but for the names', () => {
    const wide = film();
    const marks = textsOf(filmWords(wide, { part: 0, time: 0.5, isTitle: false }));
    const said = marks.find(({ text }) => text.startsWith('TR'));
    expect(said).toMatchObject({ size: filmForms.wide.letters.said[0], weight: 'bold' });
  });
});

describe.each(filmFormNames)('the words of a %s picture', (form) => {
  const long =
    'Step "behind" begins: WL passes to X; TL fills the empty place; WR sneaks in when nobody looks, and so on.';
  const crowded = {
    ...scheme,
    name: 'A scheme of a very long name that nobody would write on a board',
    captions: Array.from({ length: 40 }, (_, at): ClipCaption => [Math.floor(at / 3) * 0.1, `${at}: ${long}`]),
  };
  const films = [
    film({ form }),
    film({ form }, [crowded, scheme], 'A play whose name is as long as a playbook lets one be'),
  ];

  it('lie on their part of the picture and on no other word', () => {
    for (const one of films) {
      const { words, margin } = one.layout;
      for (let frame = 0; frame < one.frames; frame += 7) {
        const moment = filmMoment(one, frame);
        const marks = moment.isTitle ? filmTitle(one, moment.part) : filmWords(one, moment);
        const boxes = textsOf(marks).map(boxOf);
        for (const box of boxes) {
          expect(box.left).toBeGreaterThanOrEqual(words.left + margin - 0.5);
          expect(box.right).toBeLessThanOrEqual(words.left + words.width - margin + 0.5);
          expect(box.top).toBeGreaterThanOrEqual(words.top);
          expect(box.bottom).toBeLessThanOrEqual(words.top + words.height);
        }
        expect(overlaps(boxes)).toEqual([]);
      }
    }
  });

  it('tell play, scheme, clock and that it is one simulated man-up', () => {
    const [one] = films;
    const told = textsOf(filmWords(one!, { part: 0, time: 0.5, isTitle: false })).map(({ text }) => text);
    const words = told.join(' ').toLowerCase();
    for (const part of ['far corner', 'against box and one, zone', '0.5 s', 'one simulated man-up', 'half speed'])
      expect(words).toContain(part);
    const title = textsOf(filmTitle(one!, 0))
      .map(({ text }) => text.replaceAll('\u00a0', ' '))
      .join(' ');
    for (const part of ['Far corner', 'against Box and one, zone', 'TR  number 2']) expect(title).toContain(part);
  });

  it('is of an even size, as encoders want it', () => {
    const { width, height, field, words } = filmForms[form];
    expect([width % 2, height % 2]).toEqual([0, 0]);
    expect(field.width * field.height + words.width * words.height).toBe(width * height);
  });
});

function textsOf(marks: readonly FilmMark[]): readonly FilmText[] {
  return marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
}

/** What a line of letters covers: capitals are .73 of the size high, and tails hang .2 below. */
function boxOf({ text, x, y, size, weight, anchor }: FilmText) {
  const width = textWidth(text, size, weight);
  const left = anchor === 'start' ? x : x - width;
  return { text, left, right: left + width, top: y - 0.73 * size, bottom: y + 0.2 * size };
}

function overlaps(boxes: readonly ReturnType<typeof boxOf>[]): readonly string[] {
  return boxes.flatMap((one, at) =>
    boxes
      .slice(at + 1)
      .filter((two) => one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom)
      .map((two) => `${one.text} on ${two.text}`),
  );
}
