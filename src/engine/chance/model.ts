import { createLane, defaultLaneParameters, type Lane, type LaneMovers, type LaneParameters } from '../ball/lane.ts';
import { createPlacement, type Placement } from '../ball/pass-placement.ts';
import { sharedShotTable } from '../ball/shared-shot-table.ts';
import { createShotOdds, createShotOutcome, type ShotOdds, type ShotOutcome } from '../ball/shot.ts';
import { defaultShotParameters, type ShotParameters } from '../ball/shot-parameters.ts';
import { type ShotTable, shotValue } from '../ball/shot-table.ts';
import { createShotTraffic, type ShotTraffic } from '../ball/shot-traffic.ts';
import { createShotSituation, rushOfOffHand, type ShotSituation } from '../ball/shot-view.ts';
import { createTouch, type Touch } from '../ball/touch.ts';
import type { DutyChange } from '../defense/discipline.ts';
import type { TargetParams } from '../defense/targets.ts';
import { usualField } from '../field/usual-field.ts';
import type { Athlete } from '../people/athlete.ts';
import { levelMean } from '../people/levels.ts';
import { createMovers, type Movers, setMover } from '../people/motion.ts';
import { arrivalTime, createPhiTable, type PhiTable } from '../people/reach.ts';
import { createDraws, type Draws } from '../random/draws.ts';
import type { Matchup } from './matchup.ts';
import { createOptions, type Options } from './options.ts';
import { type ChanceParameters, defaultChanceParameters } from './parameters.ts';
import { compileProgram, type Program } from './program.ts';
import { createShotAhead, type ShotAhead } from './shot-ahead.ts';
import { offSide } from './shot-hand.ts';
import { type ChanceState, historySteps, stepSeconds, stride } from './state.ts';

/**
 * Everything about a chance that no trial changes. Made once by `compileChance`; many trials share it.
 *
 * Agents are numbered: offense 0 to 5 in the order of the play's spots, the scheme's defenders from 6, then the released man
 * (when somebody is in the box), then the keeper. Only `draws` and `scratch` hold memory that is written to. Of a pass or
 * shot under way `scratch` keeps what was chosen and drawn, so one model serves one trial at a time.
 */
export interface ChanceModel {
  readonly matchup: Matchup;
  readonly parameters: ChanceParameters;
  readonly program: Program;
  readonly athletes: readonly Athlete[];
  readonly agents: number;
  /** Defenders that the scheme directs. */
  readonly covering: number;
  /** Agent index of the released man; -1 when nobody is in the box. */
  readonly released: number;
  /** How long the released man runs from the table until he is in the hole; 0 when nobody is in the box. Seconds. */
  readonly releasedRun: number;
  readonly keeper: number;
  readonly sense: 1 | -1;
  readonly flagDown: boolean;
  readonly movers: Movers;
  readonly phi: PhiTable;
  readonly laneMovers: LaneMovers;
  readonly reaction_byAgent: Float64Array;
  readonly reactionSteps_byAgent: Int32Array;
  /** Mean reaction of the covering defenders: how old the picture is by which they keep their places. */
  readonly defenseSteps: number;
  readonly defenseDelay: number;
  readonly targetParams: TargetParams;
  readonly shotParameters: ShotParameters;
  readonly laneParameters: LaneParameters;
  readonly shotTables: readonly ShotTable[];
  /** The rush that shooting from the side of his off hand is like, and the sign of x on that side (0: both hands). See `shot-hand.ts`. */
  readonly offHandRush_byMan: Float64Array;
  readonly offSide_byMan: Int8Array;
  /**
   * What an easy pass is worth in this unit's hands, 0 to 1: odds that are asked of a pass are shares of it. Boys who drop every
   * eighth ball still have to throw.
   */
  readonly passNorm: number;
  /** Where everyone stands at the whistle: x, y per agent. */
  readonly starts: Float64Array;
  /** Where everyone stands when the ball is put in play after a shot that went wide: six at their spots, defense home. */
  readonly homes: Float64Array;
  readonly star: number;
  readonly draws: Draws;
  readonly scratch: Scratch;
}

/** The free numbers of the whole chance, the shot and the lane, in one value. */
export interface ChanceSettings {
  readonly parameters: ChanceParameters;
  readonly shotParameters: ShotParameters;
  readonly laneParameters: LaneParameters;
}

export const defaultChanceSettings: ChanceSettings = {
  parameters: defaultChanceParameters,
  shotParameters: defaultShotParameters,
  laneParameters: defaultLaneParameters,
};

