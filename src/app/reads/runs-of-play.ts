import { type Play, type RunOrder, runOfOrder, runOrders } from '../../engine/index.ts';
import { actionWords } from '../../render/index.ts';

/** One run that a play asks of a man without the ball, as it can be chosen. */
export interface RunChoice {
  readonly order: RunOrder;
  /** The same for the same man in the same step. */
  readonly name: string;
  /** "P cuts, step "go"". */
  readonly text: string;
}

/** All runs that a play asks for, in the order of its steps; those of the last ten seconds are left out. */
export function runsOfPlay(play: Play): readonly RunChoice[] {
  return play.spots
    .flatMap((_, runner) => runOrders(play, runner))
    .sort((one, other) => one.beat - other.beat)
    .map((order) => {
      const step = play.beats[order.beat]!.id;
      return {
        order,
        name: JSON.stringify([play.spots[order.runner]!.id, step]),
        text: `${actionWords(runOfOrder(play, order)!)}, step "${step}"`,
      };
    });
}
