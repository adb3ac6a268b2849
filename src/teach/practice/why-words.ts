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

/**
 * Why a look gets reps, in two sentences with their numbers: what there is to be had from it beside what the play makes in all, and where it is there. `shown` is a scheme
 * to say it of; where it carries most when absent.
 */
export function whyLook(look: LookWorth, goals: Interval, scheme: SchemeWords, shown?: string): string {
  const { carries, against, isTaught } = look;
  const done = capital(lookDone(look));
  const best = against.find((one) => one.scheme === shown) ?? against[0];
  if (carries.mean === 0) return `${done}: taught, and hardly ever there in these man-ups. Look at it in Play.`;
  const fresh = isTaught ? '' : ' Not in the play yet: it opens while the play runs.';
  const arrive = look.kind === 'shot' ? '' : `, and ${percent(best.completion)} of the balls arrive`;
  return (
    `${done}: ${span(carries)} goals a man-up if it is taken whenever it is there; the play makes ${span(goals)} in all. ` +
    `Against ${scheme(best.scheme)} it is there in ${percent(best.share)}${arrive}.${fresh}`
  );
}

/** What is new today. */
export function whyNew({ read, gain }: NewRead): string {
  return `New today, and nothing else: ${readWords(read)}. Worth ${span(gain)} goals a man-up over going on.`;
}

/** A read that surely costs goals is named, because reps would only teach it better. */
export function costWords(look: LookWorth): string {
  return `Drilling the read by which ${lookDone(look)}: it costs ${costSpan(look.decides!)} goals a man-up. Mend it in Reads first.`;
}

/** Of which looks the practice is, in a line: the worthiest first. */
export function focusWords({ looks, newRead }: PlayFindings, drilled: readonly LookWorth[]): string {
  const first = (drilled.length > 0 ? drilled : looks)
    .slice(0, 2)
    .map((look) => `${lookDone(look)}${look.isTaught ? '' : ' (new)'}`)
    .join('; ');
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
