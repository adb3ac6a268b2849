import { type Playbook, sameValue } from '../../playbook/index.ts';

/**
 * Of several copies under one mark, newest first, the one that a playbook was most likely made from: with which it has most parts in common. Of equals
 * the oldest, because a base that is too young takes changes back, and one that is too old only asks more. Undefined when there is none.
 *
 * There are several when a file was changed by hand, which gives it no mark of its own.
 */
export function closestCopy(playbook: Playbook, copies: readonly Playbook[]): Playbook | undefined {
  let best: { readonly copy: Playbook; readonly common: number } | undefined;
  for (const copy of copies) {
    const common = partsInCommon(playbook, copy);
    if (best === undefined || common >= best.common) best = { copy, common };
  }
  return best?.copy;
}

/** Plays, players, sets, schemes, opponents, practice plans, quizzes and chances that both have, alike. */
function partsInCommon(one: Playbook, other: Playbook): number {
  return (
    alike(one.plays, other.plays, idOf) +
    alike(one.team.roster, other.team.roster, ({ number }) => number) +
    alike(one.sets, other.sets, idOf) +
    alike(one.schemes, other.schemes, idOf) +
    alike(one.opponents, other.opponents, idOf) +
    alike(one.practices, other.practices, idOf) +
    alike(one.quizzes, other.quizzes, idOf) +
    alike(one.chances, other.chances, idOf)
  );
}

function idOf({ id }: { readonly id: string }): string {
  return id;
}

function alike<T>(parts: readonly T[] = [], others: readonly T[] = [], keyOf: (part: T) => string | number): number {
  const known = new Map(others.map((part) => [keyOf(part), part]));
  return parts.filter((part) => known.has(keyOf(part)) && sameValue(part, known.get(keyOf(part)))).length;
}
