import type { Action, Play } from '../offense/play.ts';

/** One run that a play asks of one man: the number of its beat, and his offense index. Of several in one beat the first. */
export interface RunOrder {
  readonly beat: number;
  readonly runner: number;
}

/** The runs that a play asks of one man, in the order of its beats; those of the last ten seconds are left out. */
export function runOrders(play: Play, runner: number): readonly RunOrder[] {
  return play.beats.flatMap((_, beat) => (runOfOrder(play, { beat, runner }) === undefined ? [] : [{ beat, runner }]));
}

/** What the play says of a run; `undefined` when it asks for none there. */
export function runOfOrder(
  play: Play,
  { beat, runner }: RunOrder,
): Extract<Action, { readonly kind: 'run' }> | undefined {
  const by = play.spots[runner]?.id;
  return play.beats[beat]?.actions.find((action) => action.kind === 'run' && action.by === by) as
    | Extract<Action, { readonly kind: 'run' }>
    | undefined;
}
