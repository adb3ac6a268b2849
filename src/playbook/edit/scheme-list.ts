import { knownSchemes } from '../known-schemes.ts';
import { limits } from '../limits.ts';
import type { Playbook, SchemeEntry } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, type Refused, refused } from './edit-result.ts';
import { freshId } from './fresh-id.ts';

/** Add an own scheme that begins with this grid. `id` of the edit is the scheme's. */
export function addScheme(playbook: Playbook, name: string, start: Omit<SchemeEntry, 'id' | 'name'>): PlaybookEdit {
  const schemes = playbook.schemes ?? [];
  const refusal = schemeNameRefusal(name);
  if (refusal !== undefined) return refusal;
  if (schemes.length >= limits.schemes) return refused(`A playbook holds at most ${limits.schemes} schemes.`);
  const entry: SchemeEntry = { id: freshSchemeId(playbook, name), name: name.trim(), ...start };
  return editedPlaybook({ ...playbook, schemes: [...schemes, entry] }, [], entry.id);
}

export function renameScheme(playbook: Playbook, id: string, name: string): PlaybookEdit {
  const refusal = schemeNameRefusal(name);
  if (refusal !== undefined) return refusal;
  return changeScheme(playbook, id, (scheme) =>
    scheme.name === name.trim() ? scheme : { ...scheme, name: name.trim() },
  );
}

/** Take an own scheme out; opponents who were believed to play it are no longer. */
export function removeScheme(playbook: Playbook, id: string): PlaybookEdit {
  const schemes = (playbook.schemes ?? []).filter((scheme) => scheme.id !== id);
  if (schemes.length === (playbook.schemes ?? []).length) return noScheme(id);
  const also: string[] = [];
  const opponents = playbook.opponents?.map((opponent) => {
    if (opponent.schemes === undefined || !Object.hasOwn(opponent.schemes, id)) return opponent;
    also.push(`${opponent.name} is not believed to play it any more.`);
    const { [id]: _, ...others } = opponent.schemes;
    if (Object.keys(others).length > 0) return { ...opponent, schemes: others };
    const { schemes: __, ...rest } = opponent;
    return rest;
  });
  const same = also.length === 0 || opponents === undefined;
  return editedPlaybook({ ...playbook, schemes, ...(!same && { opponents }) }, also);
}

/** Change one own scheme; the others stay the same objects. */
export function changeScheme(
  playbook: Playbook,
  id: string,
  change: (scheme: SchemeEntry) => SchemeEntry | Refused,
): PlaybookEdit {
  const scheme = playbook.schemes?.find((each) => each.id === id);
  if (scheme === undefined) return noScheme(id);
  const changed = change(scheme);
  if ('kind' in changed) return changed;
  if (changed === scheme) return editedPlaybook(playbook);
  const schemes = playbook.schemes!.map((each) => (each === scheme ? changed : each));
  return editedPlaybook({ ...playbook, schemes });
}

/** An id for a new scheme. What is named after "against" is a scheme or an opponent, so none goes by the other's. */
export function freshSchemeId(playbook: Playbook, name: string): string {
  const taken = [...(playbook.schemes ?? []), ...(playbook.opponents ?? [])].map((each) => each.id);
  return freshId(name, [...taken, ...knownSchemes], 'scheme');
}

function schemeNameRefusal(name: string): Refused | undefined {
  const { length } = name.trim();
  return length > 0 && length <= limits.name
    ? undefined
    : refused(`A scheme needs a name of at most ${limits.name} letters.`);
}

function noScheme(id: string): Refused {
  return refused(`The playbook has no scheme "${id}" of its own any more.`);
}
