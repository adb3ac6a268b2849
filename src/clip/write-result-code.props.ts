import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeAlphabet, type RoundResult, readResultCode } from '../render/index.ts';
import { writeResultCode } from './write-result-code.ts';

const answer = fc
  .record({ asked: fc.integer({ min: 0, max: 3 }), right: fc.nat(3), pace: fc.constantFrom('quick', 'steady', 'slow') })
  .map(({ asked, right, pace }) =>
    asked === 0 ? { asked, right: 0, pace: null } : { asked, right: Math.min(right, asked), pace },
  );
const letter = fc.constantFrom(...codeAlphabet);
const result: fc.Arbitrary<RoundResult> = fc.record({
  quiz: fc.string({ unit: letter, minLength: 4, maxLength: 4 }),
  number: fc.integer({ min: 0, max: 999 }),
  round: fc.integer({ min: 1, max: 32 }),
  answers: fc.array(answer, { minLength: 1, maxLength: 20 }),
}) as fc.Arbitrary<RoundResult>;

const lettersOf = (code: string): string[] => [...code.replaceAll('-', '')];
/** The letters with another at a place. */
const changed = (letters: readonly string[], at: number, other: string): string[] =>
  letters.map((letter, place) => (place === at ? other : letter));
const placeToldBy = (reason: string): number => Number(/it is the (\d+)/.exec(reason)?.[1]);

describe('a result code', () => {
  it('says what was put into it, however it is typed', () => {
    fc.assert(
      fc.property(result, fc.constantFrom(' ', '-', '', '\n'), (given, between) => {
        const code = writeResultCode(given);
        expect(readResultCode(code)).toEqual({ kind: 'result', result: given });
        const sloppy = code.toLowerCase().replaceAll('-', between).replaceAll('0', 'o').replaceAll('1', 'l');
        expect(readResultCode(` ${sloppy} `)).toEqual({ kind: 'result', result: given });
      }),
    );
  });

  it('is caught with any one wrong letter, which is told with what it should be', () => {
    fc.assert(
      fc.property(result, fc.nat(), (given, place) => {
        const letters = lettersOf(writeResultCode(given));
        const at = place % letters.length;
        for (const other of codeAlphabet) {
          if (other === letters[at]) continue;
          const read = readResultCode(changed(letters, at, other).join(''));
          if (read.kind !== 'wrong') throw new Error(`taken with ${other} at ${at}`);
          expect(placeToldBy(read.reason)).toBe(at + 1);
          expect(read.reason).toContain(`"${letters[at]}" and not "${other}"`);
        }
      }),
    );
  });

  it('is caught with any two wrong letters, two that changed places among them', () => {
    fc.assert(
      fc.property(result, fc.nat(), fc.nat(), letter, letter, (given, one, other, first, second) => {
        const letters = lettersOf(writeResultCode(given));
        const [at, and] = [one % letters.length, other % letters.length];
        const wrong = changed(changed(letters, at, first), and, second);
        const swapped = changed(changed(letters, at, letters[and]!), and, letters[at]!);
        for (const typed of [wrong, swapped]) {
          const same = typed.join('') === letters.join('');
          expect(readResultCode(typed.join('')).kind).toBe(same ? 'result' : 'wrong');
        }
      }),
    );
  });

  it('is caught when it is cut, and when it holds a sign that no code has', () => {
    fc.assert(
      fc.property(result, (given) => {
        const code = writeResultCode(given);
        expect(readResultCode(code.slice(0, 8))).toMatchObject({ reason: expect.stringContaining('11 to 30') });
        expect(readResultCode(code.replace(/.$/, 'U'))).toMatchObject({ reason: expect.stringContaining('"U"') });
      }),
    );
    expect(readResultCode('  ')).toMatchObject({ reason: expect.stringContaining('no code') });
  });
});
