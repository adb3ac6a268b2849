import type { Action, Play, SpotId } from '../../engine/index.ts';
import { type PlayStep, playSteps } from '../play-steps.ts';

/** One step of a play as a man sees it who has something to do in it. */
export interface SpotMove {
  /** Which of the play's steps it is, from 1. */
  readonly number: number;
  readonly step: PlayStep;
  /** What he does himself, in the order of the play. */
  readonly own: readonly Action[];
  /** Who throws to him in this step. */
  readonly from: readonly SpotId[];
}

/** The steps in which a man acts or is thrown to, in their order. */
export function spotMoves(play: Play, spot: SpotId): readonly SpotMove[] {
  return playSteps(play)
    .map((step, at): SpotMove => {
      const { actions } = step.beat;
      return {
        number: at + 1,
        step,
        own: actions.filter(({ by }) => by === spot),
        from: actions.flatMap((action) => (action.kind === 'pass' && action.to === spot ? [action.by] : [])),
      };
    })
    .filter(({ own, from }) => own.length > 0 || from.length > 0);
}
