import { dragPerYard, dropOver, flightTime, gravity, metres, speedAfter, toMetres } from '../../src/engine/index.ts';
import { type Group, nearRow, type Row } from './row.ts';

/** Drag of a smooth sphere (Clift and Gauvin 1970), computed with the PyPI package fluids 1.3.1, at a lacrosse ball's speeds. */
const drags = [
  { reynolds: 5e4, coefficient: 0.46044 },
  { reynolds: 1e5, coefficient: 0.46745 },
  { reynolds: 1.5e5, coefficient: 0.46786 },
  { reynolds: 2e5, coefficient: 0.467 },
] as const;

/** Launched level, g 9.81, Clift-Gauvin drag, ball of 63.67 mm and 144.5 g in air of 1.204 kg/m3: time and drop at three distances, m. */
const flights = [
  {
    speed: 15,
    end: 15.37,
    at: [
      [5, 0.3386, 0.557],
      [9.14, 0.6271, 1.893],
      [12.8, 0.8889, 3.771],
    ],
  },
  {
    speed: 20,
    end: 19.42,
    at: [
      [5, 0.254, 0.313],
      [9.14, 0.4703, 1.065],
      [12.8, 0.6663, 2.121],
    ],
  },
  {
    speed: 25,
    end: 23.89,
    at: [
      [5, 0.2032, 0.201],
      [9.14, 0.3762, 0.681],
      [12.8, 0.533, 1.357],
    ],
  },
  {
    speed: 31,
    end: 29.43,
    at: [
      [5, 0.1639, 0.13],
      [9.14, 0.3034, 0.443],
      [12.8, 0.4298, 0.883],
    ],
  },
  {
    speed: 38,
    end: 35.98,
    at: [
      [5, 0.1337, 0.087],
      [9.14, 0.2475, 0.295],
      [12.8, 0.3506, 0.587],
    ],
  },
  {
    speed: 45,
    end: 42.57,
    at: [
      [5, 0.1129, 0.062],
      [9.14, 0.209, 0.21],
      [12.8, 0.2961, 0.419],
    ],
  },
] as const;

/** The closed form holds the drag constant and lets the ball fall apart from its flight: docs/models/ball.md. */
const timeTolerance = 0.0013;
const dropShare = 0.01;
/** The printed drops carry half a step of the run that made them. */
const dropPrint = 0.0006;

export function ballGroup(): Group {
  return {
    id: 'ball',
    title: 'Ball',
    about:
      'One drag constant stands for the drag table of a smooth sphere; flights by the closed form against a run with the drag of every moment.',
    rows: [
      ...drags.map(dragRow),
      ...flights.flatMap((flight) => [...flight.at.flatMap((at) => flightRows(flight.speed, at)), endRow(flight)]),
    ],
  };
}

function dragRow({ reynolds, coefficient }: (typeof drags)[number]): Row {
  // k = rho Cd A / (2 m), solved for Cd with the ball of the flights below.
  const area = (Math.PI * 0.06367 ** 2) / 4;
  const ours = ((dragPerYard / 0.9144) * 2 * 0.1445) / (1.204 * area);
  return nearRow(
    {
      id: `drag-${reynolds}`,
      what: `drag coefficient at Re ${reynolds}`,
      source: 'Clift and Gauvin 1970, by fluids 1.3.1',
    },
    coefficient,
    ours,
    0.04,
    4,
  );
}

function flightRows(speed: number, [distance, time, drop]: readonly [number, number, number]): readonly Row[] {
  const source = 'Clift-Gauvin drag, integrated apart';
  const fell = (toMetres(dropOver(metres(distance), metres(speed))) * 9.81) / toMetres(gravity);
  return [
    nearRow(
      { id: `flight-${speed}-${distance}`, what: `${distance} m at ${speed} m/s, s`, source },
      time,
      flightTime(metres(distance), metres(speed)),
      timeTolerance,
      4,
    ),
    nearRow(
      { id: `drop-${speed}-${distance}`, what: `drop over ${distance} m at ${speed} m/s, m`, source },
      drop,
      fell,
      Number((dropShare * drop + dropPrint).toFixed(4)),
      3,
    ),
  ];
}

function endRow({ speed, end }: (typeof flights)[number]): Row {
  // The printed speed has the fall in it; ours is along the way alone, so the fall is added here.
  const along = toMetres(speedAfter(metres(9.14), metres(speed)));
  const falling = 9.81 * flightTime(metres(9.14), metres(speed));
  return nearRow(
    {
      id: `end-speed-${speed}`,
      what: `speed after 9.14 m at ${speed} m/s, m/s`,
      source: 'Clift-Gauvin drag, integrated apart',
    },
    end,
    Math.hypot(along, falling),
    0.15,
    2,
  );
}
