import { describe, expect, it } from 'vitest';
import { type Chance, demoPlaybook } from '../../playbook/index.ts';
import { comparePair, groupsToCompare } from './compare-pair.ts';
import { seasonReport } from './season-report.ts';

/** Calls with so many goals of so many chances: "a 12 30, b 5 30". */
function report(text: string) {
  const chances = text.split(', ').flatMap((part): Chance[] => {
    const [call, goals, of] = part.split(' ');
    return Array.from({ length: Number(of) }, (_, at) => ({
      id: `${call}${at}`,
      side: 'ours',
      result: at < Number(goals) ? 'goal' : 'saved',
      ...(call !== '-' && { call: call! }),
    }));
  });
  return seasonReport({ ...demoPlaybook, chances }, { by: 'call' }).ours;
}

describe('two calls that a coach chose', () => {
  it.each([
    ['a 12 30, b 4 30', 'sure', 'a brings surely more goals, by 4 to 46 goals in 100 chances. Why it does is not said'],
    ['b 4 30, a 12 30', 'sure', 'a brings surely more goals, by 4 to 46'],
    ['a 12 30, b 4 30, c 8 30, d 8 30', 'hint', 'But 6 pairs were possible'],
    ['a 20 30, b 2 30, c 8 30, d 8 30', 'sure', '6 pairs were possible, and it holds all the same'],
    ['a 4 4, b 0 9', 'unsure', 'there are too few to compare them'],
    ['a 5 9, b 4 11', 'unsure', 'which brings more goals cannot be told'],
  ] as const)('%s: %s', (text, verdict, words) => {
    const pair = comparePair(report(text), 'a', 'b')!;
    expect(pair.verdict).toBe(verdict);
    expect(pair.says).toContain(words);
  });

  it('have Newcombe’s interval, his first example', () => {
    const { difference } = comparePair(report('a 56 70, b 48 80'), 'a', 'b')!;
    expect(difference.mean).toBeCloseTo(0.2, 10);
    expect([difference.low.toFixed(4), difference.high.toFixed(4)]).toEqual(['0.0524', '0.3339']);
  });

  it('are among those that were written down, and two', () => {
    const side = report('a 5 9, b 4 11, - 3 9');
    expect(groupsToCompare(side).map(({ key }) => key)).toEqual(['b', 'a']);
    expect(comparePair(side, 'a', 'a')).toBeUndefined();
    expect(comparePair(side, 'a', '')).toBeUndefined();
    expect(comparePair(side, 'a', 'gone')).toBeUndefined();
  });

  it('are not compared where a call is written down of goals alone', () => {
    expect(comparePair(report('a 8 8, b 6 7, - 0 30'), 'a', 'b')).toBeUndefined();
  });
});
