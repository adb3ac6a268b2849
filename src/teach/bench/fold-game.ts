import {
  type BoxEvent,
  otherSide,
  type PenaltyBox,
  penaltyBox,
  type RuleCode,
  type TeamSide,
} from '../../engine/index.ts';
import { type BenchChance, endedBy } from './bench-chance.ts';
import type { BenchEvent, BenchGame } from './bench-event.ts';
import { clockAfter, clockAtStart, clockLater, type GameClock } from './game-clock.ts';

/** All that follows from the taps of a game until a moment. */
export interface BenchState {
  readonly clock: GameClock;
  /** What happened to the box, by seconds of play. */
  readonly boxEvents: readonly BoxEvent[];
  readonly box: PenaltyBox;
  readonly score: Readonly<Record<TeamSide, number>>;
  /** On whom a flag is down; `null` when none is. */
  readonly flag: TeamSide | null;
  /** Numbers of ours who are not there. */
  readonly absent: readonly number[];
  /** Whose man-up it is: `us` when they have more men in the box. */
  readonly manUp: TeamSide | null;
  /** Chances that are over, oldest first. */
  readonly chances: readonly BenchChance[];
  /** The chance that is on. */
  readonly open: BenchChance | null;
  /** Calls so far. */
  readonly calls: number;
  /** Seconds of play when a man-up last ended because its time did, and whose it was; `null` when none has. */
  readonly ranOut: { readonly at: number; readonly side: TeamSide } | null;
  /** A timeout was the last thing before play goes on. */
  readonly afterTimeout: boolean;
  /** The newest tap ended a chance: the next may say by which look. */
  readonly awaitsLook: boolean;
}

/** Seconds of play after the end of a penalty in which a result still counts for it: the tap comes late, and so may the shot. */
export const lateResult = 20;

/** The game until its newest tap. */
export function foldGame({ settings, events }: BenchGame, code: RuleCode): BenchState {
  const wall = events[0]?.wall ?? 0;
  const begin: BenchState = {
    clock: clockAtStart(settings, wall),
    boxEvents: [],
    box: penaltyBox(code, [], 0),
    score: { us: 0, them: 0 },
    flag: null,
    absent: [],
    manUp: null,
    chances: [],
    open: null,
    calls: 0,
    ranOut: null,
    afterTimeout: false,
    awaitsLook: false,
  };
  return events.reduce((state, event) => {
    const before = stateLater(state, code, event.wall);
    const boxedAt = before.boxEvents.at(-1)?.at ?? 0;
    const clock = clockAfter(before.clock, event, settings, boxedAt);
    const next = happen({ ...before, clock, afterTimeout: goesOn(before, event) }, event);
    const awaitsLook = event.kind === 'result' || (event.kind === 'goal' && next.chances !== before.chances);
    return boxNow({ ...next, awaitsLook }, code, event.kind === 'fouls' ? 'fouls' : 'tap');
  }, begin);
}

/** The same at a later moment, with no tap since: clocks run, men come back, a man-up runs out. */
export function stateLater(state: BenchState, code: RuleCode, wall: number): BenchState {
  const clock = clockLater(state.clock, wall);
  if (clock.played === state.clock.played) return { ...state, clock };
  const ends = penaltyBox(code, state.boxEvents, clock.played)
    .penalties.flatMap(({ endedAt }) => endedAt ?? [])
    .filter((at) => at > state.clock.played && at <= clock.played)
    .sort((one, other) => one - other);
  let passed = state;
  for (const at of ends) passed = boxNow(withClock(passed, clockAtPlayed(passed.clock, at)), code, 'time');
  return boxNow(withClock(passed, clock), code, 'time');
}

function withClock(state: BenchState, clock: GameClock): BenchState {
  return { ...state, clock };
}

/** The clock when so much was played; it ran all the way until then. */
function clockAtPlayed(clock: GameClock, played: number): GameClock {
  const passed = played - clock.played;
  return { ...clock, wall: clock.wall + passed, left: clock.left - passed, played };
}

// Play that goes on leaves the timeout behind.
function goesOn({ afterTimeout }: BenchState, event: BenchEvent): boolean {
  if (event.kind === 'timeout') return true;
  return afterTimeout && !(event.kind === 'result' || event.kind === 'shot' || event.kind === 'period');
}

