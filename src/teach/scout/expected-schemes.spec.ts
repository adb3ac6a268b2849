import { describe, expect, it } from 'vitest';
import { suspectsOf, usualSchemeWeight } from '../../engine/index.ts';
import { demoPlaybook, type Opponent } from '../../playbook/index.ts';
import { expectedSchemes } from './expected-schemes.ts';
import { schemesInQuestion, usualScoutSchemes } from './scout-question.ts';

const opponent = demoPlaybook.opponents!.find(({ id }) => id === 'copper-falls');

describe('schemes before the game', () => {
  it('are those of as many men, the known ones far ahead', () => {
    const five = expectedSchemes(demoPlaybook, opponent, 5);
    expect(five['box-zone']).toBeGreaterThan(0.6);
    expect(five.jump).toBeLessThan(0.05);
    expect(Object.values(five).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(Object.keys(expectedSchemes(demoPlaybook, opponent, 4))).toEqual(['two-down']);
    expect(Object.keys(expectedSchemes(demoPlaybook, undefined, 3))).toEqual(['three-down']);
    expect(expectedSchemes(demoPlaybook, opponent, 1)).toEqual({});
  });

  it('are the usual ones where nothing is known, and keep some of them beside what is', () => {
    const usual = expectedSchemes(demoPlaybook, undefined, 5);
    const { level } = demoPlaybook.team;
    expect(usual['box-zone']! / usual.jump!).toBeCloseTo(
      usualSchemeWeight(level, 'box-zone') / usualSchemeWeight(level, 'jump'),
      12,
    );
    const only: Opponent = { id: 'them', name: 'Them', schemes: { jump: 3 } };
    const known = expectedSchemes(demoPlaybook, only, 5);
    expect(known.jump).toBeCloseTo(0.85 + 0.15 * usual.jump!, 12);
    expect(known['box-zone']).toBeCloseTo(0.15 * usual['box-zone']!, 12);
  });

  it('are looked for as they are said to be played, and in other ways too', () => {
    const loose: Opponent = { id: 'them', name: 'Them', schemes: { jump: 3 }, discipline: { all: 'loose' } };
    const shares = (asked: Opponent | undefined) => {
      const schemes = usualScoutSchemes(demoPlaybook, asked).filter(({ id }) => id === 'jump');
      const question = { play: 'lantern', side: 'right', level: null, schemes } as const;
      const suspects = suspectsOf(schemesInQuestion(demoPlaybook, question), 'highSchool');
      return Object.fromEntries(suspects.map(({ disciplineName, share }) => [disciplineName, share]));
    };
    expect(shares(undefined)).toEqual({ sharp: 0.25, ordinary: 0.5, loose: 0.25 });
    expect(shares(loose).loose).toBeCloseTo(0.7 + 0.3 * 0.25, 12);
    expect(shares({ ...loose, discipline: { all: 'faultless' } }).faultless).toBeCloseTo(0.7, 12);
  });
});
