import type { GradedSkill, Interval, SpotId } from '../engine/index.ts';

/** The nine skills as a sentence names them. */
export const practiceNames: Readonly<Record<GradedSkill, string>> = {
  speed: 'speed',
  catch: 'catching',
  pass: 'passing',
  feed: 'feeding',
  shoot: 'shooting',
  inside: 'finishing inside',
  handle: 'handling',
  offHand: 'the off hand',
  sense: 'game sense',
};

/** What practice of a skill is worth, as far as words need it. */
export interface PracticeWorth {
  /** One of the six, by offense index, or all of them. */
  readonly man: number | 'all';
  readonly skill: GradedSkill;
  /** Grades that are gained, above 0 to 1. */
  readonly grades: number;
  /** Goals a chance. */
  readonly gain: Interval;
}

/** One of the six as he is named: "19 at WL". */
export interface NamedMan {
  readonly spot: SpotId;
  /** Jersey number. */
  readonly number: number;
}

/** A man by number and spot, or all six. */
export function practisingWords(man: number | 'all', men: readonly NamedMan[]): string {
  if (man === 'all') return 'all six';
  const named = men[man];
  if (named === undefined) throw new RangeError(`invalid man: ${man} (expected 0 to ${men.length - 1})`);
  return `${named.number} at ${named.spot}`;
}

/** Goals a chance as goals in 100 man-ups, to a tenth: ".8", "12.3", "−.4"; 0 from −.05 to .05 (both excluded). */
export function perHundred(goals: number): string {
  const text = Math.abs(100 * goals)
    .toFixed(1)
    .replace(/^0\./, '.');
  if (text === '.0') return '0';
  return goals < 0 ? `−${text}` : text;
}

/** A gain with its sign and its interval, goals in 100 man-ups: "+.8 (.3 to 1.3)". */
export function gainOfPractice({ mean, low, high }: Interval): string {
  // Not one trial went another way: that is no proof of exactly 0, and an interval without width would say so.
  if (low === 0 && high === 0) return '0 (no man-up differed)';
  const text = perHundred(mean);
  return `${mean > 0 && text !== '0' ? '+' : ''}${text} (${perHundred(low)} to ${perHundred(high)})`;
}

/** Whether all together or each man alone would practise. */
export type PracticeKind = 'unit' | 'each';

/**
 * What is best to practise, or that it cannot be told. `leaders` are those that nothing is surely better than, the best first; `null` while that is not known.
 */
export function bestPracticeWords(
  leaders: readonly PracticeWorth[] | null,
  kind: PracticeKind,
  men: readonly NamedMan[],
): string {
  if (leaders === null) return 'Known roughly so far: what leads is yet to be measured.';
  const [best, ...others] = leaders;
  if (best === undefined) return `Nothing that ${subjects[kind]} could practise surely brings this play more goals.`;
  if (others.length === 0) {
    const what = `The best thing ${forWhom[kind]} to practise: ${practiceWords(best, men)}.`;
    return `${what} ${worthWords(best)}`;
  }
  const list = leaders.map((one) => `${practiceWords(one, men)}, ${gainOfPractice(one.gain)}`).join('; ');
  return `No one thing is surely the best ${forWhom[kind]} to practise. These lead and cannot be told apart, in goals in 100 man-ups: ${list}.`;
}

const subjects: Readonly<Record<PracticeKind, string>> = { unit: 'all six together', each: 'one man alone' };
const forWhom: Readonly<Record<PracticeKind, string>> = { unit: 'for all six', each: 'for one man' };

function practiceWords({ man, skill }: PracticeWorth, men: readonly NamedMan[]): string {
  return man === 'all' ? practiceNames[skill] : `${practiceNames[skill]}, ${practisingWords(man, men)}`;
}

function worthWords({ gain, grades }: PracticeWorth): string {
  const better = grades < 1 ? 'As good at it as anybody of the level' : 'One grade better';
  return `${better} is worth ${perHundred(gain.mean)} goals in 100 man-ups (${perHundred(gain.low)} to ${perHundred(gain.high)}).`;
}

/** Whose practice of what has nothing to gain: "4 at X in passing and feeding". Empty when everybody can become better at everything. */
export function alreadyBestWords(men: readonly (NamedMan & { readonly best: readonly GradedSkill[] })[]): string {
  const parts = men.flatMap(({ best }, man) =>
    best.length === 0 ? [] : [`${practisingWords(man, men)} in ${listed(best.map((skill) => practiceNames[skill]))}`],
  );
  return parts.length === 0 ? '' : `As good as a grade can say, so that nothing was tried: ${parts.join('; ')}.`;
}

function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** What the figures mean and what they leave out. */
export const practiceBasisWords =
  'The same play by the same men with the same luck, but for one skill that is one grade better; nobody changes his spot, his mates know what he can do now, and the defense stays as it is. ' +
  'A grade is a quarter of the way from the weakest of the level to its best. How much practice it takes, this does not say.';

/** What the figures of a row that was not measured freshly are good for. */
export const roughRowsWords =
  'Rows called rough are known from the first man-ups alone, and luck has a large part in them; the others are measured in man-ups that nothing was chosen by.';
