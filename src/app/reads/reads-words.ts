import type { Interval, Level, Read, ReadGrade, ValuedCard } from '../../engine/index.ts';
import { counted, holdingWords } from '../../render/index.ts';
import { differenceText, signOf } from '../schemes/goal-words.ts';
import type { Against } from './reads-question.ts';
import type { ReadsSearch } from './reads-state.ts';

/** What a card is worth over leaving it to the play: "+.03 (.01 to .05) goals a chance more than leaving it to the play". */
export function cardWorthWords(gain: Interval): string {
  const words = `${differenceText(gain)} goals a chance against leaving it to the play`;
  return signOf(gain) === 'open' ? `${words}, no sure difference` : words;
}

/** How far a round is, in words; undefined when nothing is being found. */
export function progressWords(search: ReadsSearch): string | undefined {
  if (search.kind !== 'finding') return undefined;
  const { trials, answered, planned } = search;
  // Nobody is told that it is done before it is.
  const share = Math.min(99, Math.floor((100 * answered) / planned));
  return `Playing ${trials} man-ups against each scheme to learn from, and ${trials} to measure in: ${share} %`;
}

/** What the figures are good for: the first are rough, and are told so. */
export function effortWords(trials: number, isRough: boolean): string {
  const words = `From ${trials} man-ups against each scheme to learn from, and ${trials} others to measure in`;
  return isRough ? `A first, rough answer. ${words}.` : `${words}.`;
}

/** Why there is no scheme to play against. */
export function noSchemeWords(against: Against): string {
  if (against.kind === 'ownMix' && Object.keys(against.weights).length > 0) {
    return 'Every scheme of your mix stands at none. Give at least one of them a man-up of the ten.';
  }
  return 'No scheme is chosen to play against.';
}

/** Names as they are listed in a sentence: "P", "P or TR", "P, TR or X". */
export function eitherOf(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}

/** Reads that are taught, as a count: "2 reads and what he does otherwise". One without a cue is what he does otherwise, or in any case when it is alone. */
export function taughtWords(reads: readonly Pick<Read, 'cues'>[]): string {
  const withCues = reads.filter(({ cues }) => cues.length > 0).length;
  if (withCues === 0) return 'what he does in any case';
  return `${counted(withCues, 'read')}${withCues < reads.length ? ' and what he does otherwise' : ''}`;
}

/** What one press writes into the play, and in place of how many reads that it teaches him now. */
export function teachingWords(reads: readonly Pick<Read, 'cues'>[], before: number): string {
  const writes = `Writes ${taughtWords(reads)} into the play`;
  if (before === 0) return `${writes} as one step that Undo takes back.`;
  return `${writes} in place of the ${before === 1 ? 'one' : before} that it teaches him now, as one step that Undo takes back.`;
}

/** What the grades of a man's reads come to, in one sentence. */
export function gradesWords(carrier: string, grades: readonly Pick<ReadGrade, 'there' | 'better'>[]): string {
  if (grades.length === 0) return `No read of ${carrier} is graded.`;
  const costs = grades.filter(({ there }) => signOf(there?.earns) === 'down').length;
  const better = grades.filter((grade) => signOf(grade.better?.gain) === 'up').length;
  const where = costs === 0 ? 'none surely costs goals where it comes' : `${costs} surely costs goals where it comes`;
  return `${counted(grades.length, 'read')} graded: ${where}${better === 0 ? '' : `, a better one was found for ${better}`}.`;
}

const numberWords = ['no', 'one', 'two', 'three', 'four'] as const;
const ordinalWords = ['', 'first', 'second', 'third', 'fourth'] as const;

/**
 * How many reads a card has when nobody chose, and why. `worthHolding` is what pays in man-ups that cards were not found in, `longest` the
 * most reads that were looked for, `most` what the level can hold in mind.
 */
export function heldReadsWords(worthHolding: number, longest: number, most: number, level: Level): string {
  const why = holdingWords(worthHolding, longest);
  if (worthHolding <= most) return why;
  return `${why} At ${level} a man can hold ${numberWords[most] ?? most} in mind.`;
}

/** What each read of a card of so many adds to the best card without it; empty for a card of none. */
export function readPricesWords(cards: readonly Pick<ValuedCard, 'overShorter'>[], reads: number): string {
  const prices = cards.slice(1, reads + 1).flatMap(({ overShorter }, at) => {
    if (overShorter === null) return [];
    return [`the ${ordinalWords[at + 1] ?? `${at + 1}th`} read ${differenceText(overShorter)}${unsure(overShorter)}`];
  });
  if (prices.length === 0) return '';
  return `What each read adds to the best card without it, in goals a chance: ${prices.join('; ')}.`;
}

function unsure(gain: Interval): string {
  return signOf(gain) === 'open' ? ', not sure' : '';
}
