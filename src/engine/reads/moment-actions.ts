import type { Play } from '../offense/play.ts';
import { type CarrierAction, carrierActions } from './carrier-actions.ts';

/** What a man with the ball can choose at one look; to go on with the play is a choice as well. */
export type MomentAction = CarrierAction | { readonly kind: 'goOn' };

/**
 * All that is weighed at a look, in the order in which values number it: what he can do of his own accord, then going on with the play. Fakes are left out:
 * what they are worth is what comes after them, and that is a second question.
 */
export function momentActions(play: Play, carrier: number): readonly MomentAction[] {
  return [...carrierActions(play, carrier).filter(({ kind }) => kind !== 'fake'), { kind: 'goOn' }];
}
