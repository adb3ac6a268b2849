import { describe, expect, it } from 'vitest';
import {
  compileChance,
  createChanceState,
  gatherRuns,
  runOrders,
  type SchemeRuns,
  studyRunner,
} from '../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../playbook/index.ts';
import { answerRequest } from './answer-request.ts';
import { buildMatchup } from './build-matchup.ts';
import type { WeighedSetup } from './gather-chances.ts';
import { onePlayText } from './one-play-text.ts';
import type { WorkerRequest } from './protocol.ts';
import { requestsOfRunStudy, runsEffort, studyRuns } from './study-runs.ts';
import type { TrialPool } from './trial-pool.ts';

const play = 'ferry';
const met = [
  { scheme: 'box-zone', weight: 3 },
  { scheme: 'jump', weight: 1 },
] as const;

const setups: readonly WeighedSetup[] = met.map(({ scheme, weight }) => {
  const document = onePlayText(demoPlaybook, { play, scheme });
  return { setup: { document, play, scheme, side: 'right', penalty: 30, level: null, seed: 7 }, weight };
});
const written = toEnginePlay(demoPlaybook, play, 'right');
const runner = written.spots.findIndex(({ id }) => id === 'P');
const run = runOrders(written, runner)[0]!;
/** Not a multiple of what one request asks for. */
const effort = { ...runsEffort(50), horizon: 6 };

const asked: WorkerRequest[] = [];
const pool: TrialPool = {
  threads: 1,
  answer: async (requests) => {
    asked.push(...requests);
    // What crosses between threads is a copy.
    return requests.map((request) => structuredClone(answerRequest(structuredClone(request))));
  },
  close: async () => {},
};

function gatheredByHand(from: number, to: number): readonly SchemeRuns[] {
  return met.map(({ scheme, weight }) => {
    const built = buildMatchup(demoPlaybook, { play, scheme, side: 'right', penalty: 30, level: null });
    if (built.kind === 'refused') throw new Error(built.reason);
    const model = compileChance(built.matchup, 7);
    const memory = { state: createChanceState(model), spare: createChanceState(model) };
    const chances = gatherRuns(model, memory, run, { from, to, horizon: effort.horizon });
    return { scheme, weight, trials: to - from, chances };
  });
}

describe('the study of a run by workers', () => {
  it('is that of the same chances gathered in one piece', async () => {
    const study = await studyRuns(pool, setups, { play: written, run }, effort);
    expect(study).not.toBeNull();
    expect(study).toEqual(studyRunner(run, gatheredByHand(0, 50), gatheredByHand(50, 100), effort.limits));
    expect(asked).toHaveLength(requestsOfRunStudy(setups.length, effort.trials));
  });

  it('is refused for a run that the play does not have', async () => {
    const none = { beat: written.beats.length, runner };
    await expect(studyRuns(pool, setups, { play: written, run: none }, effort)).rejects.toThrow(RangeError);
  });

  it('is none without anybody to play against', async () => {
    expect(await studyRuns(pool, [], { play: written, run }, effort)).toBeNull();
  });
});
