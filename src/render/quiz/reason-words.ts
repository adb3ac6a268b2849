import type { Cue, MomentAction, SpotId } from '../../engine/index.ts';
import { cueWords } from '../play-words.ts';
import { lowerFirst } from './choice-words.ts';

/** A choice as its reason speaks of it. */
export interface ReasonedChoice {
  /** "Feed C". */
  readonly words: string;
  /** What is done: its kind, and the mate it is done to. */
  readonly kind: MomentAction['kind'];
  readonly mate: SpotId | undefined;
  /** Goals. */
  readonly worth: number;
  readonly right: boolean;
}

/** What the man with the ball sees at a moment. */
export interface SeenNow {
  readonly carrier: SpotId;
  /** Cues that hold. */
  readonly cues: readonly Cue[];
}

/** Goals in a hundred man-ups that go on from here: what a player of twelve can picture. */
export function inHundred(goals: number): number {
  return Math.round(goals * 100) + 0;
}

/**
 * Why a choice is right: what shows it on the field, where a cue does, then what it makes and what the next best makes. `choices` are in the order of what
 * they are worth, the best first.
 */
export function reasonWords(choices: readonly ReasonedChoice[], seen: SeenNow): string {
  const [best] = choices;
  if (best === undefined) throw new RangeError('a reason needs a choice');
  const cues = supportOf(best, seen).map((cue) => cueWords(cue, seen.carrier));
  const shown = cues.length === 0 ? withoutCue(best, seen) : sentence(cues.join(' and '));
  const right = choices.filter((one) => one.right);
  const next = choices.find((one) => !one.right);
  const made =
    right.length > 1
      ? `Two are right: ${right.map(({ words }) => lowerFirst(words)).join(' or ')}. Each makes about ${inHundred(best.worth)} goals in 100 tries`
      : `${best.words} makes ${inHundred(best.worth)} goals in 100 tries`;
  const rest = next === undefined ? '' : `; the next best, ${lowerFirst(next.words)}, ${inHundred(next.worth)}`;
  return `${shown} ${made}${rest}.`;
}

/** Cues that speak for a choice, what is seen first of all first; two at most, because more are not looked at. */
export function supportOf({ kind, mate }: Pick<ReasonedChoice, 'kind' | 'mate'>, { cues }: SeenNow): readonly Cue[] {
  const wanted = (cue: Cue): number => {
    if ('who' in cue) return kind === 'pass' && cue.who === mate ? mateOrder.indexOf(cue.kind) : -1;
    if (kind === 'shoot' || kind === 'stepIn') return ownOrder.indexOf(cue.kind);
    return kind === 'pass' ? helpOrder.indexOf(cue.kind) : -1;
  };
  return cues
    .filter((cue) => wanted(cue) >= 0)
    .sort((one, other) => wanted(one) - wanted(other))
    .slice(0, 2);
}

/** In the order in which they say most. */
const mateOrder: readonly Cue['kind'][] = ['left', 'open'];
const ownOrder: readonly Cue['kind'][] = ['iAmFree', 'myManLeaves'];
/** Said of a pass only when nothing is seen of its receiver himself. */
const helpOrder: readonly Cue['kind'][] = ['left', 'open', 'nextSteps', 'iAmPressed'];

/** Where no cue points at the choice, that is said: a player must not look for a sign that is not there. */
function withoutCue({ kind }: ReasonedChoice, { carrier, cues }: SeenNow): string {
  const isOpen = cues.some((cue) => cue.kind === 'open' || cue.kind === 'left');
  const isFree = cues.some((cue) => cue.kind === 'iAmFree');
  if ((kind === 'goOn' || kind === 'hold') && !isFree && !isOpen)
    return `Nobody is open yet, and ${carrier} is not free to shoot.`;
  if (kind === 'goOn' || kind === 'hold') return 'What is there now is worth less than what comes next.';
  return 'No single sign shows it; played out many times, it is the best.';
}

/** What speaks against a choice: what stands in its way, else what it misses. */
export function againstWords(choice: ReasonedChoice, best: ReasonedChoice, seen: SeenNow): string {
  const has = (kind: Cue['kind'], who?: string): boolean =>
    seen.cues.some((cue) => cue.kind === kind && (who === undefined || ('who' in cue && cue.who === who)));
  const fewer = `${inHundred(best.worth) - inHundred(choice.worth)} fewer goals in 100 than ${lowerFirst(best.words)}.`;
  const said = (clause: string): string => `${sentence(clause)} ${fewer}`;
  if (choice.kind === 'pass' && choice.mate !== undefined) {
    if (has('laneTaken', choice.mate)) return said(cueWords({ kind: 'laneTaken', who: choice.mate }, seen.carrier));
    if (!has('open', choice.mate)) return said(`${choice.mate} is not open`);
  }
  // Where to shoot or to step in is best, he is free enough: the other of the two is only worth less.
  if (isOwnShot(choice) && !isOwnShot(best)) {
    if (has('iAmPressed')) return said(cueWords({ kind: 'iAmPressed' }, seen.carrier));
    if (!has('iAmFree')) return said(`${seen.carrier} is not free to shoot`);
  }
  if ((choice.kind === 'goOn' || choice.kind === 'hold') && best.kind === 'pass' && best.mate !== undefined) {
    if (has('open', best.mate)) return said(`${best.mate} is open now`);
    if (has('left', best.mate)) return said(cueWords({ kind: 'left', who: best.mate }, seen.carrier));
  }
  return sentence(fewer.slice(0, -1));
}

function isOwnShot({ kind }: ReasonedChoice): boolean {
  return kind === 'shoot' || kind === 'stepIn';
}

/** How what the play teaches for this moment does: it says the same, or it says otherwise and what that costs here. */
export function taughtWords(
  read: string,
  does: { readonly kind: 'right' } | { readonly kind: 'behind'; readonly goals: number } | { readonly kind: 'fake' },
): string {
  const said = `Your read here: ${read}.`;
  switch (does.kind) {
    case 'right':
      return `${said} It is right here.`;
    case 'behind':
      return `${said} In this moment that makes ${inHundred(does.goals)} fewer goals in 100: the field says otherwise.`;
    case 'fake':
      return `${said} A fake only buys what comes after it, so it is no choice of this quiz.`;
    default:
      return exhaustive(does);
  }
}

function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
