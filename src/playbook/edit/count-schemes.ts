import type { Opponent, Playbook } from '../schema.ts';
import { menOfScheme } from './edit-opponents.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';

/** Shares of an opponent's schemes as weights, and the man-ups that they count from now on. */
export interface CountedSchemes {
  /** Above 0; of schemes that the playbook knows. */
  readonly weights: Readonly<Record<string, number>>;
  /** As it was when absent. */
  readonly counted?: Readonly<Record<string, number>>;
  /** What was believed before marks; as it was when absent. */
  readonly before?: Readonly<Record<string, number>>;
}

/** Puts weights that man-ups have moved in place of an opponent's, with what they count, so that no man-up moves them twice. */
export function countSchemes(playbook: Playbook, id: string, { weights, ...known }: CountedSchemes): PlaybookEdit {
  const opponent = playbook.opponents?.find((each) => each.id === id);
  if (opponent === undefined) return refused(`The playbook has no opponent "${id}" any more.`);
  const unknown = Object.keys(weights).find((scheme) => menOfScheme(playbook, scheme) === undefined);
  if (unknown !== undefined) return refused(`No scheme is called "${unknown}".`);
  const changed: Opponent = { ...opponent, ...known, schemes: { ...weights } };
  const opponents = playbook.opponents!.map((each) => (each === opponent ? changed : each));
  return editedPlaybook({ ...playbook, opponents });
}
