import { type Camera, followCamera, matrixOf, onPicture, type Size, unitCamera, unitView } from './camera.ts';
import { ballAt, type Film, holderAt, isOn, manAt, offenseCount, openAt, type Place } from './film.ts';
import {
  attackerMark,
  attackerRadius,
  ballMark,
  ballRadius,
  defenderMark,
  keeperMark,
  type ManMark,
  nameBelow,
  unitsPerYard,
} from './man-mark.ts';
import { svgElement } from './svg-element.ts';

/** The field of the page, made for one film: shows any moment of it. */
export interface Picture {
  readonly show: (time: number, follow: number) => void;
  /** The six, in the order of the spots. */
  readonly attackers: readonly SVGGElement[];
}

const pictureWidth = 1000;

/** Puts the people of `film` on the page's field, in place of those who were there. */
export function createPicture(film: Film, spots: readonly string[]): Picture {
  const view = unitView(film);
  const size = { width: pictureWidth, height: Math.round((pictureWidth * view.height) / view.width) };
  const field = part('field');
  field.setAttribute('viewBox', `0 0 ${size.width} ${size.height}`);
  const attackers = spots.map(attackerMark);
  const defenders = film.x_byMan
    .slice(offenseCount, -1)
    .map((_, index) => defenderMark(film.scheme.defenders[index] ?? 'new'));
  const keeper = keeperMark();
  const ball = ballMark();
  // Letters of an attacker on a cross leave its middle in sight; a cross on letters may leave none to read.
  part('men').replaceChildren(
    keeper,
    ...defenders.map(({ group }) => group),
    ...attackers.map(({ group }) => group),
    ball,
  );
  const groups = [...attackers.map(({ group }) => group), ...defenders.map(({ group }) => group), keeper];
  return {
    attackers: attackers.map(({ group }) => group),
    show: (time, follow) => {
      const camera = follow < 0 ? unitCamera(view, size) : followCamera(film, follow, time, size);
      part('world').setAttribute('transform', `matrix(${matrixOf(camera).map(rounded).join(' ')})`);
      const drawn = { film, time, camera, grow: growth(camera, size) };
      groups.forEach((group, man) => {
        group.setAttribute('display', isOn(film, man, time) ? 'inline' : 'none');
        place(group, manAt(film, man, time), drawn);
      });
      showAttackers(attackers, follow, drawn);
      defenders.forEach(({ nameAbove }, index) => {
        nameAbove(hasRoomAbove(offenseCount + index, drawn));
      });
      place(ball, ballPlace(drawn), drawn);
      part('lines').replaceChildren(...trails(drawn), ...flight(drawn));
    },
  };
}

/** One moment as it is drawn. `grow`: how much larger than usual the marks are. */
interface Drawn {
  readonly film: Film;
  readonly time: number;
  readonly camera: Camera;
  readonly grow: number;
}

/** What letters measure at least on the screen, px, and how much a mark is made larger for it at most. */
const leastLetterPx = 12;
const mostGrowth = 1.5;
const letterUnits = 19;

/** On a small screen the men are drawn larger than the field, so that their letters can be read. */
function growth({ scale }: Camera, { width }: Size): number {
  const letterPx = ((letterUnits / unitsPerYard) * scale * part('field').clientWidth) / width;
  return Math.min(Math.max(leastLetterPx / Math.max(letterPx, 1), 1), mostGrowth);
}

function place(group: SVGGElement, at: Place, { camera, grow }: Drawn): void {
  const { x, y } = onPicture(camera, at);
  const scale = (camera.scale / unitsPerYard) * grow;
  group.setAttribute('transform', `translate(${rounded(x)} ${rounded(y)}) scale(${rounded(scale)})`);
}

function showAttackers(attackers: readonly ManMark[], follow: number, { film, time }: Drawn): void {
  const holder = holderAt(film, time);
  const open = openAt(film, time);
  attackers.forEach((mark, man) => {
    mark.showBall(man === holder);
    mark.showOpen(open.get(man));
    mark.showMine(man === follow);
  });
}

/** How much nearer another man must be to a name below than to one above before it is written above, yd: below is where it is looked for. */
const preferBelow = 0.6;

/** Whether a defender's name is read better above his cross, because others stand where it would be below. */
function hasRoomAbove(defender: number, { film, time, camera, grow }: Drawn): boolean {
  const me = onPicture(camera, manAt(film, defender, time));
  const others = film.x_byMan.flatMap((_, man) =>
    man === defender || !isOn(film, man, time) ? [] : [onPicture(camera, manAt(film, man, time))],
  );
  const roomAt = (side: 1 | -1): number => {
    const y = me.y + side * nameBelow * grow * camera.scale;
    return Math.min(...others.map((at) => Math.hypot(at.x - me.x, at.y - y))) / camera.scale;
  };
  // Where nobody is near the name below, others do not matter.
  const below = roomAt(1);
  return below < 2 * attackerRadius * grow && roomAt(-1) > below + preferBelow;
}

/** In hands the ball is drawn at the circle's edge, toward the goal, clear of the letters. */
function ballPlace({ film, time, grow }: Drawn): Place {
  const ball = ballAt(film, time);
  const holder = holderAt(film, time);
  if (holder < 0 || holder >= offenseCount) return ball;
  const { x, y } = manAt(film, holder, time);
  const far = Math.max(Math.hypot(x, y), 1e-6);
  const out = (attackerRadius + ballRadius / 2) * grow;
  return { x: x - (x / far) * out, y: y - (y / far) * out };
}

/** How long a flight is shown after it has ended, and a run behind a man, s. */
const flightShown = 1;
const trailShown = 1;
const trailStep = 0.1;

/** The ball's way, dashed as on paper: strong while it flies, faint afterwards. */
function flight(drawn: Drawn): readonly SVGElement[] {
  const { film, time } = drawn;
  return film.scheme.flights
    .filter(([from, to]) => from <= time && time <= to + flightShown)
    .map(([from, to, kind]) => {
      const look = kind === 'shot' ? 'shot' : time <= to ? 'pass' : 'passPast';
      return way(look, [ballAt(film, from), ballAt(film, Math.min(time, to))], drawn);
    });
}

/** Where each of the six has run in the last second; nothing is drawn of one who has hardly moved. */
function trails(drawn: Drawn): readonly SVGElement[] {
  const { film, time } = drawn;
  const steps = Math.round(Math.min(trailShown, time) / trailStep);
  const paths = Array.from({ length: offenseCount }, (_, man) =>
    Array.from({ length: steps + 1 }, (_step, index) => manAt(film, man, time - (steps - index) * trailStep)),
  );
  return paths.filter(leavesHisCircle).map((path) => way('trail', path, drawn));
}

function leavesHisCircle(path: readonly Place[]): boolean {
  const [first, last] = [path[0], path.at(-1)];
  return first !== undefined && last !== undefined && Math.hypot(last.x - first.x, last.y - first.y) > attackerRadius;
}

function way(look: string, places: readonly Place[], { camera }: Drawn): SVGElement {
  const points = places.map((at) => {
    const { x, y } = onPicture(camera, at);
    return `${rounded(x)},${rounded(y)}`;
  });
  return svgElement('polyline', look, { points: points.join(' ') });
}

function part(id: string): SVGElement {
  return document.getElementById(id) as unknown as SVGElement;
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
