import { findSet, insideHand, type Point, type Spot, sets } from '../../engine/index.ts';
import { type FieldLimits, isInCrease, isOutOfBounds } from '../field-limits.ts';
import type { JsonPath } from '../json/json-node.ts';
import { nearestName } from '../language/nearest-name.ts';
import { spotIdPattern } from '../language/patterns.ts';
import { type SetMixUp, unknownSpot } from '../language/play-names.ts';
import type { Report } from '../report.ts';
import type { OwnSet, PlayEntry } from '../schema.ts';

/** The six spots of a play before its own moves, and the set that it may have been mixed up with. */
export interface SetSpots {
  readonly spots: readonly Spot[];
  readonly mixUp?: SetMixUp;
}

/** Where two men would be one: bodies closer than this stand in each other, yd. */
export const sharedPlace = 1;

/** The spots of the set that a play names, own sets first; reports a name that means none, several or, by the spots that the play names, another. */
export function readSet(
  play: PlayEntry,
  path: JsonPath,
  ownSets: readonly OwnSet[],
  report: Report,
): SetSpots | undefined {
  const named = namedSet(play, path, ownSets, report);
  const other = named === undefined ? undefined : likelierSet(play, named, ownSets);
  if (named === undefined || other === undefined) return named;
  const lacking = lackingIn(play, named);
  const why = named.mixUp?.id === other.id ? ` ${named.mixUp.words}` : '';
  report.add(
    'spot-unknown',
    [...path, 'set'],
    `The play names ${lacking.join(', ')}, which the set "${play.set}" does not have: its spots are ${idsOf(named.spots)}. The set "${other.id}" has them all. Write "set": "${other.id}", or other spots.${why}`,
  );
  // The rest is told as if that was mended.
  return { spots: other.spots };
}

/** With so many names that the set lacks the set itself is the slip. */
const mixedUp = 2;

/** Another set that has all that a play names, when the named one lacks several of them. */
function likelierSet(
  play: PlayEntry,
  named: SetSpots,
  ownSets: readonly OwnSet[],
): { readonly id: string; readonly spots: readonly Spot[] } | undefined {
  if (lackingIn(play, named).length < mixedUp) return undefined;
  const all = [...Object.values(sets), ...ownSets.map((set) => ({ id: set.id, spots: ownSpots(set) }))];
  // The one that goes by the same name with other coaches comes first.
  const sorted = [...all].sort((a, b) => Number(b.id === named.mixUp?.id) - Number(a.id === named.mixUp?.id));
  return sorted.find((set) => lackingIn(play, set).length === 0);
}

function lackingIn(play: PlayEntry, { spots }: Pick<SetSpots, 'spots'>): readonly string[] {
  const known = new Set(spots.map((spot) => spot.id));
  return [...namesIn(play)].filter((name) => !known.has(name));
}

/** Every word of a play that is written as spots are. */
function namesIn(play: PlayEntry): ReadonlySet<string> {
  const scripts = [play, ...(play.lastTen === undefined ? [] : [play.lastTen])];
  const phrases = scripts.flatMap(({ beats = [], reads = [] }) => [
    ...beats.flatMap((beat) => [beat.on, ...beat.do]),
    ...reads.flatMap((read) => [read.carrier, ...read.if, read.then]),
  ]);
  const texts = [...Object.keys(play.spots ?? {}), play.start.ball, play.reset.ball, ...phrases];
  return new Set(texts.flatMap((text) => text.split(/[\s,+]+/)).filter((word) => spotIdPattern.test(word)));
}

function namedSet(play: PlayEntry, path: JsonPath, ownSets: readonly OwnSet[], report: Report): SetSpots | undefined {
  const own = ownSets.find((set) => set.id === play.set);
  if (own !== undefined) return { spots: ownSpots(own) };
  const found = findSet(play.set);
  switch (found.kind) {
    case 'found': {
      const other = found.otherwise;
      if (other === undefined) return { spots: found.set.spots };
      const words = `Sets are counted from the top down here. Some coaches mean another set by "${play.set}": it is called "${other.id}" here and has ${idsOf(other.spots)}.`;
      const own = new Set(found.set.spots.map((spot) => spot.id));
      const others = other.spots.map((spot) => spot.id).filter((id) => !own.has(id));
      return { spots: found.set.spots, mixUp: { id: other.id, spots: new Set(others), words } };
    }
    case 'ambiguous':
      report.add(
        'set-ambiguous',
        [...path, 'set'],
        `"${play.set}" can mean ${found.sets.map((set) => `"${set.id}" (${set.summary.slice(0, -1).toLowerCase()})`).join(' or ')}. Write one of the two.`,
      );
      return undefined;
    case 'unknown': {
      const known = [...Object.keys(sets), ...ownSets.map((set) => set.id)];
      const near = nearestName(play.set, known);
      report.add(
        'set-unknown',
        [...path, 'set'],
        `No set is called "${play.set}".${near === undefined ? '' : ` Did you mean "${near}"?`} The sets are ${known.join(', ')}.`,
      );
      return undefined;
    }
  }
}

