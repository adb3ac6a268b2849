import { schemeById } from '../engine/index.ts';
import type { Playbook } from './schema.ts';

/** How a scheme is called where somebody reads: the playbook's own name, else that of the built-in one, else its id. */
export function schemeName(playbook: Pick<Playbook, 'schemes'>, id: string): string {
  return playbook.schemes?.find((scheme) => scheme.id === id)?.name ?? schemeById(id)?.notes.name ?? id;
}
