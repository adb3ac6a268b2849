import { createDutySheet, type Point, sets, type Trace } from '../../engine/index.ts';
import { type Playbook, spotsOfSet, toEngineScheme } from '../../playbook/index.ts';
import type { TraceNames } from '../../render/index.ts';
import { creaseMark } from './duty-typing.ts';

type Spots = readonly { readonly id: string; readonly at: Point }[];

/** A row of a grid as it lies on the field: six attackers, the ball at the row's place, every defender where his duty puts him. */
export interface RowPicture {
  readonly spots: Spots;
  /** Whose spots they are: the play's name, or the set's when the play has nobody there. */
  readonly over: string;
  /** The spot that has the ball. */
  readonly carrier: string;
  /** One frame, to be drawn like any trial. */
  readonly trace: Trace;
  readonly names: TraceNames;
}

/** What a row is drawn over first: a play's spots, or a set's when there is no play. */
export interface PictureGround {
  readonly name: string;
  readonly spots: Spots;
}

/**
 * The row of an own scheme over a play's spots; over those of the first set that has its place when the play has nobody there. Undefined when nobody
 * could stand there at all, or when too little of the grid can be read.
 */
export function rowPicture(
  playbook: Playbook,
  scheme: string,
  ball: string,
  ground: PictureGround,
): RowPicture | undefined {
  const found = groundWith(playbook, ball, ground);
  if (found === undefined) return undefined;
  const { name, spots, carrier } = found;
  const own = toEngineScheme(playbook, scheme, { spots: spots.map(asSpot) });
  if (own === undefined) return undefined;
  const [row] = createDutySheet(own, spots, [carrier]).rows;
  if (row === undefined) return undefined;
  const at = spots.find(({ id }) => id === carrier)!.at;
  const { kind, a, b } = row.board;
  const people = [...spots.map((spot) => spot.at), ...row.places, keeperPlace(at)];
  return {
    spots,
    over: name,
    carrier,
    trace: {
      step: 1,
      frames: 1,
      agents: people.length,
      defenders: own.defenders,
      places_byFrame: Float32Array.from(people.flatMap(({ x, y }) => [x, y])),
      ball_byFrame: Float32Array.from([at.x, at.y, 1]),
      holder_byFrame: Int8Array.from([spots.findIndex(({ id }) => id === carrier)]),
      duties_byFrame: Int8Array.from(own.names.flatMap((_, man) => [kind[man]!, a[man]!, b[man]!])),
      events: [],
    },
    names: {
      play: name,
      scheme: own.notes.name,
      offense: spots.map(({ id }) => id),
      defense: own.names,
      reads: [],
      lastTenReads: [],
      beats: {},
    },
  };
}

/** The ground on which somebody stands at the row's place. */
function groundWith(
  playbook: Playbook,
  ball: string,
  ground: PictureGround,
): (PictureGround & { readonly carrier: string }) | undefined {
  const grounds = [
    ground,
    ...[...(playbook.sets ?? []), ...Object.values(sets)].map(({ id, name }) => ({
      name,
      spots: spotsOfSet(playbook, id) ?? [],
    })),
  ];
  for (const each of grounds) {
    const carrier = ball === creaseMark ? creaseMan(each.spots) : each.spots.find(({ id }) => id === ball)?.id;
    if (carrier !== undefined && each.spots.length === 6) return { ...each, carrier };
  }
  return undefined;
}

/** Who stands on the crease, nearest to its usual man; undefined when nobody does. */
export function creaseMan(spots: Spots): string | undefined {
  const inside = spots
    .map(({ id, at }) => ({ id, away: Math.hypot(at.x - usualCrease.x, at.y - usualCrease.y) }))
    .filter(({ away }) => away <= creaseRoom)
    .sort((one, other) => one.away - other.away);
  return inside[0]?.id;
}

/** The middle of where crease men stand, and how far from it one still counts, yd (common practice, no source). */
const usualCrease: Point = { x: 0, y: 5.5 };
const creaseRoom = 4;

/** The keeper stands a step out of the goal, toward the ball. */
function keeperPlace(ball: Point): Point {
  const far = Math.hypot(ball.x, ball.y);
  if (far === 0) return { x: 0, y: 0.5 };
  return { x: ball.x / far, y: Math.max(0.3, ball.y / far) };
}

function asSpot({ id, at }: Spots[number]) {
  return { id, at, hand: 'either', needs: { feed: 0, shoot: 0, inside: 0, handle: 0 }, safety: 'none' } as const;
}
