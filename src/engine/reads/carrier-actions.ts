import type { ForcedLook } from '../chance/state.ts';

/** What a man with the ball can do of his own accord. Men are offense indices. */
export type CarrierAction =
  | { readonly kind: 'shoot' }
  | { readonly kind: 'pass'; readonly to: number }
  /** Run in with the stick up and take what comes of it. */
  | { readonly kind: 'stepIn' }
  /** Show it to that man, then play by eye. */
  | { readonly kind: 'fake'; readonly toward: number };

/** All that a carrier can do, in the order in which tables number it: shoot, pass to each mate, step in, fake to each mate. */
export function carrierActions(carrier: number): readonly CarrierAction[] {
  const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== carrier);
  return [
    { kind: 'shoot' },
    ...mates.map((to): CarrierAction => ({ kind: 'pass', to })),
    { kind: 'stepIn' },
    ...mates.map((toward): CarrierAction => ({ kind: 'fake', toward })),
  ];
}

/** The order that makes him do it at a time, seconds after the restart. */
export function forcedBy(action: CarrierAction, carrier: number, time: number): ForcedLook {
  switch (action.kind) {
    case 'shoot':
      return { time, from: carrier, to: carrier };
    case 'pass':
      return { time, from: carrier, to: action.to };
    case 'stepIn':
      return { time, from: carrier, to: carrier, instead: 'stepIn' };
    case 'fake':
      return { time, from: carrier, to: action.toward, instead: 'fake' };
  }
}
