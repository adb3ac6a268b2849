import { describe, expect, it } from 'vitest';
import { originSentence } from './origin-words.ts';

describe('where goals come from', () => {
  const shares = { play: 0.12, beside: 0.41, round: 0.03, loose: 0.44 };

  it('is told in tenths, the most first, and what is hardly anything is left out', () => {
    expect(originSentence({ chances: 36, shares }, true)).toBe(
      'Of every 10 goals about 5 from loose balls and rebounds, 4 from a man who came open beside them, 1 from the play’s own steps (by the shots of 36 chances).',
    );
  });

  it('tells ten goals of ten, however the shares are rounded', () => {
    const said = originSentence({ chances: 36, shares: { play: 0.58, beside: 0.28, round: 0.07, loose: 0.07 } }, true)!;
    const tenths = [...said.matchAll(/(\d+) (?:from|while)/g)].map(([, count]) => Number(count));
    expect(tenths.reduce((sum, each) => sum + each, 0)).toBe(10);
  });

  it('says why there are goals without looks', () => {
    expect(originSentence({ chances: 36, shares }, false)).toContain('though no look of the play opens often');
  });

  it('says nothing without a shot', () => {
    expect(originSentence({ chances: 36, shares: { play: 0, beside: 0, round: 0, loose: 0 } }, true)).toBeUndefined();
  });
});
