import { chanceTitle } from './chance-title.ts';
import { checkChances } from './check-chances.ts';
import { checkPractices } from './check-practices.ts';
import { checkQuizzes } from './check-quizzes.ts';
import { checkSchemes } from './check-schemes.ts';
import { checkSettings } from './check-settings.ts';
import type { Shaped } from './check-shape.ts';
import { checkTeam } from './check-team.ts';
import type { DiagnosticCode } from './diagnostic-codes.ts';
import { type FieldLimits, fieldOf } from './field-limits.ts';
import { type JsonPath, pathText } from './json/json-node.ts';
import { checkBeats } from './play/check-beats.ts';
import { checkFlow } from './play/check-flow.ts';
import { checkWalk } from './play/check-walk.ts';
import { type Pace, paceOf } from './play/pace.ts';
import { readPlay } from './play/read-play.ts';
import { checkOwnSet } from './play/read-set.ts';
import { filterReport, type Report } from './report.ts';
import type { OwnSet, Playbook, PlayEntry } from './schema.ts';

/** Says everything that is wrong with a document of the right shape: what it names, and what its plays cannot do. */
export function checkPlaybook(shaped: Shaped, full: Report): void {
  const { playbook, broken } = shaped;
  const report = filterReport(full, (_, path) => {
    const hangs = broken.some((one) => isWithin(one, path) || isWithin(path, one));
    if (hangs) full.leaveOut();
    return !hangs;
  });
  checkTeam(playbook, report);
  checkSettings(playbook, report);
  checkIds(playbook, report);
  checkPlays(shaped, report);
  checkSchemes(playbook, report);
  checkPractices(playbook, report);
  checkQuizzes(playbook, report);
  checkChances(playbook, report);
}

/** Whether a path leads to the value at another, or into it. */
function isWithin(inner: JsonPath, outer: JsonPath): boolean {
  return outer.every((step, i) => inner[i] === step);
}

function checkPlays({ playbook, broken, doubtful }: Shaped, report: Report): void {
  const field = fieldOf(playbook);
  const pace = paceOf(playbook.team.level);
  const ownSets = playbook.sets ?? [];
  for (const [i, set] of ownSets.entries()) checkOwnSet(set, ['sets', i], field, report);
  for (const [i, entry] of playbook.plays.entries()) {
    const path = ['plays', i];
    // What hangs together in a play says nothing where a part of it is missing; its name is no such part.
    const parts = [...broken.filter((one) => !harmless.has(one[2] ?? '')), ...doubtful];
    checkPlay(entry, path, ownSets, field, pace, report, !parts.some((one) => isWithin(one, path)));
  }
}

/** Fields of a play on which nothing else hangs. */
const harmless: ReadonlySet<string | number> = new Set(['id', 'name', 'notes']);

/** Codes that a wrong name or place in the same phrase explains. */
const explained: ReadonlySet<DiagnosticCode> = new Set([
  'no-ball',
  'moves-meet',
  'run-too-long',
  'long-run',
  'call-too-early',
  'late-for-pass',
  'through-crease',
  'read-never-fires',
  'beat-never-starts',
]);

function checkPlay(
  entry: PlayEntry,
  path: JsonPath,
  ownSets: readonly OwnSet[],
  field: FieldLimits,
  pace: Pace,
  report: Report,
  isWhole: boolean,
): void {
  const told = new Set<string>();
  const reading = filterReport(report, (_, at) => {
    told.add(pathText(at));
    return true;
  });
  const { draft } = readPlay(entry, path, ownSets, field, reading);
  if (draft === undefined || !isWhole) {
    report.leaveOut();
    return;
  }
  // The play as it was most likely meant: one slip is told once, and does not hide what is wrong elsewhere.
  const rest = filterReport(report, (code, at) => !(explained.has(code) && told.has(pathText(at))));
  checkBeats(draft.play, path, rest);
  checkFlow(draft, path, rest);
  checkWalk(draft.play, path, pace, field, rest);
}

function checkIds(playbook: Playbook, report: Report): void {
  const lists = {
    sets: playbook.sets,
    plays: playbook.plays,
    schemes: playbook.schemes,
    opponents: playbook.opponents,
    practices: playbook.practices,
    quizzes: playbook.quizzes,
    chances: playbook.chances?.map((chance) => ({ id: chance.id, name: chanceTitle(chance) })),
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
