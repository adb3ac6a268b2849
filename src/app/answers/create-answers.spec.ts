import { describe, expect, it } from 'vitest';
import { compareGoals, type Tally } from '../../engine/index.ts';
import { demoPlaybook, type Playbook, setAloneId } from '../../playbook/index.ts';
import { answerRequest, type WorkerRequest } from '../../worker/index.ts';
import type { AnswerPlan } from './answer-plan.ts';
import type { AnswersSnapshot } from './answers-snapshot.ts';
import type { Ask } from './ask.ts';
import { type Answers, createAnswers } from './create-answers.ts';
import { createFakePool, type FakePool } from './fake-pool.fixture.ts';
import { isKnownTo } from './matchup-record.ts';

/** As much as shows everything, with the parts in the proportions of the real plan. */
const plan: AnswerPlan = {
  batch: { first: 3, tally: 4, watch: 4, force: 8 },
  halfWidths: { near: 0.14, fair: 0.12, fine: 0.1 },
  least: 12,
  most: 60,
  watched: { first: 4, named: 24, all: 30 },
  looks: 2,
  perLook: 12,
  setAlone: 40,
  side: { trials: [8, 16], halfWidth: 0.01 },
  followed: 8,
};
const schemes = ['house-3-2', 'diamond-and-one'];
const lantern: Ask = {
  playbook: demoPlaybook,
  play: 'lantern',
  schemes,
  side: 'right',
  penalty: 30,
  level: 'pro',
  seed: 3,
};

/** The demo with the top right man of Lantern somewhere else. */
function moved(x: number, y: number): Playbook {
  const [first, ...others] = demoPlaybook.plays;
  return { ...demoPlaybook, plays: [{ ...first!, spots: { ...first!.spots, TR: [x, y] } }, ...others] };
}
const edited: Ask = { ...lantern, playbook: moved(8, 14) };

function start(pool: FakePool = createFakePool()): { readonly answers: Answers; readonly pool: FakePool } {
  return { answers: createAnswers(pool, { plan, later: (publish) => void setImmediate(publish) }), pool };
}

/** The first snapshot, from now on, of which this holds. */
function until(answers: Answers, holds: (snapshot: AnswersSnapshot) => boolean): Promise<AnswersSnapshot> {
  return new Promise((resolve) => {
    const look = (): void => {
      const snapshot = answers.snapshot();
      if (!holds(snapshot)) return;
      end();
      resolve(snapshot);
    };
    const end = answers.subscribe(look);
    look();
  });
}
const isFinished = ({ finished }: AnswersSnapshot): boolean => finished;
const isCounted = ({ schemes: all }: AnswersSnapshot): boolean =>
  all.every(({ trials, stale }) => trials > 0 && !stale.goals);

async function finishedAnswers(pool: FakePool, ask: Ask = lantern): Promise<AnswersSnapshot> {
  const { answers } = start(pool);
  answers.ask(ask);
  return until(answers, isFinished);
}
/** Everything of a snapshot that is told of the schemes. */
const told = ({ schemes: all, overall }: AnswersSnapshot) => ({ all, overall });