function happen(state: BenchState, event: BenchEvent): BenchState {
  const at = state.clock.played;
  switch (event.kind) {
    case 'clock':
    case 'clockSet':
    case 'period':
    case 'timeout':
      return state;
    case 'flag':
      return { ...state, flag: event.on, open: state.open ?? opened(state, otherSide(event.on), 'flagDown') };
    case 'flagOff':
      return withoutFlag(state);
    case 'fouls':
      return fouled(state, event);
    case 'letGo':
      return boxed(state, { kind: 'letGo', at, penalty: event.penalty });
    case 'boxSet':
      return boxed(state, { kind: 'timeSet', at, penalty: event.penalty, left: event.left });
    case 'goal':
      return goalOf(state, event.by);
    case 'begun':
      return begunAgain(state);
    case 'called':
      return inChance({ ...state, calls: state.calls + 1 }, (open) => ({ ...open, call: event }));
    case 'seen':
      return inChance(state, (open) => ({ ...open, seen: event.scheme }), true);
    case 'ticked':
      return inChance(state, (open) => ({
        ...open,
        ticks: [...open.ticks.filter(({ cue }) => cue !== event.cue), { cue: event.cue, isSo: event.isSo, at }],
      }));
    case 'shot':
      return inChance(state, (open) => ({ ...open, shots: open.shots + 1, firstShot: open.firstShot ?? at }));
    case 'result':
      return resulted(state, event);
    case 'look':
      return lastChance(state, (chance) => ({ ...chance, look: event.look, scorer: event.scorer ?? null }));
    case 'absent':
      return {
        ...state,
        absent: [...state.absent.filter((man) => man !== event.man), ...(event.isAbsent ? [event.man] : [])],
      };
    default:
      return exhaustive(event);
  }
}

function boxed(state: BenchState, event: BoxEvent): BenchState {
  return { ...state, boxEvents: [...state.boxEvents, event] };
}

function scored(state: BenchState, by: TeamSide): BenchState {
  const next = boxed(withoutFlag(state), { kind: 'goal', at: state.clock.played, by });
  return { ...next, score: { ...next.score, [by]: next.score[by] + 1 } };
}

/** A goal of the side that is a man up belongs to a chance: to the one that is on, or to one that nobody tapped. */
function goalOf(state: BenchState, by: TeamSide): BenchState {
  const { manUp, box, chances } = state;
  const untapped = manUp === by ? { ...opened(state, by, 'transition'), penalty: servedBy(box, otherSide(by)) } : null;
  const chance = state.open ?? untapped;
  if (chance?.side !== by) return scored(state, by);
  return scored({ ...state, open: null, chances: [...chances, endedBy(chance, 'goal', state.clock.played)] }, by);
}

/** The flag is up again. A chance under it in which nothing was tapped is none: what follows the whistle is. */
function withoutFlag(state: BenchState): BenchState {
  const wasFlag = state.open?.start === 'flagDown';
  return { ...state, flag: null, open: wasFlag ? null : state.open };
}

function fouled(state: BenchState, { penalties, simultaneous }: Extract<BenchEvent, { kind: 'fouls' }>): BenchState {
  // What was called under the flag is still called after the whistle.
  const call = state.open?.start === 'flagDown' ? state.open.call : null;
  const next = boxed(withoutFlag(state), { kind: 'given', at: state.clock.played, penalties, simultaneous });
  // `boxNow` opens the chance: only the box knows whether anybody is short now.
  return call === null ? next : { ...next, open: { ...opened(next, 'us', 'restart'), call } };
}

function begunAgain(state: BenchState): BenchState {
  if (state.open !== null || state.manUp === null) return state;
  return { ...state, open: opened(state, state.manUp, 'transition') };
}

function resulted(state: BenchState, { result }: Extract<BenchEvent, { kind: 'result' }>): BenchState {
  const at = state.clock.played;
  if (state.open !== null) {
    const over = endedBy(state.open, result, at);
    const next: BenchState = { ...state, open: null, chances: [...state.chances, over] };
    return result === 'goal' ? scored(next, over.side) : next;
  }
  const last = state.chances.at(-1);
  if (last === undefined || !awaitsResult(state)) return state;
  const next: BenchState = { ...state, chances: [...state.chances.slice(0, -1), endedBy(last, result, at)] };
  return result === 'goal' ? scored(next, last.side) : next;
}

