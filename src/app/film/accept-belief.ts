import type { SchemeBelief } from '../../engine/index.ts';
import { countSchemes, type Opponent, type Playbook, type PlaybookEdit } from '../../playbook/index.ts';
import { schemeSeen } from '../../teach/index.ts';

/** Shares below this are left out of what is kept. */
const leastShare = 0.01;

/**
 * Takes what the marks say for what an opponent plays: his weights become these shares, and each man-up that they came from keeps them. Man-ups of ours count from
 * now on as counted, so that a season does not move the weights by them once more.
 */
export function acceptBelief(
  playbook: Playbook,
  { id }: Opponent,
  belief: Pick<SchemeBelief, 'schemes'>,
  chances: readonly string[],
): PlaybookEdit {
  const shares = keptShares(belief);
  const weights = Object.fromEntries(Object.entries(shares).map(([scheme, share]) => [scheme, rounded(100 * share)]));
  const marked: Playbook = {
    ...playbook,
    chances: (playbook.chances ?? []).map((chance) => {
      if (!chances.includes(chance.id)) return chance;
      // What was believed is what is said of it from now on.
      const { scheme: _, ...rest } = chance;
      return { ...rest, belief: shares };
    }),
  };
  const before = playbook.opponents?.find((one) => one.id === id)?.counted ?? {};
  const counted: Record<string, number> = { ...before };
  for (const chance of marked.chances ?? []) {
    if (!chances.includes(chance.id) || chance.side !== 'ours') continue;
    const seen = schemeSeen(chance);
    const was = playbook.chances?.find((one) => one.id === chance.id);
    // One that was counted already under the same scheme is not counted twice.
    if (seen === undefined || (was !== undefined && schemeSeen(was) === seen)) continue;
    counted[seen] = (counted[seen] ?? 0) + 1;
  }
  return countSchemes(marked, id, { weights, counted });
}

/** The shares that are kept, to the thousandth; the small ones left out. */
export function keptShares({ schemes }: Pick<SchemeBelief, 'schemes'>): Readonly<Record<string, number>> {
  return Object.fromEntries(
    schemes
      .filter(({ share }) => share >= leastShare)
      .map(({ scheme, share }) => [scheme, Math.floor(1000 * share) / 1000]),
  );
}

function rounded(weight: number): number {
  return Math.round(10 * weight) / 10;
}
