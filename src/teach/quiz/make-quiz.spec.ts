import { describe, expect, it } from 'vitest';
import { demoPlaybook, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import { quizHtml } from '../../render/index.ts';
import { answerRequest, type TrialPool, type WorkerAnswer, type WorkerRequest } from '../../worker/index.ts';
import { makeQuiz, mostQuestions, type QuizWishes } from './make-quiz.ts';
import { nearTie, plainlyWorse } from './offered-choices.ts';
import { quizPage } from './quiz-page.ts';

/** A pool that works in this thread, whichever request first: the answers still come in the order of the requests. */
function poolIn(order: (requests: number) => readonly number[]): TrialPool & { readonly asked: () => number } {
  let asked = 0;
  return {
    threads: 1,
    asked: () => asked,
    answer: async (requests: readonly WorkerRequest[]) => {
      asked += requests.length;
      const answers: WorkerAnswer[] = [];
      // As threads get them: as copies.
      for (const at of order(requests.length)) answers[at] = answerRequest(structuredClone(requests[at]!));
      return answers;
    },
    close: async () => {},
  };
}

const upward = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at);
const wishes: QuizWishes = {
  play: 'ferry',
  schemes: ['jump', 'box-zone'],
  side: 'right',
  penalty: null,
  level: null,
  seed: 7,
  questions: 3,
};
const effort = { manUps: { unit: 4, one: 8 }, screened: 16, screenFutures: 8, whole: 1, futures: 32 };

describe('a quiz', async () => {
  const pool = poolIn(upward);
  let planned = 0;
  const made = await makeQuiz(pool, demoPlaybook, wishes, { effort, onPlan: (requests) => (planned = requests) });
  if (made.kind === 'nothing') throw new Error(made.reason);
  const { quiz, entry } = made;

  it('asks what was wished, and says beforehand how long that takes', () => {
    expect(quiz.questions.length).toBeGreaterThan(1);
    expect(quiz.questions.length).toBeLessThanOrEqual(3);
    expect(Math.abs(planned - pool.asked())).toBeLessThan(0.6 * pool.asked());
    expect(quiz).toMatchObject({ play: 'Ferry', playId: 'ferry', spot: -1, seconds: 7, futures: 32 });
    expect(quiz.id).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}$/);
  });

  it('has choices of which the right are near the best, and the wrong plainly worse', () => {
    for (const { choices, best, reason } of quiz.questions) {
      expect(choices.length).toBeGreaterThanOrEqual(3);
      expect(choices.length).toBeLessThanOrEqual(4);
      expect(choices[best]?.right).toBe(true);
      expect(reason).toMatch(/goals in 100 tries/);
      expect(new Set(choices.map(({ words }) => words)).size).toBe(choices.length);
      for (const { right, behind, why } of choices) {
        expect(right ? behind[0] <= nearTie + 1e-9 : behind[0] >= plainlyWorse - 1e-3).toBe(true);
        expect(right || behind[1] > 0).toBe(true);
        expect(why === '').toBe(right);
      }
    }
  });

  it('shows what comes of a choice from the very picture at which it was asked', () => {
    const endOf = (track: readonly number[]): number => track.reduce((sum, step) => sum + step, 0);
    for (const { before, choices, carrier } of quiz.questions) {
      expect(before.holders.at(-1)?.[1]).toBe(carrier);
      for (const { after } of choices) {
        expect(after.x_byMan.map(([first]) => first)).toEqual(before.x_byMan.map(endOf));
        expect(after.y_byMan.map(([first]) => first)).toEqual(before.y_byMan.map(endOf));
      }
    }
  });

  it('is the same for any number of threads, and another with other luck', async () => {
    const other = await makeQuiz(
      poolIn((count) => [...upward(count)].reverse()),
      demoPlaybook,
      wishes,
      { effort },
    );
    expect(other).toEqual(made);
    const luck = await makeQuiz(poolIn(upward), demoPlaybook, { ...wishes, seed: 8 }, { effort });
    expect(luck.kind === 'made' && luck.quiz.id).not.toBe(quiz.id);
  });

  it('is kept in the playbook as what was asked, and names nobody', () => {
    expect(entry).toMatchObject({
      id: quiz.id.toLowerCase(),
      play: 'ferry',
      name: 'Ferry, the whole unit',
      results: [],
    });
    expect(entry.questions.map(({ right }) => right)).toEqual(
      quiz.questions.map(({ choices, best }) => choices[best]?.words),
    );
    const { diagnostics } = parsePlaybook(serializePlaybook({ ...demoPlaybook, quizzes: [entry] }));
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    const text = JSON.stringify(quiz);
    expect(demoPlaybook.team.roster.filter(({ name }) => text.includes(name))).toEqual([]);
  });

  it('becomes one page that lets in its own program and nothing else', async () => {
    const hashOf = async (text: string) => `hash-of-${text.length}`;
    const page = await quizPage(demoPlaybook, quiz, { script: 'go()', hashOf });
    expect(page).toContain(`default-src 'none'; script-src 'sha256-hash-of-${'go()'.length}'`);
    expect(page).not.toMatch(/\b(src|href)=|url\(|@import|\sstyle=|\son\w+=/);
    expect(JSON.parse(/id="quiz">(.*)<\/script>/.exec(page)?.[1] ?? '')).toEqual(quiz);
    const sly = { ...quiz, team: '</script><img src=x>' };
    expect(await quizPage(demoPlaybook, sly, { script: 'go()', hashOf })).not.toContain('<img');
    await expect(quizHtml({ ...quiz, questions: [] }, { field: {} as never, script: '', hashOf })).rejects.toThrow(
      RangeError,
    );
  });

  it('asks one man alone when that is wished, and nobody who never has the ball', async () => {
    const one = await makeQuiz(
      poolIn(upward),
      demoPlaybook,
      { ...wishes, spot: 'P', questions: 2, seconds: 4 },
      { effort },
    );
    if (one.kind === 'nothing') throw new Error(one.reason);
    expect(one.quiz.questions.map(({ carrier }) => one.quiz.spots[carrier])).toEqual(one.quiz.questions.map(() => 'P'));
    expect(one.quiz.seconds).toBe(4);
    expect(one.entry.spot).toBe('P');
    const none = await makeQuiz(poolIn(upward), demoPlaybook, { ...wishes, play: 'lantern', spot: 'C' }, { effort });
    expect(none).toMatchObject({ kind: 'nothing', reason: expect.stringContaining('never brings C the ball') });
  });

  it('is refused for what cannot be asked', async () => {
    for (const questions of [0, mostQuestions + 1, 1.5])
      await expect(makeQuiz(pool, demoPlaybook, { ...wishes, questions })).rejects.toThrow(RangeError);
    await expect(makeQuiz(pool, demoPlaybook, { ...wishes, spot: 'Q' })).rejects.toThrow(RangeError);
  });
});
