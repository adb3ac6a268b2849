import type { BeatId } from '../engine/index.ts';
import { readWords, triggerWords } from './play-words.ts';
import type { View } from './scene.ts';
import type { BallLeg, ChartAction, ChartBeat, TempoChart } from './tempo-chart.ts';
import { layOutTempo, rowTop, type TempoLayout, type TempoSizes, timeToX } from './tempo-layout.ts';
import { ballLineY, readEnd } from './tempo-marks.ts';
import { timedActionWords } from './tempo-words.ts';

/** What on a chart can be taken hold of: an action, or either end of it; what starts a beat; a read. */
export type TempoId =
  | {
      readonly part: 'bar' | 'start' | 'end';
      readonly beat: BeatId;
      /** Its place among the beat's actions. */
      readonly action: number;
    }
  | { readonly part: 'trigger'; readonly beat: BeatId }
  /** Its place among the play's reads. */
  | { readonly part: 'read'; readonly read: number };

export interface TempoHitArea {
  readonly id: TempoId;
  /** In the chart's plane. */
  readonly area: View;
  /** What it is, in words: the name a screen reader speaks. */
  readonly label: string;
}

/** Least width of an area, in the chart's unit: 25 px at the drawing's own size. WCAG 2.2, 2.5.8: 24 px, https://www.w3.org/TR/WCAG22/#target-size-minimum */
const least = 1.2;

/**
 * The areas of a chart drawn with the same `sizes`. Later ones lie above earlier ones: an action's ends above its middle. In each row the upper
 * half belongs to the ball (throws), the lower one to what its man does.
 */
export function tempoHitAreas(chart: TempoChart, sizes: Partial<TempoSizes> = {}): readonly TempoHitArea[] {
  const layout = layOutTempo(chart, sizes);
  return [
    ...chart.beats.flatMap((beat) => beat.actions.flatMap((one) => actionAreas(beat, one, chart, layout))),
    ...readAreas(chart, layout),
    ...triggerAreas(layout),
  ];
}

/** A name for an id that can be compared, kept as a key and written into a page: "bar swing 0", "trigger down", "read 2". */
export function tempoIdText(id: TempoId): string {
  switch (id.part) {
    case 'bar':
    case 'start':
    case 'end':
      return `${id.part} ${id.beat} ${id.action}`;
    case 'trigger':
      return `trigger ${id.beat}`;
    case 'read':
      return `read ${id.read}`;
    default:
      return exhaustive(id);
  }
}

/** What lies under a point of the plane: the topmost one; `undefined` where there is nothing. */
export function tempoHitAt(areas: readonly TempoHitArea[], x: number, y: number): TempoHitArea | undefined {
  for (let index = areas.length - 1; index >= 0; index -= 1) {
    const { left, top, width, height } = areas[index]!.area;
    if (x >= left && x <= left + width && y >= top && y <= top + height) return areas[index];
  }
  return undefined;
}

function actionAreas(
  beat: ChartBeat,
  one: ChartAction,
  chart: TempoChart,
  layout: TempoLayout,
): readonly TempoHitArea[] {
  const box =
    one.action.kind === 'pass' || one.action.kind === 'shot'
      ? throwBox(one, chart, layout)
      : barBox(one, chart, layout);
  if (box === undefined) return [];
  const label = timedActionWords(one);
  const part = (name: 'bar' | 'start' | 'end', area: View, words: string): TempoHitArea => ({
    id: { part: name, beat: beat.id, action: one.index },
    area,
    label: words,
  });
  return [
    part('bar', box.bar, label),
    part('start', box.start, `start: ${label}`),
    part('end', box.end, `end: ${label}`),
  ];
}

interface ActionBox {
  readonly bar: View;
  readonly start: View;
  readonly end: View;
}

function barBox({ action, start, end }: ChartAction, chart: TempoChart, layout: TempoLayout): ActionBox | undefined {
  const row = rowTop(layout, chart, action.by);
  if (row === undefined) return undefined;
  const height = layout.sizes.row * lowerHalf;
  const top = row + layout.sizes.row - height;
  const left = timeToX(layout, start);
  const right = Math.max(timeToX(layout, end), left + least);
  // Its ends take a third of a short bar each, so that its middle can still be taken hold of.
  const grip = Math.min(least, (right - left) / 3);
  return {
    bar: { left, top, width: right - left, height },
    start: { left: left - grip / 2, top, width: grip, height },
    end: { left: right - grip / 2, top, width: grip, height },
  };
}

/** Share of a row that belongs to what its man does. */
const lowerHalf = 0.54;

function throwBox(one: ChartAction, chart: TempoChart, layout: TempoLayout): ActionBox | undefined {
  const leg = throwOf(one, chart.ball);
  const fromY = ballLineY(layout, chart, one.action.by);
  if (leg === undefined || fromY === undefined) return undefined;
  const from = { x: timeToX(layout, leg.leaves), y: fromY };
  const toY = leg.kind === 'pass' ? ballLineY(layout, chart, leg.to) : layout.goalY;
  const to = { x: timeToX(layout, leg.arrives), y: toY ?? fromY };
  return {
    bar: around({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }),
    start: around(from),
    end: around(to),
  };
}

/** The flight of a throw: the first of its kind that is not over when it is asked for. */
function throwOf(
  { action, start }: ChartAction,
  ball: readonly BallLeg[],
): Exclude<BallLeg, { kind: 'held' }> | undefined {
  for (const leg of ball) {
    if (leg.kind === 'held' || leg.arrives < start) continue;
    if (action.kind === 'pass' && leg.kind === 'pass' && leg.from === action.by && leg.to === action.to) return leg;
    if (action.kind === 'shot' && leg.kind === 'shot' && leg.by === action.by) return leg;
  }
  return undefined;
}

function readAreas(chart: TempoChart, layout: TempoLayout): readonly TempoHitArea[] {
  return chart.reads.flatMap((one) => {
    const ends = readEnd(one, chart, layout);
    if (ends === undefined) return [];
    return [
      { id: { part: 'read', read: one.index } as const, area: around(ends.to), label: `read: ${readWords(one.read)}` },
    ];
  });
}

function triggerAreas({ labels }: TempoLayout): readonly TempoHitArea[] {
  return labels.map(({ beat, x, y, width }) => ({
    id: { part: 'trigger', beat: beat.id },
    area: { left: x, top: y - 0.5, width: Math.max(least, width + 0.3), height: 1.65 },
    label: `"${beat.id}" starts ${triggerWords(beat.trigger)}`,
  }));
}

function around({ x, y }: { readonly x: number; readonly y: number }): View {
  return { left: x - least / 2, top: y - least / 2, width: least, height: least };
}

function exhaustive(id: never): never {
  throw new TypeError(`unknown part: ${JSON.stringify(id)}`);
}
