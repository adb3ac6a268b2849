import { describe, expect, it } from 'vitest';
import type { CarrierChance, SchemeChances } from '../../src/engine/index.ts';
import { asManyOfAll, leaveEachOut } from './leave-one-out.ts';

const nothing = { goals: 0, left: null };
const chance = (trial: number): CarrierChance => ({ trial, looks: [], goOn: nothing, after: 0 });
const gathered = (first: number, trials: number): readonly SchemeChances[] =>
  ['net', 'box', 'jump'].map((scheme) => ({
    scheme,
    weight: 1,
    trials,
    chances: Array.from({ length: trials }, (_, at) => chance(first + at)),
  }));

describe('leaving each scheme out', () => {
  const [learn, held] = [gathered(0, 6), gathered(0, 4)];
  const left = leaveEachOut(learn, held);

  it('never learns from the scheme that it is measured against', () => {
    expect(left.map(({ scheme }) => scheme)).toEqual(['net', 'box', 'jump']);
    for (const each of left) {
      expect(each.unmet).toEqual(learn.filter(({ scheme }) => scheme !== each.scheme));
      expect(each.held).toEqual(held.filter(({ scheme }) => scheme === each.scheme));
    }
  });

  it.each([
    [0, 6],
    [24, 6],
    [18, 9],
  ])('from man-up %i on learns from as many of all, %i a scheme', (first, trials) => {
    const all = gathered(first, trials);
    const met = asManyOfAll(all, first);
    const count = (some: readonly SchemeChances[]) => some.reduce((sum, { chances }) => sum + chances.length, 0);
    const unmet = leaveEachOut(all, all)[0]!.unmet;
    expect(count(met)).toBe(count(unmet));
    for (const one of met) expect(one.chances).toHaveLength(one.trials);
  });
});
