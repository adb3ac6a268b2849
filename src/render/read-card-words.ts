import type { Interval, ReadCard } from '../engine/index.ts';
import { count, counted, percent } from './number-text.ts';
import { actionWords, readWords } from './play-words.ts';

/** A card of reads as it is said to a player, a whole sentence each. */
export interface ReadCardWords {
  /** In the order in which he looks: "If WL is open, X feeds WL." */
  readonly reads: readonly string[];
  /** What he does when nothing of it is there: "Otherwise X goes on with the play." */
  readonly otherwise: string;
}

/** The words of a card for the man at the spot `carrier`. */
export function readCardWords({ reads, lastResort }: ReadCard, carrier: string): ReadCardWords {
  const last = lastResort === null ? `${carrier} goes on with the play` : actionWords(lastResort);
  return {
    reads: reads.map((read) => sentence(readWords(read))),
    otherwise: reads.length === 0 ? sentence(last) : `Otherwise ${last}.`,
  };
}

/** How a man with the ball can decide, as the rows of a table are called. */
export const wayNames = {
  goOn: 'leaves it to the play',
  taught: "by the play's own reads",
  byEye: 'by eye',
  cardPlayed: 'the longest card, played in full',
  best: 'the best decisions that are known',
  known: 'the best, if he knows the scheme',
} as const;

/** The row of the best card of so many reads, which may have turned out to need fewer `rules`. */
export function cardName(reads: number, rules: number): string {
  if (rules < reads) return `a card of ${counted(reads, 'read')} is no better`;
  return reads === 0 ? 'one thing in any case' : `a card of ${counted(reads, 'read')}`;
}

/** What the figures of a carrier's reads rest on. */
export function readsBasisWords({
  comes,
  learntFrom,
  measuredIn,
}: {
  readonly comes: number;
  readonly learntFrom: number;
  readonly measuredIn: number;
}): string {
  return (
    `Run as it is written, nobody taking an opening or a read before, the play brings him the ball in ${percent(comes)} of man-ups. ` +
    `Learnt from ${count(learntFrom)} of these, measured in ${count(measuredIn)} others.`
  );
}

/** A gain that is written as 0.00 is none. Goals a chance. */
const toldFrom = 0.005;

/** What a card keeps of the gain by the best known decisions, or that there is little to keep. Gains in goals a chance over leaving it to the play. */
export function keptWords(best: Interval, card: Interval): string {
  if (best.low < toldFrom) {
    return (
      'The best decisions that are known bring hardly more than the play here, or no more than luck would: there is little for him to ' +
      'decide, and a card cannot be told from none.'
    );
  }
  if (card.mean >= best.mean)
    return 'This card does as well as the best decisions that are known, as far as can be told.';
  if (card.mean < toldFrom) return 'This card keeps nothing of what the best decisions that are known bring.';
  return `This card keeps ${percent(card.mean / best.mean)} of what the best decisions that are known bring.`;
}

const numberWords = ['No', 'One', 'Two', 'Three', 'Four'] as const;

/**
 * How many reads are worth holding in mind, and why, as a sentence. `worthHolding` is what pays in man-ups that cards were not found in, `longest` the
 * most reads that were looked for.
 */
export function holdingWords(worthHolding: number, longest: number): string {
  if (worthHolding === 0) {
    return 'No read is worth holding: cards with reads did not do clearly better in man-ups they were not found in.';
  }
  const reads = `${numberWords[worthHolding] ?? worthHolding} ${worthHolding === 1 ? 'read is' : 'reads are'} worth holding`;
  return worthHolding < longest
    ? `${reads}: longer cards did not do clearly better in man-ups they were not found in.`
    : `${reads}: shorter cards did clearly worse in man-ups they were not found in.`;
}

/**
 * What a card is worth in whole man-ups, as a sentence: that is what Play and the other tests measure. `now` is the play as it teaches now, `gain` what it
 * makes more with the card in its place. Goals a man-up.
 */
export function wholeWords(now: Interval, gain: Interval, text: (goals: number) => string): string {
  const span = `${text(Math.abs(gain.mean))} (${text(gain.low)} to ${text(gain.high)})`;
  const basis = 'Over whole man-ups, in which the ball does not always come to him so and everybody also plays by eye,';
  if (gain.low >= toldFrom)
    return `${basis} the play makes ${span} more with this card than as it teaches now, ${text(now.mean)}.`;
  if (gain.high <= -toldFrom) {
    const lost = `${text(-gain.mean)} (${text(-gain.high)} to ${text(-gain.low)})`;
    return `${basis} the play makes ${lost} less with this card than as it teaches now, ${text(now.mean)}: do not teach it as it stands.`;
  }
  return `${basis} this card makes no sure difference to the play as it teaches now: ${text(gain.low)} to ${text(gain.high)} beside ${text(now.mean)}.`;
}

/** Why nothing is told of a man, as a clause. */
export function hardlyEverWords(carrier: string): string {
  return `the play brings ${carrier} the ball in too few of these man-ups to tell what he should do`;
}

function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}
