import { distanceToSegment } from '../geometry/nearest-on-segment.ts';
import type { Point } from '../geometry/point.ts';
import { fitHomography, type Homography, inverseOf, mapPoint, stretchAt } from './homography.ts';

/** A known place of the field, and the pixel of a frame that shows it. */
export interface PlaceMark {
  readonly id: string;
  /** Pixels. */
  readonly seen: Point;
  /** Yards. */
  readonly place: Point;
}

/** A known straight line of the field, and two pixels on it: any two, not its ends. */
export interface LineMark {
  readonly id: string;
  readonly seen: readonly [Point, Point];
  readonly line: readonly [Point, Point];
}

/** Where a camera looks, by marks of one frame. */
export interface FittedCamera {
  readonly kind: 'fitted';
  readonly places: readonly PlaceMark[];
  readonly lines: readonly LineMark[];
  readonly toField: Homography;
  readonly toFilm: Homography;
  /** How far each mark lies from its place or its line by the fit, yards; points first. */
  readonly errors: readonly { readonly id: string; readonly yards: number }[];
  /** The root of their mean square, yards. 0 where there are no more marks than are needed: nothing checks them then. */
  readonly error: number;
  /** Whether there are marks to spare, so that a wrong one shows. */
  readonly isChecked: boolean;
  /** What was marked, on the field: yards. */
  readonly marked: readonly Point[];
}

export type CameraFit = FittedCamera | { readonly kind: 'none'; readonly reason: string };

/** The least number of marks. */
export const leastMarks = 4;

/** The camera of a frame by four or more marks; a plain sentence where they do not tell it. */
export function fitCamera(places: readonly PlaceMark[], lines: readonly LineMark[] = []): CameraFit {
  const fit = fitHomography(
    places.map(({ seen, place }) => ({ from: seen, to: place })),
    lines.map(({ seen, line }) => ({ from: seen, to: line })),
  );
  if (fit.kind === 'none') return fit;
  const toField = fit.homography;
  const toFilm = inverseOf(toField);
  const seen = [...places.map((mark) => mark.seen), ...lines.flatMap((mark) => mark.seen)];
  const marked = seen.map((at) => mapPoint(toField, at));
  if (toFilm === undefined || marked.some((at) => at === undefined) || !isOneSide(toField, seen))
    return { kind: 'none', reason: 'the marks contradict each other: one of them is on a wrong place' };
  const errors = [
    ...places.map(({ id, place, seen: at }) => ({ id, yards: apart(mapPoint(toField, at)!, place) })),
    ...lines.map(({ id, line, seen: [one, other] }) => ({
      id,
      yards: Math.max(fromLine(mapPoint(toField, one)!, line), fromLine(mapPoint(toField, other)!, line)),
    })),
  ];
  return {
    kind: 'fitted',
    places,
    lines,
    toField,
    toFilm,
    errors,
    error: Math.sqrt(errors.reduce((sum, { yards }) => sum + yards * yards, 0) / errors.length),
    isChecked: errors.length > leastMarks,
    marked: marked as Point[],
  };
}

/** What is doubtful about a camera's marks. */
export type CameraDoubt =
  /** Marks disagree by this many yards; `wrong` is the mark without which the others agree, where one can be told. */
  | { readonly kind: 'poor'; readonly yards: number; readonly wrong: string | undefined }
  /** All but one of the marks lie nearly on one line. */
  | { readonly kind: 'onLine' }
  /** No mark to spare: a wrong one would not show. */
  | { readonly kind: 'unchecked' };

/** Marks that are off by more than this are worth a second look, yards. */
const poorError = 1;
/** Marks nearer than this to one line tell little across it, yards. */
const nearLine = 1;

/** What to doubt of a camera, the worst first. */
export function doubtsOfCamera(camera: FittedCamera): readonly CameraDoubt[] {
  const { errors, error, isChecked, marked } = camera;
  const most = Math.max(...errors.map(({ yards }) => yards));
  return [
    ...(error > poorError || most > 1.5 * poorError
      ? [{ kind: 'poor', yards: most, wrong: wrongMark(camera) } as const]
      : []),
    ...(isNearLine(marked) ? [{ kind: 'onLine' } as const] : []),
    ...(isChecked ? [] : [{ kind: 'unchecked' } as const]),
  ];
}

