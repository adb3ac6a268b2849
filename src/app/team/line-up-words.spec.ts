import { describe, expect, it } from 'vitest';
import type { Player } from '../../playbook/index.ts';
import { absenceSentence, fieldMen, lossText, manText, pointsText, reasonsText } from './line-up-words.ts';

const man = (number: number, name: string, crosse?: Player['crosse']): Player => ({
  number,
  name,
  hand: 'right',
  ...(crosse && { crosse }),
});
const roster = [man(1, 'Arlo', 'goalkeeper'), man(4, 'Odell'), man(11, 'Teo'), man(19, ''), man(11, 'Twin')];

describe('the words of a line-up', () => {
  it('name a man, or his number while he has no name', () => {
    expect(manText(4, roster)).toBe('Odell');
    expect(manText(19, roster)).toBe('number 19');
    expect(manText(99, roster)).toBe('number 99');
  });

  it('say who comes in where and who shifts', () => {
    const moves = [
      { number: 11, to: 'TR' },
      { number: 19, from: 'TR', to: 'X' },
    ];
    expect(absenceSentence({ number: 4, name: 'Odell', comesIn: 11, moves }, roster)).toBe(
      'Teo comes in at TR; number 19 goes from TR to X.',
    );
    expect(absenceSentence({ number: 4, name: 'Odell', moves: [] }, roster)).toBe('nobody is left to come in.');
  });

  it.each([
    [4.5, '4.5 points of fit less.'],
    [1, '1 point of fit less.'],
    [0.04, 'As good a fit.'],
    [-0.04, 'As good a fit.'],
    [undefined, 'No six are left.'],
  ])('tell a loss of %s', (loss, text) => expect(lossText(loss)).toBe(text));

  it('tell a gain where the coach has fixed a worse man', () => {
    expect(lossText(-2)).toMatch(/^Gains 2 points/);
  });

  it('write points with a true minus', () => {
    expect(pointsText(-1.25)).toBe('−1.2 points');
    expect(pointsText(0)).toBe('0 points');
  });

  it('say why, and who decided', () => {
    const at = { spot: 'X', number: 4, name: 'Odell', worth: 3, reasons: ['feeds 5 of 5'] };
    expect(reasonsText({ ...at, pinned: true })).toBe('fixed there by you, feeds 5 of 5');
    expect(reasonsText({ ...at, pinned: false, reasons: [] })).toBe('the spot asks for nothing special');
  });

  it('leave out goalkeepers, and the second man of a number', () => {
    expect(fieldMen(roster).map(({ name }) => name)).toEqual(['Odell', 'Teo', '']);
  });
});
