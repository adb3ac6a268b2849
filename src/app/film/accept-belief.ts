import type { SchemeBelief } from '../../engine/index.ts';
import { countSchemes, type Opponent, type Playbook, type PlaybookEdit } from '../../playbook/index.ts';
import { type ScoutedScheme, withoutMarked } from '../../teach/index.ts';

/** Shares below this are left out of what is kept: it would be a list of all schemes that there are. */
const leastShare = 0.02;

/** What is taken: the belief, the schemes with their weights before it, and the man-ups that it comes from, in their order. */
export interface TakenBelief {
  readonly belief: Pick<SchemeBelief, 'schemes' | 'manUps'>;
  readonly before: readonly ScoutedScheme[];
  readonly chances: readonly string[];
}

/**
 * Takes what the marks say for what an opponent plays. His weights become these shares; what was believed before the marks is kept beside them and stays what all marks
 * are weighed against, so that none counts twice, however often they are taken. Each man-up keeps what it told by itself.
 */
export function acceptBelief(
  playbook: Playbook,
  { id }: Opponent,
  { belief, before, chances }: TakenBelief,
): PlaybookEdit {
  const weights = Object.fromEntries(
    belief.schemes
      .filter(({ share }) => share >= leastShare)
      .map(({ scheme, share }) => [scheme, Math.round(1000 * share) / 10]),
  );
  const marked: Playbook = {
    ...playbook,
    chances: (playbook.chances ?? []).map((chance) => {
      const reading = belief.manUps[chances.indexOf(chance.id)];
      if (reading === undefined) return chance;
      return { ...chance, byMarks: keptShares(before, reading.alone_byScheme) };
    }),
  };
  const opponent = playbook.opponents?.find((one) => one.id === id);
  const counted = opponent && withoutMarked(playbook, opponent).counted;
  return countSchemes(marked, id, {
    weights,
    before: Object.fromEntries(before.map(({ id: scheme, weight }) => [scheme, weight])),
    ...(counted && { counted }),
  });
}

/** Whether an opponent's weights are what these marks say already. */
export function isTaken(playbook: Playbook, opponent: Opponent, taken: TakenBelief): boolean {
  const edit = acceptBelief(playbook, opponent, taken);
  if (edit.kind === 'refused') return false;
  const after = edit.playbook.opponents?.find(({ id }) => id === opponent.id);
  return JSON.stringify(sortedRecord(after?.schemes)) === JSON.stringify(sortedRecord(opponent.schemes));
}

/** Shares to the thousandth, never more than all together; the small ones are left out. */
export function keptShares(
  schemes: readonly { readonly id: string }[],
  shares: readonly number[],
): Readonly<Record<string, number>> {
  return Object.fromEntries(
    schemes.flatMap(({ id }, at) => (shares[at]! >= leastShare ? [[id, Math.floor(1000 * shares[at]!) / 1000]] : [])),
  );
}

function sortedRecord(record: Readonly<Record<string, number>> = {}): readonly (readonly [string, number])[] {
  return Object.entries(record).sort(([one], [other]) => (one < other ? -1 : 1));
}
