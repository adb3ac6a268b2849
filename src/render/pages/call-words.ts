import type { Interval, Play } from '../../engine/index.ts';
import { playSteps } from '../play-steps.ts';
import { actionWords, readWords } from '../play-words.ts';

/** The word by which a play is begun: the name of its first step, unless that is only a number; then what is done in it. */
export function triggerWord(play: Play): string {
  const [first] = playSteps(play);
  if (first === undefined) return play.name;
  const { id, actions } = first.beat;
  const named = !/^(step|beat)?-?\d*$/.test(id);
  return (named ? id.replaceAll('-', ' ') : (actions[0]?.kind ?? id)).toUpperCase();
}

/** What the first step asks for: "TR passes to TL; C cuts". */
export function firstStepWords(play: Play): string {
  const actions = playSteps(play)[0]?.beat.actions ?? [];
  return actions.length === 0 ? 'nobody moves' : actions.map((action) => actionWords(action)).join('; ');
}

/** The first read that is taught, as a sentence. */
export function firstReadWords({ reads: [first] }: Play): string {
  if (first === undefined) return 'None: as it is drawn.';
  const words = readWords(first);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** A scheme's name without what comes after a comma, a colon or a bracket: "Four-man rotation". */
export function shortScheme(name: string): string {
  return name.split(/[,:(]/)[0]!.trim() || name;
}

/** A scheme and what a play makes against it. */
export interface Worth {
  readonly scheme: string;
  readonly goals: Interval;
}

/**
 * The schemes that a play beats most, best first, and those against which it makes least, worst first; `most` of each at most, and none on both sides.
 * A single scheme is neither good nor bad.
 */
export function bestAndWorst(
  worths: readonly Worth[],
  most: number,
): { readonly best: readonly Worth[]; readonly worst: readonly Worth[] } {
  const ranked = [...worths].sort((one, other) => other.goals.mean - one.goals.mean);
  const shown = Math.min(most, Math.floor(ranked.length / 2));
  return { best: ranked.slice(0, shown), worst: ranked.slice(ranked.length - shown).reverse() };
}
