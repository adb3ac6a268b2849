import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { schemesFor } from '../defense/schemes.ts';
import { carrierActions } from './carrier-actions.ts';
import { gatherDecisions } from './gather-decisions.ts';
import { learnDecisions, tryDecisions } from './learn-decisions.ts';
import { measureIn } from './measure-decisions.ts';
import type { SchemeChances } from './scheme-chances.ts';
import { defaultSearchLimits } from './search-rule-lists.ts';
import { studyCarrier } from './study-carrier.ts';

const limits = { ...defaultSearchLimits, absence: false, leastShare: 0.04, lists: 500, mostReads: 2 };
const carrier = samplePlay.spots.findIndex(({ id }) => id === 'P');

function gathered(from: number, to: number): readonly SchemeChances[] {
  return schemesFor(5)
    .slice(0, 2)
    .map((scheme) => {
      const model = compileChance(sampleMatchup({ scheme, play: samplePlay }), 9);
      const memory = { state: createChanceState(model), spare: createChanceState(model) };
      const span = { from, to, horizon: 8 };
      const chances = gatherDecisions(model, memory, carrier, carrierActions(samplePlay, carrier), span);
      return { scheme: scheme.id, weight: 1, trials: to - from, chances };
    });
}

describe('what is learnt of decisions', () => {
  const [learn, held] = [gathered(0, 30), gathered(30, 60)];
  const learnt = learnDecisions(samplePlay, carrier, learn, limits);
  const { table, byBest, byLists } = tryDecisions(samplePlay, carrier, learnt, held);
  const measure = measureIn(table);

  it('is what the study of the carrier learns, and comes to the same', () => {
    const study = studyCarrier(samplePlay, carrier, { learn, held }, limits)!;
    expect(learnt.unmet.worthHolding).toBe(study.worthHolding);
    expect(learnt.lists.map(({ list }) => list)).toEqual(study.cards.map(({ list }) => list));
    expect(measure.decisions(byBest)).toEqual({ goals: study.best.goals, gain: study.best.gain });
    study.cards.forEach(({ goals, gain }, reads) => {
      expect(measure.decisions(byLists[reads]!)).toEqual({ goals, gain });
    });
  });

  it('does not hang on the chances that it is tried in', () => {
    const [one] = held;
    const alone = tryDecisions(samplePlay, carrier, learnt, [one!]);
    expect([...alone.byBest]).toEqual([...byBest.subarray(0, one!.chances.length)]);
    expect([...alone.byLists[2]!]).toEqual([...byLists[2]!.subarray(0, one!.chances.length)]);
  });

  it('differs with the chances that it is learnt from', () => {
    const other = learnDecisions(samplePlay, carrier, [learn[0]!], limits);
    const { byLists: others } = tryDecisions(samplePlay, carrier, other, held);
    expect(others.map((worths) => [...worths])).not.toEqual(byLists.map((worths) => [...worths]));
  });
});
