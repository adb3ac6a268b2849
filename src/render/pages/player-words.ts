import type { Cue, Order, Play, Point, Read, RunKind, SafetyDuty, SpotId, Trigger } from '../../engine/index.ts';
import { playSteps } from '../play-steps.ts';
import { cueWords } from '../play-words.ts';
import type { SpotMove } from './spot-moves.ts';

// What a player is told to his face: short sentences that a twelve-year-old understands. What a coach reads is in `play-words.ts`.

const runWords: Readonly<Record<RunKind, string>> = {
  cut: 'Cut hard',
  pop: 'Pop out',
  sneak: 'Sneak in',
  flash: 'Flash to the ball',
  replace: 'Fill the empty place',
  backUp: 'Back up the shot',
  getBack: 'Get back',
};

/** What he does when the ball is lost or the shot goes wide. */
export const dutyToYou: Readonly<Record<SafetyDuty, string>> = {
  backUp: 'Back up the shot: run to the end line behind the goal.',
  getBack: 'Get back: sprint toward midfield.',
  none: 'Ride: chase the nearest man and slow him down.',
};

/** One move in sentences: what starts it, who throws to him, what he does. `play` is whose steps are counted. */
export function moveToYou({ step, own, from }: SpotMove, play: Play, you: SpotId): string {
  const start = triggerToYou(step.beat.when, play, you);
  const catching = from.map((mate) => `Be ready, ${mate} throws to you`);
  const told = [...catching, ...own.map((one) => orderToYou(one, you))];
  return `${start}: ${lower(told.join('. '))}.`;
}

/** What starts a step: "When TL catches". */
export function triggerToYou(trigger: Trigger, play: Play, you: SpotId): string {
  switch (trigger.kind) {
    case 'start':
      return 'When all six are set';
    case 'catch':
      return trigger.by === you ? 'When you catch' : `When ${trigger.by} catches`;
    case 'pass':
      return passStarts(trigger.from, trigger.to, you);
    case 'arrival':
      return trigger.who === you ? 'When you get there' : `When ${trigger.who} gets there`;
    case 'call':
      return callStarts(trigger, play, you);
    default:
      return exhaustive(trigger);
  }
}

// A player sees what starts the step before, not the step itself; only a call upon a call is told by its number.
function callStarts({ beat, seconds }: Extract<Trigger, { kind: 'call' }>, play: Play, you: SpotId): string {
  const steps = playSteps(play);
  const at = steps.findIndex((step) => step.beat.id === beat);
  const before = steps[at]?.beat.when;
  if (before === undefined || before.kind === 'call') return `${plainSeconds(seconds)} after step ${at + 1} starts`;
  return `${triggerToYou(before, play, you)}, wait ${plainSeconds(seconds)}`;
}

function passStarts(from: SpotId, to: SpotId | undefined, you: SpotId): string {
  const whom = to === undefined ? '' : ` to ${to === you ? 'you' : to}`;
  return from === you ? `When you have passed${whom}` : `When ${from} passes${whom}`;
}

/** What he is to do, without a full stop: "Feed C". */
export function orderToYou(order: Order, you: SpotId): string {
  switch (order.kind) {
    case 'pass':
      return `${passWords[order.style]} ${order.to}`;
    case 'carry':
      return `Carry the ball${endWords(order.path)}`;
    case 'run':
      return `${runWords[order.run]}${order.go === 'whenOpen' ? ' as soon as your man looks away' : ''}${endWords(order.path)}`;
    case 'pick':
      return `Set a pick on ${manOf(order.on, you)}: stand still, feet set. Then roll to the ball`;
    case 'seal':
      return `Seal ${manOf(order.on, you)}: keep your body between him and the pass`;
    case 'fake':
      return `Fake to ${order.toward}`;
    case 'hold':
      return `Hold the ball ${plainSeconds(order.seconds)}`;
    case 'stepIn':
      return `Step in, stick up, ready to shoot${endWords([order.to])}`;
    case 'runIn':
      return 'Step in, stick up, ready to shoot';
    case 'shot':
      return 'Shoot';
    case 'reset':
      return 'Call the reset';
    default:
      return exhaustive(order);
  }
}