/** Memory for one calculation at a time. */
export interface Scratch {
  readonly lane: Lane;
  readonly touch: Touch;
  readonly placement: Placement;
  readonly options: Options;
  /** The bodies as the carrier who decides expects them; laid out like `motion`. */
  readonly foreseen: Float64Array;
  /** The same if nobody stops: his second look at a pass. */
  readonly secondLook: Float64Array;
  /** The shot that is being reckoned with. */
  readonly ahead: ShotAhead;
  readonly arrival: Float64Array;
  readonly odds: Float64Array;
  readonly point: Float64Array;
  readonly dutyChange: DutyChange;
  readonly shot: ShotSituation;
  readonly shotOdds: ShotOdds;
  readonly outcome: ShotOutcome;
  readonly traffic: ShotTraffic;
  /** Rush of the shot described last, 0 to 1. */
  rush: number;
}

/** Where a free clear is put in play: just over the midline. Yards. */
const overTheMidline = 38;

/** Where the run of a released man begins: the gate before the scorer's table at midfield. */
const table = usualField.gate;

/**
 * Compile a matchup for trials with `seed`.
 * @throws RangeError when the matchup does not have six attackers, or its defenders do not fit its scheme.
 */
export function compileChance(matchup: Matchup, seed: number, settings: Partial<ChanceSettings> = {}): ChanceModel {
  const { parameters, shotParameters, laneParameters } = { ...defaultChanceSettings, ...settings };
  checkMatchup(matchup);
  const { scheme, sense } = matchup;
  const program = compileProgram(matchup.play);
  const field = matchup.released === undefined ? matchup.defenders : [...matchup.defenders, matchup.released];
  const athletes: readonly Athlete[] = [...matchup.six, ...field, matchup.keeper];
  const agents = athletes.length;
  const covering = scheme.defenders;
  const movers = createMovers(agents, stepSeconds);
  athletes.forEach((athlete, agent) => {
    setMover(movers, agent, athlete.topSpeed, athlete.drag);
  });
  const reaction_byAgent = Float64Array.from(athletes, (athlete) => athlete.reaction);
  const reactionSteps_byAgent = Int32Array.from(athletes, (athlete) => stepsOf(athlete.reaction));
  const defenseSteps = stepsOf(mean(matchup.defenders.map((athlete) => athlete.reaction)));
  const starts = startPlaces(program, matchup, agents);
  const shotTables = matchup.six.map((athlete) => sharedShotTable(athlete, matchup.keeper, shotParameters));
  return {
    matchup,
    parameters: copyByField(inTheseHands(parameters, matchup, shotTables)),
    program,
    athletes,
    agents,
    covering,
    released: matchup.released === undefined ? -1 : 6 + covering,
    releasedRun: matchup.released === undefined ? 0 : runFromTable(matchup.released),
    keeper: agents - 1,
    sense,
    flagDown: matchup.penalty.start === 'flagDown',
    movers,
    phi: createPhiTable(movers.drag),
    laneMovers: {
      topSpeed_byAgent: movers.topSpeed,
      drag_byAgent: movers.drag,
      reaction_byAgent,
      stickReach_byAgent: Float64Array.from(athletes, (athlete) => athlete.stickReach),
    },
    reaction_byAgent,
    reactionSteps_byAgent,
    defenseSteps,
    defenseDelay: defenseSteps * stepSeconds,
    targetParams: { extends: scheme.extends, standoff: stickLength, sense },
    shotParameters,
    laneParameters: copyByField(sticksOf(matchup, laneParameters)),
    shotTables,
    offHandRush_byMan: Float64Array.from(matchup.six, (athlete) => rushOfOffHand(athlete, shotParameters)),
    offSide_byMan: Int8Array.from(matchup.six, offSide),
    passNorm: passNorm(matchup),
    starts,
    homes: homePlaces(program, starts),
    star: matchup.star === undefined ? -1 : program.spotIds.indexOf(matchup.star),
    draws: createDraws(seed),
    scratch: createScratch(agents),
  };
}

/**
 * What this unit expects of keeping the ball, and how much better than that a look must be: what was fitted for pros, scaled by what its
 * shots are worth against this keeper and by its passing. Boys who waited like pros would lose the ball before they shot
 * (docs/models/chance.md: what each level scores when it waits for more and for less).
 */
function inTheseHands(parameters: ChanceParameters, matchup: Matchup, tables: readonly ShotTable[]): ChanceParameters {
  const shot =
    mean(tables.map((table) => shotValue(table, 0, usualShot.distance, 0, usualShot.rush))) / usualShot.ofPros;
  const hands = shot * passNorm(matchup);
  const { evenStrength, continuationTop, playMargin, probeMargin, greedyMargin } = parameters;
  return {
    ...parameters,
    // Under a flag nothing is lost with the ball: the penalty comes all the same, so going on is worth only a better free shot.
    evenStrength: matchup.penalty.start === 'flagDown' ? 0 : evenStrength * hands,
    continuationTop: continuationTop * hands,
    playMargin: playMargin * hands,
    probeMargin: probeMargin * hands,
    greedyMargin: greedyMargin * hands,
  };
}

