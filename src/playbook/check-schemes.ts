import { sets } from '../engine/index.ts';
import type { JsonPath } from './json/json-node.ts';
import { knownSchemes } from './known-schemes.ts';
import { nearestName } from './language/nearest-name.ts';
import { parseDuty, type SchemeNames } from './language/parse-duty.ts';
import type { Report } from './report.ts';
import type { Playbook, SchemeEntry } from './schema.ts';

/** How many field defenders a scheme can have: three down, two down, one down, nobody down. */
const defenderCounts = [3, 4, 5, 6];
/** Bodies closer than this stand in each other, yd. */
const sharedPlace = 1;

/** Says what is wrong with own schemes, and which schemes opponents are believed to play that nobody knows. */
export function checkSchemes(playbook: Playbook, report: Report): void {
  const spots = spotNames(playbook);
  for (const [i, scheme] of (playbook.schemes ?? []).entries()) checkScheme(scheme, ['schemes', i], spots, report);
  checkOpponents(playbook, report);
}

function checkScheme(scheme: SchemeEntry, path: JsonPath, spots: ReadonlySet<string>, report: Report): void {
  const men = Object.keys(scheme.men);
  checkMen(scheme, path, report);
  const names: SchemeNames = { men: new Set(men), spots };
  const rows = new Set<string>();
  for (const [i, row] of scheme.rows.entries()) {
    const here = [...path, 'rows', i];
    if (!spots.has(row.ball))
      report.add(
        'spot-unknown',
        [...here, 'ball'],
        `No set has a spot "${row.ball}". The spots are ${[...spots].join(', ')}.`,
      );
    if (rows.has(row.ball))
      report.add(
        'row-twice',
        [...here, 'ball'],
        `"${scheme.name}" has two rows for the ball at ${row.ball}. Keep one.`,
      );
    rows.add(row.ball);
    checkRow(row.do, here, names, report);
  }
}

function checkMen(scheme: SchemeEntry, path: JsonPath, report: Report): void {
  const men = Object.entries(scheme.men);
  if (!defenderCounts.includes(men.length)) {
    report.add(
      'scheme-men',
      [...path, 'men'],
      `"${scheme.name}" has ${men.length} defenders. A man-down unit has 5 (4 or 3 when more are in the box, 6 when nobody is).`,
    );
  }
  for (const [i, [id, at]] of men.entries()) {
    const other = men.slice(0, i).find(([, place]) => Math.hypot(place[0] - at[0], place[1] - at[1]) < sharedPlace);
    if (other !== undefined)
      report.add(
        'scheme-men',
        [...path, 'men', id],
        `${other[0]} and ${id} would stand in the same place. Move one of them.`,
      );
  }
  for (const [i, id] of (scheme.shortSticks ?? []).entries()) {
    if (!Object.hasOwn(scheme.men, id))
      report.add(
        'defender-unknown',
        [...path, 'shortSticks', i],
        `The scheme has no defender "${id}". Its men are ${men.map(([man]) => man).join(', ')}.`,
      );
  }
}

function checkRow(duties: readonly string[], path: JsonPath, names: SchemeNames, report: Report): void {
  const given = new Set<string>();
  let sound = true;
  for (const [i, text] of duties.entries()) {
    const { value, faults } = parseDuty(text, names);
    for (const fault of faults) report.add(fault.code, [...path, 'do', i], fault.message, fault.offset);
    if (value === undefined) {
      sound = false;
      continue;
    }
    if (given.has(value.by)) {
      sound = false;
      report.add('duty-twice', [...path, 'do', i], `${value.by} has two duties in this row. Keep one.`);
    }
    given.add(value.by);
  }
  const idle = [...names.men].filter((man) => !given.has(man));
  if (sound && idle.length > 0)
    report.add(
      'duty-missing',
      [...path, 'do'],
      `This row says nothing about ${idle.join(' and ')}. Give each man one duty.`,
    );
}

function checkOpponents(playbook: Playbook, report: Report): void {
  const known = new Set([...knownSchemes, ...(playbook.schemes ?? []).map((scheme) => scheme.id)]);
  for (const [i, opponent] of (playbook.opponents ?? []).entries()) {
    for (const id of Object.keys(opponent.schemes ?? {})) {
      if (known.has(id)) continue;
      const near = nearestName(id, known);
      report.add(
        'scheme-unknown',
        ['opponents', i, 'schemes', id],
        `No scheme is called "${id}".${near === undefined ? '' : ` Did you mean "${near}"?`} The schemes are ${[...known].join(', ')}.`,
      );
    }
  }
}

function spotNames(playbook: Playbook): ReadonlySet<string> {
  const builtIn = Object.values(sets).flatMap((set) => set.spots.map((spot) => spot.id));
  return new Set([...builtIn, ...(playbook.sets ?? []).flatMap((set) => Object.keys(set.spots))]);
}
