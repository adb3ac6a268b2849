import { settleDefense, steerDefense } from '../chance/coverage.ts';
import { createChanceState, resetState } from '../chance/create-state.ts';
import type { Matchup } from '../chance/matchup.ts';
import { type ChanceModel, compileChance } from '../chance/model.ts';
import { remember, rememberAll } from '../chance/perceive.ts';
import { ballMode, type ChanceState, historySteps, stepSeconds, stride } from '../chance/state.ts';
import type { Discipline, Scheme } from '../defense/scheme.ts';
import { insideHand } from '../offense/sets/offense-set.ts';
import type { Level } from '../people/athlete.ts';
import { resolveContacts } from '../people/contact.ts';
import { createAthlete, createKeeper } from '../people/create-athlete.ts';
import { stepAll } from '../people/motion.ts';
import { normalPair, uniform } from '../random/draws.ts';
import type { FilmPath } from './film-path.ts';

/** One way that a man-down unit may be playing: what is rehearsed against a film. */
export interface Suspect {
  readonly scheme: Scheme;
  /** How well all of them play it. */
  readonly discipline: Discipline;
  /** Offense index of the man whom they shut off; -1 when it is nobody. */
  readonly star: number;
}

/** A unit that can be rehearsed against any film: memory for one rehearsal after another. */
export interface Rehearsal {
  readonly model: ChanceModel;
  readonly state: ChanceState;
}

/** What the defenders did in one rehearsal: a line a moment. */
export interface Rehearsed {
  /** Numbers a moment: x at 2i, y at 2i + 1, in the order of the scheme's names. */
  readonly places_byMoment: Float64Array;
  /** Three numbers a defender and moment: the kind of his duty, and whom it names. */
  readonly duties_byMoment: Int8Array;
}

export interface RehearsalChoice {
  readonly level: Level;
  readonly seed: number;
  /** +1 as the scheme is written, -1 its mirror image. */
  readonly sense: 1 | -1;
}

/** Get a unit ready. Men of one level on both sides; the six are only walked through. */
export function createRehearsal({ scheme, discipline, star }: Suspect, choice: RehearsalChoice): Rehearsal {
  const { level, seed, sense } = choice;
  const model = compileChance(walkedThrough(scheme, discipline, star, level, sense), seed);
  const state = createChanceState(model);
  return { model, state };
}

const ids = ['A', 'B', 'C', 'D', 'E', 'F'] as const;

/** A matchup whose six have nothing to do but to be where the film has them. */
function walkedThrough(scheme: Scheme, discipline: Discipline, star: number, level: Level, sense: 1 | -1): Matchup {
  const six = ids.map(() => createAthlete({ level, hand: 'right', crosse: 'short' }));
  const needs = { feed: 1, shoot: 1, inside: 1, handle: 1 } as const;
  return {
    play: {
      id: 'walked-through',
      name: 'Walked through',
      // Where the six begin is overwritten by the film before anybody looks.
      spots: ids.map((id, man) => ({
        id,
        at: { x: 3 * man - 7.5, y: 12 },
        hand: insideHand(3 * man - 7.5),
        needs,
        safety: 'none',
      })),
      start: { ball: 'A', restart: { x: 0, y: 21 } },
      beats: [{ id: 'stand', when: { kind: 'start' }, actions: [] }],
      reads: [],
      reset: { ball: 'A', then: 'free' },
    },
    six,
    scheme,
    defenders: scheme.names.map((_, index) =>
      createAthlete({ level, hand: 'right', crosse: scheme.shortSticks.includes(index) ? 'short' : 'pole' }),
    ),
    discipline: scheme.names.map(() => discipline),
    keeper: createKeeper({ level }),
    penalty: { seconds: 600, releasable: true, start: 'restart', shotClock: null },
    sense,
    ...(star >= 0 && { star: ids[star] }),
  };
}

/** Memory for what is seen in a rehearsal of a film of so many moments. */
export function createRehearsed(moments: number, defenders: number): Rehearsed {
  return {
    places_byMoment: new Float64Array(2 * defenders * moments),
    duties_byMoment: new Int8Array(3 * defenders * moments),
  };
}

/** Draws of a rehearsal have kinds of their own, far from those of a trial. */
const rehearsalDraw = 40;

