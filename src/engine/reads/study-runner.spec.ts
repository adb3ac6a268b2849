import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { schemesFor } from '../defense/schemes.ts';
import type { Play } from '../offense/play.ts';
import { gatherRuns } from './gather-runs.ts';
import { defaultSearchLimits } from './search-rule-lists.ts';
import { type SchemeRuns, studyRunner } from './study-runner.ts';

const limits = { ...defaultSearchLimits, absence: false, leastShare: 0.04, lists: 500, mostReads: 2 };
const man = (id: string): number => samplePlay.spots.findIndex((spot) => spot.id === id);

/** The end of C's pop is TR's call to shoot. While TR still holds the ball, far out, that is a shot thrown away; once the ball has gone, it is none. */
const tooEarly: Play = {
  ...samplePlay,
  spots: samplePlay.spots.map((spot) => (spot.id === 'TR' ? { ...spot, at: { x: 13, y: 18 } } : spot)),
  beats: [
    {
      id: 'begin',
      when: { kind: 'start' },
      actions: [
        { kind: 'hold', by: 'TR', seconds: 1 },
        { kind: 'pass', by: 'TR', to: 'P', style: 'adjacent' },
        { kind: 'run', run: 'pop', by: 'C', path: [{ x: 1, y: 8 }], go: 'now' },
      ],
    },
    { id: 'shoot', when: { kind: 'arrival', who: 'C' }, actions: [{ kind: 'shot', by: 'TR' }] },
  ],
};

const order = { beat: 0, runner: man('C') };

function gathered(from: number, to: number, play = tooEarly): readonly SchemeRuns[] {
  return schemesFor(5)
    .slice(0, 3)
    .map((scheme) => {
      const model = compileChance(sampleMatchup({ scheme, play }), 9);
      const memory = { state: createChanceState(model), spare: createChanceState(model) };
      const chances = gatherRuns(model, memory, order, { from, to, horizon: 10 });
      return { scheme: scheme.id, weight: 1, trials: to - from, chances };
    });
}

describe('when to run', () => {
  const [learn, held] = [gathered(0, 40), gathered(40, 80)];
  const study = studyRunner(order, learn, held, limits)!;

  it('is later where going at once spoils the play', () => {
    expect(study.goes).toBe(1);
    expect(study.wentAfter).toBe(0);
    expect(study.byTime[0]!.gain).toMatchObject({ mean: 0, low: 0, high: 0 });
    // Far enough from what luck would make of 120 chances: the interval's low end is above nothing.
    expect(study.byTime.at(-1)!.gain.low).toBeGreaterThan(0.01);
    const [fixed] = study.cards;
    expect(fixed!.list.latest).toBeGreaterThanOrEqual(3);
    expect(fixed!.gain.low).toBeGreaterThan(0.01);
  });

  it('is measured in other chances than it was learnt from', () => {
    expect(study.comes).toBeGreaterThan(0.5);
    expect(study.measuredIn).toBe(held.flatMap(({ chances }) => chances).length);
    expect(study.cards).toHaveLength(3);
    study.cards.forEach(({ learnt, list }, reads) => {
      expect(list.rules.length).toBeLessThanOrEqual(reads);
      if (reads > 0) expect(learnt).toBeGreaterThanOrEqual(study.cards[reads - 1]!.learnt);
    });
  });

  it('says what each way gains over the play, in the same chances', () => {
    for (const { goals, gain } of [study.best, ...study.cards, ...study.byTime]) {
      expect(gain.mean).toBeCloseTo(goals.mean - study.goOn.mean, 6);
      expect(gain.low).toBeLessThanOrEqual(gain.mean);
      expect(gain.high).toBeGreaterThanOrEqual(gain.mean);
    }
    const weighed = study.byScheme.map((each, at) => each.goOn.mean * held[at]!.chances.length);
    expect(weighed.reduce((sum, each) => sum + each, 0) / study.measuredIn).toBeCloseTo(study.goOn.mean, 6);
  });

  it('weighs a scheme by how likely it is', () => {
    const only = held.map((one, at) => ({ ...one, weight: at === 1 ? 1 : 0 }));
    const alone = studyRunner(order, learn, only, limits)!;
    expect(alone.goOn.mean).toBeCloseTo(study.byScheme[1]!.goOn.mean, 6);
  });

  it('says of schemes that are met whether he goes, and of no others', () => {
    const never = held.map((one, at) =>
      at === 1 ? one : { ...one, weight: 0, chances: one.chances.map((chance) => ({ ...chance, wentAfter: null })) },
    );
    expect(studyRunner(order, learn, never, limits)!.goes).toBe(1);
    const alike = never.map((one) => ({ ...one, weight: 1 }));
    expect(studyRunner(order, learn, alike, limits)!.goes).toBeLessThan(0.5);
  });

  it('is nothing for a run that the play never comes to', () => {
    const none = held.map((one) => ({ ...one, chances: [] }));
    expect(studyRunner(order, none, none, limits)).toBeNull();
  });
});
