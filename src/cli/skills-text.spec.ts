import { describe, expect, it } from 'vitest';
import type { PractisingMan, SkillWorth, SkillWorths } from '../worker/index.ts';
import { sampleNames } from './sample-report.fixture.ts';
import { skillsJson } from './skills-json.ts';
import { skillsText } from './skills-text.ts';
import { tableWidth } from './table.ts';

const men: readonly PractisingMan[] = ['TR', 'TL', 'WR', 'WL', 'C', 'X'].map((spot, at) => ({
  spot,
  number: 100 + at,
  best: at === 5 ? ['pass', 'feed'] : [],
}));

function row(man: SkillWorth['man'], skill: SkillWorth['skill'], mean: number, isFresh = true): SkillWorth {
  const gain = { mean, low: mean - 0.0061, high: mean + 0.0061 };
  const byScheme = ['box-zone', 'four-rotation-locked'].map((scheme) => ({ scheme, gain }));
  return { man, skill, grades: 1, gain, byScheme, trials: isFresh ? 600 : 100, isFresh };
}

const best = row('all', 'shoot', 0.053);
const fallen = Array.from({ length: 12 }, (_, at) => row(at % 6, 'inside', -0.001 * at, false));
const lead = [row(4, 'inside', 0.031), row(5, 'handle', 0.0302)];
const worths: SkillWorths = {
  unit: { rows: [best, row('all', 'offHand', 0, false)], leaders: [best] },
  each: { rows: [...lead, ...fallen], leaders: lead },
};

describe('what practice is worth, printed', () => {
  const text = skillsText(worths, men, sampleNames);

  it('fits 80 columns', () => {
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(tableWidth);
  });

  it('says what is best to practise, or that it cannot be told, and how sure each figure is', () => {
    const plain = text.replace(/\s+/g, ' ');
    expect(plain).toContain('The best thing for all six to practise: shooting. One grade better is worth 5.3 goals');
    expect(plain).toContain('finishing inside, 104 at C, +3.1 (2.5 to 3.7); handling, 105 at X, +3.0 (2.4 to 3.6).');
    expect(text).toMatch(/^shooting +all six +\+5\.3 \(4\.7 to 5\.9\) +600$/m);
    expect(text).toMatch(/^the off hand +all six +0 \(−\.6 to \.6\) +rough, 100$/m);
    expect(plain).toContain('2 more gained less than the rough ones here');
    expect(plain).toContain('105 at X in passing and feeding');
  });

  it('shows schemes only for what was measured freshly, and men only when they are known', () => {
    const rough = { rows: [row('all', 'offHand', -0.01, false)], leaders: [] };
    const unit = skillsText({ unit: rough, each: null }, men, sampleNames);
    expect(unit).not.toContain('against ');
    expect(unit).not.toContain('at C');
    expect(unit.replace(/\s+/g, ' ')).toContain('Nothing that all six together could practise surely brings');
  });

  it('is whole as JSON', () => {
    const conditions = { seed: 3, hash: 'abc', penalty: 60, level: '14U' } as const;
    const json = JSON.parse(skillsJson(worths, 'lantern', men, { first: 100, second: 200, last: 600 }, conditions));
    expect(json.unit.rows[0]).toEqual({
      who: 'all',
      skill: 'shoot',
      grades: 1,
      gain: best.gain,
      trials: 600,
      fresh: true,
      schemes: best.byScheme,
    });
    expect(json.each.leaders).toEqual([
      { who: 104, spot: 'C', skill: 'inside' },
      { who: 105, spot: 'X', skill: 'handle' },
    ]);
    expect(json.each.rows).toHaveLength(14);
    expect(json.alreadyBest.at(-1)).toEqual({ who: 105, spot: 'X', skills: ['pass', 'feed'] });
  });
});
