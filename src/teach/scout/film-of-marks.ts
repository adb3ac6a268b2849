import {
  bestAssignment,
  type MarkedFilm,
  type MarkedMoment,
  type Point,
  type SignId,
  signIds,
  type Tick,
} from '../../engine/index.ts';
import type { ChanceMark } from '../../playbook/index.ts';

/** What marks of one man-up come to. */
export interface ReadMarks {
  /** `null` when nobody was marked. */
  readonly film: MarkedFilm | null;
  readonly ticks: readonly Tick[];
  /** What could not be used, in plain sentences. */
  readonly leftOut: readonly string[];
}

/** What a tick that says "this was not so" begins with: "not crease-glued". */
const notSo = /^not[ :]/;

/** Read a tick as it is written: the short name of a sign, or "not" and the name. `undefined` for a name that no sign has. */
export function readTick(text: string): Tick | undefined {
  const seen = !notSo.test(text);
  const sign = text.replace(notSo, '').trim();
  return isSign(sign) ? { sign, seen } : undefined;
}

/** How a tick is written. */
export function writeTick({ sign, seen }: Tick): string {
  return seen ? sign : `not ${sign}`;
}

/**
 * The marks of one man-up as the engine reads them, for a set of six spots. Men of the offense who were marked without names are taken for the spots that they are
 * nearest to in all; the ball for the man who is nearest to it. `restart` is where play was put in, when it is known.
 */
export function filmOfMarks(
  spots: readonly { readonly id: string; readonly at: Point }[],
  marks: readonly ChanceMark[],
  restart?: Point,
): ReadMarks {
  const leftOut: string[] = [];
  const ticks: Tick[] = [];
  const moments: MarkedMoment[] = [];
  let places: readonly Point[] = spots.map(({ at }) => at);
  for (const mark of [...marks].sort((one, other) => one.time - other.time)) {
    for (const cue of mark.cues ?? []) {
      const tick = readTick(cue);
      if (tick !== undefined) ticks.push(tick);
    }
    const offense = mark.offense === undefined ? undefined : nearestSpots(mark.offense.map(pointOf), places);
    places = places.map((place, man) => offense?.[man] ?? place);
    const ball = ballOf(mark, spots, places);
    if (ball === undefined) {
      if (mark.defenders.length > 0) leftOut.push(`The mark at ${mark.time} s does not say who has the ball.`);
      continue;
    }
    // A moment without defenders still says which way the ball came.
    moments.push({ time: mark.time, ball, defenders: mark.defenders.map(pointOf), ...(offense && { offense }) });
  }
  const isMarked = moments.some(({ defenders }) => defenders.length > 0);
  return {
    film: isMarked ? { spots: spots.map(({ at }) => at), moments, ...(restart && { restart }) } : null,
    ticks,
    leftOut,
  };
}

function ballOf(
  { holder, ball }: ChanceMark,
  spots: readonly { readonly id: string }[],
  places: readonly Point[],
): number | undefined {
  const named = holder === undefined ? -1 : spots.findIndex(({ id }) => id === holder);
  if (named >= 0) return named;
  if (ball === undefined) return undefined;
  const at = pointOf(ball);
  return places.reduce((best, place, man) => (apart(place, at) < apart(places[best]!, at) ? man : best), 0);
}

/** Each mark to one spot of its own, so that they are nearest in all. */
function nearestSpots(marks: readonly Point[], places: readonly Point[]): readonly (Point | null)[] {
  const kept = marks.slice(0, places.length);
  const worth = kept.flatMap((mark) => places.map((place) => -(apart(mark, place) ** 2)));
  const man_byMark = bestAssignment(worth, kept.length, places.length);
  const out: (Point | null)[] = places.map(() => null);
  for (const [at, mark] of kept.entries()) out[man_byMark[at]!] = mark;
  return out;
}

function isSign(word: string): word is SignId {
  return (signIds as readonly string[]).includes(word);
}

function pointOf([x, y]: readonly [number, number]): Point {
  return { x, y };
}

function apart(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}
