import type { Point } from '../../geometry/point.ts';
import { type DutyKind, duty } from '../duty.ts';
import { farPipe } from '../give.ts';
import type { Scheme } from '../scheme.ts';
import type { OwnDuty, OwnSchemeData, OwnSchemeResult } from './data.ts';
import { creaseName, creasePlace, expectedPlaces, pointOf } from './places.ts';
import { createAssign, type Grid, gridMemory } from './play-grid.ts';
import type { OwnSchemeProblem } from './problem.ts';

type Spots = readonly { readonly id: string; readonly at: Point }[];

/** Scheme sizes that a chance can play. */
const fewestDefenders = 3;
const mostDefenders = 6;
const defaultExtends = 12;
/** Beyond the box nobody meets the ball, yards. */
const mostExtends = 20;
/** Half the field's length: no place of a grid is farther away, yards. */
const mostDistance = 55;

/** What is gathered while a grid is read. */
interface Draft {
  readonly spots: Spots;
  readonly problems: OwnSchemeProblem[];
  readonly points: (readonly [number, number])[];
  readonly pointByName: Map<string, number>;
}

export function compileOwnScheme(data: OwnSchemeData, spots: Spots): OwnSchemeResult {
  const draft: Draft = { spots, problems: [], points: [], pointByName: new Map() };
  const count = data.defenders.length;
  checkDefenders(data, draft);
  if (Object.keys(data.rows).length === 0) {
    report(draft, 'no-rows', 'rows', 'missing rows: the grid has no place of the ball');
  }
  const rows = readRows(data, draft);
  if (count < fewestDefenders || count > mostDefenders || rows.places.length === 0) {
    return { scheme: undefined, problems: draft.problems };
  }
  const home = data.defenders.flatMap((defender, i) => readPoint(defender.home, `defenders.${i}.home`, draft));
  const grid: Grid = {
    defenders: count,
    home: Float64Array.from(home),
    rowPlace: Int16Array.from(rows.places),
    kind: Int8Array.from(rows.kinds),
    who: Int16Array.from(rows.who),
    at: Float64Array.from(rows.at),
    points: Float64Array.from(draft.points.flat()),
  };
  return { scheme: createScheme(data, home, grid, draft), problems: draft.problems };
}

function createScheme(data: OwnSchemeData, home: readonly number[], grid: Grid, draft: Draft): Scheme {
  return {
    id: data.id,
    notes: {
      name: data.name,
      summary: 'A scheme written by the coach, a duty per defender for each place of the ball.',
      leaves: 'Whoever has no name in the row.',
    },
    defenders: grid.defenders,
    names: data.defenders.map((defender) => defender.name),
    shortSticks: data.defenders.flatMap((defender, i) => (defender.stick === 'short' ? [i] : [])),
    home,
    memorySize: gridMemory(grid),
    extends: readExtends(data, draft),
    assign: createAssign(grid),
  };
}

function readExtends(data: OwnSchemeData, draft: Draft): number {
  const value = data.extends ?? defaultExtends;
  if (value > 0 && value <= mostExtends) return value;
  report(
    draft,
    'invalid-extends',
    'extends',
    `invalid extends: ${value} (expected more than 0, at most ${mostExtends})`,
  );
  return defaultExtends;
}

function checkDefenders(data: OwnSchemeData, draft: Draft): void {
  const names = data.defenders.map((defender) => defender.name);
  if (names.length === 0) report(draft, 'no-defenders', 'defenders', 'missing defenders: nobody plays this scheme');
  else if (names.length < fewestDefenders || names.length > mostDefenders) {
    report(
      draft,
      'defender-count',
      'defenders',
      `invalid number of defenders: ${names.length} (expected ${fewestDefenders} to ${mostDefenders})`,
    );
  }
  for (const [i, name] of names.entries()) {
    if (names.indexOf(name) < i) {
      report(draft, 'repeated-defender', `defenders.${i}.name`, `repeated defender: ${name}`);
    }
  }
}

interface Rows {
  /** Index into the points, or `creasePlace`. */
  readonly places: number[];
  readonly kinds: DutyKind[];
  /** Two per duty: index into the points, `creasePlace`, or `nobody`. */
  readonly who: number[];
  readonly at: number[];
}

/** No man in a duty. */
export const nobody = -2;

