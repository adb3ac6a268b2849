import { checkSchemes } from './check-schemes.ts';
import { checkSettings } from './check-settings.ts';
import { checkTeam } from './check-team.ts';
import { fieldOf } from './field-limits.ts';
import type { JsonPath } from './json/json-node.ts';
import { checkBeats } from './play/check-beats.ts';
import { checkFlow } from './play/check-flow.ts';
import { checkWalk } from './play/check-walk.ts';
import { paceOf } from './play/pace.ts';
import { readPlay } from './play/read-play.ts';
import { checkOwnSet } from './play/read-set.ts';
import type { Report } from './report.ts';
import type { Playbook } from './schema.ts';

/** Says everything that is wrong with a document of the right shape: what it names, and what its plays cannot do. */
export function checkPlaybook(playbook: Playbook, report: Report): void {
  checkTeam(playbook, report);
  checkSettings(playbook, report);
  checkIds(playbook, report);
  checkPlays(playbook, report);
  checkSchemes(playbook, report);
}

function checkPlays(playbook: Playbook, report: Report): void {
  const field = fieldOf(playbook);
  const pace = paceOf(playbook.team.level);
  const ownSets = playbook.sets ?? [];
  for (const [i, set] of ownSets.entries()) checkOwnSet(set, ['sets', i], field, report);
  for (const [i, entry] of playbook.plays.entries()) {
    const path = ['plays', i];
    const play = readPlay(entry, path, ownSets, field, report);
    // What a play can do is only looked at when all that it names is there; else one slip would be told ten times.
    if (play === undefined) continue;
    checkBeats(play, path, report);
    checkFlow(play, path, report);
    checkWalk(play, path, pace, field, report);
  }
}

function checkIds(playbook: Playbook, report: Report): void {
  const lists = {
    sets: playbook.sets,
    plays: playbook.plays,
    schemes: playbook.schemes,
    opponents: playbook.opponents,
  };
  for (const [list, entries] of Object.entries(lists)) checkDistinct(list, entries ?? [], report);
}

function checkDistinct(
  list: string,
  entries: readonly { readonly id: string; readonly name: string }[],
  report: Report,
): void {
  const owners = new Map<string, string>();
  for (const [i, { id, name }] of entries.entries()) {
    const path: JsonPath = [list, i, 'id'];
    const owner = owners.get(id);
    if (owner !== undefined)
      report.add('id-twice', path, `The id "${id}" belongs to "${owner}" already. Give "${name}" another.`);
    else owners.set(id, name);
  }
}
