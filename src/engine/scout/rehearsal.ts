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
  readonly begun: Begun;
}

/** What a take was begun with. */
interface Begun {
  /** How far off each of the six is taken to stand: nobody knows his place to the foot, and duties hang on it. x and y each, yards. */
  readonly shift: Float64Array;
  /** Whether the first ball came well before its moment, so that everybody has his place. */
  early: boolean;
  /** The side from which the man with the first ball brings it in himself; 0 when he does not. */
  carriedIn: 1 | 0 | -1;
  /** How long he has then been in his place at the first moment, s. */
  inPlaceFor: number;
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
  return { model, state, begun: { shift: new Float64Array(12), early: false, carriedIn: 0, inPlaceFor: 0 } };
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
  begin(rehearsal, path, take);
  for (let at = 0; at < moments; at++) {
    const pass = passTo(rehearsal, path, at, take);
    while (state.time < path.time_byMoment[at]! - stepSeconds / 2) {
      step(rehearsal, path, at, pass);
      watch?.(state);
    }
    keep(model, state, at, out);
  }
}

/** Everyone in his place, the ball with the man who had it before the film begins. */
function begin(rehearsal: Rehearsal, path: FilmPath, take: number): void {
  const { model, state, begun } = rehearsal;
  const { shift } = begun;
  resetState(model, state, take);
  const { bodies, ball, coverage } = state;
  state.penaltyEnds = path.time_byMoment[path.time_byMoment.length - 1]! + path.timeLeft;
  const beginning = beginningOf(model, path, take);
  const holder = beginning.kind === 'from' ? beginning.man : path.ball_byMoment[0]!;
  begun.early = beginning.kind === 'from' && beginning.early;
  begun.carriedIn = beginning.kind === 'carried' ? beginning.side : 0;
  begun.inPlaceFor = inPlace.least + (inPlace.most - inPlace.least) * uniform(model.draws, take, 2, rehearsalDraw, 0);
  shiftSix(rehearsal, take, path.uncertain);
  for (let man = 0; man < 6; man++) {
    bodies.motion[stride * man] = path.places_byMoment[2 * man]! + shift[2 * man]!;
    bodies.motion[stride * man + 1] = path.places_byMoment[2 * man + 1]! + shift[2 * man + 1]!;
  }
  if (begun.carriedIn !== 0) bringIn(state, path, begun);
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

function shiftSix({ model, begun: { shift } }: Rehearsal, take: number, uncertain: number): void {
  for (let man = 0; man < 6; man++) {
    normalPair(model.draws, take, man, rehearsalDraw, 2);
    shift[2 * man] = uncertain * model.draws.normals[0]!;
    shift[2 * man + 1] = uncertain * model.draws.normals[1]!;
  }
}

/** Where the ball comes from before the first moment: nobody marked it, so each take is of one kind. `early`: it came well before. */
type Beginning =
  | { readonly kind: 'from'; readonly man: number; readonly early: boolean }
  | { readonly kind: 'carried'; readonly side: 1 | -1 };

/**
 * Half of the takes begin with a man who brings the ball in from where play was restarted, as most man-ups do; the others with a pass from a neighbour, half of
 * them just now. In a lap from the set all begin with a pass.
 */
function beginningOf(model: ChanceModel, path: FilmPath, take: number): Beginning {
  const luck = uniform(model.draws, take, 0, rehearsalDraw, 0);
  const isOne = uniform(model.draws, take, 1, rehearsalDraw, 0) < 0.5;
  if (path.carried && luck < carriedIn) return { kind: 'carried', side: isOne ? 1 : -1 };
  return { kind: 'from', man: path.before[isOne ? 0 : 1]!, early: luck > 1 - longThere };
}

/** Shares of takes (assumption: what is marked first is mostly the first ball of the set). */
const carriedIn = 0.5;
const longThere = 0.25;

/** Play is restarted outside the box, on one side or the other (common practice, no source). Yards. */
const restart = { x: 12, y: 21 } as const;
/** He is in his place this long before the first moment, and looks round: between one and the other. Seconds. */
const inPlace = { least: 1, most: 3.5 } as const;

/** How far in the man who brings the ball has come: 1 when he is in his place. */
function carriedShare(path: FilmPath, time: number, inPlaceFor: number): number {
  return Math.min(1, time / (path.time_byMoment[0]! - inPlaceFor));
}

interface FilmPass {
  readonly leaves: number;
  readonly arrives: number;
}

/** Flights are about as fast as this, yards a second: 40 mph (doctrine of timing, common practice, no source). */
const passSpeed = 19;
/** A ball that came early came so soon after the rehearsal began. Seconds. */
const early = 0.6;
/** A mark is set when the ball has been with its man for between this and that, unless somebody says (common practice, no source). Seconds. */
const held = { least: 0.2, most: 1.2 } as const;

/** When the ball leaves the man who had it and comes to the one who has it at this moment: as marked, else within about a second before. */
function passTo({ model, begun }: Rehearsal, path: FilmPath, at: number, take: number): FilmPass {
  const now = path.time_byMoment[at]!;
  const said = at === 0 && begun.early ? now - early : path.since_byMoment[at]!;
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
function step(rehearsal: Rehearsal, path: FilmPath, at: number, pass: FilmPass): void {
  const { model, state, begun } = rehearsal;
  const { bodies } = state;
  state.step++;
  state.time = state.step * stepSeconds;
  moveSix(state, begun, path, at);
  moveBall(state, path, at, pass);
  steerDefense(model, state);
  stepAll(model.movers, bodies.motion, bodies);
  resolveContacts(bodies.motion, 0, model.keeper, bodies.planted);
  moveSix(state, begun, path, at);
  state.holder_byStep[state.step & (historySteps - 1)] = state.ball.holder;
  remember(state);
}

function moveSix(state: ChanceState, begun: Begun, path: FilmPath, at: number): void {
  const { shift } = begun;
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
  if (begun.carriedIn !== 0 && at === 0) bringIn(state, path, begun);
}

/** Put the man with the first ball where he is on his way in from the restart. */
function bringIn(state: ChanceState, path: FilmPath, { carriedIn: side, inPlaceFor }: Begun): void {
  const { motion } = state.bodies;
  const man = path.ball_byMoment[0]!;
  const [toX, toY] = [motion[stride * man]!, motion[stride * man + 1]!];
  const [fromX, fromY] = path.restart === null ? [side * restart.x, restart.y] : [path.restart.x, path.restart.y];
  const share = carriedShare(path, state.time, inPlaceFor);
  motion[stride * man] = fromX + share * (toX - fromX);
  motion[stride * man + 1] = fromY + share * (toY - fromY);
  if (share >= 1) return;
  const whole = path.time_byMoment[0]! - inPlaceFor;
  motion[stride * man + 2] = (toX - fromX) / whole;
  motion[stride * man + 3] = (toY - fromY) / whole;
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