describe('answers to an ask', () => {
  it('begin with a guess against every scheme before anything else is done', async () => {
    const { answers, pool } = start();
    answers.ask(lantern);
    expect(answers.snapshot().schemes.map(({ state }) => state)).toEqual(['waiting', 'waiting']);
    const first = await until(answers, isCounted);
    expect(first.schemes.map(({ state }) => state)).toEqual(['coarse', 'coarse']);
    expect(first.overall).toMatchObject({ coarse: true, trials: first.schemes[0]!.trials });
    expect(pool.answered.slice(0, 2).map(({ kind, setup }) => [kind, setup.scheme])).toEqual([
      ['tally', 'house-3-2'],
      ['tally', 'diamond-and-one'],
    ]);
  });

  it('come to the intervals that are wanted, looks with their worth, and a script to show', async () => {
    const { schemes: all, overall } = await finishedAnswers(createFakePool());
    for (const { state, goals, looks, report, cast, script, shown, watched: trials, stale } of all) {
      expect(state).toBe('done');
      expect((goals!.high - goals!.low) / 2).toBeLessThanOrEqual(plan.halfWidths.fine);
      expect(report!.goalsPerChance).toEqual(goals);
      expect(trials).toBe(plan.watched.all);
      expect(looks.some(({ worth }) => worth !== null)).toBe(true);
      const worths = looks.flatMap(({ worth, share }) => (worth === null ? [] : [share * worth.mean]));
      expect(worths).toEqual([...worths].sort((a, b) => b - a));
      expect(looks[0]!.seenIn.length).toBeCloseTo(looks[0]!.share * trials, 9);
      expect(cast!.numbers).toHaveLength(6);
      expect(script!.trace.frames).toBeGreaterThan(20);
      const seen = looks.find(
        ({ from, to }) => shown?.kind === 'look' && shown.look.from === from && shown.look.to === to,
      );
      expect(seen!.seenIn[0]!.trial).toBe(script!.trial);
      expect(stale).toEqual({ goals: false, looks: false, script: false });
    }
    const means = all.map(({ goals }) => goals!.mean);
    expect(overall!.goals.mean).toBeGreaterThan(Math.min(...means) - 0.1);
    expect(overall!.goals.mean).toBeLessThan(Math.max(...means) + 0.1);
    expect(overall!.coarse).toBe(false);
  });

  it('are the same whatever the number of threads and their haste', async () => {
    const one = await finishedAnswers(createFakePool({ threads: 1 }));
    const many = await finishedAnswers(createFakePool({ threads: 7, lateFirst: true }));
    expect(told(many)).toEqual(told(one));
  });

  it('are the same after a detour over other asks', async () => {
    const straight = await finishedAnswers(createFakePool());
    const { answers } = start();
    for (const ask of [lantern, edited, { ...lantern, side: 'left' as const }]) {
      answers.ask(ask);
      await until(answers, isCounted);
    }
    answers.ask(lantern);
    expect(told(await until(answers, isFinished))).toEqual(told(straight));
  });

  it('differ for another seed', async () => {
    const [one, other] = [createFakePool(), createFakePool()];
    const [first, second] = await Promise.all([finishedAnswers(one), finishedAnswers(other, { ...lantern, seed: 4 })]);
    expect(second!.overall!.goals.mean).not.toBe(first!.overall!.goals.mean);
  });

  it('keep what did not change', async () => {
    const { answers } = start();
    answers.ask({ ...lantern, schemes: ['house-3-2'] });
    const before = await until(answers, isFinished);
    answers.ask(lantern);
    const after = await until(answers, isCounted);
    expect(after.schemes[0]).toBe(before.schemes[0]);
  });
});

describe('a new ask', () => {
  it('takes the place of the old one at once', async () => {
    const { answers, pool } = start();
    answers.ask(lantern);
    await until(answers, isCounted);
    const before = pool.answered.length;
    answers.ask(edited);
    await until(answers, isCounted);
    const documents = new Set(pool.answered.slice(before).map(({ setup }) => setup.document));
    expect(documents.size).toBe(1);
    expect([...documents][0]).toContain('"TR":[8,14]');
  });

  it('leaves what stands on the screen until it knows better, and says so', async () => {
    const { answers } = start();
    answers.ask(lantern);
    const old = await until(answers, isFinished);
    answers.ask(edited);
    const now = answers.snapshot().schemes[0]!;
    expect(now).toMatchObject({ state: 'waiting', goals: old.schemes[0]!.goals, script: old.schemes[0]!.script });
    expect(now.stale).toEqual({ goals: true, looks: true, script: true });
    // Another play is another picture.
    answers.ask({ ...lantern, play: 'ferry' });
    expect(answers.snapshot().schemes[0]).toMatchObject({ goals: null, script: null, looks: [] });
  });

  it.each<[string, Ask]>([
    ['the same', lantern],
    ['with a note', { ...lantern, playbook: { ...demoPlaybook, notes: 'Wednesday' } }],
    ['with another play changed', { ...lantern, playbook: { ...demoPlaybook, plays: demoPlaybook.plays.slice(0, 1) } }],
  ])('that changes no trial (%s) asks nothing again', async (_, ask) => {
    const { answers, pool } = start();
    answers.ask(lantern);
    await until(answers, isFinished);
    const before = pool.answered.length;
    answers.ask(ask);
    expect(answers.snapshot().finished).toBe(true);
    expect(answers.snapshot().ask).toBe(ask);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(pool.answered.length).toBe(before);
  });

  it('is not held up by a play that is half written', async () => {
    const [first, second] = demoPlaybook.plays;
    const broken = { ...second!, beats: [{ id: 'x', on: 'never', do: ['nobody knows'] }] };
    const { answers } = start();
    answers.ask({ ...lantern, playbook: { ...demoPlaybook, plays: [first!, broken] } });
    expect((await until(answers, isCounted)).schemes[0]!.state).toBe('coarse');
  });

  it('is refused with the reason when its own play is', async () => {
    const [first] = demoPlaybook.plays;
    const broken = { ...first!, start: { ...first!.start, ball: 'ZZ' } };
    const { answers } = start();
    answers.ask({ ...lantern, playbook: { ...demoPlaybook, plays: [broken] } });
    const { schemes: all, overall } = await until(answers, isFinished);
    expect(all.map(({ state, goals }) => [state, goals])).toEqual(schemes.map(() => ['refused', null]));
    expect(all[0]!.reason).toMatch(/ZZ/);
    expect(overall).toBeNull();
    answers.ask(lantern);
    expect((await until(answers, isCounted)).schemes[0]!.state).toBe('coarse');
  });

  it('leaves a scheme that is refused out of the whole', async () => {
    const { schemes: all, overall } = await finishedAnswers(createFakePool(), {
      ...lantern,
      schemes: ['house-3-2', 'no'],
    });
    expect(all.map(({ state }) => state)).toEqual(['done', 'refused']);
    expect(overall!.goals).toEqual(all[0]!.goals);
  });

  it('goes on after the simulation failed', async () => {
    const broken = createFakePool();
    const { answers } = start(broken);
    broken.breakDown();
    answers.ask(lantern);
    const failed = await until(answers, ({ failure }) => failure !== null);
    expect(failed.failure).toContain('broke');
    expect(failed.finished).toBe(false);
  });
});