/**
 * Let the unit play its scheme against a film once: the six walk from mark to mark, the ball goes from man to man, and the defenders answer as they do in any
 * trial, each with his own eyes, feet and luck. `take` is which luck: when passes leave that nobody timed, where the ball came from first, who is late.
 * The same take of the same unit gives the same rehearsal; nothing is kept from one to the next. `watch`, when given, sees every step.
 */
export function rehearse(
  rehearsal: Rehearsal,
  path: FilmPath,
  take: number,
  out: Rehearsed,
  watch?: (state: ChanceState) => void,
): void {
  const { model, state } = rehearsal;
  const moments = path.ball_byMoment.length;
  if (moments === 0) return;
  begin(model, state, path, take);
  for (let at = 0; at < moments; at++) {
    const pass = passTo(model, path, at, take);
    while (state.time < path.time_byMoment[at]! - stepSeconds / 2) {
      step(model, state, path, at, pass);
      watch?.(state);
    }
    keep(model, state, at, out);
  }
}

/** Everyone in his place, the ball with the man who had it before the film begins. */
function begin(model: ChanceModel, state: ChanceState, path: FilmPath, take: number): void {
  resetState(model, state, take);
  const { bodies, ball, coverage } = state;
  state.penaltyEnds = path.time_byMoment[path.time_byMoment.length - 1]! + path.timeLeft;
  const holder = firstHolder(model, path, take);
  shiftSix(model, take, path.uncertain);
  for (let man = 0; man < 6; man++) {
    bodies.motion[stride * man] = path.places_byMoment[2 * man]! + shift[2 * man]!;
    bodies.motion[stride * man + 1] = path.places_byMoment[2 * man + 1]! + shift[2 * man + 1]!;
  }
  ball.holder = holder;
  ball.from = holder;
  ball.x = bodies.motion[stride * holder]!;
  ball.y = bodies.motion[stride * holder + 1]!;
  state.holder_byStep.fill(holder);
  coverage.view.inside.fill(0);
  coverage.view.ball = holder;
  coverage.view.previousBall = -1;
  coverage.memory.fill(0);
  rememberAll(state);
  settleDefense(model, state);
  rememberAll(state);
}

/** How far off each of the six is taken to stand in the take under way: nobody knows his place to the foot, and duties hang on it. */
const shift = new Float64Array(12);

function shiftSix(model: ChanceModel, take: number, uncertain: number): void {
  for (let man = 0; man < 6; man++) {
    normalPair(model.draws, take, man, rehearsalDraw, 2);
    shift[2 * man] = uncertain * model.draws.normals[0]!;
    shift[2 * man + 1] = uncertain * model.draws.normals[1]!;
  }
}

/** One in three takes begins with the ball where it is first seen, the others with a neighbour: nobody marked where it came from. */
function firstHolder(model: ChanceModel, path: FilmPath, take: number): number {
  const came = path.before[Math.floor(3 * uniform(model.draws, take, 0, rehearsalDraw, 0))];
  return came ?? path.ball_byMoment[0]!;
}

interface FilmPass {
  readonly leaves: number;
  readonly arrives: number;
}

/** Flights are about as fast as this, yards a second: 40 mph (doctrine of timing, common practice, no source). */
const passSpeed = 19;
/** A mark is set when the ball has been with its man for between this and that, unless somebody says (common practice, no source). Seconds. */
const held = { least: 0.2, most: 1.2 } as const;

/** When the ball leaves the man who had it and comes to the one who has it at this moment: as marked, else within about a second before. */
function passTo(model: ChanceModel, path: FilmPath, at: number, take: number): FilmPass {
  const now = path.time_byMoment[at]!;
  const said = path.since_byMoment[at]!;
  const luck = uniform(model.draws, take, at, rehearsalDraw, 1);
  const since = Number.isNaN(said) ? held.least + luck * (held.most - held.least) : said;
  const from = at === 0 ? 0 : path.time_byMoment[at - 1]!;
  const flight = flightTo(path, at);
  const arrives = Math.min(now, Math.max(now - since, from + flight));
  return { leaves: Math.max(from, arrives - flight), arrives };
}

