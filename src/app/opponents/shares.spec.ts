import { describe, expect, it } from 'vitest';
import { sharesOf, shareText } from './shares.ts';

describe('the shares of a mix', () => {
  it('are the weights against each other, in their order', () => {
    expect(sharesOf({ jump: 3, 'box-zone': 1 })).toEqual([
      { scheme: 'jump', weight: 3, share: 0.75 },
      { scheme: 'box-zone', weight: 1, share: 0.25 },
    ]);
  });

  it.each([
    [{}, []],
    [{ jump: 0 }, [0]],
    [{ jump: Number.NaN, shutoff: 2 }, [0, 1]],
    [{ jump: -1, shutoff: 2 }, [0, 1]],
  ])('of %o are %o', (weights, shares) => {
    expect(sharesOf(weights).map(({ share }) => share)).toEqual(shares);
  });

  it.each([
    [0.75, '75 %'],
    [1, '100 %'],
    [0, '0 %'],
    [0.002, 'less than 1 %'],
    [1 / 3, '33 %'],
  ])('%d is read as %s', (share, text) => {
    expect(shareText(share)).toBe(text);
  });
});
