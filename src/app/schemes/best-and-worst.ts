import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import { goalsText } from './goal-words.ts';

/** Where the play is worth most and least, in a sentence; that it cannot be told when the intervals overlap. Empty before there is an answer. */
export function bestAndWorst(schemes: readonly SchemeAnswer[], names: Readonly<Record<string, string>>): string {
  const known = schemes.flatMap(({ scheme, goals, state }) =>
    goals === null || state === 'coarse' ? [] : [{ name: names[scheme] ?? scheme, goals }],
  );
  if (known.length < 2) return '';
  const ranked = [...known].sort((one, other) => other.goals.mean - one.goals.mean);
  const [best, worst] = [ranked[0]!, ranked.at(-1)!];
  const told = `best against ${best.name} (${goalsText(best.goals.mean)}) and worst against ${worst.name} (${goalsText(worst.goals.mean)})`;
  return best.goals.low > worst.goals.high
    ? `It is ${told}.`
    : `It looks ${told}, but they are still too close to tell apart.`;
}