/** An own set's spots as the engine has them: the hand follows the side when none is given. */
export function ownSpots(set: OwnSet): readonly Spot[] {
  return Object.entries(set.spots).map(([id, spot]) => ({
    id,
    at: pointOf(spot.at),
    hand: spot.hand ?? insideHand(spot.at[0]),
    needs: {
      feed: spot.needs?.feed ?? 0,
      shoot: spot.needs?.shoot ?? 0,
      inside: spot.needs?.inside ?? 0,
      handle: spot.needs?.handle ?? 0,
    },
    safety: spot.safety ?? 'none',
  }));
}

/** Says what is wrong with an own set by itself. */
export function checkOwnSet(set: OwnSet, path: JsonPath, field: FieldLimits, report: Report): void {
  const count = Object.keys(set.spots).length;
  if (count !== 6)
    report.add('spot-count', [...path, 'spots'], `The set "${set.name}" has ${count} spots. A set has exactly six.`);
  if (findSet(set.id).kind !== 'unknown')
    report.add(
      'id-twice',
      [...path, 'id'],
      `"${set.id}" is the name of a set that is built in. Give your own another id.`,
    );
  for (const [id, spot] of Object.entries(set.spots))
    checkHome(id, pointOf(spot.at), [...path, 'spots', id, 'at'], field, report);
  checkOverlap(ownSpots(set), (id) => [...path, 'spots', id], report);
}

/** The spots with a play's own moves applied; reports moves of spots that are not there and places that are not allowed. */
export function moveSpots(
  play: PlayEntry,
  path: JsonPath,
  set: SetSpots,
  field: FieldLimits,
  report: Report,
): readonly Spot[] {
  const moves = play.spots ?? {};
  const names = { ...set, spots: new Map(set.spots.map((spot) => [spot.id, spot.at])) };
  for (const [id, at] of Object.entries(moves)) {
    const here = [...path, 'spots', id];
    if (!set.spots.some((spot) => spot.id === id)) {
      report.add('spot-unknown', here, unknownSpot(id, names));
    }
    checkHome(id, pointOf(at), here, field, report);
  }
  const moved = set.spots.map((spot) =>
    Object.hasOwn(moves, spot.id) ? { ...spot, at: pointOf(moves[spot.id]!) } : spot,
  );
  // A set that is used as it is was checked where it was written.
  if (Object.keys(moves).length > 0)
    checkOverlap(moved, (id) => (Object.hasOwn(moves, id) ? [...path, 'spots', id] : [...path, 'spots']), report);
  return moved;
}

export function pointOf([x, y]: readonly [number, number]): Point {
  return { x: x === 0 ? 0 : x, y: y === 0 ? 0 : y };
}

function checkHome(id: string, at: Point, path: JsonPath, field: FieldLimits, report: Report): void {
  if (isInCrease(at, field)) {
    report.add(
      'place-in-crease',
      path,
      `${id} would stand at ${at.x},${at.y}, inside the crease (${field.creaseRadius} yd round the middle of the goal line). The offense may not be there: move him out.`,
    );
  }
  if (isOutOfBounds(at, field))
    report.add(
      'place-out-of-bounds',
      path,
      `${id} would stand at ${at.x},${at.y}, which is ${boundsWords(at, field)}.`,
    );
}

/** Which line a place is beyond, and where the lines are. */
export function boundsWords(at: Point, field: FieldLimits): string {
  if (at.y < field.endLine) return `behind the end line (y ${field.endLine})`;
  if (at.y > field.midline) return `over the midline (y ${field.midline})`;
  return `beyond the sideline (x ${at.x < 0 ? -field.sideline : field.sideline})`;
}

function checkOverlap(spots: readonly Spot[], pathOf: (id: string) => JsonPath, report: Report): void {
  for (const [i, one] of spots.entries()) {
    for (const other of spots.slice(i + 1)) {
      const distance = Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y);
      if (distance >= sharedPlace) continue;
      report.add(
        'spots-overlap',
        pathOf(other.id),
        `${one.id} and ${other.id} would stand ${distance === 0 ? 'in the same place' : 'less than a yard apart'}, at ${other.at.x},${other.at.y}. Move one of them.`,
      );
    }
  }
}

function idsOf(spots: readonly Spot[]): string {
  return spots.map((spot) => spot.id).join(', ');
}
