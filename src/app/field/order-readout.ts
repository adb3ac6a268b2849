import type { Point } from '../../engine/index.ts';
import type { PlayGround } from '../../playbook/index.ts';
import type { FieldStep } from './grips.ts';
import { placeIn, type SnappedOrder } from './snap-order.ts';

/** Words at a place of the field. */
export interface FieldReadout {
  readonly at: Point;
  readonly lines: readonly string[];
  readonly refused: boolean;
}

/** What is said beside the pointer while something is held: how far, how long, on what line; or why it may not be. */
export function orderReadout(
  snapped: SnappedOrder | undefined,
  attempt: object | undefined,
  step: FieldStep,
  _ground: PlayGround,
): FieldReadout | undefined {
  if (snapped === undefined || attempt === undefined) return undefined;
  const { order } = snapped;
  const at = placeIn(order) ?? (order.kind === 'throwTo' ? step.picture.places[order.to] : undefined);
  if (at === undefined) return undefined;
  if ('reason' in attempt) return { at, lines: [String(attempt.reason)], refused: true };
  return { at, lines: [`${at.x} right, ${at.y} up`], refused: false };
}
