import type { Point } from '../../engine/index.ts';
import { type PlayGround, roundPlace } from '../../playbook/index.ts';
import type { FieldOrder } from './field-order.ts';
import type { FieldStep } from './grips.ts';

/** An order whose place lies on what it was drawn to. */
export interface SnappedOrder {
  readonly order: FieldOrder;
  /** What the place lies on, in words; empty for nothing in particular. */
  readonly snappedTo: string;
  /** The same text for the same order: for memory. */
  readonly key: string;
}

/** Lets the place of an order, when it has one, lie on the lines, pipes and men near it. */
export function snapOrder(order: FieldOrder, step: FieldStep, ground: PlayGround): SnappedOrder {
  const place = placeIn(order);
  if (place === undefined) return { order, snappedTo: '', key: JSON.stringify(order) };
  const snapped = withPlace(order, roundPlace(place, ground.field));
  return { order: snapped, snappedTo: '', key: `${step.step} ${JSON.stringify(snapped)}` };
}

/** Where an order sends somebody; undefined when it names no place. */
export function placeIn(order: FieldOrder): Point | undefined {
  switch (order.kind) {
    case 'moveHome':
    case 'moveRestart':
    case 'movePoint':
    case 'send':
      return order.to;
    case 'tell':
      return order.at;
    case 'throwTo':
      return undefined;
    default:
      return exhaustive(order);
  }
}

function withPlace(order: FieldOrder, place: Point): FieldOrder {
  return order.kind === 'tell' ? { ...order, at: place } : order.kind === 'throwTo' ? order : { ...order, to: place };
}

function exhaustive(order: never): never {
  throw new TypeError(`unknown order: ${JSON.stringify(order)}`);
}