/** A shot by which units are compared: from the middle, half hurried, keeper in his place; and what pros score from there. */
const usualShot = { distance: 10, rush: 0.5, ofPros: 0.26 } as const;

function runFromTable({ topSpeed, drag }: Athlete): number {
  return arrivalTime(topSpeed, drag, table.x, table.y, 0, 0, hole.x, hole.y, hole.radius);
}

function checkMatchup(matchup: Matchup): void {
  const { six, scheme, defenders, discipline } = matchup;
  if (matchup.play.spots.length !== 6 || six.length !== 6) {
    throw new RangeError(
      `invalid six: ${six.length} athletes for ${matchup.play.spots.length} spots (expected 6 and 6)`,
    );
  }
  if (defenders.length !== scheme.defenders || discipline.length !== scheme.defenders) {
    throw new RangeError(
      `invalid defenders: ${defenders.length} athletes, ${discipline.length} disciplines (expected ${scheme.defenders} for ${scheme.id})`,
    );
  }
}

/** At least one: the picture of the step under way is not taken yet. */
function stepsOf(seconds: number): number {
  return Math.min(historySteps - 1, Math.max(1, Math.round(seconds / stepSeconds)));
}

/** A stick that drops every eighth catch also misses passing balls that a sure one would touch: by this power of it (assumption). */
const stickPower = 3;

function sticksOf(matchup: Matchup, laneParameters: LaneParameters): LaneParameters {
  const skill = mean(matchup.defenders.map((athlete) => athlete.catching)) / levelMean('pro', 'catching');
  return { ...laneParameters, touchRate: laneParameters.touchRate * skill ** stickPower };
}

/**
 * A copy to which the fields were added one by one, which gives all copies one shape. Spread copies come in two, by how often the runtime has
 * made them before, and a number that is read where either may come is put on the heap at each reading.
 */
function copyByField<Fields extends object>(from: Fields): Fields {
  const copy = {} as Fields;
  for (const field of Object.keys(from) as (keyof Fields)[]) copy[field] = from[field];
  return copy;
}

/** An easy pass is a little harder than the catch alone: it also has to come near the stick. */
const easyPassPower = 1.5;

function passNorm(matchup: Matchup): number {
  return mean(matchup.six.map((athlete) => athlete.catching)) ** easyPassPower;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Both units come on while the penalty is reported: at the whistle they stand in their places, the starter where the restart is taken. */
function startPlaces(program: Program, matchup: Matchup, agents: number): Float64Array {
  const places = new Float64Array(2 * agents);
  const { restart, homes } = program;
  const startY = matchup.penalty.start === 'clear' ? overTheMidline : restart.y;
  for (let who = 0; who < 6; who++) {
    const isStarter = who === program.starter;
    places[2 * who] = isStarter ? restart.x : homes[2 * who];
    places[2 * who + 1] = isStarter ? startY : homes[2 * who + 1];
  }
  matchup.scheme.home.forEach((value, at) => {
    places[12 + at] = at % 2 === 0 ? value * matchup.sense : value;
  });
  if (matchup.released !== undefined) {
    places[2 * (agents - 2)] = table.x * matchup.sense;
    places[2 * (agents - 2) + 1] = table.y;
  }
  places[2 * (agents - 1) + 1] = 1;
  return places;
}

function homePlaces(program: Program, starts: Float64Array): Float64Array {
  const places = Float64Array.from(starts);
  places.set(program.homes);
  return places;
}

/** Where the released man runs to, the middle of the hole in front of the goal, and how near to it he is in the play. Yards. */
export const hole = { x: 0, y: 6, radius: 3 } as const;

/** Distance that a defender keeps from the carrier he meets, yd: about a stick's length (doctrine: a stick-length off). */
const stickLength = 1.5;

function createScratch(agents: number): Scratch {
  return {
    lane: createLane(agents),
    touch: createTouch(),
    placement: createPlacement(),
    options: createOptions(),
    foreseen: new Float64Array(stride * agents),
    secondLook: new Float64Array(stride * agents),
    ahead: createShotAhead(),
    arrival: new Float64Array(agents),
    odds: new Float64Array(agents),
    point: new Float64Array(2),
    dutyChange: { late: 0, wrongMan: false, keepOld: false },
    shot: createShotSituation(),
    shotOdds: createShotOdds(),
    outcome: createShotOutcome(),
    traffic: createShotTraffic(agents),
    rush: 0.5,
  };
}

/** Seconds that the unit can still use: until the released man is in the hole, or to the moment a free shot under a flag should have been taken. */
export function timeLeft(model: ChanceModel, state: ChanceState): number {
  if (!model.flagDown) return Math.max(0, state.penaltyEnds + model.releasedRun - state.time);
  // A free shot that is overdue is still taken, the first that can be.
  return Math.max(0, flagShotWithin - state.time);
}

/** Under a flag the unit has one free shot and takes it within about this time (common practice, no source). Seconds. */
const flagShotWithin = 12;
