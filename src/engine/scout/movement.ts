import { createSchemeView, readOffense } from '../defense/view.ts';
import type { Point } from '../geometry/point.ts';
import type { Level } from '../people/athlete.ts';
import type { MarkedFilm, MarkedMoment } from './marked-film.ts';

/** What a unit can do with ball and men to find out what it faces, before its play. */
export const movementIds = ['lap-right', 'lap-left', 'reverse', 'skip', 'behind', 'carry', 'pop', 'swap'] as const;
export type MovementId = (typeof movementIds)[number];

/** One such opening, written out for a set. */
export interface Movement {
  readonly id: MovementId;
  /** The ball's way, offense indices, the man who begins first. */
  readonly ball: readonly number[];
  /** Seconds until the last man of it has had the ball for a touch. */
  readonly seconds: number;
  /** The men who move besides: offense indices. */
  readonly movers: readonly number[];
  /** What is walked through. */
  readonly film: MarkedFilm;
}

/** How long the ball is held at each man while it goes round, seconds: catch to catch 1.0 to 1.3 s in schools, 1.5 to 2.5 with the young (common practice, no source). */
function holdOf(level: Level): number {
  switch (level) {
    case '8U':
    case '10U':
    case '12U':
    case '14U':
      return 1.4;
    case 'highSchool':
      return 1;
    case 'college':
    case 'pro':
      return 0.8;
    default:
      return exhaustive(level);
  }
}

function exhaustive(level: never): never {
  throw new RangeError(`unknown level: ${String(level)}`);
}

const flightSpeed = 19;
/** A carrier looks round while he goes, and goes at about this speed, yards a second. */
const carrySpeed = 4.5;

/**
 * The movements that a set allows, begun by the man `start`. A set without a man behind the goal has none to go to, and one without a crease man none to pop.
 * RangeError unless there are six places.
 */
export function movementsOf(spots: readonly Point[], start: number, level: Level): readonly Movement[] {
  if (spots.length !== 6) throw new RangeError(`invalid spots: ${spots.length} (expected 6)`);
  const { ring, crease } = ringOf(spots);
  const from = ring.includes(start) ? start : topOf(spots, ring);
  const around = { spots, hold: holdOf(level), ring, from };
  return [
    lap(around, 1),
    lap(around, -1),
    reverse(around),
    ...skip(around),
    ...behind(around),
    carry(around),
    ...pop(around, crease),
    swap(around),
  ];
}

interface Around {
  readonly spots: readonly Point[];
  readonly hold: number;
  /** The perimeter from the left behind the goal over the top to the right. */
  readonly ring: readonly number[];
  readonly from: number;
}

function ringOf(spots: readonly Point[]): { readonly ring: readonly number[]; readonly crease: readonly number[] } {
  const view = createSchemeView(0);
  for (const [man, { x, y }] of spots.entries()) {
    view.offense[2 * man] = x;
    view.offense[2 * man + 1] = y;
  }
  readOffense(view);
  return { ring: [...view.ring.slice(0, view.ringSize)], crease: [...view.crease.slice(0, view.creaseSize)] };
}

function topOf(spots: readonly Point[], ring: readonly number[]): number {
  return ring.reduce((top, man) => (spots[man]!.y > spots[top]!.y ? man : top), ring[0] ?? 0);
}

/** A pass longer than this does not close the ring: round the goal it would go through it. Yards. */
const longestClosing = 15;

/** Once round to one side. Where the ring is open behind the goal the ball comes back the way it went, and goes on to the other end. */
function lap(around: Around, side: 1 | -1): Movement {
  const { spots, ring, from } = around;
  const ends = [spots[ring[0]!]!, spots[ring.at(-1)!]!] as const;
  const isClosed = apart(ends[0], ends[1]) <= longestClosing && Math.min(ends[0].y, ends[1].y) < 0;
  const at = ring.indexOf(from);
  const id = side > 0 ? 'lap-right' : 'lap-left';
  if (isClosed) {
    return swung(
      id,
      around,
      [...ring.keys(), ring.length].map((steps) => ring[(at + side * steps + ring.length * 2) % ring.length]!),
    );
  }
  const there = side > 0 ? ring.slice(at) : ring.slice(0, at + 1).reverse();
  const back = [...there].reverse().slice(1);
  const other = side > 0 ? ring.slice(0, at).reverse() : ring.slice(at + 1);
  return swung(id, around, [
    ...there,
    ...back,
    ...other,
    ...[...other].reverse().slice(1),
    ...(other.length > 0 ? [from] : []),
  ]);
}

/** One pass, straight back, and one to the other side: who answers late? */
function reverse(around: Around): Movement {
  const { ring, from } = around;
  const at = ring.indexOf(from);
  const right = ring[(at + 1) % ring.length]!;
  const left = ring[(at - 1 + ring.length) % ring.length]!;
  return swung('reverse', around, [from, right, from, left]);
}