/** Whether a result that is tapped now would be that of the man-up whose time has just run out. */
export function awaitsResult({ open, chances, clock }: BenchState): boolean {
  const last = chances.at(-1);
  return open === null && last?.endedByTime === true && clock.played - (last.to ?? 0) <= lateResult;
}

/** Changes the chance that is on; with `orLast` the last one where none is. */
function inChance(state: BenchState, change: (chance: BenchChance) => BenchChance, orLast = false): BenchState {
  if (state.open !== null) return { ...state, open: change(state.open) };
  return orLast ? lastChance(state, change) : state;
}

function lastChance(state: BenchState, change: (chance: BenchChance) => BenchChance): BenchState {
  const last = state.chances.at(-1);
  return last === undefined ? state : { ...state, chances: [...state.chances.slice(0, -1), change(last)] };
}

function opened({ clock }: BenchState, side: TeamSide, start: BenchChance['start']): BenchChance {
  return {
    side,
    start,
    from: clock.played,
    period: clock.period,
    left: clock.left,
    penalty: null,
    call: null,
    seen: null,
    ticks: [],
    shots: 0,
    firstShot: null,
    result: null,
    to: null,
    endedByTime: false,
    look: null,
    scorer: null,
  };
}

/** Why the box is looked into: fouls were just given, something else was tapped, or time went by. */
type Cause = 'fouls' | 'tap' | 'time';

/** Looks into the box: whose man-up it is now, and what that opens or ends. */
function boxNow(state: BenchState, code: RuleCode, cause: Cause): BenchState {
  const at = state.clock.played;
  const box = penaltyBox(code, state.boxEvents, at);
  const manUp = box.short.them > box.short.us ? 'us' : box.short.us > box.short.them ? 'them' : null;
  // A man-up may outlast its chance: that it ran out is told all the same.
  const isOver = cause === 'time' && manUp !== state.manUp;
  const ranOut = isOver && state.manUp !== null ? { at, side: state.manUp } : state.ranOut;
  const next: BenchState = { ...state, box, manUp, ranOut };
  const { open } = next;
  if (open !== null && open.start !== 'flagDown' && open.side !== manUp) return closed(next, open, at, cause, manUp);
  if (manUp === null) return next;
  const penalty = servedBy(box, otherSide(manUp));
  // Fouls begin a chance though the man-up is an old one, in which the last chance is over.
  const begins = manUp !== state.manUp || cause === 'fouls';
  if (open === null) {
    const start = cause === 'time' ? 'transition' : 'restart';
    return begins ? { ...next, open: { ...opened(next, manUp, start), penalty } } : next;
  }
  // A second foul makes it two men more.
  return open.side === manUp ? { ...next, open: { ...open, penalty: heavier(open.penalty, penalty) } } : next;
}

function closed(state: BenchState, open: BenchChance, at: number, cause: Cause, manUp: TeamSide | null): BenchState {
  const byTime = cause === 'time';
  const over: BenchChance = { ...open, result: 'expired', to: at, endedByTime: byTime };
  const other = manUp === null ? null : opened(state, manUp, byTime ? 'transition' : 'restart');
  return {
    ...state,
    open: other === null || manUp === null ? null : { ...other, penalty: servedBy(state.box, otherSide(manUp)) },
    chances: isNothing(open, at) ? state.chances : [...state.chances, over],
  };
}

/** Two fouls that were given one after the other while play stood: the man-up between them was none. */
function isNothing(open: BenchChance, at: number): boolean {
  return at === open.from && open.shots === 0;
}

function servedBy(box: PenaltyBox, side: TeamSide): BenchChance['penalty'] {
  const serving = box.penalties.filter((one) => one.side === side && one.state === 'serving');
  if (serving.length === 0) return null;
  return {
    seconds: Math.max(...serving.map(({ seconds }) => seconds)),
    fixed: serving.some(({ seconds, fixedSeconds }) => fixedSeconds >= seconds),
    men: serving.length,
  };
}

function heavier(before: BenchChance['penalty'], now: BenchChance['penalty']): BenchChance['penalty'] {
  if (before === null || now === null) return before ?? now;
  return now.men > before.men ? now : before;
}

function exhaustive(event: never): never {
  throw new TypeError(`unknown tap: ${JSON.stringify(event)}`);
}
