import {
  arrivalTime,
  createAthlete,
  createMovers,
  type Level,
  metres,
  motionStride,
  setMover,
  sprintLead,
  sprintTime,
  stepToward,
} from '../../src/engine/index.ts';
import { type Group, nearRow, printedRow, type Row, rangeRow } from './row.ts';

/** Fujimura and Sugihara's model with the constants of grown field-hockey players; distances and speeds along the way, metres. */
const arrivals = [
  { drag: 1.3, distance: 1, v: [0, 0], seconds: 0.491289 },
  { drag: 1.3, distance: 2, v: [0, 0], seconds: 0.726487 },
  { drag: 1.3, distance: 5, v: [0, 0], seconds: 1.260921 },
  { drag: 1.3, distance: 10, v: [0, 0], seconds: 1.993677 },
  { drag: 1.3, distance: 20, v: [0, 0], seconds: 3.323103 },
  { drag: 1, distance: 1, v: [0, 0], seconds: 0.552961 },
  { drag: 1, distance: 2, v: [0, 0], seconds: 0.812793 },
  { drag: 1, distance: 5, v: [0, 0], seconds: 1.392596 },
  { drag: 1, distance: 10, v: [0, 0], seconds: 2.167599 },
  { drag: 1, distance: 20, v: [0, 0], seconds: 3.534942 },
  { drag: 1.3, distance: 10, v: [5, 0], seconds: 1.519902 },
  { drag: 1.3, distance: 10, v: [-5, 0], seconds: 2.495122 },
  { drag: 1.3, distance: 10, v: [0, 5], seconds: 2.079835 },
] as const;

const combine = 'thedynamicathlete.ca 2013-10-18: 148 boys, ages inferred';

/** Medians over 20 yd by a hand or gate clock. */
const sprints = [
  { level: '12U', seconds: 3.52, group: 'youngest group' },
  { level: '14U', seconds: 3.25, group: 'second group' },
  { level: 'highSchool', seconds: (3.03 + 2.91) / 2, group: 'mean of the two oldest groups' },
] as const;

/** Shuttle of 5, 10 and 5 yd over 20 yd: medians of the three groups. */
const shuttles = [5.55 / 3.52, 5.42 / 3.25, 5.13 / 3.03];

/** 40 yd: rising from high school to recreational college men. */
const forties = [
  { level: 'highSchool', low: 4.9, high: 5.6, source: 'shotonmac.com, test norms: high school' },
  { level: 'college', low: 4.9, high: 5.2, source: 'shotonmac.com, test norms: college men about 5.0' },
] as const;

/** 10 m from a stand, s (from memory, so that a miss says little). */
const starts = [
  { level: '10U', seconds: 2.1 },
  { level: '12U', seconds: 2 },
  { level: '14U', seconds: 1.9 },
  { level: 'highSchool', seconds: 1.8 },
  { level: 'college', seconds: 1.75 },
] as const;

export function motionGroup(): Group {
  return {
    id: 'motion',
    title: 'Motion',
    about:
      'Arrival times of the drag model (V 7.8 m/s, a 1.3 and 1.0 /s), then the level presets against stopwatches. A clock starts with the first move, so .25 s is taken off (from memory).',
    rows: [
      ...arrivals.map(arrivalRow),
      ...sprints.map(sprintRow),
      shuttleRow(),
      ...forties.map(fortyRow),
      ...starts.map(startRow),
    ],
  };
}

function arrivalRow({ drag, distance, v, seconds }: (typeof arrivals)[number]): Row {
  const [vx, vy] = v;
  const start = vx === 0 && vy === 0 ? 'from rest' : `from (${vx}, ${vy}) m/s`;
  return printedRow(
    {
      id: `arrival-${drag}-${distance}-${vx}-${vy}`,
      what: `${distance} m ${start}, a ${drag}, s`,
      source: 'Fujimura and Sugihara 2005, doi 10.1002/scj.20254; root found apart',
    },
    seconds,
    arrivalTime(metres(7.8), drag, 0, 0, metres(vx), metres(vy), metres(distance), 0, 0),
    6,
  );
}

function usual(level: Level) {
  return createAthlete({ level, hand: 'right', crosse: 'short' });
}

function sprintRow({ level, seconds, group }: (typeof sprints)[number]): Row {
  const { topSpeed, drag } = usual(level);
  return nearRow(
    { id: `sprint-20-${level}`, what: `20 yd, ${level} (${group}), s`, source: combine },
    seconds,
    sprintTime(topSpeed, drag),
    0.1,
    2,
  );
}

function shuttleRow(): Row {
  const { topSpeed, drag } = usual('14U');
  const movers = createMovers(1, 0.01);
  setMover(movers, 0, topSpeed, drag);
  const motion = new Float64Array(motionStride);
  let time = 0;
  for (const line of [5, -5]) {
    // At the line he stops, touches, turns: within a hand's breadth and nearly still.
    while (Math.abs(motion[0]! - line) > 0.08 || Math.abs(motion[2]!) > 1) {
      stepToward(movers, motion, 0, line, 0, 1, 1);
      time += 0.01;
    }
  }
  for (; motion[0]! < 0; time += 0.01) stepToward(movers, motion, 0, 100, 0, 0, 1);
  const least = Math.min(...shuttles);
  const most = Math.max(...shuttles);
  return rangeRow(
    { id: 'shuttle', what: 'shuttle of 5, 10 and 5 yd over 20 yd, 14U', source: combine },
    shuttles.map((ratio) => ratio.toFixed(2)).join(', '),
    time / arrivalTime(topSpeed, drag, 0, 0, 0, 0, 20, 0, 0),
    least,
    most + 0.05,
  );
}

function fortyRow({ level, low, high, source }: (typeof forties)[number]): Row {
  const { topSpeed, drag } = usual(level);
  const seconds = arrivalTime(topSpeed, drag, 0, 0, 0, 0, 40, 0, 0) - sprintLead;
  return rangeRow(
    { id: `sprint-40-${level}`, what: `40 yd, ${level}, s`, source },
    `${low} to ${high}`,
    seconds,
    low,
    high,
  );
}

function startRow({ level, seconds }: (typeof starts)[number]): Row {
  const { topSpeed, drag } = usual(level);
  const ours = arrivalTime(topSpeed, drag, 0, 0, 0, 0, metres(10), 0, 0) - sprintLead;
  return nearRow(
    { id: `start-10m-${level}`, what: `10 m from a stand, ${level}, s`, source: 'from memory' },
    seconds,
    ours,
    0.1,
    2,
  );
}
