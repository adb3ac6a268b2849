import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Playbook, type QuizEntry } from '../../playbook/index.ts';
import type { ResultFile } from '../../render/index.ts';
import { loadResult } from './load-result.ts';
import { mostMissedWords, whoKnows } from './who-knows.ts';

// Written by the page (src/clip/write-result-code.props.ts holds the two together): number 16, round 1, ten questions.
const code = 'Q814-40G0-8666-6227-24RZ';
const question = { carrier: 'X', scheme: 'jump', right: 'Feed C' };
const entry: QuizEntry = {
  id: '8144',
  name: 'Lantern, the whole unit',
  play: 'lantern',
  questions: Array.from({ length: 10 }, () => question),
  results: [],
};
const keeping: Playbook = { ...demoPlaybook, quizzes: [entry] };
const file: ResultFile = {
  format: 'sliderule-quiz-result',
  version: 1,
  quiz: 'K7QF',
  number: 7,
  round: 2,
  play: 'lantern',
  name: 'Lantern',
  spot: 'X',
  questions: [question, question],
  answers: [
    { asked: 2, right: 1, pace: 'slow' },
    { asked: 0, right: 0, pace: null },
  ],
};

describe('a result that comes back', () => {
  it('is kept with its quiz, by number', () => {
    const loaded = loadResult(keeping, code);
    if (loaded.kind === 'wrong') throw new Error(loaded.reason);
    expect(loaded.result).toMatchObject({ number: 16, round: 1 });
    expect(loaded.playbook.quizzes?.[0]?.results).toEqual([loaded.result]);
    expect(loaded.result.answers).toHaveLength(10);
    // All of it was asked: there is nothing more to say.
    expect(loaded.also).toEqual([]);
  });

  it('comes as a file with what was asked, where the quiz is not kept', () => {
    const loaded = loadResult(demoPlaybook, JSON.stringify(file));
    expect(loaded).toMatchObject({
      kind: 'loaded',
      quiz: { id: 'k7qf', name: 'Lantern, the reads of X', spot: 'X' },
      result: {
        number: 7,
        round: 2,
        answers: [
          { asked: 2, right: 1, pace: 'slow' },
          { asked: 0, right: 0 },
        ],
      },
      also: ['He was asked 1 of its 2 questions.'],
    });
  });

  it.each<[string, string, string]>([
    ['a code of a quiz that is not kept', code, 'keeps no quiz 8144'],
    ['a wrong letter', code.replace('Z', 'Y'), '"Z" and not "Y"'],
    ['another file', '{"format":"sliderule-playbook"}', 'no result of a quiz'],
    ['a broken file', '{"format":', 'no result of a quiz'],
    [
      'a file that says what cannot be',
      JSON.stringify({ ...file, answers: [{ asked: 1, right: 2, pace: 'slow' }, file.answers[1]] }),
      'no result',
    ],
    ['a file with a strange number', JSON.stringify({ ...file, number: 1e9 }), 'no result'],
    ['a file with too few answers', JSON.stringify({ ...file, answers: [] }), 'no result'],
    ['a file whose question is none', JSON.stringify({ ...file, questions: [null, question] }), 'no result'],
  ])('is refused with a reason: %s', (_, text, reason) => {
    expect(loadResult(demoPlaybook, text)).toMatchObject({ kind: 'wrong', reason: expect.stringContaining(reason) });
  });
});

describe('who knows what', () => {
  const answer = (asked: number, right: number) => ({ asked, right });
  const quiz: QuizEntry = {
    ...entry,
    questions: [question, { ...question, right: 'Shoot' }, { ...question, right: 'Hold it' }],
    results: [
      { number: 9, round: 1, answers: [answer(2, 1), answer(1, 1), answer(1, 0)] },
      { number: 7, round: 1, answers: [answer(1, 1), answer(3, 0), answer(0, 0)] },
      { number: 9, round: 2, answers: [answer(1, 1), answer(0, 0), answer(1, 0)] },
    ],
  };

  it('is told by the last round in which a man was asked', () => {
    const { men } = whoKnows(quiz);
    expect(men).toEqual([
      { number: 7, rounds: 1, standing_byQuestion: ['known', 'missed', 'notAsked'] },
      { number: 9, rounds: 2, standing_byQuestion: ['known', 'known', 'missed'] },
    ]);
    expect(whoKnows({ ...quiz, results: quiz.results.slice(0, 1) }).men[0]?.standing_byQuestion[0]).toBe('found');
  });

  it('names the question that is missed most, with how little that may be', () => {
    const knowledge = whoKnows(quiz);
    expect(knowledge.questions.map(({ asked, first }) => [asked, first])).toEqual([
      [3, 2],
      [2, 1],
      [2, 0],
    ]);
    expect(mostMissedWords(knowledge, (id) => id)).toBe(
      'Missed most: X against jump, where "Hold it" is right. Missed 2 of 2 times at the first try. That is too few to tell more than where to look.',
    );
    expect(mostMissedWords(whoKnows(entry), (id) => id)).toBeUndefined();
  });
});
