import { existsSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { demoText } from '../../playbook/index.ts';
import { answerRequest } from '../answer-request.ts';
import { RefusedSetup } from '../expect-kind.ts';
import { type Effort, measureMatchups } from '../measure-matchups.ts';
import type { TrialSetup } from '../protocol.ts';
import type { TrialPool } from '../trial-pool.ts';
import { createTrialPool } from './create-trial-pool.ts';

// The real bundled worker on real threads; the test run builds it first.
const worker = new URL('../../../dist/trial-worker.js', import.meta.url);

const setup: TrialSetup = {
  document: demoText,
  play: 'lantern',
  scheme: 'box-zone',
  side: 'right',
  penalty: 30,
  level: 'pro',
  seed: 11,
};
const setups = [setup, { ...setup, scheme: 'four-man-rotation', side: 'left' as const }];
/** More than one batch and more than one request of each kind, and a rule that some setups meet before the end. */
const effort: Effort = {
  rule: { batch: 40, least: 40, most: 120, halfWidth: 0.08 },
  watched: 110,
  looks: 3,
  perLook: 20,
};

const pools: TrialPool[] = [];
function pool(threads: number): TrialPool {
  const made = createTrialPool({ threads, worker });
  pools.push(made);
  return made;
}
afterAll(async () => {
  await Promise.all(pools.map((one) => one.close()));
});

describe('trial pool', () => {
  it('has a bundled worker to test', () => {
    expect(existsSync(worker)).toBe(true);
  });

  it('gives the same answer for 1, 2 and 3 threads', async () => {
    const [one, two, three] = await Promise.all(
      [1, 2, 3].map((threads) => measureMatchups(pool(threads), setups, effort)),
    );
    expect(two).toEqual(one);
    expect(three).toEqual(one);
    expect(one!.every(({ looks, values }) => looks.length > 0 && values.length > 0)).toBe(true);
  });

  it('answers like the same code without threads', async () => {
    const rule = { batch: 30, least: 30, most: 30, halfWidth: 0 };
    const [measured] = await measureMatchups(pool(1), [setup], { rule, watched: 0, looks: 0, perLook: 0 });
    expect(answerRequest({ kind: 'tally', setup, range: { from: 0, to: 30 } })).toEqual({
      kind: 'tally',
      tally: measured!.tally,
    });
  });

  it('gives another answer for another seed', async () => {
    const rule = { batch: 60, least: 60, most: 60, halfWidth: 0 };
    const small: Effort = { rule, watched: 0, looks: 0, perLook: 0 };
    const [one, other] = await measureMatchups(pool(2), [setup, { ...setup, seed: 12 }], small);
    expect(other!.tally.goalOddsSum).not.toBe(one!.tally.goalOddsSum);
  });

  it('counts as many answers as it announced', async () => {
    let planned = 0;
    let answered = 0;
    await measureMatchups(pool(2), [setup], effort, {
      onPlan: (requests) => {
        planned += requests;
      },
      onAnswer: () => {
        answered += 1;
      },
    });
    expect(answered).toBe(planned);
    expect(answered).toBeGreaterThan(3);
  });

  it('says in a sentence what a playbook does not have', async () => {
    await expect(measureMatchups(pool(1), [{ ...setup, play: 'nothing' }], effort)).rejects.toThrow(
      new RefusedSetup('unknown play: nothing'),
    );
    await expect(measureMatchups(pool(1), [{ ...setup, document: '{' }], effort)).rejects.toThrow('has errors');
  });

  it('ends at once when it is told to, and can be closed', async () => {
    const rule = { batch: 1000, least: 1e6, most: 1e6, halfWidth: 0 };
    const endless: Effort = { ...effort, rule };
    const stop = new AbortController();
    const stopped = pool(2);
    const work = measureMatchups(stopped, setups, endless, { signal: stop.signal });
    stop.abort();
    await expect(work).rejects.toMatchObject({ name: 'AbortError' });
    await stopped.close();
    await stopped.close();
  });

  it('does not start when it was told to stop before', async () => {
    await expect(measureMatchups(pool(1), [setup], effort, { signal: AbortSignal.abort() })).rejects.toMatchObject({
      name: 'AbortError',
    });
  });

  it.each([0, 1.5, 257, Number.NaN])('refuses %d threads', (threads) => {
    expect(() => createTrialPool({ threads, worker })).toThrow(RangeError);
  });
});
