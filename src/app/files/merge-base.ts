import { type Playbook, sameValue } from '../../playbook/index.ts';
import type { VersionInfo, VersionReason } from '../document/storage.ts';
import { withNamesBack } from './names-back.ts';

export interface BaseVersion extends VersionInfo {
  readonly playbook: Playbook;
}

/** What was in somebody else's hands, or came from them. */
const shared: ReadonlySet<VersionReason> = new Set(['exported', 'imported', 'merged']);

/** Whether a version may be what another copy was made from. */
export function maybeBase({ reason }: Pick<VersionInfo, 'reason'>): boolean {
  return shared.has(reason);
}

/**
 * The version that another copy was most likely made from: of those that were handed out or taken in, the one of which the copy still says the
 * most. The newest of several, first in the list; undefined when it has nothing of any.
 */
export function findBase(copy: Playbook, versions: readonly BaseVersion[]): BaseVersion | undefined {
  let best: BaseVersion | undefined;
  let most = 0;
  for (const version of versions.filter(maybeBase)) {
    const same = partsInCommon(withNamesBack(copy, version.playbook), version.playbook);
    if (same <= most) continue;
    best = version;
    most = same;
  }
  return best;
}

/** Plays, players, sets, schemes and opponents that both have alike. */
function partsInCommon(one: Playbook, other: Playbook): number {
  const count = <T>(
    parts: readonly T[] = [],
    others: readonly T[] = [],
    keyOf: (part: T) => string | number,
  ): number => {
    const known = new Map(others.map((part) => [keyOf(part), part]));
    return parts.filter((part) => known.has(keyOf(part)) && sameValue(part, known.get(keyOf(part)))).length;
  };
  const idOf = ({ id }: { readonly id: string }): string => id;
  return (
    count(one.plays, other.plays, idOf) +
    count(one.team.roster, other.team.roster, ({ number }) => number) +
    count(one.sets, other.sets, idOf) +
    count(one.schemes, other.schemes, idOf) +
    count(one.opponents, other.opponents, idOf)
  );
}
