import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import type { Playbook, QuizEntry, QuizResult } from '../schema.ts';
import { keepQuiz, keepResult, removeQuiz } from './edit-quizzes.ts';

const quiz: QuizEntry = {
  id: 'k7qf',
  name: 'Lantern, X',
  play: 'lantern',
  questions: [
    { carrier: 'X', scheme: 'jump', right: 'Feed C' },
    { carrier: 'X', scheme: 'box-zone', right: 'Step in and shoot' },
  ],
  results: [],
};
const result = (more: Partial<QuizResult> = {}): QuizResult => ({
  number: 7,
  round: 1,
  answers: [
    { asked: 2, right: 1, pace: 'slow' },
    { asked: 1, right: 1, pace: 'quick' },
  ],
  ...more,
});

function edited(edit: ReturnType<typeof keepQuiz>): Playbook {
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.playbook;
}

describe('a quiz that is kept', () => {
  const kept = edited(keepQuiz(demoPlaybook, quiz));
  const first = edited(keepResult(kept, 'k7qf', result()));

  it('stands in the playbook once, with its results', () => {
    expect(kept.quizzes).toEqual([quiz]);
    expect(edited(keepQuiz(first, quiz))).toBe(first);
    expect(first.quizzes?.[0]?.results).toEqual([result()]);
  });

  it('takes each round of each man once', () => {
    expect(edited(keepResult(first, 'k7qf', result()))).toBe(first);
    const more = edited(
      keepResult(edited(keepResult(first, 'k7qf', result({ round: 2 }))), 'k7qf', result({ number: 9 })),
    );
    expect(more.quizzes?.[0]?.results.map(({ number, round }) => [number, round])).toEqual([
      [7, 1],
      [7, 2],
      [9, 1],
    ]);
  });

  it('takes the newer of two that call themselves the same round, and says so', () => {
    const other = result({ answers: result().answers.map((answer) => ({ ...answer, right: 0 })) });
    const edit = keepResult(first, 'k7qf', other);
    expect(edit).toMatchObject({ kind: 'edited', also: [expect.stringContaining('round 1 of number 7')] });
    expect(edited(edit).quizzes?.[0]?.results).toEqual([other]);
  });

  it('refuses what is none of its own', () => {
    expect(keepResult(kept, 'aaaa', result())).toMatchObject({ kind: 'refused' });
    expect(keepResult(kept, 'k7qf', result({ answers: [{ asked: 1, right: 1 }] }))).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('has 2 questions'),
    });
    expect(removeQuiz(kept, 'aaaa')).toMatchObject({ kind: 'refused' });
    expect(edited(removeQuiz(kept, 'k7qf')).quizzes).toEqual([]);
  });
});
