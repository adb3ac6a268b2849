import type { Cue, Order, Read, RunKind, Trigger } from '../engine/index.ts';

const runWords: Readonly<Record<RunKind, string>> = {
  cut: 'cuts',
  pop: 'pops out',
  sneak: 'sneaks in',
  flash: 'flashes',
  replace: 'fills the empty place',
  backUp: 'backs up the shot',
  getBack: 'gets back',
};

/** What starts a beat, in words that fit after "Step 2:". `nameOf` is what another beat is called there: its own name in quotation marks when absent. */
export function triggerWords(trigger: Trigger, nameOf: (beat: string) => string = quoted): string {
  switch (trigger.kind) {
    case 'start':
      return 'when the set is up';
    case 'catch':
      return `when ${trigger.by} catches`;
    case 'pass':
      return trigger.to === undefined ? `when ${trigger.from} passes` : `when ${trigger.from} passes to ${trigger.to}`;
    case 'arrival':
      return `when ${trigger.who} gets there`;
    case 'call':
      return `${seconds(trigger.seconds)} after ${nameOf(trigger.beat)} begins`;
    default:
      return exhaustive(trigger);
  }
}

function quoted(beat: string): string {
  return `"${beat}"`;
}

/** What one man does, as a clause without a full stop: "TR skips to WL". */
export function actionWords(action: Order): string {
  switch (action.kind) {
    case 'pass':
      return `${action.by} ${passVerb(action.style)} ${action.to}`;
    case 'carry':
      return `${action.by} carries`;
    case 'run':
      return `${action.by} ${runWords[action.run]}${action.go === 'whenOpen' ? ' when nobody looks' : ''}`;
    case 'pick':
      return `${action.by} picks ${action.on}'s man`;
    case 'seal':
      return `${action.by} seals ${action.on}'s man`;
    case 'fake':
      return `${action.by} fakes to ${action.toward}`;
    case 'hold':
      return `${action.by} holds ${seconds(action.seconds)}`;
    case 'stepIn':
      return `${action.by} steps in, ready to shoot`;
    case 'shot':
      return `${action.by} shoots`;
    case 'runIn':
      return `${action.by} steps in, ready to shoot`;
    case 'reset':
      return `${action.by} calls the reset`;
    default:
      return exhaustive(action);
  }
}

/** A read as a clause: "if WL is open and C's man has left him, X feeds WL". */
export function readWords({ carrier, cues, then }: Read): string {
  const ifs = cues.map((cue) => cueWords(cue, carrier)).join(' and ');
  return ifs === '' ? `${actionWords(then)} in any case` : `if ${ifs}, ${actionWords(then)}`;
}

/** A cue as a clause, of the man at the spot `carrier`: "WL is open". */
export function cueWords(cue: Cue, carrier: string): string {
  switch (cue.kind) {
    case 'iAmFree':
      return `${carrier} is free`;
    case 'iAmPressed':
      return `${carrier} is pressed`;
    case 'open':
      return `${cue.who} is open`;
    case 'left':
      return `${cue.who}'s man has left him`;
    case 'laneTaken':
      return `a defender stands in the lane to ${cue.who}`;
    case 'nextSteps':
      return `the next defender steps to ${carrier}`;
    case 'myManLeaves':
      return `${carrier}'s man drops off him`;
    case 'creaseUp':
      return 'the crease defender is pulled up';
    case 'farLowLooksAway':
      return 'the far low defender looks away from the man behind him';
    case 'farLowCrosses':
      return 'the far low defender runs across';
    default:
      return exhaustive(cue);
  }
}

export function passVerb(style: 'adjacent' | 'skip' | 'feed'): string {
  switch (style) {
    case 'adjacent':
      return 'passes to';
    case 'skip':
      return 'skips to';
    case 'feed':
      return 'feeds';
    default:
      return exhaustive(style);
  }
}

/** Seconds to one decimal with their unit: "2.1 s". */
export function seconds(value: number): string {
  return `${(Math.round(value * 10) / 10 + 0).toFixed(1)} s`;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