/** The mark without which the others agree best, if they do then. A wrong mark draws the fit to itself, so the one that is off most may be a right one. */
function wrongMark({ places, lines, errors, error }: FittedCamera): string | undefined {
  // Of five marks any four agree: none of them can be told from the others.
  if (errors.length < leastMarks + 2) return undefined;
  const without = errors.map(({ id }, at) => {
    const fit = fitCamera(
      places.filter((_, index) => index !== at),
      lines.filter((_, index) => index + places.length !== at),
    );
    return { id, error: fit.kind === 'none' ? Number.POSITIVE_INFINITY : fit.error };
  });
  const best = without.reduce((least, one) => (one.error < least.error ? one : least));
  return best.error < error / 2 ? best.id : undefined;
}

/** A pixel on the field. */
export interface SeenPlace {
  readonly at: Point;
  /** Yards that a pixel is worth there, at its worst. */
  readonly yardsAPixel: number;
  /** How far outside of what was marked, yards; 0 within. */
  readonly outside: number;
}

/** Where on the field a pixel lies; undefined for one at or above the horizon. */
export function placeOnField(camera: FittedCamera, seen: Point): SeenPlace | undefined {
  const at = mapPoint(camera.toField, seen);
  if (at === undefined || !isInFront(camera, seen)) return undefined;
  return { at, yardsAPixel: stretchAt(camera.toField, seen), outside: outsideOf(camera.marked, at) };
}

/** Where in the frame a place of the field is seen; undefined for one that lies behind the camera. */
export function pixelOf(camera: FittedCamera, place: Point): Point | undefined {
  const seen = mapPoint(camera.toFilm, place);
  return seen !== undefined && isInFront(camera, seen) ? seen : undefined;
}

/** A straight line of the field as it is seen, cut where it leaves the camera's sight; undefined when nothing of it is in front of the camera. */
export function segmentOnFilm(camera: FittedCamera, from: Point, to: Point): readonly [Point, Point] | undefined {
  const [a, b] = [depthOf(camera.toFilm, from) * signOf(camera), depthOf(camera.toFilm, to) * signOf(camera)];
  const least = 0.02 * nearDepth(camera);
  if (a <= least && b <= least) return undefined;
  const cut = (one: Point, other: Point, near: number, far: number): Point => {
    if (near > least) return one;
    const share = (least - near) / (far - near);
    return { x: one.x + share * (other.x - one.x), y: one.y + share * (other.y - one.y) };
  };
  const [start, end] = [mapPoint(camera.toFilm, cut(from, to, a, b)), mapPoint(camera.toFilm, cut(to, from, b, a))];
  return start === undefined || end === undefined ? undefined : [start, end];
}

function depthOf([, , [g, h, i]]: Homography, { x, y }: Point): number {
  return g * x + h * y + i;
}

/** On which side of the horizon the marks lie, field to film. */
function signOf({ toFilm, marked }: FittedCamera): number {
  return Math.sign(depthOf(toFilm, marked[0]!));
}

function nearDepth({ toFilm, marked }: FittedCamera): number {
  return Math.min(...marked.map((at) => Math.abs(depthOf(toFilm, at))));
}

function isInFront({ toField, toFilm, marked }: FittedCamera, seen: Point): boolean {
  const first = mapPoint(toFilm, marked[0]!);
  return first !== undefined && isOneSide(toField, [first, seen]);
}

function isOneSide(homography: Homography, points: readonly Point[]): boolean {
  const first = Math.sign(depthOf(homography, points[0]!));
  return points.every((point) => Math.sign(depthOf(homography, point)) === first);
}

/** Whether some straight line has all marks but one near it. */
function isNearLine(marked: readonly Point[]): boolean {
  return marked.some((one, at) =>
    marked.slice(at + 1).some((other) => {
      if (apart(one, other) < nearLine) return false;
      return marked.filter((point) => fromLine(point, [one, other]) > nearLine).length < 2;
    }),
  );
}

/** How far a place is outside of the hull of others. */
function outsideOf(points: readonly Point[], at: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of points.entries())
    for (const [j, b] of points.entries()) {
      if (j <= i) continue;
      least = Math.min(least, distanceToSegment(at.x, at.y, a.x, a.y, b.x, b.y));
      for (const c of points.slice(j + 1)) if (isInside(at, a, b, c)) return 0;
    }
  return least;
}

function isInside(at: Point, a: Point, b: Point, c: Point): boolean {
  const turns = [turn(a, b, at), turn(b, c, at), turn(c, a, at)];
  return turns.every((one) => one >= 0) || turns.every((one) => one <= 0);
}

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

function fromLine(point: Point, [one, other]: readonly [Point, Point]): number {
  const length = apart(one, other);
  return length === 0 ? apart(point, one) : Math.abs(turn(one, other, point)) / length;
}

function apart(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