describe('the play before the edit', () => {
  it('is no play to compare with where nothing was changed that is played', async () => {
    const { answers, pool } = start();
    answers.ask(lantern);
    await until(answers, isFinished);
    const before = pool.answered.length;
    answers.keepBaseline();
    answers.ask({ ...lantern, playbook: { ...demoPlaybook, notes: 'Wednesday' } });
    const { schemes: all, overall } = answers.snapshot();
    expect([overall!.change, ...all.map(({ change }) => change)]).toEqual([null, null, null]);
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(pool.answered.length).toBe(before);
  });

  it('is compared trial by trial, as far as the new one has come', async () => {
    const { answers } = start();
    answers.ask(lantern);
    await until(answers, isCounted);
    answers.keepBaseline();
    answers.ask({ ...lantern, playbook: moved(5, 11) });
    const done = await until(
      answers,
      ({ finished, schemes: all }) => finished && all.every(({ change, trials }) => change?.trials === trials),
    );
    for (const { change, goals } of [...done.schemes, done.overall!]) {
      expect(change!.difference.mean).not.toBe(0);
      expect(change!.difference.high - change!.difference.low).toBeLessThan(2 * (goals!.high - goals!.low));
      expect(change!.correlation).toBeGreaterThan(0);
    }
    answers.dropBaseline();
    expect(answers.snapshot()).toMatchObject({ hasBaseline: false, overall: { change: null } });
  });

  it('is what it was before an edit that is given up', async () => {
    const { answers } = start();
    answers.ask(lantern);
    await until(answers, isCounted);
    answers.keepBaseline();
    answers.ask(edited);
    const before = await until(answers, ({ schemes: all }) => all.every(({ change }) => change !== null));
    answers.keepBaseline();
    answers.ask({ ...edited, playbook: moved(6, 12) });
    answers.takeBackBaseline();
    answers.ask(edited);
    expect(answers.snapshot().schemes.map(({ change }) => change !== null)).toEqual(before.schemes.map(() => true));
    const difference = answers.snapshot().overall!.change!.difference.mean;
    expect(difference).toBeCloseTo(before.overall!.change!.difference.mean, 1);
    expect(difference).not.toBe(0);
  });

  it('is compared also when it was changed before its first answer', async () => {
    const { answers } = start();
    answers.ask(lantern);
    answers.keepBaseline();
    answers.ask({ ...lantern, playbook: moved(5, 11) });
    const done = await until(
      answers,
      ({ finished, schemes: all }) => finished && all.every(({ change, trials }) => change?.trials === trials),
    );
    for (const { change } of [...done.schemes, done.overall!]) expect(change!.difference.mean).not.toBe(0);
  });

  it('does not change what is found out about the new one', async () => {
    const straight = await finishedAnswers(createFakePool(), edited);
    const { answers } = start();
    answers.ask(lantern);
    await until(answers, isCounted);
    answers.keepBaseline();
    answers.ask(edited);
    const done = await until(answers, isFinished);
    expect(done.schemes.map(({ goals, trials, looks }) => ({ goals, trials, looks }))).toEqual(
      straight.schemes.map(({ goals, trials, looks }) => ({ goals, trials, looks })),
    );
  });
});

