import { mirrorDefenderName, mirrorOwnScheme, mirrorPlaceName, type Point } from '../../engine/index.ts';
import { defenderPattern } from '../language/patterns.ts';
import { printDuty } from '../language/print-duty.ts';
import { limits } from '../limits.ts';
import type { Opponent, Playbook, SchemeEntry } from '../schema.ts';
import { allSpots, toSchemeData } from '../scheme-data.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';
import { moveDefender } from './edit-schemes.ts';
import { changeScheme } from './scheme-list.ts';

/** Write the row of the place on the other side as the mirror image of this one: a new row after it, or in place of what was there. */
export function mirrorDutyRow(playbook: Playbook, id: string, ball: string): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    const row = scheme.rows.find((each) => each.ball === ball);
    if (row === undefined) return refused(`The scheme has no row for the ball at ${ball}.`);
    const twin = mirrorPlaceName(ball);
    if (twin === ball) return refused(`${ball} is in the middle: its mirror image is the same row.`);
    if (!allSpots(playbook).has(twin)) return refused(`No set has a spot "${twin}".`);
    const mirrored = { ball: twin, do: mirroredDuties(playbook, { ...scheme, rows: [row] }, twin) };
    const taken = scheme.rows.find((each) => each.ball === twin);
    if (taken !== undefined) {
      const isSame = taken.do.length === mirrored.do.length && taken.do.every((text, i) => text === mirrored.do[i]);
      return isSame ? scheme : { ...scheme, rows: scheme.rows.map((each) => (each === taken ? mirrored : each)) };
    }
    if (scheme.rows.length >= limits.rows) return refused(`A scheme has at most ${limits.rows} rows.`);
    const after = scheme.rows.indexOf(row) + 1;
    return { ...scheme, rows: [...scheme.rows.slice(0, after), mirrored, ...scheme.rows.slice(after)] };
  });
}

/** A man whose twin the scheme does not have keeps his own part, on the other side. */
function mirroredDuties(playbook: Playbook, oneRow: SchemeEntry, twin: string): string[] {
  const duties = mirrorOwnScheme(toSchemeData(playbook, oneRow)).rows[twin] ?? {};
  return Object.keys(oneRow.men).flatMap((man) => {
    const other = mirrorDefenderName(man);
    const own = duties[Object.hasOwn(oneRow.men, other) ? man : other];
    return own === undefined ? [] : [printDuty(man, own)];
  });
}

/** Where a defender is at home, yards: duties that told him to be there go with him. */
export function moveHome(playbook: Playbook, id: string, man: string, to: Point): PlaybookEdit {
  const before = playbook.schemes?.find((one) => one.id === id)?.men[man];
  const edit = moveDefender(playbook, id, man, to);
  if (before === undefined || edit.kind === 'refused' || edit.playbook === playbook) return edit;
  return changeScheme(edit.playbook, id, (scheme) => {
    const was = printDuty(man, { duty: 'place', at: before });
    const now = printDuty(man, { duty: 'place', at: scheme.men[man]! });
    const rows = scheme.rows.map((row) =>
      row.do.includes(was) ? { ...row, do: row.do.map((text) => (text === was ? now : text)) } : row,
    );
    return { ...scheme, rows };
  });
}

/** Call a defender otherwise: in all his duties, and in what is said of him in opponents who play the scheme. */
export function renameDefender(playbook: Playbook, id: string, man: string, name: string): PlaybookEdit {
  const next = name.trim().toLowerCase();
  if (!defenderPattern.test(next)) return refused('A defender has one to four small letters or digits, like tr.');
  const edit = changeScheme(playbook, id, (scheme) => {
    if (!Object.hasOwn(scheme.men, man)) return refused(`The scheme has no defender "${man}".`);
    if (next === man) return scheme;
    if (Object.hasOwn(scheme.men, next)) return refused(`The scheme has a defender "${next}" already.`);
    const call = (each: string) => (each === man ? next : each);
    return {
      ...scheme,
      men: Object.fromEntries(Object.entries(scheme.men).map(([each, home]) => [call(each), home])),
      ...(scheme.shortSticks && { shortSticks: scheme.shortSticks.map(call) }),
      rows: scheme.rows.map((row) => ({ ...row, do: row.do.map((text) => calledIn(text, man, next)) })),
    };
  });
  if (edit.kind === 'refused' || next === man) return edit;
  const before = edit.playbook.opponents;
  const opponents = before?.map((one) => withSaidOf(one, id, man, next));
  if (opponents === undefined || opponents.every((one, i) => one === before![i])) return edit;
  return editedPlaybook({ ...edit.playbook, opponents });
}

function calledIn(text: string, man: string, next: string): string {
  return text.trim().split(/\s+/)[0] === man ? text.replace(man, next) : text;
}

/** Another scheme of his may have a man of the old name: what is said of that one stays. */
function withSaidOf(opponent: Opponent, scheme: string, man: string, next: string): Opponent {
  const said = opponent.discipline?.[man];
  if (said === undefined || !Object.hasOwn(opponent.schemes ?? {}, scheme)) return opponent;
  return { ...opponent, discipline: { ...opponent.discipline, [next]: said } };
}

/** What a coach wants to remember of an own scheme; an empty text takes it out. */
export function noteScheme(playbook: Playbook, id: string, notes: string): PlaybookEdit {
  if (notes.length > limits.note) return refused(`A note has at most ${limits.note} letters.`);
  return changeScheme(playbook, id, (scheme) => {
    if ((scheme.notes ?? '') === notes) return scheme;
    const { notes: _, ...rest } = scheme;
    return notes === '' ? rest : { ...rest, notes };
  });
}
