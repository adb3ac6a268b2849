import { createOwnScheme, schemeById } from '../engine/index.ts';
import type { JsonPath } from './json/json-node.ts';
import { knownSchemes } from './known-schemes.ts';
import { nearestName } from './language/nearest-name.ts';
import { parseDuty, type SchemeNames } from './language/parse-duty.ts';
import { creaseWord } from './language/patterns.ts';
import { ownSpots } from './play/read-set.ts';
import type { Report } from './report.ts';
import type { Opponent, Playbook, SchemeEntry } from './schema.ts';
import { allSpots, toSchemeData } from './scheme-data.ts';

/** How many field defenders a scheme can have: three down, two down, one down, nobody down. */
const defenderCounts = [3, 4, 5, 6];
/** Bodies closer than this stand in each other, yd. */
const sharedPlace = 1;

/** Says what is wrong with own schemes, and which schemes opponents are believed to play that nobody knows. */
export function checkSchemes(playbook: Playbook, report: Report): void {
  for (const [i, scheme] of (playbook.schemes ?? []).entries()) checkScheme(scheme, playbook, ['schemes', i], report);
  checkOpponents(playbook, report);
}

function checkScheme(scheme: SchemeEntry, playbook: Playbook, path: JsonPath, report: Report): void {
  checkMen(scheme, path, report);
  if (knownSchemes.includes(scheme.id)) {
    report.add(
      'id-twice',
      [...path, 'id'],
      `"${scheme.id}" is the name of a scheme that is built in. Give your own another id.`,
    );
  }
  const names: SchemeNames = { men: new Set(Object.keys(scheme.men)), spots: allSpots(playbook) };
  const rows = new Set<string>();
  const sound: SchemeEntry['rows'] = [];
  for (const [i, row] of scheme.rows.entries()) {
    const ball = [...path, 'rows', i, 'ball'];
    if (row.ball !== creaseWord && !names.spots.has(row.ball)) {
      report.add(
        'spot-unknown',
        ball,
        `No set has a spot "${row.ball}". The spots are ${[...names.spots].join(', ')}, and "${creaseWord}" for whoever is there.`,
      );
    }
    if (rows.has(row.ball)) {
      report.add('row-twice', ball, `"${scheme.name}" has two rows for the ball at ${row.ball}. Keep one.`);
    }
    rows.add(row.ball);
    if (checkRow(row.do, [...path, 'rows', i], names, report)) sound.push(row);
  }
  checkOnBall({ ...scheme, rows: sound }, scheme.rows, playbook, path, report);
}

/** In front of the goal somebody must go to the ball; the engine, which has to find somebody, knows where nobody does. */
function checkOnBall(
  scheme: SchemeEntry,
  rows: SchemeEntry['rows'],
  playbook: Playbook,
  path: JsonPath,
  report: Report,
): void {
  const ownPlaces = (playbook.sets ?? []).flatMap(ownSpots);
  const { problems } = createOwnScheme(toSchemeData(playbook, scheme), ownPlaces);
  for (const [i, row] of rows.entries()) {
    if (!scheme.rows.includes(row)) continue;
    if (!problems.some((problem) => problem.code === 'nobody-on-ball' && problem.path === `rows.${row.ball}`)) continue;
    report.add(
      'nobody-on-ball',
      [...path, 'rows', i, 'do'],
      `With the ball at ${row.ball} nobody in "${scheme.name}" has the duty "ball". The nearest man will go; say who it is.`,
    );
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

/** Whether every man has one duty that can be read. */
function checkRow(duties: readonly string[], path: JsonPath, names: SchemeNames, report: Report): boolean {
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
  if (sound && idle.length > 0) {
    report.add(
      'duty-missing',
      [...path, 'do'],
      `This row says nothing about ${idle.join(' and ')}. Give each man one duty.`,
    );
  }
  return sound && idle.length === 0;
}

function checkOpponents(playbook: Playbook, report: Report): void {
  const known = new Set([...knownSchemes, ...(playbook.schemes ?? []).map((scheme) => scheme.id)]);
  for (const [i, opponent] of (playbook.opponents ?? []).entries()) {
    if (known.has(opponent.id)) {
      report.add(
        'id-twice',
        ['opponents', i, 'id'],
        `"${opponent.id}" is the name of a scheme, so that nobody could tell which is meant. Give ${opponent.name} another id.`,
      );
    }
    checkDiscipline(opponent, playbook, ['opponents', i], report);
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

/** How well a man plays can be said of men whom one of the opponent's schemes has. */
function checkDiscipline(opponent: Opponent, playbook: Playbook, path: JsonPath, report: Report): void {
  const ids = Object.keys(opponent.schemes ?? {});
  const men = ids.map((id) => menOf(playbook, id));
  // A scheme that is not known was told; its men may be any.
  if (men.includes(undefined)) return;
  const known = new Set(men.flatMap((each) => each ?? []));
  for (const man of Object.keys(opponent.discipline ?? {})) {
    if (man === everybody || known.has(man)) continue;
    const list = known.size === 0 ? 'it names no scheme yet' : `their men are ${[...known].join(', ')}`;
    report.add(
      'defender-unknown',
      [...path, 'discipline', man],
      `None of the schemes of ${opponent.name} has a defender "${man}": ${list}, and "${everybody}" for everybody.`,
    );
  }
}

const everybody = 'all';

function menOf(playbook: Playbook, id: string): readonly string[] | undefined {
  const own = playbook.schemes?.find((scheme) => scheme.id === id);
  return own === undefined ? schemeById(id)?.names : Object.keys(own.men);
}
