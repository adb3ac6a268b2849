import { describe, expect, it } from 'vitest';
import {
  carrierActions,
  compileChance,
  createChanceState,
  gatherDecisions,
  type SchemeChances,
  studyCarrier,
} from '../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../playbook/index.ts';
import { answerRequest } from './answer-request.ts';
import { buildMatchup } from './build-matchup.ts';
import type { WeighedSetup } from './gather-chances.ts';
import { onePlayText } from './one-play-text.ts';
import { readsEffort, requestsOfStudy, studyReads } from './study-reads.ts';
import type { TrialPool } from './trial-pool.ts';

const play = 'quarry';
const met = [
  { scheme: 'box-zone', weight: 3 },
  { scheme: 'jump', weight: 1 },
] as const;
const condition = { play, side: 'right', penalty: 30, level: null } as const;

const setups: readonly WeighedSetup[] = met.map(({ scheme, weight }) => {
  const document = onePlayText(demoPlaybook, { play, scheme });
  return { setup: { document, scheme, seed: 7, ...condition }, weight };
});
const written = toEnginePlay(demoPlaybook, play, 'right');
const carrier = written.spots.findIndex(({ id }) => id === written.start.ball);
const usual = readsEffort(25);
/** Not a multiple of what one request asks for. */
const effort = { ...usual, horizon: 4, limits: { ...usual.limits, mostReads: 1, lists: 200 } };

let asked = 0;
const pool: TrialPool = {
  threads: 1,
  answer: async (requests) => {
    asked += requests.length;
    // What crosses between threads is a copy.
    return requests.map((request) => structuredClone(answerRequest(structuredClone(request))));
  },
  close: async () => {},
};

function gatheredByHand(from: number, to: number): readonly SchemeChances[] {
  return met.map(({ scheme, weight }) => {
    const built = buildMatchup(demoPlaybook, { scheme, ...condition });
    if (built.kind === 'refused') throw new Error(built.reason);
    const model = compileChance(built.matchup, 7);
    const memory = { state: createChanceState(model), spare: createChanceState(model) };
    const range = { from, to, horizon: effort.horizon };
    const chances = gatherDecisions(model, memory, carrier, carrierActions(written, carrier), range);
    return { scheme, weight, trials: to - from, chances };
  });
}

describe('the study of a carrier by workers', () => {
  it('is that of the same chances gathered in one piece', async () => {
    const study = await studyReads(pool, setups, { play: written, carrier }, effort);
    const gathered = { learn: gatheredByHand(0, 25), held: gatheredByHand(25, 50) };
    const byHand = studyCarrier(written, carrier, gathered, effort.limits);
    expect(byHand).not.toBeNull();
    expect(study).toMatchObject({ ...byHand });
    expect(asked).toBe(requestsOfStudy(setups.length, effort, study!.taught !== null));
  });

  it('is refused for a man whom the play does not have', async () => {
    const none = written.spots.length;
    await expect(studyReads(pool, setups, { play: written, carrier: none }, effort)).rejects.toThrow(RangeError);
  });

  it('is none without anybody to play against', async () => {
    expect(await studyReads(pool, [], { play: written, carrier }, effort)).toBeNull();
  });
});
