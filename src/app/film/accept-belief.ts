import type { SchemeBelief } from '../../engine/index.ts';
import { type Chance, countSchemes, type Opponent, type Playbook, type PlaybookEdit } from '../../playbook/index.ts';
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

/** Shares that differ by less are the same on every page, 0 to 1. */
const leastMove = 0.01;

/** Whether an opponent's weights are what these marks say already, but for rounding and for schemes too unlikely to be kept. */
export function isTaken(playbook: Playbook, opponent: Opponent, taken: TakenBelief): boolean {
  const edit = acceptBelief(playbook, opponent, taken);
  if (edit.kind === 'refused') return false;
  // Marks that were never taken are to be, even where they say what was believed.
  const isNew = ({ id, byMarks }: Chance): boolean => taken.chances.includes(id) && byMarks === undefined;
  if (playbook.chances?.some(isNew)) return false;
  const after = edit.playbook.opponents?.find(({ id }) => id === opponent.id);
  const kept = after?.schemes ?? {};
  const now = Object.entries(sharesOf(opponent.schemes));
  // Schemes that became too unlikely to be kept do not count as a change.
  if (now.some(([scheme, share]) => !Object.hasOwn(kept, scheme) && share >= leastShare)) return false;
  const [was, next] = [
    sharesOf(Object.fromEntries(now.filter(([scheme]) => Object.hasOwn(kept, scheme)))),
    sharesOf(kept),
  ];
  return Object.entries(next).every(([scheme, share]) => Math.abs(share - (was[scheme] ?? 0)) < leastMove);
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

function sharesOf(weights: Readonly<Record<string, number>> = {}): Readonly<Record<string, number>> {
  const all = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
  return Object.fromEntries(Object.entries(weights).map(([scheme, weight]) => [scheme, weight / all]));
}
