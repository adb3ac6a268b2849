import type { ChanceEnd, RefusedPass, Trace, TraceEvent, TurnoverKind } from '../engine/index.ts';
import { dutyNames } from '../engine/index.ts';
import { clearLane, laneWords, roomWords, yards } from './lane-words.ts';
import { percent } from './number-text.ts';
import { passVerb, seconds } from './play-words.ts';
import { attackerName, defenderName, type TraceNames } from './trace-names.ts';

/** How each kind of loss is called in a sentence. */
export const turnoverWords: Readonly<Record<TurnoverKind, string>> = {
  intercepted: 'the pass was picked off',
  deflected: 'a stick knocked the pass down',
  badPass: 'the pass went astray',
  dropped: 'the ball was dropped',
  stripped: 'the ball was checked loose',
  saved: 'the keeper saved it',
  blocked: 'the shot was blocked',
  wide: 'the shot went wide and the defense was nearest',
  rebound: 'the defense won the rebound',
  shotClock: 'the shot clock ran out',
  outOfBounds: 'the ball went out',
  failedClear: 'the ball was not brought up',
};

/** How each kind of loss is called in a table. */
export const turnoverNames: Readonly<Record<TurnoverKind, string>> = {
  intercepted: 'picked off',
  deflected: 'knocked down',
  badPass: 'bad pass',
  dropped: 'dropped',
  stripped: 'checked loose',
  saved: 'saved',
  blocked: 'blocked',
  wide: 'wide, lost',
  rebound: 'rebound lost',
  shotClock: 'shot clock',
  outOfBounds: 'out of bounds',
  failedClear: 'not cleared',
};

const endWords: Readonly<Record<ChanceEnd, string>> = {
  goal: 'The chance ends with a goal',
  turnover: 'The chance ends with the ball lost',
  penaltyOver: 'The penalty is over and the sides are even',
  flagOver: 'The whistle ends the flag',
};

/**
 * One event as a plain sentence without its time: "TR skips to WL: nobody in the lane (odds 86 %)".
 * `trace` is asked who stood where at that moment.
 */
export function eventWords(event: TraceEvent, trace: Trace, names: TraceNames): string {
  const attacker = (index: number): string => attackerName(names, index);
  const defender = (index: number): string => defenderName(names, index);
  switch (event.kind) {
    case 'restart':
      return `Whistle: ${attacker(event.who)} restarts with the ball${event.time === 0 ? ' outside the box' : ''}`;
    case 'setUp':
      return setUpWords(event.time, trace);
    case 'beat':
      return beatWords(event, names);
    case 'read':
      return readTakenWords(event, names);
    case 'pass':
      return passWords(event, trace, names);
    case 'catch':
      return `${attacker(event.who)} catches: ${roomWords(trace, event.time, event.who, names)}`;
    case 'dropped':
      return `${attacker(event.who)} drops it`;
    case 'intercepted':
      return `${capital(defender(event.by))} picks it off`;
    case 'deflected':
      return `${capital(defender(event.by))} gets a stick on the pass`;
    case 'stripped':
      return `${capital(defender(event.by))} checks the ball loose`;
    case 'badPass':
      return 'The pass is out of reach';
    case 'groundBall':
      return groundBallWords(event, names);
    case 'fake':
      return `${attacker(event.who)} fakes to ${attacker(event.toward)}`;
    case 'bite':
      return `${capital(defender(event.by))} bites on the fake and is out of it for ${seconds(event.seconds)}`;
    case 'duty':
      return dutyWords(event, names);
    case 'shot':
      return shotWords(event, names);
    case 'goal':
      return `GOAL by ${attacker(event.who)}${event.assistedBy >= 0 ? `, from ${attacker(event.assistedBy)}` : ''}`;
    case 'save':
      // `kept` is the keeper's here: he holds the ball, or it drops in front of him.
      return `The keeper saves ${attacker(event.who)}'s shot ${event.kept ? 'and holds it' : 'and the ball is loose'}`;
    case 'pipe':
      return `${attacker(event.who)} hits the pipe and the ball is loose`;
    case 'wide':
      return `${attacker(event.who)} shoots wide: ${event.kept ? 'an attacker' : 'a defender'} is nearest to the end line`;
    case 'blocked':
      return `${capital(defender(event.by))} blocks the shot`;
    case 'reset':
      return resetWords(event.refused, attacker);
    case 'leave':
      return 'The play is left for what is open';
    case 'released':
      return 'The penalized man is released and runs to his place';
    case 'turnover':
      return `Ball lost: ${turnoverWords[event.how]}; ${backWords(event.back)}`;
    case 'end':
      return endWords[event.how];
    default:
      return exhaustive(event);
  }
}

/** The same with its time in front, as `sliderule trace` prints it: "2.1 s  TR skips to WL: ...". */
export function eventLine(event: TraceEvent, trace: Trace, names: TraceNames): string {
  return `${seconds(event.time).padStart(6)}  ${eventWords(event, trace, names)}`;
}

/** Events that a coach follows; changes of duty are for who asks for them. */
export function isMainEvent(event: TraceEvent): boolean {
  return event.kind !== 'duty';
}

