import {
  arrivalTime,
  centimetres,
  inches,
  interceptTime,
  metres,
  reachableAt,
  stickReachOf,
  toMetres,
} from '../../src/engine/index.ts';
import { factRow, type Group, nearRow, printedRow, type Row } from './row.ts';

/** A runner at `p` with speed `s` meets a ball that leaves (0, 0) with velocity (v, 0). Metres. */
const intercepts = [
  { p: [7.5, 2], v: 15, s: 5, seconds: 0.439389 },
  { p: [7.5, 4], v: 15, s: 5, seconds: Number.POSITIVE_INFINITY },
  { p: [12, 1.5], v: 20, s: 6, seconds: 0.477835 },
] as const;

/**
 * First arrival of a man whose acceleration is bounded by a disc of `a`, as a fence: smallest root of
 * a^2 t^4 / 4 - |v|^2 t^2 + 2 r.v t - |r|^2 = 0. `r` is where he wants to be from where he is. Metres.
 */
const discs = [
  { r: [10, 0], v: [0, 0], a: 4, seconds: 2.236068 },
  { r: [0, 10], v: [5, 0], a: 4, seconds: 3.003538 },
  { r: [-10, 0], v: [5, 0], a: 4, seconds: 3.811738 },
  { r: [3, 4], v: [2, -1], a: 5, seconds: 1.480646 },
  { r: [3, 0], v: [6, 0], a: 4, seconds: 0.436492 },
  { r: [2, 0.5], v: [6, 0], a: 4, seconds: 2.620069 },
] as const;

/** Sideways reach with one hand from the body's middle, cm, by stature (CDC 2000 medians), arm (Pheasant) and crosse less 10 cm. */
const sticks = [
  { age: 10, height: 139, crosse: 37, reach: 153 },
  { age: 10, height: 139, crosse: 52, reach: 191 },
  { age: 12, height: 149, crosse: 42, reach: 171 },
  { age: 12, height: 149, crosse: 60, reach: 217 },
  { age: 14, height: 164, crosse: 42, reach: 178 },
  { age: 14, height: 164, crosse: 72, reach: 254 },
  { age: 18, height: 176, crosse: 42, reach: 184 },
  { age: 18, height: 176, crosse: 72, reach: 260 },
] as const;

export function reachGroup(): Group {
  return {
    id: 'reach',
    title: 'Reach and intercept',
    about:
      'When a man can meet a ball, and how far a stick reaches. The bounded-acceleration rows are solved here by the reachable test of a disc that grows with a t^2 / 2; the engine itself moves by the drag model, and two rows check that its discs are not taken to be nested.',
    rows: [
      ...intercepts.map(interceptRow),
      ...discs.map(discRow),
      threeRootsRow(),
      dragSpellRow(),
      ...sticks.map(stickRow),
    ],
  };
}

function interceptRow({ p, v, s, seconds }: (typeof intercepts)[number]): Row {
  const ours = interceptTime(metres(p[0]), metres(p[1]), metres(s), 0, 0, metres(v), 0);
  const label = {
    id: `intercept-${p[0]}-${p[1]}`,
    what: `from (${p[0]}, ${p[1]}) m at ${s} m/s, ball at ${v} m/s, s`,
    source: 'quadratic, solved apart',
  };
  if (seconds === Number.POSITIVE_INFINITY)
    return factRow(label, 'never', ours === seconds ? 'never' : `${ours}`, ours === seconds);
  return printedRow(label, seconds, ours, 6);
}

/** Whether a bounded-acceleration man can be at r at `time`. */
function inDisc(r: readonly number[], v: readonly number[], a: number, time: number): boolean {
  return Math.hypot(r[0]! - v[0]! * time, r[1]! - v[1]! * time) <= (a * time * time) / 2;
}

/** Times at which the answer of `there` turns, found on a grid and halved. */
function turns(there: (time: number) => boolean, longest: number): readonly number[] {
  const found: number[] = [];
  const step = 1e-3;
  for (let time = step; time < longest; time += step) {
    if (there(time) === there(time - step)) continue;
    let [before, after] = [time - step, time];
    for (let round = 0; round < 50; round++) {
      const middle = (before + after) / 2;
      if (there(middle) === there(before)) before = middle;
      else after = middle;
    }
    found.push(after);
  }
  return found;
}

function discRow({ r, v, a, seconds }: (typeof discs)[number]): Row {
  return printedRow(
    {
      id: `disc-${r[0]}-${r[1]}`,
      what: `acceleration ${a} m/s2, to (${r[0]}, ${r[1]}) m from (${v[0]}, ${v[1]}) m/s, s`,
      source: 'Taki and Hasegawa 2000; quartic, solved apart',
    },
    seconds,
    turns((time) => inDisc(r, v, a, time), 6)[0] ?? Number.NaN,
    6,
  );
}

function threeRootsRow(): Row {
  const roots = turns((time) => inDisc([3, 0], [6, 0], 4, time), 6).map((root) => root.toFixed(6));
  const published = ['0.436492', '0.633975', '2.366025'];
  return factRow(
    { id: 'three-roots', what: 'he runs past: there, gone, there again, s', source: 'quartic, solved apart' },
    published.join(', '),
    roots.join(', '),
    roots.join() === published.join(),
  );
}

function dragSpellRow(): Row {
  const there = (time: number) => reachableAt(7, 1.2, 0, 0, 7, 0, 1, 0.02, 0, time);
  const first = arrivalTime(7, 1.2, 0, 0, 7, 0, 1, 0.02, 0);
  const words = [0.16, 0.4, 3].map((time) => `${time} s ${there(time) ? 'there' : 'not'}`).join(', ');
  return factRow(
    {
      id: 'drag-not-nested',
      what: 'drag model at 7 yd/s past a point: reachable at a time, not from a time on',
      source: 'Fujimura and Sugihara 2005: discs are not nested',
    },
    '0.16 s there, 0.4 s not, 3 s there',
    words,
    first < 0.4 && there(0.16) && !there(0.4) && there(3),
  );
}

function stickRow({ age, height, crosse, reach }: (typeof sticks)[number]): Row {
  return nearRow(
    {
      id: `stick-${age}-${crosse}`,
      what: `stick reach at ${age} years, ${crosse} in crosse, cm`,
      source: 'CDC 2000 stature, Pheasant arm, rulebook crosse',
    },
    reach,
    100 * toMetres(stickReachOf(centimetres(height), inches(crosse))),
    1,
    0,
  );
}
