import type { Playbook } from '../../playbook/index.ts';

/** The id of the play that is shown: the first wanted that there is, or else the playbook's first that is not put away. Undefined when there is none. */
export function shownPlay({ plays }: Playbook, wanted: readonly (string | undefined)[]): string | undefined {
  const found = wanted.find((id) => plays.some((play) => play.id === id));
  return found ?? plays.find((play) => play.archived !== true)?.id;
}
