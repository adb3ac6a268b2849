import type { BeatId, SpotId } from '../../engine/index.ts';
import {
  type BallLeg,
  spotAt,
  type TempoChart,
  type TempoHitArea,
  type TempoId,
  type TempoLayout,
  tempoHitAt,
  xToTime,
} from '../../render/index.ts';

/** What the pointer does on the tempo chart. A press that moves becomes a drag; it ends in one order or in none. */
export type TempoTool =
  | { readonly kind: 'idle' }
  | { readonly kind: 'pressing'; readonly on: TempoId | undefined; readonly from: ChartPoint }
  /** A call is moved to another moment. */
  | { readonly kind: 'timing'; readonly beat: BeatId; readonly grabbedAt: number; readonly time: number }
  /** The ball is drawn from its row to another. */
  | {
      readonly kind: 'throwing';
      readonly beat: BeatId;
      readonly from: SpotId;
      readonly time: number;
      readonly to: SpotId | undefined;
    }
  /** The playhead follows the pointer. */
  | { readonly kind: 'scrubbing' };

/** A point of the chart's plane. */
export interface ChartPoint {
  readonly x: number;
  readonly y: number;
}

export type TempoEvent =
  | { readonly kind: 'down' | 'move' | 'up'; readonly at: ChartPoint }
  | { readonly kind: 'cancel' };

export type TempoOrder =
  /** The playhead goes there. */
  | { readonly kind: 'seek'; readonly time: number }
  /** This step, and this man in it, are what the coach wants to work on. */
  | { readonly kind: 'choose'; readonly beat: BeatId; readonly spot: SpotId | undefined }
  /** A call comes so many seconds later than before (or earlier). */
  | { readonly kind: 'shiftCall'; readonly beat: BeatId; readonly by: number }
  | { readonly kind: 'throw'; readonly beat: BeatId; readonly to: SpotId };

export interface TempoAnswer {
  readonly tool: TempoTool;
  readonly orders: readonly TempoOrder[];
}

export interface TempoGround {
  readonly chart: TempoChart;
  readonly layout: TempoLayout;
  readonly areas: readonly TempoHitArea[];
}

export const idleTempoTool: TempoTool = { kind: 'idle' };

/** A pointer that moves less than this is still pressing, in the chart's unit. */
const slop = 0.4;

/** What the tool is after an event, and what that asks for. Pure. */
export function nextTempoTool(tool: TempoTool, event: TempoEvent, ground: TempoGround): TempoAnswer {
  switch (event.kind) {
    case 'cancel':
      return { tool: idleTempoTool, orders: [] };
    case 'down':
      return {
        tool: { kind: 'pressing', on: tempoHitAt(ground.areas, event.at.x, event.at.y)?.id, from: event.at },
        orders: [],
      };
    case 'move':
      return moved(tool, event.at, ground);
    case 'up':
      return { tool: idleTempoTool, orders: released(tool, event.at, ground) };
    default:
      return exhaustive(event);
  }
}

function moved(tool: TempoTool, at: ChartPoint, ground: TempoGround): TempoAnswer {
  const time = xToTime(ground.layout, at.x);
  switch (tool.kind) {
    case 'idle':
      return { tool, orders: [] };
    case 'pressing':
      return Math.hypot(at.x - tool.from.x, at.y - tool.from.y) < slop
        ? { tool, orders: [] }
        : began(tool, time, at, ground);
    case 'timing':
      return { tool: { ...tool, time }, orders: [] };
    case 'throwing':
      return { tool: { ...tool, to: spotAt(ground.layout, ground.chart, at.y) }, orders: [] };
    case 'scrubbing':
      return { tool, orders: [{ kind: 'seek', time }] };
    default:
      return exhaustive(tool);
  }
}

// Across the rows the ball is thrown; along a call's own mark the call is moved; else the playhead is.
function began(
  { on, from }: Extract<TempoTool, { kind: 'pressing' }>,
  time: number,
  at: ChartPoint,
  ground: TempoGround,
): TempoAnswer {
  const start = xToTime(ground.layout, from.x);
  if (on?.part === 'trigger' && isCall(ground.chart, on.beat))
    return { tool: { kind: 'timing', beat: on.beat, grabbedAt: start, time }, orders: [] };
  const spot = spotAt(ground.layout, ground.chart, from.y);
  const beat = beatAt(ground.chart, start);
  const goesAcross = Math.abs(at.y - from.y) > Math.abs(at.x - from.x);
  if (goesAcross && spot !== undefined && beat !== undefined && holds(ground.chart.ball, spot, start))
    return { tool: { kind: 'throwing', beat, from: spot, time: start, to: undefined }, orders: [] };
  return { tool: { kind: 'scrubbing' }, orders: [{ kind: 'seek', time }] };
}

function released(tool: TempoTool, at: ChartPoint, ground: TempoGround): readonly TempoOrder[] {
  switch (tool.kind) {
    case 'idle':
    case 'scrubbing':
      return [];
    case 'pressing':
      return tapped(tool.on, at, ground);
    case 'timing':
      return [{ kind: 'shiftCall', beat: tool.beat, by: xToTime(ground.layout, at.x) - tool.grabbedAt }];
    case 'throwing': {
      const to = spotAt(ground.layout, ground.chart, at.y);
      return to === undefined || to === tool.from ? [] : [{ kind: 'throw', beat: tool.beat, to }];
    }
    default:
      return exhaustive(tool);
  }
}

function tapped(on: TempoId | undefined, at: ChartPoint, ground: TempoGround): readonly TempoOrder[] {
  if (on !== undefined) return chosen(on, ground.chart);
  const time = Math.max(0, xToTime(ground.layout, at.x));
  const beat = beatAt(ground.chart, time);
  const spot = spotAt(ground.layout, ground.chart, at.y);
  const seek: TempoOrder = { kind: 'seek', time };
  return beat === undefined ? [seek] : [seek, { kind: 'choose', beat, spot }];
}

/** What choosing a part of the chart means: its step, and its man when it is one man's. */
export function chosen(id: TempoId, chart: TempoChart): readonly TempoOrder[] {
  if (id.part === 'trigger') return [{ kind: 'choose', beat: id.beat, spot: undefined }];
  if (id.part === 'read') {
    const read = chart.reads.find(({ index }) => index === id.read);
    const beat = read === undefined ? undefined : (read.read.during ?? beatAt(chart, read.at));
    return beat === undefined ? [] : [{ kind: 'choose', beat, spot: read?.read.carrier }];
  }
  const action = chart.beats.find((beat) => beat.id === id.beat)?.actions.find(({ index }) => index === id.action);
  return [{ kind: 'choose', beat: id.beat, spot: action?.action.by }];
}

/** The newest beat that has begun at a time; the first for a time before it. */
export function beatAt({ beats }: TempoChart, time: number): BeatId | undefined {
  return (beats.filter(({ starts }) => starts <= time + 1e-6).at(-1) ?? beats[0])?.id;
}

function isCall({ beats }: TempoChart, id: BeatId): boolean {
  return beats.find((beat) => beat.id === id)?.trigger.kind === 'call';
}

function holds(ball: readonly BallLeg[], spot: SpotId, time: number): boolean {
  return ball.some((leg) => leg.kind === 'held' && leg.spot === spot && leg.from <= time && time <= leg.to + 0.3);
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
