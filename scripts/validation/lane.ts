import { controlOdds, createLane, laneInto, metres, simpleArrival } from '../../src/engine/index.ts';
import { factRow, type Group, nearRow, type Row, rangeRow } from './row.ts';

/** Ball (0,0) to (15,0), the receiver there, one standing defender at (7.5, y), control integrated along the ball's way. Metres. */
const paths = [
  { y: 1, speed: 15, stick: 0, completion: 0.77543 },
  { y: 2, speed: 15, stick: 0, completion: 0.84872 },
  { y: 3, speed: 15, stick: 0, completion: 0.90617 },
  { y: 4, speed: 15, stick: 0, completion: 0.94428 },
  { y: 6, speed: 15, stick: 0, completion: 0.9816 },
  { y: 2, speed: 12, stick: 0, completion: 0.70479 },
  { y: 2, speed: 20, stick: 0, completion: 0.92745 },
  { y: 2, speed: 25, stick: 0, completion: 0.95393 },
  { y: 2, speed: 20, stick: 1.5, completion: 0.79881 },
] as const;

/** The printed values carry their own step, up to 1.8e-5 of a converged run. */
const printStep = 2e-5;

export function laneGroup(): Group {
  return {
    id: 'lane',
    title: 'Lane',
    about:
      "First control integrated along a pass, by the literature's model; then what our own lane (touch hazard of sticks inside the drag model's discs) must do: more room, a faster ball and a shorter stick never make a pass worse.",
    rows: [...paths.map(pathRow), ...butterflyRows(), roomRow(), speedRow(), stickRow(), behindRow()],
  };
}

function pathRow({ y, speed, stick, completion }: (typeof paths)[number]): Row {
  const flight = 15 / speed;
  const place = (time: number) => Math.min(15, speed * time);
  const defender = (time: number) => Math.max(0.7, simpleArrival(7.5, y, 0, 0, place(time), 0, 0.7, 5) - stick / 5);
  const ours = controlOdds(
    { arrivals: [() => 0.7], rate: 4.3, from: flight },
    { arrivals: [defender], rate: 4.3, from: 0 },
    0.45,
    0,
    flight + 10,
  );
  return nearRow(
    {
      id: `path-${y}-${speed}-${stick}`,
      what: `control along a 15 m pass at ${speed} m/s, defender ${y} m off it${stick > 0 ? `, stick ${stick} m` : ''}`,
      source: 'control along the path, constants of the open tutorial',
    },
    completion,
    ours.attack,
    printStep,
    5,
  );
}

/** Completion of our own lane past standing men, yards; a grown man's pole unless told. */
function completion(
  men: readonly (readonly [number, number])[],
  to: readonly [number, number],
  speed: number,
  stick = 2.5,
): number {
  const lane = createLane(men.length);
  const motion = Float64Array.from(men.flatMap(([x, y]) => [x, y, 0, 0]));
  const all = (value: number) => new Float64Array(men.length).fill(value);
  const movers = {
    topSpeed_byAgent: all(7.5),
    drag_byAgent: all(1.2),
    reaction_byAgent: all(0.25),
    stickReach_byAgent: all(stick),
  };
  laneInto(lane, 0, 0, to[0], to[1], speed, false, motion, movers, 0, men.length, 0);
  return lane.completion;
}

function butterflyRows(): readonly Row[] {
  const far = metres(50);
  const source = 'accessible-space tests/test_model.py (doi 10.1186/s40537-026-01387-8)';
  return [
    rangeRow(
      { id: 'butterfly-mate', what: 'mate 50 m behind the passer, opponent 50 m ahead', source },
      '> .95',
      completion([[far, 0]], [-far, 0], metres(15)),
      0.95,
      1,
    ),
    rangeRow(
      { id: 'butterfly-opponent', what: 'the pass to the opponent', source },
      '< .05',
      completion([[far, 0]], [far, 0], metres(15)),
      0,
      0.05,
    ),
  ];
}

/** Share of a sweep's steps that go the right way or stay. */
function sweepRow(id: string, what: string, values: readonly number[]): Row {
  const steps = values.length - 1;
  const right = values.slice(1).filter((value, index) => value >= values[index]! - 1e-12).length;
  const ends = `${values[0]!.toFixed(3)} to ${values.at(-1)!.toFixed(3)}`;
  return factRow(
    { id, what, source: 'common sense; required of the model' },
    'never falls',
    `${right} of ${steps} steps, ${ends}`,
    right === steps && values.at(-1)! > values[0]!,
  );
}

function grid(from: number, to: number, step: number): readonly number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
}

function roomRow(): Row {
  return sweepRow(
    'lane-room',
    'completion of a 15 yd pass as a standing defender moves from 0 to 8 yd off it',
    grid(0, 8, 0.25).map((x) => completion([[x, 8]], [0, 15], 25)),
  );
}

function speedRow(): Row {
  return sweepRow(
    'lane-speed',
    'completion as the ball goes from 12 to 40 yd/s, defender 1.5 yd off',
    grid(12, 40, 1).map((speed) => completion([[2.5, 8]], [0, 15], speed)),
  );
}

function stickRow(): Row {
  return sweepRow(
    'lane-stick',
    'completion as the stick shortens from 2.8 to .8 yd, defender 1.5 yd off',
    grid(0, 2, 0.1).map((less) => completion([[1.5, 8]], [0, 15], 25, 2.8 - less)),
  );
}

function behindRow(): Row {
  const ours = [completion([[0, -1.5]], [0, 10], 27), completion([[0, 11.5]], [0, 10], 27)];
  return factRow(
    { id: 'lane-behind', what: 'a man behind the passer or beyond the receiver', source: 'required of the model' },
    '1 and 1',
    ours.map((value) => value.toFixed(3)).join(' and '),
    ours.every((value) => value === 1),
  );
}
