import { afterEach, describe, expect, it } from 'vitest';
import { demoText } from '../../playbook/index.ts';
import { answerRequest } from '../answer-request.ts';
import { RefusedSetup } from '../expect-kind.ts';
import { type Effort, measureMatchups } from '../measure-matchups.ts';
import type { TrialSetup, WorkerAnswer, WorkerRequest } from '../protocol.ts';
import type { TrialPool } from '../trial-pool.ts';
import { createBrowserPool } from './create-browser-pool.ts';
import { createTrialWorker } from './create-trial-worker.ts';
import { spawnInProcess } from './in-process-thread.fixture.ts';
import type { SentRequest, TrialWorkerApi } from './sent-request.ts';
import type { TrialThread } from './spawn-trial-worker.ts';

const setup: TrialSetup = {
  document: demoText,
  play: 'lantern',
  scheme: 'box-zone',
  side: 'right',
  penalty: 30,
  level: 'pro',
  seed: 11,
};
const tally = (from: number, of: Partial<TrialSetup> = {}): WorkerRequest => ({
  kind: 'tally',
  setup: { ...setup, ...of },
  range: { from, to: from + 2 },
});

const pools: TrialPool[] = [];
function pool(threads: number, spawn: () => TrialThread = spawnInProcess): TrialPool {
  const made = createBrowserPool({ threads, spawn });
  pools.push(made);
  return made;
}
afterEach(async () => {
  await Promise.all(pools.splice(0).map((one) => one.close()));
});

/** A pool of one thread that writes down what it is sent and what it says, in the order in which it comes. */
function watchedPool() {
  const sent: SentRequest[] = [];
  const answers: ReturnType<TrialWorkerApi['answer']>[] = [];
  const worker = createTrialWorker();
  const api: TrialWorkerApi = {
    answer: (one) => {
      sent.push(one);
      const answer = worker.answer(one);
      answers.push(answer);
      return answer;
    },
  };
  return { pool: pool(1, () => spawnInProcess(api)), sent, answers };
}
const trialOf = ({ request }: SentRequest): number => (request.kind === 'tally' ? request.range.from : -1);

