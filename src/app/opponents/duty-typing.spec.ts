import { describe, expect, it } from 'vitest';
import { dutyChoices, matchingDuties, readTyped } from './duty-typing.ts';
import { cellWords, dutyVerbs, marksOf, spokenDuty } from './duty-words.ts';

const spots = ['P', 'TR', 'TL', 'WR', 'WL', 'C'];
const home = [0, 5] as const;
const choices = dutyChoices(spots, home);
const texts = (typed: string) => matchingDuties(choices, typed, 4).map(({ text }) => text);

describe('duties that are typed', () => {
  it.each([
    ['b', ['ball']],
    ['m t', ['man TR', 'man TL']],
    ['man tl', ['man TL']],
    ['s p t', ['split P TR', 'split P TL']],
    ['s tl p', ['split TL P']],
    ['f c', ['front C', 'front crease']],
    ['front crease', ['front crease']],
    ['h', ['home']],
    ['zzz', []],
    ['', []],
  ])('are found by their first letters: %s', (typed, found) => {
    expect(texts(typed)).toEqual(found);
  });

  it('are all duties of the language, each once', () => {
    expect(new Set(choices.map(({ text }) => text)).size).toBe(choices.length);
    const known = new Set(spots);
    for (const { text, own } of choices) expect(readTyped(text, 'tl', known, home)).toEqual({ own });
  });

  it.each([
    ['SPLIT p tl', { duty: 'split', who: ['P', 'TL'] }],
    ['pipe wl at -3,3', { duty: 'pipe', who: 'WL', at: [-3, 3] }],
    ['at 0, 8', { duty: 'place', at: [0, 8] }],
    ['lock crease', { duty: 'lock', who: 'crease' }],
    ['home', { duty: 'place', at: [0, 5] }],
  ])('can be written out: %s', (typed, own) => {
    expect(readTyped(typed, 'tl', new Set(spots), home)).toEqual({ own });
  });

  it.each([
    ['man q', /No set has a spot "Q"/],
    ['dance', /duty/],
    ['split P', /spot/],
  ])('are told what is wrong with them: %s', (typed, problem) => {
    expect(readTyped(typed, 'tl', new Set(spots), home)).toMatchObject({ problem: expect.stringMatching(problem) });
  });
});

describe('a cell', () => {
  it.each([
    [{ duty: 'ball' }, ' ball', 'on the ball'],
    [{ duty: 'man', who: 'TR' }, 'plays TR', 'plays TR'],
    [{ duty: 'split', who: ['P', 'TL'] }, 'splits P + TL', 'splits P and TL'],
    [{ duty: 'front', who: 'crease' }, 'fronts crease', 'fronts crease'],
    [{ duty: 'pipe', who: 'WL', at: [1, 1] }, 'pipe for WL', 'pipe for WL'],
    [{ duty: 'place', at: [0, 5] }, 'at home', 'at home'],
    [{ duty: 'place', at: [0, 8] }, 'at 0, 8', 'at 0, 8'],
  ] as const)('of %o reads %s', (own, cell, spoken) => {
    expect(cellWords(own, home).join(' ')).toBe(cell);
    expect(spokenDuty(own, home)).toBe(spoken);
  });

  it('names as many men as its duty has', () => {
    expect(dutyVerbs.map(marksOf)).toEqual([0, 1, 2, 1, 1, 1, 1, 0]);
  });
});
