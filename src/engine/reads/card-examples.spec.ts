import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { recordTrace } from '../chance/run.ts';
import { sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { examplesOf } from './card-examples.ts';
import { carrierActions } from './carrier-actions.ts';
import { fakeGains } from './fake-gains.ts';
import { gatherDecisions } from './gather-decisions.ts';
import { learnKeeping } from './learn-keeping.ts';
import { playGuided } from './play-guided.ts';
import { goOn } from './rule-list.ts';
import { tableOf } from './scheme-chances.ts';
import { heldChances } from './study-carrier.ts';

const carrier = samplePlay.spots.findIndex(({ id }) => id === 'P');
const model = compileChance(sampleMatchup({ play: samplePlay }), 5);
const memory = { state: createChanceState(model), spare: createChanceState(model) };
const actions = carrierActions(samplePlay, carrier);
const chances = gatherDecisions(model, memory, carrier, actions, { from: 0, to: 40, horizon: 8 });
const gathered = [{ scheme: 'box-zone', weight: 1, trials: 40, chances }];
const table = tableOf(carrier, gathered, learnKeeping(chances));
const number = (kind: string): number => actions.findIndex((action) => action.kind === kind);

describe('an example of a read', () => {
  it.each(['shoot', 'fake', 'pass'])('is a trial in which the carrier really does it (%s)', (kind) => {
    const list = { rules: [{ looksAt: 0, mustHold: 0, action: number(kind) }], lastResort: goOn };
    const [example] = examplesOf(samplePlay, carrier, list, gathered, table);
    expect(example!.of).toBe(chances.length);
    const { forced, time } = example!;
    const { events } = recordTrace(model, forced.trial, forced);
    const told = { shoot: 'shot', fake: 'fake', pass: 'pass' }[kind];
    const first = events.find((event) => event.time >= time && event.kind === told);
    expect(first).toMatchObject(kind === 'pass' ? { from: carrier, to: forced.to } : { who: carrier });
    expect(first!.time).toBeLessThan(time + 1);
  });

  it('is none for a read that is never acted on', () => {
    const list = { rules: [{ looksAt: 1 << 29, mustHold: 1 << 29, action: 0 }], lastResort: goOn };
    expect(examplesOf(samplePlay, carrier, list, gathered, table)).toEqual([null]);
  });
});

describe('a fake', () => {
  const trials = chances.map(({ trial }) => trial);
  const byEye = playGuided(model, memory.state, carrier, 'eye', { trials, horizon: 8 });
  const held = heldChances(carrier, { learn: gathered, held: gathered });
  const gains = fakeGains(samplePlay, carrier, held, byEye);

  it('is told for each mate, against each scheme', () => {
    expect(gains.map(({ toward }) => toward)).toEqual([0, 1, 2, 3, 4, 5].filter((man) => man !== carrier));
    for (const { gain, byScheme } of gains) {
      expect(byScheme).toHaveLength(1);
      expect(byScheme[0]!.gain.mean).toBeCloseTo(gain.mean, 9);
    }
  });

  it('is measured chance by chance', () => {
    expect(() => fakeGains(samplePlay, carrier, held, byEye.slice(1))).toThrow(RangeError);
  });
});
