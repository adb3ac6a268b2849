import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { readsEffort, studyReads } from '../../worker/index.ts';
import { createFakePool } from '../answers/fake-pool.fixture.ts';
import { askExampleTrace, knownTrace } from './example-traces.ts';
import { readsQuestion } from './reads-question.ts';

const ferry = demoPlaybook.plays.find(({ id }) => id === 'ferry')!;
const play = toEnginePlay(demoPlaybook, 'ferry');
const against = { kind: 'alike', schemes: ['box-zone'] } as const;
const { setups } = readsQuestion(demoPlaybook, ferry, 'P', undefined, against);
const carrier = play.spots.findIndex(({ id }) => id === 'P');

async function firstExample() {
  const usual = readsEffort(50);
  const effort = { ...usual, horizon: 2, limits: { ...usual.limits, mostReads: 1 } };
  const study = await studyReads(createFakePool(), setups, { play, carrier }, effort);
  return study!.cards[1]!.examples[0]!;
}

describe('the trial of an example', () => {
  it('is played once, with the read acted on, and its men have their names', async () => {
    const example = await firstExample();
    expect(knownTrace(example)).toBeUndefined();
    const pool = createFakePool();
    const signal = new AbortController().signal;
    const { trace, names } = await askExampleTrace(pool, setups[0]!.setup, example, signal);
    expect(pool.answered).toMatchObject([{ kind: 'trace', trial: example.forced.trial, forced: example.forced }]);
    expect(names.offense[carrier]).toBe('P');
    const holder = trace.holder_byFrame[Math.round(example.time / trace.step) - 1];
    expect(holder).toBe(carrier);
    expect(knownTrace(example)?.trace).toBe(trace);
    expect(knownTrace({ ...example })).toBeUndefined();
  });

  it('fails in words, and is dropped when it is not wanted any more', async () => {
    const example = await firstExample();
    const broken = createFakePool();
    broken.breakDown();
    const { signal } = new AbortController();
    await expect(askExampleTrace(broken, setups[0]!.setup, example, signal)).rejects.toThrow(
      'a thread of trials broke',
    );
    const stranger = { ...setups[0]!.setup, scheme: 'stranger' };
    await expect(askExampleTrace(createFakePool(), stranger, example, signal)).rejects.toThrow('stranger');
    const controller = new AbortController();
    const asked = askExampleTrace(createFakePool(), setups[0]!.setup, example, controller.signal);
    controller.abort();
    await expect(asked).rejects.toBe(controller.signal.reason);
    expect(knownTrace(example)).toBeUndefined();
  });
});
