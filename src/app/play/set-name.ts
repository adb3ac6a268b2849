import { findSet } from '../../engine/index.ts';
import type { OwnSet } from '../../playbook/index.ts';

/** A set as a coach says it: an own one's name, or the built-in one's; the text itself when it is neither. */
export function setName(set: string, own: readonly OwnSet[] | undefined): string {
  const kept = own?.find(({ id }) => id === set);
  if (kept !== undefined) return kept.name;
  const found = findSet(set);
  return found.kind === 'found' ? found.set.name : set;
}
