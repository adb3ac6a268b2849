import { describe, expect, it } from 'vitest';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { shotHeat } from './heat.ts';

const model = compileChance(sampleMatchup({ level: 'pro' }), 1);

describe('shot value over the field', () => {
  const heat = shotHeat(model, 1, 0.5);
  const at = (x: number, y: number) => {
    const column = Math.round((x - heat.left) / heat.cell);
    return heat.odds_byCell[Math.round((y - heat.bottom) / heat.cell) * heat.columns + column]!;
  };

  it('covers the ground in front of the goal, the same on both sides', () => {
    expect([heat.columns, heat.rows]).toEqual([60, 40]);
    expect(heat.odds_byCell).toHaveLength(2400);
    for (let row = 0; row < heat.rows; row++) {
      for (let column = 0; column < heat.columns / 2; column++) {
        const mirrored = heat.odds_byCell[row * heat.columns + heat.columns - 1 - column];
        expect(heat.odds_byCell[row * heat.columns + column]).toBe(mirrored);
      }
    }
  });

  it('falls with the distance, and is nothing in the crease', () => {
    const odds = [4, 7, 10, 13, 16, 19].map((y) => at(0.25, y + 0.25));
    for (let step = 1; step < odds.length; step++) expect(odds[step]).toBeLessThan(odds[step - 1]!);
    expect(at(0.25, 2.25)).toBe(0);
    expect(at(6.25, 6.25)).toBeGreaterThan(at(9.25, 0.75));
  });

  it('is asked of one of the six, in cells of some size', () => {
    expect(() => shotHeat(model, 6)).toThrow(RangeError);
    expect(() => shotHeat(model, 0, 0)).toThrow(RangeError);
  });
});
