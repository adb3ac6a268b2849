import { duty, type Play, type Point, type Spot, type Trace, type TraceEvent } from '../engine/index.ts';
import type { FieldMarkings } from './field-scene.ts';

// A play and a trace small enough to check by hand.

/** The classic field: goal line 15 yd from the end line, box 40 wide and 20 above the goal line, crease 9 ft. */
export const handMadeField: FieldMarkings = {
  halfWidth: 30,
  behind: 15,
  restraining: 20,
  midfield: 40,
  boxHalfWidth: 20,
  creaseRadius: 3,
  goalHalfWidth: 1,
  goalDepth: 7 / 3,
};

function spot(id: string, x: number, y: number): Spot {
  const needs = { feed: 1, shoot: 1, inside: 1, handle: 1 };
  return { id, at: { x, y }, hand: 'either', needs, safety: 'none' };
}

export const handMadePlay: Play = {
  id: 'far-corner',
  name: 'Far corner <skip & shoot>',
  spots: [
    spot('P', 0, 14),
    spot('TR', 9, 12),
    spot('TL', -9, 12),
    spot('WR', 8, 4),
    spot('WL', -8, 4),
    spot('C', 1.5, 6),
  ],
  start: { ball: 'P', restart: { x: 0, y: 22 } },
  beats: [
    {
      id: 'open',
      when: { kind: 'start' },
      actions: [
        {
          kind: 'carry',
          by: 'P',
          path: [
            { x: 3, y: 13 },
            { x: 4.5, y: 11.5 },
          ],
        },
        {
          kind: 'run',
          run: 'replace',
          by: 'TL',
          path: [
            { x: -4, y: 14.5 },
            { x: -1, y: 14.5 },
          ],
          go: 'now',
        },
        { kind: 'pass', by: 'P', to: 'TR', style: 'adjacent' },
      ],
    },
    {
      id: 'skip',
      when: { kind: 'catch', by: 'TR' },
      actions: [
        { kind: 'fake', by: 'TR', toward: 'WR' },
        { kind: 'pick', by: 'C', at: { x: -2.5, y: 5.5 }, on: 'WL' },
        { kind: 'stepIn', by: 'WL', to: { x: -6, y: 6 } },
        { kind: 'seal', by: 'WR', on: 'C' },
        { kind: 'pass', by: 'TR', to: 'WL', style: 'skip' },
      ],
    },
    { id: 'finish', when: { kind: 'catch', by: 'WL' }, actions: [{ kind: 'shot', by: 'WL' }] },
  ],
  reads: [],
  reset: { ball: 'P', then: 'again' },
};

export const handMadeNames = {
  play: 'Far corner',
  scheme: 'Box and one, zone',
  offense: ['P', 'TR', 'TL', 'WR', 'WL', 'C'],
  defense: ['tr', 'tl', 'lr', 'll', 'c'],
  reads: ['free: shoot', 'open WL: skip WL'],
  lastTenReads: ['always: shoot'],
  beats: { flow: 'P pass TR' },
} as const;

const step = 0.05;
const passTime = 0.5;
const catchTime = 1;
const lastTime = 2;

const offenseStart: readonly Point[] = handMadePlay.spots.map((one) => one.at);
const offenseEnd: readonly Point[] = offenseStart.map((at, index) => (index === 4 ? { x: -6, y: 6 } : at));
const defenseStart: readonly Point[] = [
  { x: 6.5, y: 10.5 },
  { x: 0, y: 10 },
  { x: 6, y: 4 },
  { x: -3.5, y: 3.5 },
  { x: 1.8, y: 4.8 },
];
const defenseEnd: readonly Point[] = [
  { x: 6, y: 9.5 },
  { x: -1, y: 10 },
  { x: 5, y: 3.5 },
  { x: -4.5, y: 4.8 },
  { x: 1, y: 5 },
];

const events: readonly TraceEvent[] = [
  { kind: 'setUp', time: 0 },
  { kind: 'beat', time: 0, beat: 'skip', lastTen: false },
  {
    kind: 'pass',
    time: passTime,
    from: 1,
    to: 4,
    style: 'skip',
    lob: false,
    completion: 0.86,
    believed: 0.86,
    why: 'script',
  },
  { kind: 'duty', time: 0.75, by: 3, duty: duty.ball, a: 4, b: -1, late: 0.3 },
  { kind: 'catch', time: catchTime, who: 4 },
  { kind: 'shot', time: 1.5, who: 4, goalOdds: 0.31, distance: 8.5, pressed: false, assistedBy: 1 },
  { kind: 'goal', time: 1.65, who: 4, assistedBy: 1 },
  { kind: 'end', time: 1.65, how: 'goal' },
];

/** TR skips to WL at .5 s, WL catches at 1 s, shoots at 1.5 s and scores: 41 frames of .05 s, men on straight lines. */
export function handMadeTrace(): Trace {
  const frames = Math.round(lastTime / step) + 1;
  const agents = 12;
  const defenders = 5;
  const places = new Float32Array(frames * agents * 2);
  const ball = new Float32Array(frames * 3);
  const holder = new Int8Array(frames);
  const duties = new Int8Array(frames * defenders * 3);
  for (let frame = 0; frame < frames; frame += 1) {
    const time = frame * step;
    const share = time / lastTime;
    const men = [
      ...offenseStart.map((at, index) => between(at, offenseEnd[index]!, share)),
      ...defenseStart.map((at, index) => between(at, defenseEnd[index]!, share)),
      { x: -0.3 * share, y: 1 },
    ];
    men.forEach((at, agent) => {
      places.set([at.x, at.y], (frame * agents + agent) * 2);
    });
    ball.set(ballAt(time, men), frame * 3);
    holder[frame] = time < passTime ? 1 : time >= catchTime && time < 1.5 ? 4 : -1;
    duties.set(dutiesAt(time), frame * defenders * 3);
  }
  return {
    step,
    frames,
    agents,
    defenders,
    places_byFrame: places,
    ball_byFrame: ball,
    holder_byFrame: holder,
    duties_byFrame: duties,
    events,
  };
}

function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

function ballAt(time: number, men: readonly Point[]): readonly number[] {
  const passer = men[1]!;
  const shooter = men[4]!;
  if (time < passTime) return [passer.x, passer.y, 1.5];
  if (time < catchTime) {
    const at = between(passer, shooter, (time - passTime) / (catchTime - passTime));
    return [at.x, at.y, 2];
  }
  if (time < 1.5) return [shooter.x, shooter.y, 1.5];
  const at = between(shooter, { x: -0.6, y: 0 }, Math.min(1, (time - 1.5) / 0.15));
  return [at.x, at.y, 1];
}

function dutiesAt(time: number): readonly number[] {
  const low = time < 0.75 ? [duty.split, 4, 2] : [duty.ball, 4, -1];
  return [duty.ball, 1, -1, duty.lane, 0, -1, duty.man, 3, -1, ...low, duty.lock, 5, -1];
}