describe('a pool of threads of a page', () => {
  it('answers what decisions are worth too, which it loads when it is asked', async () => {
    const study: WorkerRequest = {
      kind: 'decisions',
      setup: tally(0).setup,
      carrier: 0,
      range: { from: 0, to: 2 },
      horizon: 4,
    };
    expect(await pool(2).answer([study, tally(0)])).toEqual([study, tally(0)].map(answerRequest));
  });

  it('answers as the same code does without threads, in the order of the requests', async () => {
    const requests = [tally(4), tally(0), tally(2, { scheme: 'jump' })];
    for (const threads of [1, 2, 3]) {
      expect(await pool(threads).answer(requests)).toEqual(requests.map(answerRequest));
    }
  });

  it('measures the same whatever the number of threads', async () => {
    const rule = { batch: 10, least: 10, most: 20, halfWidth: 0.08 };
    const effort: Effort = { rule, watched: 6, looks: 2, perLook: 3 };
    const setups = [setup, { ...setup, scheme: 'jump' }];
    const [one, two] = await Promise.all([1, 2].map((threads) => measureMatchups(pool(threads), setups, effort)));
    expect(two).toEqual(one);
  });

  it('says of each answer that it came, and nothing to no request', async () => {
    let answered = 0;
    const made = pool(2);
    await made.answer([tally(0), tally(2)], { onAnswer: () => answered++ });
    expect(answered).toBe(2);
    expect(await made.answer([])).toEqual([]);
  });

  it('passes on what the worker refuses', async () => {
    const effort: Effort = { rule: { batch: 2, least: 2, most: 2, halfWidth: 0 }, watched: 0, looks: 0, perLook: 0 };
    const nothing = { ...setup, play: 'nothing' };
    await expect(measureMatchups(pool(1), [nothing], effort)).rejects.toThrow(
      new RefusedSetup('unknown play: nothing'),
    );
  });

  it('sends a document once to a thread, however often it is asked about', async () => {
    const { pool: made, sent } = watchedPool();
    const other = demoText.replace('"Lantern"', '"Lamp"');
    await made.answer([tally(0), tally(2), tally(4, { document: other }), tally(6), tally(8, { document: other })]);
    expect(sent.map(({ text }) => text !== null)).toEqual([true, false, true, false, false]);
    expect(sent.every(({ request }) => request.setup.document === '')).toBe(true);
  });

  it('lets old documents go, and sends them again when they are asked about after all', async () => {
    const { pool: made, sent } = watchedPool();
    const edits = Array.from({ length: 12 }, (_, edit) => demoText.replace('"Lantern"', `"Lantern ${edit}"`));
    const asked = [...edits, edits[0]!].map((document, index) => tally(2 * index, { document }));
    const answers = await made.answer(asked);
    expect(answers.every(({ kind }) => kind === 'tally')).toBe(true);
    const had = new Set<number>();
    let most = 0;
    for (const { document, text, forget } of sent) {
      if (forget !== null) had.delete(forget);
      if (text !== null) had.add(document);
      most = Math.max(most, had.size);
    }
    expect(most).toBeLessThan(edits.length);
    expect(sent.at(-1)!.text).toBe(edits[0]);
  });

  it('takes the most urgent of what waits, and of those the first that was asked', async () => {
    const { pool: made, sent } = watchedPool();
    await Promise.all([
      made.answer(
        [0, 2, 4, 6, 8, 10, 12].map((from) => tally(from)),
        { priority: 1 },
      ),
      made.answer([tally(20), tally(22)], { priority: 3 }),
      made.answer([tally(24)], { priority: 2 }),
      made.answer([tally(26)]),
      made.answer([tally(28)], { priority: 3 }),
    ]);
    // The thread had taken the first five before anything else was asked.
    expect(sent.map(trialOf)).toEqual([0, 2, 4, 6, 8, 20, 22, 28, 24, 10, 12, 26]);
  });

  it('drops what waits when it is told to stop, and answers others with the same threads', async () => {
    const { pool: made, sent, answers } = watchedPool();
    const stop = new AbortController();
    let answered = 0;
    const endless = Array.from({ length: 50 }, (_, index) => tally(2 * index));
    const stopped = made.answer(endless, { signal: stop.signal, onAnswer: () => answered++ });
    stop.abort();
    await expect(stopped).rejects.toMatchObject({ name: 'AbortError' });
    expect(await made.answer([tally(200)])).toEqual([answerRequest(tally(200))]);
    // Five had been sent; none was wanted any more when its turn came.
    expect(sent.map(trialOf)).toEqual([0, 2, 4, 6, 8, 200]);
    expect(answers).toEqual([null, null, null, null, null, answerRequest(tally(200))]);
    expect(answered).toBe(0);
    await expect(made.answer([tally(0)], { signal: stop.signal })).rejects.toMatchObject({ name: 'AbortError' });
  });

  it('fails what a broken thread was asked, and goes on with another', async () => {
    const threads: (TrialThread & EventTarget)[] = [];
    const mute: TrialWorkerApi = { answer: () => new Promise<WorkerAnswer>(() => {}) as unknown as WorkerAnswer };
    const made = pool(1, () => {
      const thread = spawnInProcess(threads.length === 0 ? mute : createTrialWorker()) as TrialThread & EventTarget;
      threads.push(thread);
      return thread;
    });
    const lost = made.answer([tally(0)]);
    threads[0]!.dispatchEvent(new Event('error'));
    await expect(lost).rejects.toThrow('broke');
    expect(await made.answer([tally(2)])).toEqual([answerRequest(tally(2))]);
    expect(threads).toHaveLength(2);
  });

  it('fails what waits when it is closed, and takes nothing after it', async () => {
    const made = pool(1);
    const open = made.answer([tally(0), tally(2), tally(4)]);
    await made.close();
    await made.close();
    await expect(open).rejects.toThrow('closed');
    await expect(made.answer([tally(0)])).rejects.toThrow('closed');
  });

  it.each([0, 1.5, 257, Number.NaN])('refuses %d threads', (threads) => {
    expect(() => createBrowserPool({ threads, spawn: spawnInProcess })).toThrow(RangeError);
  });
});
