import type { Point } from '../../engine/index.ts';
import { samplesPerSecond } from '../clip/track.ts';
import { type Label, type LabelRoom, labelBox, overlaps, placeLabels, type TextMark } from '../label-places.ts';
import { defenderLabels, roomAmongPeople } from '../people-labels.ts';
import { keeperMark, usualSizes } from '../people-marks.ts';
import type { Primitive, View } from '../scene.ts';
import type { TraceFrame } from '../trace-frame.ts';
import type { TraceNames } from '../trace-names.ts';
import { openLabels } from '../watch-marks.ts';
import { type FilmPart, momentAt, openMenOf } from './film-part.ts';

/** Where it is drawn, and over what. */
export interface Drawn {
  readonly view: View;
  readonly pxPerYard: number;
  readonly ground: readonly Primitive[];
}

/** Where each defender's name stands from the middle of his cross, yd, at each sample of a part; undefined where it finds no room. */
export type NameOffsets = readonly (readonly (Point | undefined)[])[];

/** What a moment's words are placed among, and the words of those who are open, which come first. */
export function wordsRoom(frame: TraceFrame, part: FilmPart, time: number, names: TraceNames, drawn: Drawn) {
  const sizes = usualSizes;
  const room = roomAmongPeople(frame, names, sizes, { ...drawn, keeper: keeperMark(frame.keeper, sizes) });
  const open = placeLabels(openLabels(frame, openMenOf(part, time), sizes), room);
  return { room: { ...room, fixed: [...room.fixed, ...open] }, open };
}

/**
 * Places for the names over a whole part, each kept as long as it can be: the best place at each moment by itself jumps from side to side several times
 * a second where men crowd, and in a film nobody can stop it to read.
 */
export function nameOffsets(part: FilmPart, names: TraceNames, drawn: Drawn): NameOffsets {
  const offsets: (readonly (Point | undefined)[])[] = [];
  let held: readonly Held[] = [];
  for (let sample = 0; sample < part.scheme.samples; sample += 1) {
    const time = sample / samplesPerSecond;
    const frame = momentAt(part, time);
    held = nextHeld(held, frame, defenderLabels(frame, names), wordsRoom(frame, part, time, names, drawn).room);
    offsets.push(held.map(({ offset }) => offset));
  }
  return offsets;
}

/** Where a name stands, and for how many samples. */
interface Held {
  readonly offset: Point | undefined;
  readonly samples: number;
}

/** A name that has just moved stays for this long unless it lies on letters, samples; and how far a name may then lie on a mark, yd. */
const stays = Math.round(1.2 * samplesPerSecond);
const lightOverlap = 0.3;

function nextHeld(
  before: readonly Held[],
  { defense }: TraceFrame,
  labels: readonly Label[],
  room: LabelRoom,
): readonly Held[] {
  const taken: TextMark[] = [...room.fixed];
  const kept = labels.map((label, index) => {
    const { offset, samples } = before[index] ?? { offset: undefined, samples: 0 };
    if (offset === undefined) return undefined;
    const mark = markAt(label, defense[index]!, offset);
    const overlap = samples < stays ? Number.POSITIVE_INFINITY : lightOverlap;
    if (!canStay(mark, taken, room, overlap)) return undefined;
    taken.push(mark);
    return { offset, samples: samples + 1 };
  });
  // Only when all who stay have their places do the others look for one.
  return labels.map((label, index) => {
    const known = kept[index];
    if (known !== undefined) return known;
    const [mark] = placeLabels([label], { ...room, fixed: taken });
    if (mark === undefined) return { offset: undefined, samples: 0 };
    taken.push(mark);
    const { x, y } = defense[index]!;
    return { offset: { x: mark.at.x - x, y: mark.at.y - y }, samples: 0 };
  });
}

export function markAt({ style, text }: Pick<Label, 'style' | 'text'>, man: Point, offset: Point): TextMark {
  return { kind: 'text', style, text, anchor: 'middle', at: { x: man.x + offset.x, y: man.y + offset.y } };
}

function canStay(mark: TextMark, taken: readonly TextMark[], room: LabelRoom, overlap: number): boolean {
  const box = labelBox(mark, room.pxPerYard);
  const { left, top, width, height } = room.view;
  if (box.left < left || box.right > left + width || box.top < top || box.bottom > top + height) return false;
  if (taken.some((other) => overlaps(box, labelBox(other, room.pxPerYard)))) return false;
  return room.obstacles.every(({ at, radius }) => {
    const dx = at.x - Math.min(Math.max(at.x, box.left), box.right);
    const dy = at.y - Math.min(Math.max(at.y, box.top), box.bottom);
    return radius - Math.hypot(dx, dy) <= overlap;
  });
}