describe('the set without the play', () => {
  const withSet: Ask = { ...lantern, setAlone: true };
  const isAlone = ({ setup }: WorkerRequest): boolean => setup.play === setAloneId;
  /** What a worker counts in the first trials of a scheme. */
  const count = (request: WorkerRequest | undefined, to: number): Tally => {
    const answer = answerRequest({ kind: 'tally', setup: request!.setup, range: { from: 0, to } });
    if (answer.kind !== 'tally') throw new TypeError(answer.kind);
    return answer.tally;
  };

  it('is compared with the play trial by trial, once the play itself is known fairly', async () => {
    const pool = createFakePool();
    const { schemes: all, overall } = await finishedAnswers(pool, withSet);
    const first = pool.answered.findIndex(isAlone);
    const before = pool.answered.slice(0, first).flatMap((request) => (request.kind === 'tally' ? [request] : []));
    for (const { scheme, overSetAlone, trials } of all) {
      const own = before.filter(({ setup }) => setup.scheme === scheme);
      const counted = own.reduce((most, { range }) => Math.max(most, range.to), 0);
      expect(isKnownTo(count(own[0], counted), plan.halfWidths.fair, plan)).toBe(true);
      expect(overSetAlone!.trials).toBe(Math.min(plan.setAlone, trials));
      const alone = pool.answered.find((request) => isAlone(request) && request.setup.scheme === scheme);
      const { trials: both } = overSetAlone!;
      expect(overSetAlone).toEqual(compareGoals([count(own[0], both)], [count(alone, both)]));
    }
    const means = all.map(({ overSetAlone }) => overSetAlone!.difference.mean);
    expect(overall!.overSetAlone!.difference.mean).toBeGreaterThanOrEqual(Math.min(...means) - 0.05);
    expect(overall!.overSetAlone!.difference.mean).toBeLessThanOrEqual(Math.max(...means) + 0.05);
  });

  it('is counted once, whatever the steps are', async () => {
    const { answers, pool } = start();
    answers.ask(withSet);
    await until(answers, isFinished);
    const before = pool.answered.filter(isAlone).length;
    const [first, ...others] = demoPlaybook.plays;
    const shorter = { ...first!, beats: first!.beats.slice(0, 2), reads: [] };
    answers.ask({ ...withSet, playbook: { ...demoPlaybook, plays: [shorter, ...others] } });
    const { schemes: all } = await until(answers, isFinished);
    expect(all.every(({ overSetAlone }) => overSetAlone !== null)).toBe(true);
    expect(pool.answered.filter(isAlone).length).toBe(before);
  });

  it('is nothing that is done unasked', async () => {
    const pool = createFakePool();
    const { schemes: all } = await finishedAnswers(pool);
    expect(all.map(({ overSetAlone }) => overSetAlone)).toEqual([null, null]);
    expect(pool.answered.some(isAlone)).toBe(false);
  });
});

describe('one trial', () => {
  it('is shown as its script alone, as a whole chance, and with a look taken', async () => {
    const { answers } = start();
    answers.ask(lantern);
    const { script } = await answers.showScript('diamond-and-one', 2);
    expect(script!.trial).toBeGreaterThanOrEqual(2);
    const { trace, cast } = await answers.showChance('diamond-and-one', 2);
    expect(trace.events.at(-1)!.kind).toBe('end');
    expect(cast.scheme.id).toBe('diamond-and-one');
    const window = script!.windows.find(({ completion, kind }) => completion > 0 && kind !== 'shot');
    const { from, to, seenAt } = window!;
    const taken = await answers.showChance('diamond-and-one', script!.trial, { from, to, time: seenAt });
    const pass = taken.trace.events.find(({ kind, time }) => kind === 'pass' && time >= seenAt - 1e-9);
    expect(pass).toMatchObject({ from, to });
  });

  it('and others are followed to where their goals come from, once', async () => {
    const { answers, pool } = start();
    answers.ask(lantern);
    await until(answers, isFinished);
    const { chances, shares } = await answers.goalOrigins('house-3-2');
    expect(chances).toBe(plan.followed);
    expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    const before = pool.answered.length;
    await answers.goalOrigins('house-3-2');
    expect(pool.answered.length).toBe(before);
  });

  it('and the worth of a shot from everywhere, are asked of a scheme that is shown', async () => {
    const { answers } = start();
    answers.ask(lantern);
    const heat = await answers.heat('house-3-2', 1);
    expect(Math.max(...heat.odds_byCell)).toBeGreaterThan(0.2);
    await expect(answers.heat('shutoff', 1)).rejects.toThrow(RangeError);
    await expect(answers.showChance('shutoff', 1)).rejects.toThrow(RangeError);
  });
});