const passWords = { adjacent: 'Pass to', skip: 'Skip it to', feed: 'Feed' } as const;

/** A read of his own, as a sentence: "If C is open, feed C." Outside its step it does not count, so that is said. */
export function readToYou(read: Read, play: Play): string {
  const { carrier, cues, during, then } = read;
  const number = playSteps(play).findIndex(({ beat }) => beat.id === during) + 1;
  const when = number === 0 ? '' : `Step ${number}: `;
  const doing = lower(orderToYou(then, carrier));
  if (cues.length === 0) return `${when}${upper(doing)} in any case.`;
  return `${when}${number === 0 ? 'If' : 'if'} ${cues.map((cue) => cueToYou(cue)).join(' and ')}, ${doing}.`;
}

function cueToYou(cue: Cue): string {
  switch (cue.kind) {
    case 'iAmFree':
      return 'you are free';
    case 'iAmPressed':
      return 'a defender is on you';
    case 'open':
      return `${cue.who} is open`;
    case 'left':
      return `${cue.who} has no man on him`;
    case 'laneTaken':
      return `a stick is in the way to ${cue.who}`;
    case 'nextSteps':
      return 'the next defender steps to you';
    case 'myManLeaves':
      return 'your man drops off you';
    case 'creaseUp':
      return 'the crease defender has come out';
    case 'farLowLooksAway':
      return 'the far low defender looks away from the man behind him';
    case 'farLowCrosses':
      return 'the far low defender runs across';
    default:
      return exhaustive(cue);
  }
}

/** A mate's read that brings him the ball: "X feeds you if you are open." `undefined` when it does not. */
export function maybeReadForYou({ carrier, cues, then }: Read, you: SpotId): string | undefined {
  if (then.kind !== 'pass' || then.to !== you || carrier === you) return undefined;
  const thrown = { adjacent: 'passes to', skip: 'skips it to', feed: 'feeds' }[then.style];
  const seen = cues.map((cue) => ('who' in cue && cue.who === you ? seenOfYou[cue.kind] : cueWords(cue, carrier)));
  return `${carrier} ${thrown} you${seen.length === 0 ? ' in any case' : ` if ${seen.join(' and ')}`}.`;
}

const seenOfYou = {
  open: 'you are open',
  left: 'your man has left you',
  laneTaken: 'a stick is in the way',
} as const;

/** A place on the field: "2 yards left of the goal and 6 in front of it", as the offense sees it looking in. */
export function placeToYou({ x, y }: Point): string {
  const [across, up] = [Math.round(x), Math.round(y)];
  const way = up > 0 ? 'in front of' : 'behind';
  if (across === 0) return up === 0 ? 'at the goal' : `${yardsOf(Math.abs(up))} straight ${way} the goal`;
  const side = `${yardsOf(Math.abs(across))} ${across > 0 ? 'right' : 'left'} of the goal`;
  return up === 0 ? `${side}, level with it` : `${side} and ${Math.abs(up)} ${way} it`;
}

function endWords(path: readonly Point[]): string {
  const end = path.at(-1);
  return end === undefined ? '' : `. Your spot: ${placeToYou(end)}`;
}

function manOf(spot: SpotId, you: SpotId): string {
  return spot === you ? 'your man' : `${spot}'s man`;
}

function yardsOf(value: number): string {
  return `${value} ${value === 1 ? 'yard' : 'yards'}`;
}

function plainSeconds(value: number): string {
  const told = String(Math.round(value * 10) / 10);
  return `${told} ${told === '1' ? 'second' : 'seconds'}`;
}

function upper(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

// A spot's name keeps its capitals: "TL throws to you".
function lower(words: string): string {
  return /^[A-Z][a-z]/.test(words) ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
