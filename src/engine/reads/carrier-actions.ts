import type { Play } from '../offense/play.ts';

/** What a man with the ball can do of his own accord. Men are offense indices. */
export type CarrierAction =
  | { readonly kind: 'shoot' }
  | { readonly kind: 'pass'; readonly to: number }
  /** Run in with the stick up and take what comes of it. */
  | { readonly kind: 'stepIn' }
  /** Show it to that man, then play by eye. */
  | { readonly kind: 'fake'; readonly toward: number }
  /** Keep it for a moment and play by eye. */
  | { readonly kind: 'hold' }
  /** Give the play up for now: the ball goes back to the man who restarts it. */
  | { readonly kind: 'reset' }
  /** What a read of the play has him do, where that is none of the others. */
  | { readonly kind: 'taught'; readonly read: number };

/** Seconds of the hold that a card may ask for: as long as a slide needs to show itself. */
export const holdSeconds = 0.8;

/**
 * All that a carrier of a play can do, in the order in which tables number it: shoot, pass to each mate, step in, fake to each mate, hold,
 * reset, and what his reads have him do that is none of these: a carry, a step to a place of the coach's own, a hold of another length.
 */
export function carrierActions(play: Play, carrier: number): readonly CarrierAction[] {
  const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== carrier);
  return [
    { kind: 'shoot' },
    ...mates.map((to): CarrierAction => ({ kind: 'pass', to })),
    { kind: 'stepIn' },
    ...mates.map((toward): CarrierAction => ({ kind: 'fake', toward })),
    { kind: 'hold' },
    { kind: 'reset' },
    ...play.reads.flatMap(({ carrier: by, then }, read): readonly CarrierAction[] => {
      const isHis = by === play.spots[carrier]!.id;
      return isHis && (then.kind === 'carry' || then.kind === 'stepIn' || then.kind === 'hold')
        ? [{ kind: 'taught', read }]
        : [];
    }),
  ];
}

/** The number of what a read has its carrier do, among his actions. */
export function actionOfRead(play: Play, carrier: number, read: number): number {
  const { then } = play.reads[read]!;
  const man = (id: string): number => play.spots.findIndex((spot) => spot.id === id);
  return carrierActions(play, carrier).findIndex((action) => {
    switch (action.kind) {
      case 'shoot':
        return then.kind === 'shot';
      case 'pass':
        return then.kind === 'pass' && action.to === man(then.to);
      case 'fake':
        return then.kind === 'fake' && action.toward === man(then.toward);
      case 'taught':
        return action.read === read;
      case 'reset':
        return then.kind === 'reset';
      case 'stepIn':
        return then.kind === 'runIn';
      case 'hold':
        return false;
      default:
        return exhaustive(action);
    }
  });
}

function exhaustive(action: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(action)}`);
}
