import type { Point, ShotHeat, Trace } from '../engine/index.ts';
import { type FieldMarkings, fieldScene, unitView } from './field-scene.ts';
import { heatMarks } from './heat-marks.ts';
import { defenderMarks, keeperMark, type MarkSizes, placeLabels, stampSizes, usualSizes } from './people-marks.ts';
import { type Primitive, type Scene, type SceneLayer, type StyleName, text, type View } from './scene.ts';
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
import { type LaneOdds, laneMarks, type OpenMan, openRings, openWords, readMarks } from './watch-marks.ts';

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
  return {
    view: chosen.view,
    items: [
      ...frame.defense.flatMap((at, index) => reachMark(at, chosen.reach[index])),
      ...(chosen.trailSeconds > 0 ? trails(trace, frame.time, chosen.trailSeconds) : []),
      ...laneMarks(frame, chosen.lanes, sizes).filter((item) => chosen.size === 'large' || item.kind !== 'text'),
      ...(chosen.ballSeconds > 0 ? ballMarks(trace, frame.time, chosen.ballSeconds, moving) : []),
      ...(chosen.duties ? frame.duties.flatMap((duty, index) => dutyMarks(duty, index, frame)) : []),
      ...peopleMarks(frame, names, chosen, sizes),
      ...(chosen.reads ? readMarks(trace, frame, names, sizes, chosen.view, chosen.size === 'large') : []),
    ],
  };
}

/** Layers of one view as one scene with its words, for a page or a picture. */
export function joinLayers(layers: readonly SceneLayer[], words: Pick<Scene, 'title' | 'description'>): Scene {
  const view = layers[0]?.view;
  if (view === undefined) throw new RangeError('a scene needs one layer at least');
  return { ...words, view, items: layers.flatMap(({ items }) => items) };
}

function peopleMarks(
  frame: TraceFrame,
  names: TraceNames,
  { view, size, open }: WatchOptions,
  sizes: MarkSizes,
): readonly Primitive[] {
  return [
    ...keeperMark(frame.keeper, sizes, size === 'small' ? '' : 'G'),
    ...openRings(frame, open, sizes),
    ...attackerDiscs(frame, view, sizes),
    ...defenderMarks(frame.defense, sizes),
    ...attackerWords(frame, names, view),
    ...(size === 'small' ? [] : defenderWords(frame, names, sizes)),
    ballInFlightOrHands(frame, view, sizes),
    ...openWords(frame, open, sizes),
  ];
}

function defenderWords(frame: TraceFrame, names: TraceNames, sizes: MarkSizes): readonly Primitive[] {
  const near = (at: Point, radius: number): { at: Point; radius: number } => ({ at, radius });
  const obstacles = [
    ...frame.offense.map((at) => near(at, sizes.attacker)),
    ...frame.defense.map((at) => near(at, sizes.cross)),
    near(frame.keeper, sizes.keeper),
    near(frame.ball, sizes.ball),
  ];
  return placeLabels(frame.defense, obstacles).map((at, index) =>
    text('defenderText', at, names.defense[index] ?? 'new'),
  );
}
