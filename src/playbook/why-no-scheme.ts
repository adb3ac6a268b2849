import { createOwnScheme, type Play } from '../engine/index.ts';
import type { Playbook } from './schema.ts';
import { toSchemeData } from './scheme-data.ts';

/** Why `toEngineScheme` gives no scheme of this id against this play: a plain sentence that names the scheme. */
export function whyNoScheme(playbook: Playbook, id: string, play: Pick<Play, 'name' | 'spots'>): string {
  const own = playbook.schemes?.find((scheme) => scheme.id === id);
  if (own === undefined) return `There is no scheme "${id}", neither built in nor in the playbook.`;
  const refused = `"${own.name}" cannot be played against ${play.name}`;
  const { problems } = createOwnScheme(toSchemeData(playbook, own), play.spots);
  const men = Object.keys(own.men).length;
  if (problems.some(({ code }) => code === 'no-defenders' || code === 'defender-count'))
    return `${refused}: it has ${men} ${men === 1 ? 'defender' : 'defenders'}, and a unit has 3 to 6.`;
  if (own.rows.length === 0) return `${refused}: it has no row. Say what each man does while the ball is at one spot.`;
  const rows = own.rows.map(({ ball }) => ball).join(', ');
  return `${refused}: its rows are for the ball at ${rows}, and the play has no such spot. Add a row for one of ${play.spots.map((spot) => spot.id).join(', ')}.`;
}
