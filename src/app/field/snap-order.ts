import type { Point, SpotId } from '../../engine/index.ts';
import { type SnapGround, snapPlace } from '../../playbook/index.ts';
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

/** How near a place has to come to what it catches on, yards. */
const snapRadius = 0.6;

/** The order with its place as it is: for who set it to the tenth of a yard. */
export function exactOrder(order: FieldOrder, step: FieldStep): SnappedOrder {
  return { order, snappedTo: '', key: `${step.step} ${JSON.stringify(order)}` };
}

/** Lets the place of an order, when it has one, lie on the lines, pipes and men near it. */
export function snapOrder(order: FieldOrder, step: FieldStep, ground: SnapGround): SnappedOrder {
  const place = placeIn(order);
  if (place === undefined) return exactOrder(order, step);
  const { point, words } = snapPlace(place, withoutHim(ground, moverOf(order, step)), snapRadius);
  return { ...exactOrder(withPlace(order, point), step), snappedTo: words };
}

/** What the places of a step can catch on: the men where they stand in it. */
export function snapGroundOfStep(ground: Omit<SnapGround, 'men'>, step: FieldStep): SnapGround {
  return { ...ground, men: new Map(Object.entries(step.picture.places)) };
}

// Nobody catches on himself: he would never get away from his own place.
function withoutHim(ground: SnapGround, mover: SpotId | undefined): SnapGround {
  return { ...ground, men: new Map([...ground.men].filter(([spot]) => spot !== mover)) };
}

/** Whose place an order names; undefined when it is nobody's. */
export function moverOf(order: FieldOrder, step: FieldStep): SpotId | undefined {
  switch (order.kind) {
    case 'moveHome':
      return order.spot;
    case 'send':
    case 'tell':
      return order.by;
    case 'movePoint': {
      const grip = step.grips.find(
        (one) => one.kind === 'point' && one.beat === order.beat && one.action === order.action,
      );
      return grip?.kind === 'point' ? grip.by : undefined;
    }
    case 'moveRestart':
    case 'throwTo':
      return undefined;
    default:
      return exhaustive(order);
  }
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
