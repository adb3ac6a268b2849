import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../../../playbook/index.ts';
import { planQuestion, questionText } from './plan-question.ts';

const choices = { play: 'quarry', also: undefined, opponent: undefined, side: 'right' } as const;

describe('planQuestion', () => {
  test('against nobody in particular it is all schemes with one man down, each as likely', () => {
    const { schemes, opponent } = planQuestion(demoPlaybook, choices);
    expect(opponent).toBeUndefined();
    expect(schemes.map(({ id }) => id)).toContain('box-zone');
    expect(schemes.map(({ id }) => id)).toContain('northgate-net');
    expect(schemes.map(({ id }) => id)).not.toContain('three-down');
    expect(new Set(schemes.map(({ weight }) => weight))).toEqual(new Set([1]));
  });
  test('against an opponent what he plays, as often as he does', () => {
    const { schemes, opponent } = planQuestion(demoPlaybook, { ...choices, opponent: 'copper-falls' });
    expect(opponent).toBe('copper-falls');
    expect(schemes).toEqual([
      { id: 'box-zone', weight: 3 },
      { id: 'box-string', weight: 1 },
    ]);
  });
  test('plays that are whole and not put away may be named in its place', () => {
    expect(planQuestion(demoPlaybook, { ...choices, also: 'ferry' }).others).toEqual(['lantern']);
    const [lantern, ...rest] = demoPlaybook.plays;
    const away = { ...demoPlaybook, plays: [{ ...lantern!, archived: true }, ...rest] };
    expect(planQuestion(away, choices).others).toEqual(['ferry']);
  });
  test.each([
    ['gone', ['quarry']],
    ['quarry', ['quarry']],
    ['ferry', ['quarry', 'ferry']],
  ])('with %s beside it', (also, plays) => {
    expect(planQuestion(demoPlaybook, { ...choices, also }).plays).toEqual(plays);
  });
});

describe('questionText', () => {
  const question = planQuestion(demoPlaybook, choices);
  const text = questionText(demoPlaybook, question);
  test('another plan, another play or another name ask the same', () => {
    const [first, ...others] = demoPlaybook.plays;
    const changed = {
      ...demoPlaybook,
      plays: [{ ...first!, name: 'Other' }, ...others],
      practices: [],
      team: {
        ...demoPlaybook.team,
        roster: demoPlaybook.team.roster.map((one) => ({ ...one, name: 'Somebody Else' })),
      },
    };
    expect(questionText(changed, question)).toBe(text);
  });
  test('another grade asks another', () => {
    const roster = demoPlaybook.team.roster.map((one) => ({ ...one, grades: { shoot: 1 } }));
    expect(questionText({ ...demoPlaybook, team: { ...demoPlaybook.team, roster } }, question)).not.toBe(text);
  });
});
