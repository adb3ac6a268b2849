import { describe, expect, test } from 'vitest';
import { schemesFor } from '../../../engine/index.ts';
import { demoPlaybook } from '../../../playbook/index.ts';
import { quizFoes } from './quiz-question.ts';

describe('quizFoes', () => {
  const oneDown = [...schemesFor(5).map(({ id }) => id), 'northgate-net'];
  test.each([
    { kind: 'all' },
    { kind: 'onPlay' },
    { kind: 'scheme', scheme: 'gone' },
    { kind: 'opponent', opponent: 'gone' },
  ] as const)('asks what units of five play where $kind says nothing else', (against) => {
    expect(quizFoes(demoPlaybook, against, [])).toEqual({ schemes: oneDown });
  });
  test('asks a scheme of fewer men where a coach names it', () => {
    expect(quizFoes(demoPlaybook, { kind: 'scheme', scheme: 'two-down' }, []).schemes).toEqual(['two-down']);
  });
  test('asks what an opponent plays, and nothing else', () => {
    expect(quizFoes(demoPlaybook, { kind: 'opponent', opponent: 'copper-falls' }, [])).toEqual({
      schemes: ['box-zone', 'box-string'],
      opponent: 'copper-falls',
    });
  });
});
