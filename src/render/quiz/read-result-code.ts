import type { RoundAnswer, RoundResult } from './quiz-result.ts';

/** What a code says, or what is wrong with it in a sentence. */
export type ReadCode =
  | { readonly kind: 'result'; readonly result: RoundResult }
  | { readonly kind: 'wrong'; readonly reason: string };

/** As in the page that writes it (`src/clip/write-result-code.ts`), whose program takes no code of ours. */
export const codeAlphabet = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const firstLetter = 'Q';
/** Letters before and after those of the questions, and the most questions: beyond 31 letters the check has no more places. */
const headLetters = 8;
const checkLetters = 2;
const mostQuestions = 20;

/**
 * Reads a result code as it was typed: large or small letters, with or without dashes and spaces, O for 0 and I or L for 1. Any wrong letter is told, and any two: of one
 * wrong letter also which it is, if it is only one.
 */
export function readResultCode(typed: string): ReadCode {
  const letters = typed
    .toUpperCase()
    .replace(/[\s-]+/g, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');
  const strange = [...letters].find((letter) => !codeAlphabet.includes(letter));
  if (letters === '') return wrong('There is no code: type or paste the letters that the page shows.');
  if (strange !== undefined) return wrong(`A code has no "${strange}": look at that letter again.`);
  const values = Array.from(letters, (letter) => codeAlphabet.indexOf(letter));
  const questions = values.length - headLetters - checkLetters;
  if (questions < 1 || questions > mostQuestions)
    return wrong(`A code has 11 to 30 letters, and this has ${values.length}: some are missing or too many.`);
  const fault = faultOf(values);
  if (fault !== undefined) return wrong(fault);
  if (letters[0] !== firstLetter) return wrong('This is a code of another kind, or of a newer version.');
  const answers = values.slice(headLetters, -checkLetters).map(answerOf);
  if (!answers.every((answer) => answer !== undefined))
    return wrong('This code says what cannot be. Ask for it again.');
  return {
    kind: 'result',
    result: { quiz: letters.slice(1, 5), number: (values[5]! << 5) | values[6]!, round: values[7]! + 1, answers },
  };
}

/**
 * A sentence when a letter is wrong. The code vanishes at 1 and at the root of the field (Reed and Solomon, J. SIAM 8:300, 1960): of a single wrong letter the two sums
 * tell its place and what it should be; anything else is more than one.
 */
function faultOf(values: readonly number[]): string | undefined {
  const sum = values.reduce((all, value) => all ^ value, 0);
  const weighted = values.reduce((all, value) => timesRoot(all) ^ value, 0);
  if (sum === 0 && weighted === 0) return undefined;
  let expected = sum;
  for (let fromEnd = 0; fromEnd < values.length && sum !== 0; fromEnd++) {
    const place = values.length - fromEnd;
    if (expected === weighted) {
      const meant = codeAlphabet.charAt(values[place - 1]! ^ sum);
      const typed = codeAlphabet.charAt(values[place - 1]!);
      return `A letter is wrong. If it is only one, it is the ${ordinal(place)}: "${meant}" and not "${typed}".`;
    }
    expected = timesRoot(expected);
  }
  return 'More than one letter is wrong. Compare the code with the page, group by group.';
}

/** A value times the root a of a^5 + a^2 + 1, in the field of 32. */
function timesRoot(value: number): number {
  const doubled = value << 1;
  return doubled & 32 ? doubled ^ 0b100101 : doubled;
}

const paces = ['quick', 'steady', 'slow'] as const;
/** Asked and right of the nine states of a pace, in the order of their numbers. */
const states = [1, 2, 3].flatMap((asked) => Array.from({ length: asked + 1 }, (_, right) => ({ asked, right })));

function answerOf(value: number): RoundAnswer | undefined {
  if (value === 0) return { asked: 0, right: 0, pace: null };
  const pace = paces[Math.floor((value - 1) / states.length)];
  const state = states[(value - 1) % states.length];
  return pace && state && { ...state, pace };
}

function ordinal(place: number): string {
  const ending = place % 100 >= 11 && place % 100 <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th');
  return `${place}${ending} of the code`;
}

function wrong(reason: string): ReadCode {
  return { kind: 'wrong', reason };
}