/** What a defender is doing now, as a clause: "ll plays WL", "tr splits P and TR". */
export function dutyClause(defender: string, duty: string, a: string | undefined, b: string | undefined): string {
  const whom = a ?? 'his man';
  switch (duty) {
    case 'ball':
      return `${defender} on the ball`;
    case 'man':
      return `${defender} plays ${whom}`;
    case 'split':
      // Where one man is both of those whom he is between, he is off that man.
      return b === undefined || b === a ? `${defender} sags off ${whom}` : `${defender} splits ${whom} and ${b}`;
    case 'lane':
      return `${defender} in the lane to ${whom}`;
    case 'lock':
      return b === undefined ? `${defender} locks ${whom}` : `${defender} locks ${whom}, cheats to ${b}`;
    case 'pipe':
      return a === undefined ? `${defender} guards the pipe` : `${defender} guards the pipe against ${a}`;
    case 'front':
      return `${defender} fronts ${whom}`;
    case 'place':
      return a === undefined ? `${defender} holds his place` : `${defender} holds his place and watches ${a}`;
    default:
      throw new TypeError(`unknown duty: ${duty} (expected ${dutyNames.join(', ')})`);
  }
}

/** The play begins this soon after the set is up when the unit does not look round first. Seconds. */
const atOnce = 0.25;

/** Why nothing of the play is seen yet, which else looks like a fault of the file. */
function setUpWords(time: number, trace: Trace): string {
  const beginsAtOnce = trace.events.some(
    (event) => event.kind === 'beat' && event.time >= time && event.time <= time + atOnce,
  );
  return beginsAtOnce
    ? 'The set is up'
    : 'The set is up: first the ball goes round to see the defense, then the play begins';
}

function readTakenWords(event: Extract<TraceEvent, { kind: 'read' }>, names: TraceNames): string {
  const read = (event.lastTen ? names.lastTenReads : names.reads)[event.read];
  return `${attackerName(names, event.who)} sees his read${read === undefined ? '' : ` "${read}"`} and takes it`;
}

function passWords(event: Extract<TraceEvent, { kind: 'pass' }>, trace: Trace, names: TraceNames): string {
  const lob = event.lob ? ' over the sticks' : '';
  const way = laneWords(trace, event.time, event.from, event.to, names);
  const lane = event.lob ? '' : `: ${way}${isWild(event, way) ? ', but wide of him' : ''}`;
  const why = event.why === 'safe' ? ' to be safe' : '';
  const from = attackerName(names, event.from);
  return `${from} ${passVerb(event.style)} ${attackerName(names, event.to)}${lob}${why}${lane} (odds ${oddsWords(event.completion)}${belief(event)})`;
}

/** A pass far worse than was thought, with no stick to blame, was thrown badly. */
function isWild({ completion, believed }: Extract<TraceEvent, { kind: 'pass' }>, way: string): boolean {
  return way === clearLane && believed - completion > badlyThrown;
}

const badlyThrown = 0.3;

/** A carrier who is this far wrong about a pass has misjudged it; less is what anybody is out by. */
const misjudged = 0.15;

function belief({ completion, believed }: Extract<TraceEvent, { kind: 'pass' }>): string {
  return Math.abs(believed - completion) < misjudged ? '' : `, he thought ${oddsWords(believed)}`;
}

/** No pass is sure, so none is told to be: what is nearly so is 99 %. */
function oddsWords(odds: number): string {
  return percent(Math.min(odds, 0.99));
}

function beatWords({ beat }: Extract<TraceEvent, { kind: 'beat' }>, names: TraceNames): string {
  const asks = names.beats[beat] ?? '';
  return `Step "${beat}" begins${asks === '' ? '' : `: ${asks}`}`;
}

function resetWords(refused: RefusedPass | null, attacker: (index: number) => string): string {
  if (refused === null) return 'The script cannot go on: the offense resets';
  const { from, to, believed } = refused;
  return `${attacker(from)} does not dare to throw to ${attacker(to)} (he thought ${oddsWords(believed)}): the offense resets`;
}

function groundBallWords(event: Extract<TraceEvent, { kind: 'groundBall' }>, names: TraceNames): string {
  return event.won === 'offense'
    ? `Ground ball: ${attackerName(names, event.who)} gets it back`
    : `Ground ball: ${defenderName(names, event.who)} has it`;
}

function dutyWords(event: Extract<TraceEvent, { kind: 'duty' }>, names: TraceNames): string {
  const man = (index: number): string | undefined => (index >= 0 ? attackerName(names, index) : undefined);
  const clause = dutyClause(defenderName(names, event.by), dutyNames[event.duty] ?? '', man(event.a), man(event.b));
  // A twentieth of a second is one step of the simulation: nobody sees it.
  return event.late > 0.05 ? `${clause}, ${seconds(event.late)} late` : clause;
}

function shotWords(event: Extract<TraceEvent, { kind: 'shot' }>, names: TraceNames): string {
  const room = event.pressed ? 'with a man on him' : 'with room';
  const assist = event.assistedBy >= 0 ? ` off ${attackerName(names, event.assistedBy)}'s pass` : '';
  return `${attackerName(names, event.who)} shoots${assist} from ${yards(event.distance)} ${room} (goal odds ${percent(event.goalOdds)})`;
}

function backWords(back: number): string {
  if (back === 0) return 'nobody is back';
  return back === 1 ? 'one attacker is back' : `${back} attackers are back`;
}

function capital(words: string): string {
  return words.startsWith('the ') ? `T${words.slice(1)}` : words;
}

function exhaustive(event: never): never {
  throw new TypeError(`unknown event: ${JSON.stringify(event)}`);
}
