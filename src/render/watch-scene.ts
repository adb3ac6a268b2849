import type { ShotHeat, Trace } from '../engine/index.ts';
import { type FieldMarkings, fieldScene, unitView } from './field-scene.ts';
import { heatMarks } from './heat-marks.ts';
import { type LabelRoom, placeLabels, type TextMark } from './label-places.ts';
import { defenderLabels, roomAmongPeople } from './people-labels.ts';
import { defenderMarks, keeperMark, type MarkSizes, stampSizes, usualSizes } from './people-marks.ts';
import type { Primitive, Scene, SceneLayer, StyleName, View } from './scene.ts';
import { pxPerYard } from './svg-styles.ts';
import { frameAt, type TraceFrame } from './trace-frame.ts';
import {
  attackerDiscs,
  attackerWords,
  ballInFlightOrHands,
  ballMarks,
  dutyMarks,
  reachMark,
  trails,
  withoutAbsent,
} from './trace-marks.ts';
import type { TraceNames } from './trace-names.ts';
import {
  type LaneOdds,
  laneLabels,
  laneLines,
  type OpenMan,
  openLabels,
  openRings,
  readLabels,
  readRings,
} from './watch-marks.ts';

/** `small` is for a field as large as a stamp: larger marks, no letters on defenders, no words beside the marks but the open man's. */
export type WatchSize = 'large' | 'small';

/** What is drawn of the ground, which does not move. */
export interface WatchFieldOptions {
  readonly view: View;
  readonly size: WatchSize;
  /** What a shot by the chosen man is worth; null: nothing is drawn. */
  readonly heat: ShotHeat | null;
}

export const defaultWatchFieldOptions: WatchFieldOptions = { view: unitView, size: 'large', heat: null };

/** Which layers are drawn over the ground. */
export interface WatchOptions {
  readonly view: View;
  readonly size: WatchSize;
  /** Seconds of run behind each man, and of flight behind the ball; 0 draws none. */
  readonly trailSeconds: number;
  readonly ballSeconds: number;
  /** Whom each defender guards or splits. */
  readonly duties: boolean;
  /** Radius of each defender's stick, in the trace's order, yd; nothing is drawn for a man who is missing. */
  readonly reach: readonly number[];
  /** From the man with the ball to his mates, at this moment. */
  readonly lanes: readonly LaneOdds[];
  readonly open: readonly OpenMan[];
  /** The taught read that has just been taken. */
  readonly reads: boolean;
  /** What is drawn of the ground: no word goes over one of its figures where there is another place. */
  readonly ground: readonly Primitive[];
  /** How large the picture is shown, > 0: where letters are large beside the men, fewer words find room. */
  readonly pxPerYard: number;
}

export const defaultWatchOptions: WatchOptions = {
  view: unitView,
  size: 'large',
  trailSeconds: 1,
  ballSeconds: 3,
  duties: true,
  reach: [],
  lanes: [],
  open: [],
  reads: true,
  ground: [],
  pxPerYard,
};

/** The usual layers of a small field: who stands where, the ball and its way, who is open. */
export const smallWatchOptions: WatchOptions = {
  ...defaultWatchOptions,
  size: 'small',
  trailSeconds: 0,
  ballSeconds: 1.5,
  duties: false,
};

/** The ground: drawn once and kept, because it is the same at every moment. */
export function watchField(field: FieldMarkings, options: Partial<WatchFieldOptions> = {}): SceneLayer {
  const { view, size, heat } = { ...defaultWatchFieldOptions, ...options };
  const items = fieldScene(field, view).filter(({ style }) => size === 'large' || !scaleStyles.has(style));
  const grass = items.filter(({ style }) => grassStyles.has(style));
  const rest = items.filter(({ style }) => !grassStyles.has(style));
  return { view, items: [...grass, ...(heat === null ? [] : heatMarks(heat, field)), ...rest] };
}

const scaleStyles: ReadonlySet<StyleName> = new Set<StyleName>(['guide', 'yardText']);
const grassStyles: ReadonlySet<StyleName> = new Set<StyleName>(['turf', 'boxArea']);

/**
 * What moves, at one moment, to be drawn over `watchField` of the same view. `time` is seconds after the whistle; outside the trace it
 * gives the first or last picture. Words for who cannot see it: `watchWords`.
 */
export function watchScene(
  trace: Trace,
  time: number,
  names: TraceNames,
  options: Partial<WatchOptions> = {},
): SceneLayer {
  const chosen = { ...defaultWatchOptions, ...options };
  const sizes = chosen.size === 'small' ? stampSizes : usualSizes;
  const frame = withoutAbsent(frameAt(trace, time), trace, names);
  const moving = frame.holder.kind === 'nobody' ? frame.ball : undefined;
  const keeper = keeperMark(frame.keeper, sizes, chosen.size === 'small' ? '' : 'G');
  const room = roomAmongPeople(frame, names, sizes, { ...chosen, keeper });
  const words = placedWords(trace, frame, names, chosen, sizes, room);
  return {
    view: chosen.view,
    items: [
      ...frame.defense.flatMap((at, index) => reachMark(at, chosen.reach[index])),
      ...(chosen.trailSeconds > 0 ? trails(trace, frame.time, chosen.trailSeconds) : []),
      ...laneLines(frame, chosen.lanes, sizes),
      ...words.filter(({ style }) => style === 'laneText'),
      ...(chosen.ballSeconds > 0 ? ballMarks(trace, frame.time, chosen.ballSeconds, moving) : []),
      ...(chosen.duties ? frame.duties.flatMap((duty, index) => dutyMarks(duty, index, frame)) : []),
      ...keeper,
      ...openRings(frame, chosen.open, sizes),
      ...attackerDiscs(frame, chosen.view, sizes),
      ...defenderMarks(frame.defense, sizes),
      ...attackerWords(frame, names, chosen.view),
      ...words.filter(({ style }) => style === 'defenderText'),
      ballInFlightOrHands(frame, chosen.view, sizes),
      ...(chosen.reads ? readRings(trace, frame, sizes) : []),
      ...words.filter(({ style }) => style === 'openText' || style === 'readText'),
    ],
  };
}

/** What is written, the most important first: what a man saw, who is open, who each defender is, how sure a lane is. */
function placedWords(
  trace: Trace,
  frame: TraceFrame,
  names: TraceNames,
  { size, open, lanes, reads }: WatchOptions,
  sizes: MarkSizes,
  room: LabelRoom,
): readonly TextMark[] {
  const openMen = openLabels(frame, open, sizes);
  if (size === 'small') return placeLabels(openMen, room);
  const read = reads ? readLabels(trace, frame, names, sizes) : [];
  return placeLabels([...read, ...openMen, ...defenderLabels(frame, names), ...laneLabels(frame, lanes, sizes)], room);
}

/** Layers of one view as one scene with its words, for a page or a picture. */
export function joinLayers(layers: readonly SceneLayer[], words: Pick<Scene, 'title' | 'description'>): Scene {
  const view = layers[0]?.view;
  if (view === undefined) throw new RangeError('a scene needs one layer at least');
  return { ...words, view, items: layers.flatMap(({ items }) => items) };
}
