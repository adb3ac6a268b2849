import { type CameraFit, fitCamera, type Point } from '../../engine/index.ts';
import type { KnownField } from './known-places.ts';

/** What was marked of the field in one frame; pixels of the film. */
export interface CameraMarks {
  /** Seconds of the film. It holds from here until the next one: a camera that does not move needs one. */
  readonly time: number;
  readonly places: readonly { readonly id: string; readonly seen: Point }[];
  readonly lines: readonly { readonly id: string; readonly seen: readonly [Point, Point] }[];
}

/** Frames of a film are told apart by no less than this, s: half of one at 30 a second. */
export const sameFrame = 0.017;

/** The marks that hold at a moment: those of the latest frame before it, else the first there are. */
export function marksAt(views: readonly CameraMarks[], time: number): CameraMarks | undefined {
  return views.filter((view) => view.time <= time + sameFrame).at(-1) ?? views[0];
}

/** Whether the marks that hold at a moment were set in this very frame. */
export function isOwn(views: readonly CameraMarks[], time: number): boolean {
  const view = marksAt(views, time);
  return view !== undefined && Math.abs(view.time - time) <= sameFrame;
}

/** Marks of this frame's own, that begin as a copy of those that held: for a camera that has moved since. */
export function withOwnMarks(views: readonly CameraMarks[], time: number): readonly CameraMarks[] {
  if (isOwn(views, time)) return views;
  const before = marksAt(views, time);
  return sorted([...views, { places: [], lines: [], ...before, time }]);
}

/** Sets a place in the marks that hold at a moment, or moves it there; the first marks of a film begin at this moment. */
export function setPlace(views: readonly CameraMarks[], time: number, id: string, seen: Point): readonly CameraMarks[] {
  return changed(views, time, (view) => ({
    ...view,
    places: [...view.places.filter((one) => one.id !== id), { id, seen }],
  }));
}

/** The same for a line, by two pixels of it. */
export function setLine(
  views: readonly CameraMarks[],
  time: number,
  id: string,
  seen: readonly [Point, Point],
): readonly CameraMarks[] {
  return changed(views, time, (view) => ({
    ...view,
    lines: [...view.lines.filter((one) => one.id !== id), { id, seen }],
  }));
}

/** Takes a place or a line out of the marks that hold at a moment. */
export function dropMark(views: readonly CameraMarks[], time: number, id: string): readonly CameraMarks[] {
  return changed(views, time, (view) => ({
    ...view,
    places: view.places.filter((one) => one.id !== id),
    lines: view.lines.filter((one) => one.id !== id),
  })).filter(({ places, lines }) => places.length + lines.length > 0);
}

/** The camera of a moment. */
export function cameraAt(views: readonly CameraMarks[], time: number, field: KnownField): CameraFit {
  const view = marksAt(views, time);
  if (view === undefined) return fitCamera([]);
  return fitCamera(
    view.places.flatMap(({ id, seen }) => {
      const known = field.places.find((one) => one.id === id);
      return known === undefined ? [] : [{ id, seen, place: known.at }];
    }),
    view.lines.flatMap(({ id, seen }) => {
      const known = field.lines.find((one) => one.id === id);
      return known === undefined ? [] : [{ id, seen, line: known.ends }];
    }),
  );
}

function changed(
  views: readonly CameraMarks[],
  time: number,
  change: (view: CameraMarks) => CameraMarks,
): readonly CameraMarks[] {
  const before = marksAt(views, time);
  if (before === undefined) return [change({ time, places: [], lines: [] })];
  return views.map((view) => (view === before ? change(view) : view));
}

function sorted(views: readonly CameraMarks[]): readonly CameraMarks[] {
  return [...views].sort((one, other) => one.time - other.time);
}
