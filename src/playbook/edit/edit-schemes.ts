import { type OwnDuty, type Point, sets } from '../../engine/index.ts';
import { isOutOfBounds } from '../field-limits.ts';
import { parseDuty } from '../language/parse-duty.ts';
import { creaseWord, defenderPattern } from '../language/patterns.ts';
import { printDuty } from '../language/print-duty.ts';
import { limits } from '../limits.ts';
import { ownSpots } from '../play/read-set.ts';
import type { Playbook, SchemeEntry } from '../schema.ts';
import { allSpots } from '../scheme-data.ts';
import { type PlaybookEdit, type Refused, refused } from './edit-result.ts';
import { groundOf } from './play-ground.ts';
import { changeScheme } from './scheme-list.ts';

export { freshSchemeId } from './scheme-list.ts';

type Row = SchemeEntry['rows'][number];

/** A grid as a screen shows it: a row for each place of the ball, a cell for each defender. */
export interface DutyGrid {
  readonly defenders: readonly string[];
  readonly rows: readonly {
    readonly ball: string;
    /** In the order of the defenders; undefined where the row says nothing of him, or nothing that can be read. */
    readonly duties: readonly (OwnDuty | undefined)[];
    /** What cannot be read as anybody's duty. */
    readonly unread: readonly string[];
  }[];
}

/** An own scheme as a grid. */
export function dutyGrid(playbook: Playbook, scheme: SchemeEntry): DutyGrid {
  const defenders = Object.keys(scheme.men);
  const names = { men: new Set(defenders), spots: allSpots(playbook) };
  const rows = scheme.rows.map((row) => {
    const read = row.do.map((text) => ({ text, value: parseDuty(text, names).value }));
    return {
      ball: row.ball,
      duties: defenders.map((man) => read.find(({ value }) => value?.by === man)?.value?.own),
      unread: read.flatMap(({ text, value }) => (value === undefined ? [text] : [])),
    };
  });
  return { defenders, rows };
}

/** What a defender does with the ball at a place: a cell of the grid. */
export function setDuty(playbook: Playbook, id: string, ball: string, defender: string, own: OwnDuty): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    if (!Object.hasOwn(scheme.men, defender)) return refused(`The scheme has no defender "${defender}".`);
    const refusal = dutyRefusal(playbook, own);
    if (refusal !== undefined) return refusal;
    const row = scheme.rows.find((each) => each.ball === ball);
    if (row === undefined) return refused(`The scheme has no row for the ball at ${ball}.`);
    const text = printDuty(defender, rounded(own));
    const duties = withDuty(playbook, scheme, row, defender, text);
    return duties === row.do ? scheme : withRow(scheme, row, { ...row, do: duties });
  });
}

/** The row's phrases with one man's duty; phrases of others, and those that cannot be read, stay as they are. */
function withDuty(playbook: Playbook, scheme: SchemeEntry, row: Row, defender: string, text: string): string[] {
  const names = { men: new Set(Object.keys(scheme.men)), spots: allSpots(playbook) };
  // A phrase of his that cannot be read is his all the same: it begins with his name.
  const isHis = (phrase: string) =>
    parseDuty(phrase, names).value?.by === defender || phrase.trim().split(/\s+/)[0] === defender;
  const at = row.do.findIndex(isHis);
  if (at < 0) return [...row.do, text];
  if (row.do[at] === text && row.do.filter(isHis).length === 1) return row.do;
  return row.do.flatMap((phrase, i) => (i === at ? [text] : isHis(phrase) ? [] : [phrase]));
}

/** A row for another place of the ball: the nearest defender goes to it, the others are at home. */
export function addDutyRow(playbook: Playbook, id: string, ball: string): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    if (scheme.rows.some((row) => row.ball === ball)) return refused(`The scheme has a row for the ball at ${ball}.`);
    if (scheme.rows.length >= limits.rows) return refused(`A scheme has at most ${limits.rows} rows.`);
    const place = usualPlace(playbook, ball);
    if (place === undefined) return refused(`No set has a spot "${ball}".`);
    const men = Object.entries(scheme.men);
    const distance = ([, [x, y]]: (typeof men)[number]) => Math.hypot(x - place.x, y - place.y);
    const nearest = [...men].sort((a, b) => distance(a) - distance(b))[0]?.[0];
    const duties = men.map(([man, at]) => printDuty(man, man === nearest ? { duty: 'ball' } : { duty: 'place', at }));
    return { ...scheme, rows: [...scheme.rows, { ball, do: duties }] };
  });
}

export function removeDutyRow(playbook: Playbook, id: string, ball: string): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    const rows = scheme.rows.filter((row) => row.ball !== ball);
    if (rows.length === scheme.rows.length) return refused(`The scheme has no row for the ball at ${ball}.`);
    return rows.length === 0 ? refused('A scheme has at least one row.') : { ...scheme, rows };
  });
}

/** Where a defender stands when nothing else is asked of him, yards. */
export function moveDefender(playbook: Playbook, id: string, defender: string, to: Point): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    const before = Object.hasOwn(scheme.men, defender) ? scheme.men[defender] : undefined;
    if (before === undefined) return refused(`The scheme has no defender "${defender}".`);
    const at = rounding([to.x, to.y]);
    if (!at.every(Number.isFinite) || isOutOfBounds({ x: at[0], y: at[1] }, groundOf(playbook).field))
      return refused('That is no place on the field.');
    const other = Object.entries(scheme.men).find(
      ([man, place]) => man !== defender && Math.hypot(place[0] - at[0], place[1] - at[1]) < sharedPlace,
    );
    if (other !== undefined) return refused(`${other[0]} stands there already.`);
    if (before[0] === at[0] && before[1] === at[1]) return scheme;
    return { ...scheme, men: { ...scheme.men, [defender]: at } };
  });
}