function readRows(data: OwnSchemeData, draft: Draft): Rows {
  const rows: Rows = { places: [], kinds: [], who: [], at: [] };
  for (const [place, duties] of Object.entries(data.rows)) {
    const path = `rows.${place}`;
    const index = placeIndex(place, path, draft);
    if (index === nobody) continue;
    rows.places.push(index);
    for (const name of Object.keys(duties)) {
      if (!data.defenders.some((defender) => defender.name === name)) {
        report(draft, 'unknown-defender', `${path}.${name}`, `unknown defender: ${name}`);
      }
    }
    for (const [i, defender] of data.defenders.entries()) {
      const dutyPath = `${path}.${defender.name}`;
      const own = Object.hasOwn(duties, defender.name) ? duties[defender.name] : undefined;
      if (own === undefined)
        report(draft, 'missing-duty', dutyPath, `missing duty: ${defender.name}, ball at ${place}`);
      readDuty(own, dutyPath, data.defenders[i].home, rows, draft);
    }
    checkBall(data, place, index, duties, draft);
  }
  return rows;
}

/** In front of the goal line somebody must have the ball. */
function checkBall(
  data: OwnSchemeData,
  place: string,
  index: number,
  duties: Readonly<Record<string, OwnDuty>>,
  draft: Draft,
): void {
  const isBehind = index !== creasePlace && draft.points[index][1] < 0;
  if (isBehind || data.defenders.some(({ name }) => duties[name]?.duty === 'ball')) return;
  report(draft, 'nobody-on-ball', `rows.${place}`, `nobody has the ball at ${place}: the nearest spare man will go`);
}

function readDuty(
  own: OwnDuty | undefined,
  path: string,
  home: readonly [number, number],
  rows: Rows,
  draft: Draft,
): void {
  let kind: DutyKind = duty.place;
  let a = nobody;
  let b = nobody;
  let at = home;
  switch (own?.duty) {
    case undefined:
      break;
    case 'ball':
      kind = duty.ball;
      break;
    case 'man':
    case 'lock':
    case 'front':
      kind = duty[own.duty];
      a = placeIndex(own.who, `${path}.who`, draft);
      break;
    case 'split':
      kind = duty.split;
      a = placeIndex(own.who[0], `${path}.who.0`, draft);
      b = placeIndex(own.who[1], `${path}.who.1`, draft);
      break;
    case 'lane':
      kind = duty.lane;
      a = placeIndex(own.who, `${path}.who`, draft);
      at = own.at ?? home;
      break;
    case 'pipe':
      kind = duty.pipe;
      a = placeIndex(own.who, `${path}.who`, draft);
      at = own.at ?? pipeBeside(a, draft);
      break;
    case 'place':
      at = own.at;
      break;
    default:
      // Only a file that was not checked against the schema comes here.
      report(draft, 'unknown-duty', path, `unknown duty: ${String((own as { duty: unknown }).duty)}`);
  }
  if (kind !== duty.ball && kind !== duty.place && a === nobody) kind = duty.place;
  rows.kinds.push(kind);
  rows.who.push(a, b);
  rows.at.push(...readPoint(at, path, draft));
}

/** The pipe on the side of the guarded place; the right one for a place on the axis. */
function pipeBeside(place: number, draft: Draft): readonly [number, number] {
  const x = place < 0 ? 0 : draft.points[place][0];
  return [x < 0 ? -farPipe.x : farPipe.x, farPipe.y];
}

function placeIndex(name: string, path: string, draft: Draft): number {
  if (name === creaseName) return creasePlace;
  const known = draft.pointByName.get(name);
  if (known !== undefined) return known;
  const point = pointOf(name, draft.spots);
  if (point === undefined) {
    report(draft, 'unknown-place', path, `unknown place: ${name} (expected ${expectedPlaces(draft.spots)})`);
    return nobody;
  }
  draft.points.push(point);
  draft.pointByName.set(name, draft.points.length - 1);
  return draft.points.length - 1;
}

function readPoint(point: readonly [number, number], path: string, draft: Draft): readonly [number, number] {
  const [x, y] = point;
  if (Math.abs(x) <= mostDistance && Math.abs(y) <= mostDistance) return point;
  report(draft, 'invalid-point', path, `invalid point: (${x}, ${y})`);
  return [0, 5];
}

function report(draft: Draft, code: OwnSchemeProblem['code'], path: string, message: string): void {
  draft.problems.push({ code, path, message });
}
