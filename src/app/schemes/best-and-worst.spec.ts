import { describe, expect, it } from 'vitest';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import { bestAndWorst } from './best-and-worst.ts';

const names = { box: 'the box', net: 'the net' };

function answer(scheme: string, mean: number, half: number, state: SchemeAnswer['state'] = 'sharpening') {
  return { scheme, state, goals: { mean, low: mean - half, high: mean + half } } as SchemeAnswer;
}

describe('where a play is worth most and least', () => {
  it('is told when the intervals are apart', () => {
    expect(bestAndWorst([answer('box', 0.2, 0.04), answer('net', 0.35, 0.04), answer('jump', 0.3, 0.04)], names)).toBe(
      'It is best against the net (.35) and worst against the box (.20).',
    );
  });

  it('is left open when they overlap', () => {
    expect(bestAndWorst([answer('box', 0.2, 0.1), answer('net', 0.35, 0.1)], names)).toBe(
      'It looks best against the net (.35) and worst against the box (.20), but they are still too close to tell apart.',
    );
  });

  it.each([
    ['before there is anything', []],
    ['of a first guess', [answer('box', 0.2, 0.04, 'coarse'), answer('net', 0.35, 0.04, 'coarse')]],
    ['of one scheme', [answer('box', 0.2, 0.04)]],
  ])('is not told %s', (_, schemes) => {
    expect(bestAndWorst(schemes, names)).toBe('');
  });
});