/** Bodies closer than this stand in each other, yd: as the check has it. */
const sharedPlace = 1;

/** One defender more, at a place, with that place for a duty in every row. */
export function addDefender(playbook: Playbook, id: string, defender: string, at: Point): PlaybookEdit {
  const added = changeScheme(playbook, id, (scheme) => {
    if (!defenderPattern.test(defender)) return refused('A defender has one to four small letters or digits, like tr.');
    if (Object.hasOwn(scheme.men, defender)) return refused(`The scheme has a defender "${defender}" already.`);
    if (Object.keys(scheme.men).length >= mostDefenders) return refused(`A scheme has at most ${mostDefenders} men.`);
    const text = printDuty(defender, { duty: 'place', at: rounding([at.x, at.y]) });
    // Out of everybody's way until he is moved to his place below, where the place is looked at.
    const men: SchemeEntry['men'] = { ...scheme.men, [defender]: [0, nowhere] };
    return { ...scheme, men, rows: scheme.rows.map((row) => ({ ...row, do: [...row.do, text] })) };
  });
  return added.kind === 'refused' ? added : moveDefender(added.playbook, id, defender, at);
}

const mostDefenders = 6;
const nowhere = 1000;

/** Take a defender out, and what he does in every row. */
export function removeDefender(playbook: Playbook, id: string, defender: string): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    if (!Object.hasOwn(scheme.men, defender)) return refused(`The scheme has no defender "${defender}".`);
    if (Object.keys(scheme.men).length <= fewestDefenders)
      return refused(`A scheme has at least ${fewestDefenders} men.`);
    const { [defender]: _, ...men } = scheme.men;
    const isHis = (phrase: string) => phrase.trim().split(/\s+/)[0] === defender;
    const rows = scheme.rows.map((row) => ({ ...row, do: row.do.filter((phrase) => !isHis(phrase)) }));
    return withSticks(
      { ...scheme, men, rows },
      (scheme.shortSticks ?? []).filter((man) => man !== defender),
    );
  });
}

const fewestDefenders = 3;

/** Give a defender a short stick, or a pole. */
export function setShortStick(playbook: Playbook, id: string, defender: string, short: boolean): PlaybookEdit {
  return changeScheme(playbook, id, (scheme) => {
    if (!Object.hasOwn(scheme.men, defender)) return refused(`The scheme has no defender "${defender}".`);
    const before = scheme.shortSticks ?? [];
    if (before.includes(defender) === short) return scheme;
    return withSticks(scheme, short ? [...before, defender] : before.filter((man) => man !== defender));
  });
}

function withSticks(scheme: SchemeEntry, shortSticks: string[]): SchemeEntry {
  if (shortSticks.length > 0) return { ...scheme, shortSticks };
  const { shortSticks: _, ...rest } = scheme;
  return rest;
}

/** How far from the goal the ball man meets a carrier, yards from the middle of the goal. */
export function setExtends(playbook: Playbook, id: string, yards: number): PlaybookEdit {
  if (!(yards >= leastExtends && yards <= mostExtends))
    return refused(`The ball is met between ${leastExtends} and ${mostExtends} yards from the goal.`);
  return changeScheme(playbook, id, (scheme) => (scheme.extends === yards ? scheme : { ...scheme, extends: yards }));
}

/** As the format has it. */
const leastExtends = 5;
const mostExtends = 20;

/** Where the ball is when it is at a spot: in the first set that has it. */
function usualPlace(playbook: Playbook, ball: string): Point | undefined {
  const spots = [...Object.values(sets).flatMap((set) => set.spots), ...(playbook.sets ?? []).flatMap(ownSpots)];
  return spots.find((spot) => spot.id === (ball === creaseWord ? 'C' : ball))?.at;
}

function dutyRefusal(playbook: Playbook, own: OwnDuty): Refused | undefined {
  const named = 'who' in own ? (typeof own.who === 'string' ? [own.who] : own.who) : [];
  const spots = allSpots(playbook);
  const stranger = named.find((who) => who !== creaseWord && !spots.has(who));
  if (stranger !== undefined) return refused(`No set has a spot "${stranger}".`);
  if (named.length === 2 && named[0] === named[1]) return refused('A man splits two different men.');
  const at = 'at' in own ? own.at : undefined;
  if (
    at !== undefined &&
    (!at.every(Number.isFinite) || isOutOfBounds({ x: at[0], y: at[1] }, groundOf(playbook).field))
  )
    return refused('That is no place on the field.');
  return undefined;
}

function rounded(own: OwnDuty): OwnDuty {
  return 'at' in own && own.at !== undefined ? { ...own, at: rounding(own.at) } : own;
}

function rounding([x, y]: readonly [number, number]): [number, number] {
  return [Math.round(x * 10) / 10 + 0, Math.round(y * 10) / 10 + 0];
}

function withRow(scheme: SchemeEntry, before: Row, after: Row): SchemeEntry {
  return { ...scheme, rows: scheme.rows.map((row) => (row === before ? after : row)) };
}
