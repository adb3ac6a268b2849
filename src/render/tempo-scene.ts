import type { Trigger } from '../engine/index.ts';
import { line, type Primitive, polygon, rectangle, type Scene, type SceneLayer, text } from './scene.ts';
import type { ChartBeat, TempoChart } from './tempo-chart.ts';
import {
  actionShare,
  ballShare,
  layOutTempo,
  rowTop,
  type TempoLayout,
  type TempoSizes,
  timeToX,
} from './tempo-layout.ts';
import { actionMarks, actionWords, ballMarks, readMarks, windowMarks, windowWorth } from './tempo-marks.ts';
import { tempoChartWords, triggerName } from './tempo-words.ts';

/** What of a chart is drawn, and how large. */
export interface TempoSceneOptions extends TempoSizes {
  readonly reads: boolean;
  readonly windows: boolean;
}

/**
 * A play over time: a row for each spot, the ball's line hopping between them, what each man does on his row, when each beat starts and by what,
 * the taught reads as branches, and who is open when. The playhead is drawn apart (`tempoPlayhead`), so that it can move alone.
 * The plane is the chart's own: `timeToX` and `rowTop` say where what lies.
 */
export function tempoChartScene(chart: TempoChart, options: Partial<TempoSceneOptions> = {}): Scene {
  const layout = layOutTempo(chart, options);
  const { reads = true, windows = true } = options;
  // The stronger over the weaker, where a man is open in two ways at once.
  const shown = windows ? [...chart.windows].sort((a, b) => a.worth - b.worth) : [];
  const actions = chart.beats.flatMap((beat) => beat.actions);
  return {
    title: `${chart.name} over time`,
    description: tempoChartWords(chart).join(' '),
    view: layout.view,
    items: [
      ...groundMarks(chart, layout),
      ...shown.flatMap((window) => windowMarks(window, chart, layout)),
      ...beatLines(layout),
      ...actions.flatMap((one) => actionMarks(one, chart, layout)),
      ...chart.ball.flatMap((leg) => ballMarks(leg, chart, layout)),
      ...chart.beats.flatMap((beat) => triggerMarks(beat, chart, layout)),
      ...shown.flatMap((window) => windowWorth(window, chart, layout)),
      ...actionWords(actions, chart, layout),
      ...(reads ? chart.reads.flatMap((read) => readMarks(read, chart, layout)) : []),
      ...beatNames(layout),
    ],
  };
}

/** Where the chart is played now: a line over all rows with its seconds at the foot. Times outside the chart stand at its edge. */
export function tempoPlayhead(chart: TempoChart, time: number, sizes: Partial<TempoSizes> = {}): SceneLayer {
  const layout = layOutTempo(chart, sizes);
  return playheadLayer(layout, Math.min(Math.max(time, 0), chart.end));
}

/** The same for a layout at hand, which at sixty times a second need not be made anew. */
export function playheadLayer(layout: TempoLayout, time: number): SceneLayer {
  const x = timeToX(layout, time);
  const { top, bottom, view } = layout;
  return {
    view,
    items: [
      line('playhead', { x, y: top - 0.2 }, { x, y: bottom }),
      polygon('playheadTip', [
        { x, y: top },
        { x: x - 0.3, y: top - 0.5 },
        { x: x + 0.3, y: top - 0.5 },
      ]),
      text('playheadText', { x, y: bottom + 0.65 }, `${time.toFixed(1)} s`),
    ],
  };
}

function groundMarks(chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const { view, left, right, top, bottom, sizes } = layout;
  const bands = chart.beats
    .filter((_, index) => index % 2 === 0)
    .map(({ starts, ends }) => rectangle('beatBand', timeToX(layout, starts), top, timeToX(layout, ends), bottom));
  const rows = Array.from({ length: chart.rows.length + 1 }, (_, row) => top + row * sizes.row);
  return [
    rectangle('chartPage', view.left, view.top, view.left + view.width, view.top + view.height),
    ...bands,
    ...rows.map((y) => line('rowLine', { x: 0.3, y }, { x: right, y })),
    ...secondMarks(chart, layout),
    ...chart.rows.map((spot, row) =>
      text('spotText', { x: left / 2, y: top + (row + 0.5) * sizes.row }, spot.slice(0, 4)),
    ),
  ];
}

function secondMarks(chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const { bottom } = layout;
  const whole = Array.from({ length: Math.floor(chart.end) + 1 }, (_, second) => second);
  return [
    ...whole.map((second) => {
      const x = timeToX(layout, second);
      return line('rowLine', { x, y: bottom }, { x, y: bottom + 0.25 });
    }),
    ...whole.map((second) =>
      text('timeText', { x: timeToX(layout, second), y: bottom + 0.7 }, second === 0 ? '0 s' : String(second)),
    ),
  ];
}

function beatLines({ labels, bottom }: TempoLayout): readonly Primitive[] {
  return labels.map(({ x, y }) => line('beatLine', { x, y: y - 0.4 }, { x, y: bottom }));
}

function beatNames({ labels }: TempoLayout): readonly Primitive[] {
  return [
    ...labels.map(({ beat, x, y }) => text('beatName', { x: x + 0.2, y }, beat.id, 'start')),
    ...labels.map(({ beat, x, y }) =>
      text('triggerText', { x: x + 0.2, y: y + 0.72 }, triggerName(beat.trigger), 'start'),
    ),
  ];
}

// What starts a beat, on the row of the man who does it; a call comes from another beat, and nobody does it.
function triggerMarks({ trigger, starts }: ChartBeat, chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const x = timeToX(layout, starts);
  const base = trigger.kind === 'call' ? chart.beats.find(({ id }) => id === trigger.beat) : undefined;
  const y = triggerY(trigger, chart, layout);
  const r = 0.27;
  return [
    ...(base === undefined ? [] : [line('doingWait', { x: timeToX(layout, base.starts), y }, { x, y })]),
    polygon('triggerMark', [
      { x, y: y - r },
      { x: x + r, y },
      { x, y: y + r },
      { x: x - r, y },
    ]),
  ];
}

function triggerY(trigger: Trigger, chart: TempoChart, layout: TempoLayout): number {
  const { top, sizes } = layout;
  const onRow = (spot: string, share: number): number => (rowTop(layout, chart, spot) ?? top) + sizes.row * share;
  switch (trigger.kind) {
    case 'catch':
      return onRow(trigger.by, ballShare);
    case 'pass':
      return onRow(trigger.from, ballShare);
    case 'arrival':
      return onRow(trigger.who, actionShare);
    case 'start':
    case 'call':
      return top;
    default:
      return exhaustive(trigger);
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown trigger: ${JSON.stringify(value)}`);
}
