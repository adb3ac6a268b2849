import type { RoundAnswer, RoundResult } from '../render/index.ts';

/** Thirty-two signs that are told apart when read aloud or copied by hand: no I, L, O or U (Crockford, crockford.com/base32.html). */
const alphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
/** Begins each code: a quiz's, in this order of its parts. */
const firstLetter = 'Q';
/** Letters together, as they are shown. */
const group = 4;

/**
 * A round as a code that can be typed: Q, the quiz (4), jersey number (2), round (1), a letter for each question, and two letters that show a wrong one. In groups of four. At most 20
 * questions; the reader is `readResultCode`.
 */
export function writeResultCode({ quiz, number, round, answers }: RoundResult): string {
  const values = [
    alphabet.indexOf(firstLetter),
    ...Array.from(quiz, (letter) => alphabet.indexOf(letter)),
    (number >> 5) & 31,
    number & 31,
    (round - 1) & 31,
    ...answers.map(answerValue),
  ];
  const letters = [...values, ...checkOf(values)].map((value) => alphabet.charAt(value)).join('');
  return letters.match(new RegExp(`.{1,${group}}`, 'g'))?.join('-') ?? '';
}

const paces = ['quick', 'steady', 'slow'] as const;

/** 0 for a question that was not asked; else nine pairs of asked and right for each of three paces, 1 to 27. */
function answerValue({ asked, right, pace }: RoundAnswer): number {
  if (asked === 0 || pace === null) return 0;
  const times = Math.min(asked, 3);
  // Pairs before those of this many times: 2 of once, 3 of twice.
  const before = times === 1 ? 0 : times === 2 ? 2 : 5;
  return 1 + 9 * paces.indexOf(pace) + before + Math.min(right, times);
}

/**
 * Two letters that make the whole vanish at 1 and at a, the root of a^5 + a^2 + 1: a code of Reed and Solomon (J. SIAM 8:300, 1960) over the field of 32, in which up to 31
 * letters stand two wrong letters apart at least from any other code.
 */
function checkOf(values: readonly number[]): readonly [number, number] {
  const sum = values.reduce((all, value) => all ^ value, 0);
  // The check letters are the last two, so each value is two places further up.
  const weighted = timesRoot(timesRoot(values.reduce((all, value) => timesRoot(all) ^ value, 0)));
  // first + last = sum, a first + last = weighted; so first = (sum + weighted) / (1 + a).
  const first = divideBySumOfOneAndRoot(sum ^ weighted);
  return [first, sum ^ first];
}

function timesRoot(value: number): number {
  const doubled = value << 1;
  return doubled & 32 ? doubled ^ 0b100101 : doubled;
}

function divideBySumOfOneAndRoot(value: number): number {
  for (let quotient = 0; quotient < 32; quotient += 1) if ((timesRoot(quotient) ^ quotient) === value) return quotient;
  return 0;
}
