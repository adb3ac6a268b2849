import { describe, expect, it } from 'vitest';
import { compareGoals, type Tally } from '../../engine/index.ts';
import { demoPlaybook } from '../../playbook/index.ts';
import { answerRequest } from '../../worker/index.ts';
import { defaultAnswerPlan } from './answer-plan.ts';
import { type Ask, setupsOf } from './ask.ts';
import { createFakePool, type FakePool } from './fake-pool.fixture.ts';
import { createSideDesk, type SideAnswer, type SideDesk, type SideQuestion } from './side-answers.ts';

const plan = { ...defaultAnswerPlan, side: { trials: [8, 16], halfWidth: 0.001 } };
const whole: Ask = {
  playbook: demoPlaybook,
  play: 'lantern',
  schemes: ['house-3-2', 'jump'],
  side: 'right',
  penalty: 30,
  level: null,
  seed: 3,
};
const { team } = demoPlaybook;
const roster = team.roster.map((player) => (player.number === 4 ? { ...player, absent: true } : player));
const without: Ask = { ...whole, playbook: { ...demoPlaybook, team: { ...team, roster } } };
const question: SideQuestion = { id: 'without 4', ask: without, against: whole };

function start(): { readonly desk: SideDesk; readonly pool: FakePool } {
  const pool = createFakePool();
  return { desk: createSideDesk(pool, plan), pool };
}

function until(desk: SideDesk, holds: (answer: SideAnswer | undefined) => boolean, id = question.id): Promise<void> {
  return new Promise((resolve) => {
    const look = (): void => {
      if (!holds(desk.snapshot().get(id))) return;
      end();
      resolve();
    };
    const end = desk.subscribe(look);
    look();
  });
}
const isDone = (answer: SideAnswer | undefined): boolean => answer?.done === true;
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));

function tallies(ask: Ask): readonly Tally[] {
  return setupsOf(ask).map((setup) => {
    const answer = answerRequest({ kind: 'tally', setup, range: { from: 0, to: 16 } });
    if (answer.kind !== 'tally') throw new TypeError(answer.kind);
    return answer.tally;
  });
}

describe('what is asked beside the play', () => {
  it('is compared trial by trial with what it is held against', async () => {
    const { desk } = start();
    desk.ask([question]);
    expect(desk.snapshot().get(question.id)).toEqual({ change: null, done: false, refused: null });
    desk.goOn();
    await until(desk, isDone);
    expect(desk.snapshot().get(question.id)!.change).toEqual(compareGoals(tallies(without), tallies(whole)));
  });

  it('rests until it is told to go on, and again when it is told to pause', async () => {
    const { desk, pool } = start();
    desk.ask([question]);
    await turn();
    expect(pool.answered).toEqual([]);
    desk.goOn();
    await until(desk, (answer) => answer?.change != null);
    desk.pause();
    await turn();
    const before = pool.answered.length;
    await turn();
    expect(pool.answered.length).toBe(before);
    expect(isDone(desk.snapshot().get(question.id))).toBe(false);
    desk.goOn();
    await until(desk, isDone);
  });

  it('is remembered: the same question is answered at once', async () => {
    const { desk, pool } = start();
    desk.goOn();
    desk.ask([question]);
    await until(desk, isDone);
    const before = pool.answered.length;
    desk.ask([]);
    expect([...desk.snapshot()]).toEqual([]);
    desk.ask([{ ...question, id: 'again' }]);
    expect(isDone(desk.snapshot().get('again'))).toBe(true);
    await turn();
    expect(pool.answered.length).toBe(before);
  });

  it('says why when there is no answer, and goes on with the others', async () => {
    const { desk } = start();
    desk.goOn();
    desk.ask([{ id: 'no', ask: { ...whole, schemes: ['no', 'jump'] }, against: whole }, question]);
    await until(desk, isDone);
    expect(desk.snapshot().get('no')).toEqual({ change: null, done: true, refused: expect.stringContaining('no') });
  });
});