/** A pass longer than this is a skip. Yards. */
const shortestSkip = 12;

/** Over the next man to the one after him, and back: who jumps a long ball? */
function skip(around: Around): readonly Movement[] {
  const { spots, ring, from } = around;
  const at = ring.indexOf(from);
  const far = [2, -2]
    .map((steps) => ring[(at + steps + 2 * ring.length) % ring.length]!)
    .find((man) => spots[man]!.y > 0 && apart(spots[man]!, spots[from]!) >= shortestSkip);
  return far === undefined ? [] : [swung('skip', around, [from, far, from])];
}

/** The shorter way to a man behind the goal. */
function behind(around: Around): readonly Movement[] {
  const { spots, ring, from } = around;
  const at = ring.indexOf(from);
  const ways = [1, -1].flatMap((side) => {
    const way: number[] = [from];
    for (let steps = 1; steps < ring.length; steps++) {
      const man = ring[(at + side * steps + 2 * ring.length) % ring.length]!;
      way.push(man);
      if (spots[man]!.y < 0) return [way];
    }
    return [];
  });
  const [first, second] = ways;
  if (first === undefined) return [];
  return [swung('behind', around, second !== undefined && second.length < first.length ? second : first)];
}

/** He runs it across the top to the other side, and throws it back to where he came from. */
function carry(around: Around): Movement {
  const { spots, ring, from, hold } = around;
  const at = spots[from]!;
  const side = at.x > 1 ? -1 : 1;
  const to = { x: side * Math.max(5, Math.abs(at.x) / 2), y: Math.max(11.5, Math.min(13, at.y)) };
  const left = ring[(ring.indexOf(from) - side + ring.length) % ring.length]!;
  const running = apart(to, at) / carrySpeed;
  const moved = spots.map((spot, man) => (man === from ? to : spot));
  const pass = apart(to, spots[left]!) / flightSpeed;
  const moments: readonly MarkedMoment[] = [
    touch(0, from, hold, spots),
    touch(running, from, hold + running, moved),
    touch(running + pass + hold, left, hold, moved),
  ];
  return written('carry', around, [from, left], moments, [from]);
}

/** One pass, and the crease man pops out toward it: does his man come with him? */
function pop(around: Around, crease: readonly number[]): readonly Movement[] {
  const { spots, ring, from, hold } = around;
  const man = crease[0];
  if (man === undefined) return [];
  const to = ring[(ring.indexOf(from) + 1) % ring.length]!;
  const side = spots[to]!.x < 0 ? -1 : 1;
  const out = spots.map((spot, who) => (who === man ? { x: 5.5 * side, y: 9.5 } : spot));
  const pass = apart(spots[to]!, spots[from]!) / flightSpeed;
  const moments: readonly MarkedMoment[] = [
    touch(0, from, hold, spots),
    touch(pass + hold, to, hold, spots),
    touch(pass + hold + 1.6, to, hold + 1.6, out),
  ];
  return [written('pop', around, [from, to], moments, [man])];
}

/** Two men on the ball's side trade places while it swings the other way: does anybody go with them? */
function swap(around: Around): Movement {
  const { spots, ring, from, hold } = around;
  const at = ring.indexOf(from);
  const [one, other] = [ring[(at + 1) % ring.length]!, ring[(at + 2) % ring.length]!];
  const left = ring[(at - 1 + ring.length) % ring.length]!;
  const traded = spots.map((spot, man) => (man === one ? spots[other]! : man === other ? spots[one]! : spot));
  const pass = apart(spots[left]!, spots[from]!) / flightSpeed;
  const trading = 0.6 + apart(spots[one]!, spots[other]!) / carrySpeed;
  const moments: readonly MarkedMoment[] = [
    touch(0, from, hold, spots),
    touch(pass + hold, left, hold, spots),
    touch(pass + hold + trading, left, hold + trading, traded),
    touch(2 * pass + 2 * hold + trading, from, hold, traded),
  ];
  return written('swap', around, [from, left, from], moments, [one, other]);
}

function apart(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

/** The ball from man to man while everybody stands. */
function swung(id: MovementId, around: Around, ball: readonly number[]): Movement {
  const { spots, hold } = around;
  let time = 0;
  const moments = ball.map((man, at): MarkedMoment => {
    if (at > 0) {
      const from = spots[ball[at - 1]!]!;
      time += apart(spots[man]!, from) / flightSpeed + hold;
    }
    return touch(time, man, hold, spots);
  });
  return written(id, around, ball, moments, []);
}

function touch(time: number, ball: number, since: number, offense: readonly Point[]): MarkedMoment {
  return { time, ball, since, defenders: [], offense };
}

function written(
  id: MovementId,
  { spots, hold }: Around,
  ball: readonly number[],
  moments: readonly MarkedMoment[],
  movers: readonly number[],
): Movement {
  return { id, ball, movers, seconds: hold + moments.at(-1)!.time, film: { spots, moments } };
}
