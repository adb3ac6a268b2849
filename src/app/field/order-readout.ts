import type { Level, Point, SpotId } from '../../engine/index.ts';
import { passTime } from '../../playbook/index.ts';
import type { FieldStep } from './grips.ts';
import { moverOf, placeIn, type SnappedOrder } from './snap-order.ts';

/** Words at a place of the field. */
export interface FieldReadout {
  readonly at: Point;
  readonly lines: readonly string[];
  readonly refused: boolean;
}

/**
 * What is said beside the pointer while something is held: how far he goes, how far and how long a pass to him is, on what line he
 * stands; or, with `reason`, why it may not be.
 */
export function orderReadout(
  snapped: SnappedOrder | undefined,
  reason: string | undefined,
  step: FieldStep,
  level: Level,
): FieldReadout | undefined {
  if (snapped === undefined) return undefined;
  const { order, snappedTo } = snapped;
  const { places } = step.picture;
  const at = placeIn(order) ?? (order.kind === 'throwTo' ? places[order.to] : undefined);
  if (at === undefined) return undefined;
  if (reason !== undefined) return { at, lines: [reason], refused: true };
  const mover = order.kind === 'throwTo' ? order.to : moverOf(order, step);
  const lines = [
    placeLine(at),
    ...(order.kind === 'send' || order.kind === 'tell' ? [runLine(places[order.by], at)] : []),
    passLine(step, mover, at, level),
    snappedTo,
  ];
  return { at, lines: lines.filter((line) => line !== ''), refused: false };
}

function placeLine({ x, y }: Point): string {
  const across = x === 0 ? 'middle' : `${yards(Math.abs(x))} ${x > 0 ? 'right' : 'left'}`;
  return `${across}, ${y < 0 ? `${yards(-y)} behind` : `${yards(y)} up`}`;
}

function runLine(from: Point | undefined, to: Point): string {
  return from === undefined ? '' : `goes ${yards(Math.hypot(to.x - from.x, to.y - from.y))} yd`;
}

// The man who has the ball in this step throws; to himself there is no pass.
function passLine(step: FieldStep, mover: SpotId | undefined, at: Point, level: Level): string {
  const { ball, places } = step.picture;
  const from = places[ball];
  if (from === undefined || mover === undefined || mover === ball) return '';
  const pass = passTime(from, at, level);
  return `pass from ${ball} ${yards(pass.yards)} yd, ${pass.seconds.toFixed(1)} s`;
}

function yards(value: number): string {
  return String(Math.round(value * 10) / 10);
}
