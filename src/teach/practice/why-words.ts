import type { Interval } from '../../engine/index.ts';
import { perChance, percent, readWords } from '../../render/index.ts';
import type { NewRead, PlayFindings } from './find-practice.ts';
import type { LookWorth } from './look-worth.ts';

/** What a scheme is called where it stands in a sentence. */
export type SchemeWords = (id: string) => string;

/** "X skips to TR", "WL shoots": a look as something that is done. */
export function lookDone({ from, to, kind }: Pick<LookWorth, 'from' | 'to' | 'kind'>): string {
  switch (kind) {
    case 'shot':
      return `${from} shoots`;
    case 'pass':
      return `${from} passes to ${to}`;
    case 'skip':
      return `${from} skips to ${to}`;
    case 'feed':
      return `${from} feeds ${to}`;
    default:
      return exhaustive(kind);
  }
}

/** The same of a look with numbers: one that is not taught, but whose ball the play throws anyway, is new by its shot. */
export function lookWorded(look: Pick<LookWorth, 'from' | 'to' | 'kind' | 'isTaught' | 'isThrown'>): string {
  return !look.isTaught && look.isThrown ? `${look.to} shoots off ${look.from}'s pass` : lookDone(look);
}

/**
 * Why a look gets reps, in two sentences with their numbers: what there is to be had from it beside what the play makes in all, and where it is there. `shown` is a scheme
 * to say it of; where it carries most when absent.
 */
export function whyLook(look: LookWorth, goals: Interval, scheme: SchemeWords, shown?: string): string {
  const { carries, against, isTaught, isThrown } = look;
  const done = capital(lookWorded(look));
  const best = against.find((one) => one.scheme === shown) ?? against[0];
  const fresh = isThrown
    ? 'New is the shot: the play throws on.'
    : 'Not in the play yet: it opens while the play runs.';
  const arrive = look.kind === 'shot' ? '' : `, and ${percent(best.completion)} of the balls arrive`;
  return (
    `${done}: ${span(carries)} goals a man-up if it is taken whenever it is there; the play makes ${span(goals)} in all. ` +
    `Against ${scheme(best.scheme)} it is there in ${percent(best.share)}${arrive}.` +
    (isTaught ? '' : ` ${fresh} Teach it in Reads before the practice.`)
  );
}

/** Why the whole play is run where no look of it is worth reps. */
export function whyWhole(goals: Interval): string {
  return `No look that the play teaches is worth reps here, so it is run as a whole and who has the ball finds who is open: its ${span(goals)} goals a man-up come so.`;
}

/** That no look of a play is drilled, and why. */
export function nothingWords(play: string, { goals }: PlayFindings): string {
  return `No look that ${play} teaches is worth reps against these schemes, so none is drilled: its ${span(goals)} goals a man-up come from what opens beside them. Search its reads in Reads, or plan another play against them.`;
}

/** What is worth drilling in another play; nothing when none is known to be. */
export function insteadWords({ instead }: PlayFindings): readonly string[] {
  if (instead === null) return [];
  const { name, goals, look } = instead;
  if (look === null) return [`${name} makes more against them: ${span(goals)} goals a man-up.`];
  return [
    `${name} has more to drill against them: ${lookDone(look)}, ${span(look.carries)} goals a man-up; in all it makes ${span(goals)}.`,
  ];
}

/** What is new today. */
export function whyNew({ read, gain }: NewRead): string {
  return `New today, and nothing else: ${readWords(read)}. Worth ${span(gain)} goals a man-up over going on.`;
}

/** A read that surely costs goals is named, because reps would only teach it better. */
export function costWords(look: LookWorth): string {
  return `Drilling the read by which ${lookDone(look)}: it costs ${costSpan(look.decides!)} goals a man-up. Mend it in Reads first.`;
}

/** Of which looks the practice is, in a line: those that are taught first, the worthiest of them first. */
export function focusWords({ newRead }: PlayFindings, drilled: readonly LookWorth[]): string {
  const inOrder = [...drilled.filter(({ isTaught }) => isTaught), ...drilled.filter(({ isTaught }) => !isTaught)];
  const looks = inOrder.slice(0, 2).map((look) => `${lookWorded(look)}${look.isTaught ? '' : ' (new)'}`);
  const whole = drilled.some(({ isTaught }) => isTaught)
    ? []
    : ['the whole play, and who has the ball finds who is open'];
  const first = capital([...whole, ...looks].join('; '));
  return newRead === null ? `${first}.` : `${first}. New: ${readWords(newRead.read)}.`;
}

function span({ mean, low, high }: Interval): string {
  return `${perChance(mean)} (${perChance(low)} to ${perChance(high)})`;
}

function costSpan({ mean, low, high }: Interval): string {
  return span({ mean: -mean, low: -high, high: -low });
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
