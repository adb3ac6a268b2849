import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Estimate, shareDifference, wilsonInterval } from '../../engine/index.ts';
import type { Chance } from '../../playbook/index.ts';
import { compareGroups } from './compare-groups.ts';
import { groupNumbers } from './group-numbers.ts';
import { planAndResult } from './plan-and-result.ts';
import { perChanceOf, priorOf } from './season-prior.ts';
import {
  binMeanText,
  comparisonSentence,
  conversionSentence,
  planBinText,
  planSentence,
  shareText,
} from './season-words.ts';

const count = fc
  .integer({ min: 1, max: 400 })
  .chain((tries) => fc.record({ tries: fc.constant(tries), hits: fc.integer({ min: 0, max: tries }) }));
const prior = fc
  .record({
    level: fc.constantFrom('14U' as const, 'highSchool' as const, 'college' as const),
    side: fc.constantFrom('ours' as const, 'theirs' as const),
    chances: fc.double({ min: 1, max: 3, noNaN: true }),
  })
  .map(({ level, side, chances }) => perChanceOf(priorOf(level, side), chances));

const numbersIn = (words: string): number[] => (words.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
/** What stands behind a word of a sentence. */
const behind = (words: string, from: string): number[] => numbersIn(words.slice(words.indexOf(from) + from.length));

const chancesOf = ({ hits, tries }: { readonly hits: number; readonly tries: number }, expected?: number): Chance[] =>
  Array.from({ length: tries }, (_, at) => ({
    id: `${at}`,
    side: 'ours',
    result: at < hits ? 'goal' : 'saved',
    ...(expected !== undefined && { expected: { goals: expected, low: expected, high: expected } }),
  }));

describe('laws', () => {
  // 22 of 47: "surely above the guessed 33 %; in the long run between 33 % and 61 %".
  it('a share that is surely above or below the usual is so by the numbers in the sentence', () => {
    const check = (
      { hits, tries }: { readonly hits: number; readonly tries: number },
      usual: Parameters<typeof conversionSentence>[1],
    ) => {
      const raw: Estimate = wilsonInterval(hits, tries);
      const says = conversionSentence({ goals: hits, chances: tries, raw }, usual);
      const range = numbersIn(shareText(raw)).slice(1);
      if (says.includes('surely')) {
        const [mean, low, high] = behind(says, says.includes('surely above') ? 'surely above' : 'surely below');
        expect([low, high], says).toEqual(range);
        if (says.includes('surely above')) expect(mean, says).toBeLessThan(low!);
        else expect(mean, says).toBeGreaterThan(high!);
      } else if (says.includes('cannot be told')) {
        const [low, high, mean] = behind(says, 'between');
        expect(low, says).toBeLessThanOrEqual(mean!);
        expect(high, says).toBeGreaterThanOrEqual(mean!);
      } else expect(behind(says, 'could easily be').slice(0, 2), says).toEqual(range);
    };
    check({ hits: 22, tries: 47 }, priorOf('highSchool', 'ours'));
    fc.assert(fc.property(count, prior, check), { numRuns: 2000 });
  });

  it('more or fewer goals than the others are more by at least one in 100, and what cannot be told spans both', () => {
    fc.assert(
      fc.property(count, count, fc.integer({ min: 1, max: 12 }), prior, (one, other, pairs, usual) => {
        const beside = compareGroups(one, other, pairs);
        const says = comparisonSentence(
          'x',
          beside,
          groupNumbers(chancesOf(one), usual),
          groupNumbers(chancesOf(other), usual),
        );
        if (Math.min(one.tries, other.tries) < 5) expect(says).toContain('too few');
        else if (beside.verdict === 'unsure') {
          expect(says).not.toContain('surely');
          const { low, high } = shareDifference(one, other, 1 - 0.05 / pairs);
          expect(Math.round(100 * low), says).toBeLessThanOrEqual(0);
          expect(Math.round(100 * high), says).toBeGreaterThanOrEqual(0);
        } else expect(Math.min(...behind(says, 'by ').slice(0, 2)), says).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 500 },
    );
  });

  it('what the simulation expected fits or does not by the numbers in the sentence', () => {
    fc.assert(
      fc.property(count, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (made, odds) => {
        const plan = planAndResult(chancesOf(made, odds))!;
        const says = planSentence(plan);
        if (!says.includes('would be luck')) return;
        const [low, high] = behind(says, ', and ');
        if (says.includes('too little')) expect(made.hits, says).toBeGreaterThan(high!);
        else if (says.includes('too much')) expect(made.hits, says).toBeLessThan(low!);
        else expect(made.hits >= low! && made.hits <= high!, says).toBe(true);
        for (const bin of plan.bins) {
          const ends = numbersIn(planBinText(bin));
          if (bin.from > 0) expect(100 * Number(binMeanText(bin))).toBeGreaterThanOrEqual(ends[0]! - 1e-9);
          if (bin.to < 1) expect(100 * Number(binMeanText(bin))).toBeLessThan(ends.at(-1)!);
        }
      }),
      { numRuns: 500 },
    );
  });
});
