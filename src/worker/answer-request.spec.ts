import { describe, expect, it } from 'vitest';
import {
  compileChance,
  createChanceState,
  furthestScript,
  recordTrace,
  shotHeat,
  traceScript,
} from '../engine/index.ts';
import { demoPlaybook } from '../playbook/index.ts';
import { answerRequest } from './answer-request.ts';
import { buildMatchup } from './build-matchup.ts';
import { onePlayText } from './one-play-text.ts';
import type { TrialSetup } from './protocol.ts';

const choice = { play: 'lantern', scheme: 'jump', side: 'left', penalty: 30, level: 'pro' } as const;
const setup: TrialSetup = { ...choice, document: onePlayText(demoPlaybook, choice), seed: 5 };
const built = buildMatchup(demoPlaybook, choice);
if (built.kind === 'refused') throw new Error(built.reason);
const { matchup, players } = built;
const model = compileChance(matchup, 5);

describe('a request for a trace', () => {
  it('of the script brings what the engine records, and who is who', () => {
    const answer = answerRequest({ kind: 'trace', setup, of: 'script', trial: 3 });
    expect(answer).toMatchObject({ kind: 'trace', script: traceScript(model, createChanceState(model), 3) });
    if (answer.kind !== 'trace') throw new Error(answer.kind);
    expect(answer.cast.numbers).toEqual(players.map(({ number }) => number));
    expect(answer.cast.six).toEqual(matchup.six);
    expect(answer.cast.sense).toBe(-1);
    expect(answer.cast.scheme.names).toEqual(matchup.scheme.names);
  });

  it('of a chance brings the whole of it, with a look taken when one is named', () => {
    const forced = { trial: 3, time: 9, from: 0, to: 4 };
    const answers = [
      answerRequest({ kind: 'trace', setup, of: 'chance', trial: 3 }),
      answerRequest({ kind: 'trace', setup, of: 'chance', trial: 3, forced }),
    ];
    expect(answers).toMatchObject([{ trace: recordTrace(model, 3) }, { trace: recordTrace(model, 3, forced) }]);
  });

  it('can cross between threads', () => {
    for (const of of ['script', 'chance'] as const) {
      const answer = answerRequest({ kind: 'trace', setup, of, trial: 0 });
      expect(structuredClone(answer)).toEqual(answer);
    }
  });
});

it('a request for the man-up that shows most of a play brings what the engine finds, and can cross between threads', () => {
  const answer = answerRequest({ kind: 'furthest', setup, watched: 4 });
  expect(answer).toMatchObject({ kind: 'furthest', found: furthestScript(model, 4) });
  expect(structuredClone(answer)).toEqual(answer);
  expect(answerRequest({ kind: 'furthest', setup, watched: 0 })).toMatchObject({ found: null });
});

it('a request for heat brings that of one shooter', () => {
  expect(answerRequest({ kind: 'heat', setup, shooter: 2 })).toEqual({ kind: 'heat', heat: shotHeat(model, 2) });
  expect(() => answerRequest({ kind: 'heat', setup, shooter: 6 })).toThrow(RangeError);
});

describe('a setup that cannot be played', () => {
  it.each([
    ['no playbook', '{', 'the playbook has errors: '],
    ['no such play', JSON.stringify({ ...JSON.parse(setup.document), plays: [] }), 'unknown play: lantern'],
  ])('is refused with the reason: %s', (_, document, reason) => {
    const answer = answerRequest({ kind: 'heat', setup: { ...setup, document }, shooter: 0 });
    expect(answer.kind === 'refused' ? answer.reason : answer.kind).toContain(reason);
    expect(answer.kind === 'refused' && answer.reason.length > reason.length - 1).toBe(true);
  });
});
