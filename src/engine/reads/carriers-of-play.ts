import type { Play, SpotId } from '../offense/play.ts';

/** The spots to which a play brings the ball: its starter, then those to whom a step passes, in the order of the spots. */
export function carriersOfPlay({ spots, start, beats, lastTen }: Play): readonly SpotId[] {
  const steps = [...beats, ...(lastTen?.beats ?? [])];
  const receivers = new Set(
    steps.flatMap(({ actions }) => actions.flatMap((action) => (action.kind === 'pass' ? [action.to] : []))),
  );
  const others = spots.flatMap(({ id }) => (id !== start.ball && receivers.has(id) ? [id] : []));
  return [start.ball, ...others];
}