function flightTo(path: FilmPath, at: number): number {
  if (at === 0) return 0.5;
  const one = path.ball_byMoment[at - 1]!;
  const other = path.ball_byMoment[at]!;
  const dx = path.places_byMoment[12 * at + 2 * other]! - path.places_byMoment[12 * (at - 1) + 2 * one]!;
  const dy = path.places_byMoment[12 * at + 2 * other + 1]! - path.places_byMoment[12 * (at - 1) + 2 * one + 1]!;
  return Math.sqrt(dx * dx + dy * dy) / passSpeed;
}

/** One step toward moment `at`: the six along their way, the ball along its own, and the defense as in any trial. */
function step(model: ChanceModel, state: ChanceState, path: FilmPath, at: number, pass: FilmPass): void {
  const { bodies } = state;
  state.step++;
  state.time = state.step * stepSeconds;
  moveSix(state, path, at);
  moveBall(state, path, at, pass);
  steerDefense(model, state);
  stepAll(model.movers, bodies.motion, bodies);
  resolveContacts(bodies.motion, 0, model.keeper, bodies.planted);
  moveSix(state, path, at);
  state.holder_byStep[state.step & (historySteps - 1)] = state.ball.holder;
  remember(state);
}

function moveSix(state: ChanceState, path: FilmPath, at: number): void {
  const { motion } = state.bodies;
  const { time_byMoment, places_byMoment, speeds_byMoment } = path;
  const before = Math.max(0, at - 1);
  const whole = time_byMoment[at]! - time_byMoment[before]!;
  const share = whole > 0 ? Math.min(1, (state.time - time_byMoment[before]!) / whole) : 1;
  for (let man = 0; man < 6; man++) {
    const from = 12 * before + 2 * man;
    const to = 12 * at + 2 * man;
    motion[stride * man] =
      places_byMoment[from]! + share * (places_byMoment[to]! - places_byMoment[from]!) + shift[2 * man]!;
    motion[stride * man + 1] =
      places_byMoment[from + 1]! +
      share * (places_byMoment[to + 1]! - places_byMoment[from + 1]!) +
      shift[2 * man + 1]!;
    motion[stride * man + 2] = at === 0 ? 0 : speeds_byMoment[from]!;
    motion[stride * man + 3] = at === 0 ? 0 : speeds_byMoment[from + 1]!;
  }
}

function moveBall(state: ChanceState, path: FilmPath, at: number, pass: FilmPass): void {
  const { ball, bodies } = state;
  const to = path.ball_byMoment[at]!;
  if (ball.mode === ballMode.held && ball.holder !== to && state.time >= pass.leaves) {
    ball.mode = ballMode.pass;
    ball.from = ball.holder;
    ball.to = to;
    ball.fromX = bodies.motion[stride * ball.holder]!;
    ball.fromY = bodies.motion[stride * ball.holder + 1]!;
    ball.startAt = state.time;
    ball.passer = ball.holder;
    ball.holder = -1;
  }
  if (ball.mode === ballMode.pass && state.time >= pass.arrives) {
    ball.mode = ballMode.held;
    ball.holder = ball.to;
  }
  if (ball.mode === ballMode.held) {
    ball.x = bodies.motion[stride * ball.holder]!;
    ball.y = bodies.motion[stride * ball.holder + 1]!;
    return;
  }
  const whole = pass.arrives - ball.startAt;
  const share = whole > 0 ? Math.min(1, (state.time - ball.startAt) / whole) : 1;
  ball.x = ball.fromX + share * (bodies.motion[stride * ball.to]! - ball.fromX);
  ball.y = ball.fromY + share * (bodies.motion[stride * ball.to + 1]! - ball.fromY);
}

function keep(model: ChanceModel, state: ChanceState, at: number, out: Rehearsed): void {
  const defenders = model.covering;
  const { motion } = state.bodies;
  const { played } = state.coverage;
  for (let defender = 0; defender < defenders; defender++) {
    const to = at * defenders + defender;
    out.places_byMoment[2 * to] = motion[stride * (6 + defender)]!;
    out.places_byMoment[2 * to + 1] = motion[stride * (6 + defender) + 1]!;
    out.duties_byMoment[3 * to] = played.kind[defender]!;
    out.duties_byMoment[3 * to + 1] = played.a[defender]!;
    out.duties_byMoment[3 * to + 2] = played.b[defender]!;
  }
}
