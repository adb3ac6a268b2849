import type { Action, Point, SpotId } from '../../engine/index.ts';
import type { PlayEntry } from '../schema.ts';
import { editAction } from './edit-actions.ts';
import { type ActionAddress, type PlayEdit, type Refused, refused } from './edit-result.ts';
import type { PlayGround } from './play-ground.ts';
import { type PlayWords, placesIn } from './play-words.ts';

/** Where a point of a way is put: yards, or the name of a spot whose home it is. */
export type Destination = Point | SpotId;

/** Move one point of a way, counted from 0; the last is its end. */
export function movePathPoint(
  play: PlayEntry,
  ground: PlayGround,
  at: ActionAddress,
  point: number,
  to: Destination,
): PlayEdit {
  return editPath(play, ground, at, (path, words) => {
    const place = placeOf(to, words);
    if (path[point] === undefined) return noPoint;
    return place.kind === 'refused' ? place : path.map((each, i) => (i === point ? place.point : each));
  });
}

/** Lead a way over one point more, before the point that is now `before`: from 0 to the number of points less 1. */
export function addPathPoint(
  play: PlayEntry,
  ground: PlayGround,
  at: ActionAddress,
  before: number,
  to: Destination,
): PlayEdit {
  return editPath(play, ground, at, (path, words) => {
    const place = placeOf(to, words);
    if (path[before] === undefined) return noPoint;
    return place.kind === 'refused' ? place : [...path.slice(0, before), place.point, ...path.slice(before)];
  });
}

/** Take a point out of a way; without its end it ends at the point before. */
export function removePathPoint(play: PlayEntry, ground: PlayGround, at: ActionAddress, point: number): PlayEdit {
  return editPath(play, ground, at, (path) => {
    if (path[point] === undefined) return noPoint;
    if (path.length === 1) return refused('A way has an end. Take the whole action out instead.');
    return path.filter((_, i) => i !== point);
  });
}

/** Run to a point of a way sooner or later. */
export function reorderPathPoint(
  play: PlayEntry,
  ground: PlayGround,
  at: ActionAddress,
  from: number,
  to: number,
): PlayEdit {
  return editPath(play, ground, at, (path) => {
    const moved = path[from];
    if (moved === undefined || path[to] === undefined) return noPoint;
    const others = path.filter((_, i) => i !== from);
    return [...others.slice(0, to), moved, ...others.slice(to)];
  });
}

const noPoint = refused('The way has no such point any more.');

function editPath(
  play: PlayEntry,
  ground: PlayGround,
  at: ActionAddress,
  change: (path: readonly Point[], words: PlayWords) => readonly Point[] | Refused,
): PlayEdit {
  return editAction(play, ground, at, (action, words) => {
    const path = placesIn(action);
    if (path.length === 0) return refused('This leads nowhere, so there is no way to change.');
    const changed = change(path, words);
    return 'kind' in changed ? changed : withPath(action, changed);
  });
}

function withPath(action: Action, path: readonly Point[]): Action | Refused {
  switch (action.kind) {
    case 'carry':
    case 'run':
      return { ...action, path };
    case 'stepIn':
      return path.length === 1
        ? { ...action, to: path[0]! }
        : refused('A step goes straight. Make it a run or a carry.');
    case 'pick':
      return path.length === 1 ? { ...action, at: path[0]! } : refused('A man goes straight to where he picks.');
    default:
      return refused('This leads nowhere, so there is no way to change.');
  }
}

function placeOf(to: Destination, words: PlayWords): { readonly kind: 'place'; readonly point: Point } | Refused {
  if (typeof to !== 'string') return { kind: 'place', point: to };
  const point = words.homes.get(to);
  return point === undefined ? refused(`The play has no spot ${to}.`) : { kind: 'place', point };
}
