import { ballAt, type Film, manAt, offenseCount, type Place } from './film.ts';

/** How the field lies on the picture: turned by `turn` (radians, clockwise on the screen) round `centre`, which is shown at `at`, units of the picture. */
export interface Camera {
  readonly centre: Place;
  readonly turn: number;
  /** Units of the picture a yard, > 0. */
  readonly scale: number;
  readonly at: Place;
}

/** Size of a picture in its own units. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A part of the field, yd: least x and y, and how far it reaches. */
export interface View extends Size {
  readonly left: number;
  readonly top: number;
}

/** Half of the width and the least and greatest y that a man-up always shows, and the farthest that it shows; room round a man at the edge. Yards. */
const least = { half: 16.5, top: -9.5, bottom: 21.7 };
const most = { half: 20, top: -13, bottom: 24 };
const margin = 1.8;

/** The part of the field that the whole unit is shown in: all of its ways, up to a bound, so that one who stands far out shrinks nobody. */
export function unitView(film: Film): View {
  let { half, top, bottom } = least;
  for (let man = 0; man < offenseCount; man += 1) {
    for (const x of film.x_byMan[man] ?? []) half = Math.max(half, Math.min(Math.abs(x) + margin, most.half));
    for (const y of film.y_byMan[man] ?? []) {
      top = Math.min(top, Math.max(y - margin, most.top));
      bottom = Math.max(bottom, Math.min(y + margin, most.bottom));
    }
  }
  return { left: -half, top, width: 2 * half, height: bottom - top };
}

/** All of `view` in the picture, the goal at the top, as large as it goes. */
export function unitCamera({ left, top, width, height }: View, size: Size): Camera {
  return {
    centre: { x: left + width / 2, y: top + height / 2 },
    turn: 0,
    scale: Math.min(size.width / width, size.height / height),
    at: { x: size.width / 2, y: size.height / 2 },
  };
}

/** How long before and after a moment his places are averaged, s: the picture turns as a head does, and not with each step of the feet. */
const calm = 0.8;
const calmStep = 0.1;
/** What is shown behind him, beyond the goal, the ball and his mates, and from him ahead at least, yd. */
const behindHim = 3.5;
const beyond = 2.4;
const leastAhead = 14;
/** A mate who is farther away than this to a side, ahead or behind shrinks nobody, yd. */
const farMate = { aside: 15, ahead: 22, back: 7 };

/** What one man sees: he is at the bottom, the goal straight above him, and as much of the field as holds the goal, the ball and his mates. */
export function followCamera(film: Film, man: number, time: number, size: Size): Camera {
  const centre = calmPlace(film, man, time);
  const away = Math.hypot(centre.x, centre.y);
  // On the goal's middle there is no way to it: he is taken to come from midfield.
  const turn = away < 1e-6 ? 0 : -Math.PI / 2 - Math.atan2(-centre.y, -centre.x);
  const shown = shownAround({ centre, turn, scale: 1, at: { x: 0, y: 0 } }, film, time);
  const ahead = Math.max(away, shown.ahead, leastAhead) + beyond;
  const back = Math.max(behindHim, shown.back + beyond);
  const scale = Math.min(size.height / (back + ahead), size.width / (2 * (shown.aside + beyond)));
  return { centre, turn, scale, at: { x: size.width / 2, y: size.height - back * scale } };
}

/** How far something lies ahead of him, behind him and to a side, yd. */
interface Reach {
  readonly ahead: number;
  readonly back: number;
  readonly aside: number;
}

/**
 * What has to be shown so that the ball and his mates are in the picture, by a camera of a yard a unit. For each moment near `time` the farthest
 * of the moments near it, and the mean of those: each of them covers `time` itself, so the ball is never out, and the mean moves calmly.
 */
function shownAround(camera: Camera, film: Film, time: number): Reach {
  const window = Math.round(calm / calmStep);
  const reaches = Array.from({ length: 4 * window + 1 }, (_, index) =>
    reachAt(camera, film, time + (index - 2 * window) * calmStep),
  );
  const calmed = (part: keyof Reach): number =>
    mean(
      Array.from({ length: 2 * window + 1 }, (_, from) =>
        Math.max(...reaches.slice(from, from + 2 * window + 1).map((reach) => reach[part])),
      ),
    );
  return { ahead: calmed('ahead'), back: calmed('back'), aside: calmed('aside') };
}

function reachAt(camera: Camera, film: Film, time: number): Reach {
  const ball = onPicture(camera, ballAt(film, time));
  const mates = Array.from({ length: offenseCount }, (_, man) => onPicture(camera, manAt(film, man, time)));
  const bounded = (most: number, values: readonly number[]): number => Math.min(Math.max(...values), most);
  return {
    ahead: Math.max(
      -ball.y,
      bounded(
        farMate.ahead,
        mates.map(({ y }) => -y),
      ),
    ),
    back: Math.max(
      ball.y,
      bounded(
        farMate.back,
        mates.map(({ y }) => y),
      ),
    ),
    aside: Math.max(
      Math.abs(ball.x),
      bounded(
        farMate.aside,
        mates.map(({ x }) => Math.abs(x)),
      ),
    ),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function calmPlace(film: Film, man: number, time: number): Place {
  const window = Math.round(calm / calmStep);
  const places = Array.from({ length: 2 * window + 1 }, (_, index) =>
    manAt(film, man, time + (index - window) * calmStep),
  );
  return { x: mean(places.map(({ x }) => x)), y: mean(places.map(({ y }) => y)) };
}

/** Where a place of the field is on the picture. */
export function onPicture({ centre, turn, scale, at }: Camera, { x, y }: Place): Place {
  const [dx, dy] = [x - centre.x, y - centre.y];
  const [cos, sin] = [Math.cos(turn) * scale, Math.sin(turn) * scale];
  return { x: at.x + dx * cos - dy * sin, y: at.y + dx * sin + dy * cos };
}

/** The same as the six numbers of an SVG matrix. */
export function matrixOf(camera: Camera): readonly [number, number, number, number, number, number] {
  const origin = onPicture(camera, { x: 0, y: 0 });
  const [cos, sin] = [Math.cos(camera.turn) * camera.scale, Math.sin(camera.turn) * camera.scale];
  return [cos, sin, -sin, cos, origin.x, origin.y];
}
