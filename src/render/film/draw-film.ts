import { defaultDrawOptions, drawScene, type Pen } from '../draw-scene.ts';
import { type Film, type FilmMoment, filmMoment } from './film.ts';
import { type FilmMark, filmInks } from './film-marks.ts';
import type { Drawn, NameOffsets } from './film-names.ts';
import type { FilmPart } from './film-part.ts';
import { filmGround, filmNames, filmPeople } from './film-scene.ts';
import { filmTitle } from './film-title.ts';
import { filmWords } from './film-words.ts';

/** The letters of a film: their widths are known (`textWidth`), so who draws one has Inter at hand, by one of these names. */
export const filmFont = "Inter, 'Inter Variable', sans-serif";

/** On which canvas a film is drawn. */
export interface FilmCanvas {
  /** Pixels of the canvas to one of the film, > 0. */
  readonly scale: number;
}

/** Draws picture `frame` (from 0) of a film over all of a canvas. The same picture wherever it is drawn, but for how a canvas smooths its edges. */
export function drawFilmFrame(pen: Pen, film: Film, frame: number, canvas: FilmCanvas = { scale: 1 }): void {
  drawFilmMoment(pen, film, filmMoment(film, frame), canvas);
}

/** The same of any moment. */
export function drawFilmMoment(pen: Pen, film: Film, moment: FilmMoment, { scale }: FilmCanvas = { scale: 1 }): void {
  drawField(pen, film, moment, scale);
  const marks = moment.isTitle ? filmTitle(film, moment.part) : filmWords(film, moment);
  pen.save();
  pen.scale(scale, scale);
  pen.globalAlpha = 1;
  pen.textBaseline = 'alphabetic';
  for (const mark of marks) drawMark(pen, mark);
  pen.restore();
}

/** Where a place of the field is in a film's picture, px of the film. */
export function filmPlace(film: Film, part: number, at: { readonly x: number; readonly y: number }) {
  const { left, top, pxPerYard } = placing(film, part);
  return { x: left + at.x * pxPerYard, y: top + at.y * pxPerYard };
}

function placing({ view_byPart, layout: { field } }: Film, part: number) {
  const view = view_byPart[part]!;
  const pxPerYard = field.width / view.width;
  return { pxPerYard, left: field.left - view.left * pxPerYard, top: field.top - view.top * pxPerYard };
}

function drawField(pen: Pen, film: Film, { part, time }: FilmMoment, scale: number): void {
  const view = film.view_byPart[part]!;
  const { pxPerYard } = placing(film, part);
  const { field } = film.layout;
  const ground = filmGround(film.field, view);
  const drawn = { view, pxPerYard, ground: ground.items };
  const people = filmPeople(film.parts[part]!, time, film.clip.spots, drawn, namesOf(film, part, drawn));
  const options = {
    ...defaultDrawOptions,
    fontFamily: filmFont,
    pxPerYard,
    devicePixelRatio: scale,
    leftPx: field.left,
    topPx: field.top,
  };
  drawScene(pen, ground, options);
  drawScene(pen, people, options);
}

/** Finding them takes as long as drawing some dozen pictures: kept as long as the film is. */
const names_byPart = new WeakMap<FilmPart, NameOffsets>();

function namesOf({ parts, clip }: Film, at: number, drawn: Drawn): NameOffsets {
  const part = parts[at]!;
  const names = names_byPart.get(part) ?? filmNames(part, clip.spots, drawn);
  names_byPart.set(part, names);
  return names;
}

function drawMark(pen: Pen, mark: FilmMark): void {
  pen.fillStyle = filmInks[mark.ink];
  switch (mark.kind) {
    case 'rect':
      pen.beginPath();
      pen.rect(mark.left, mark.top, mark.width, mark.height);
      pen.fill();
      return;
    case 'text':
      pen.font = `${mark.weight === 'bold' ? '700 ' : ''}${mark.size}px ${filmFont}`;
      pen.textAlign = mark.anchor;
      pen.fillText(mark.text, mark.x, mark.y);
      return;
    default:
      exhaustive(mark);
  }
}

function exhaustive(mark: never): never {
  throw new TypeError(`unknown mark: ${JSON.stringify(mark)}`);
}
