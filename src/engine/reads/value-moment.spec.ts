import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { createTraceRecorder } from '../chance/record.ts';
import { advanceTrial } from '../chance/run.ts';
import { mirrorMatchup, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import type { Play } from '../offense/play.ts';
import { meanInterval } from '../statistics/mean-interval.ts';
import { addValue, createMoments, varianceOf } from '../statistics/running-moments.ts';
import { beginWatched, gatherDecisions, type Outcome } from './gather-decisions.ts';
import { judgeMoment } from './judge-moment.ts';
import { learnKeeping } from './learn-keeping.ts';
import { momentActions } from './moment-actions.ts';
import { type CarrierMoment, momentsOfTrial } from './moments-of-trial.ts';
import { traceMoment } from './trace-moment.ts';
import { valueMoment } from './value-moment.ts';

const everyone = [0, 1, 2, 3, 4, 5];
const horizon = 8;

function prepared(matchup = sampleMatchup(), seed = 3) {
  const model = compileChance(matchup, seed);
  const memory = { state: createChanceState(model), spare: createChanceState(model) };
  const moments = (from: number, to: number): readonly CarrierMoment[] =>
    Array.from({ length: to - from }, (_, at) => momentsOfTrial(model, memory.state, from + at, everyone)).flat();
  return { model, memory, moments };
}

const few = { first: 0, futures: 3, whole: 1, horizon };

describe('a moment', () => {
  const { model, memory, moments } = prepared();
  const found = moments(0, 4);

  it('is a look of a man with the ball while the play runs, at most three of a possession', () => {
    expect(found.length).toBeGreaterThan(8);
    expect(new Set(found.map(({ carrier }) => carrier)).size).toBeGreaterThan(2);
    const looks = found.filter(({ trial, carrier }) => trial === found[0]!.trial && carrier === found[0]!.carrier);
    expect(looks.length).toBeLessThanOrEqual(3);
  });

  it('is found whatever was tried before', () => {
    expect(moments(2, 4)).toEqual(found.filter(({ trial }) => trial >= 2));
  });

  it('names the mate to whom the play has him throw', () => {
    const starter = found.filter(({ carrier }) => samplePlay.spots[carrier]!.id === 'TR');
    const point = samplePlay.spots.findIndex(({ id }) => id === 'P');
    expect(starter.every(({ asked }) => asked === point)).toBe(true);
  });

  it('is led to by the trial as it was, to the last bit', () => {
    for (const moment of [found[1]!, found.at(-1)!]) {
      const recorder = createTraceRecorder(model);
      beginWatched(model, memory.state, moment.trial);
      memory.state.recorder = recorder;
      recorder.frame(memory.state);
      while (memory.state.step < moment.step - 1) advanceTrial(model, memory.state);
      memory.state.recorder = null;
      const plain = recorder.finish();
      valueMoment(model, memory, moment, few);
      const { runUp, after } = traceMoment(model, memory, moment, [{ action: { kind: 'goOn' }, future: 5 }], {
        before: 2,
        after: 1,
      });
      const places = plain.places_byFrame.slice(-runUp.places_byFrame.length);
      expect([...runUp.places_byFrame]).toEqual([...places]);
      expect(runUp.frames).toBe(41);
      // What comes after begins with the very picture that led to it.
      const one = 2 * runUp.agents;
      expect([...after[0]!.places_byFrame.slice(0, one)]).toEqual([...runUp.places_byFrame.slice(-one)]);
    }
  });

  it('has futures of its own luck, the same however many are asked for', () => {
    const moment = found[2]!;
    const all = valueMoment(model, memory, moment, { ...few, futures: 6 }).outcome_byFuture_byAction;
    const later = valueMoment(model, memory, moment, { ...few, first: 4, futures: 2 }).outcome_byFuture_byAction;
    expect(later).toEqual(all.map((outcomes) => outcomes.slice(4)));
    const goOn = all.at(-1)!.map(({ goals }) => goals);
    expect(new Set(goOn).size).toBeGreaterThan(1);
  });

  it('is worth in the mirror what it is', () => {
    const mirrored = prepared(mirrorMatchup(sampleMatchup()));
    const reflected = mirrored.moments(0, 4);
    expect(reflected.map(({ step, cues }) => [step, cues])).toEqual(found.map(({ step, cues }) => [step, cues]));
    for (const at of [0, 5]) {
      expect(valueMoment(mirrored.model, mirrored.memory, reflected[at]!, few)).toEqual(
        valueMoment(model, memory, found[at]!, few),
      );
    }
  });
});

describe('what is left to the play', () => {
  it('comes on average to what plain trials come to', () => {
    // One future a trial is one more draw of the same chance: means must agree within 4 standard errors of their difference.
    const { model, memory } = prepared();
    const carrier = samplePlay.spots.findIndex(({ id }) => id === 'TL');
    const plain = gatherDecisions(model, memory, carrier, [], { from: 0, to: 60, horizon });
    const keeping = learnKeeping(plain);
    const worth = ({ goals, left }: Outcome): number => goals + (left === null ? 0 : keeping(left));
    const apart = createMoments();
    for (const { trial, goOn } of plain) {
      const moment = momentsOfTrial(model, memory.state, trial, [carrier])[0]!;
      const { outcome_byFuture_byAction } = valueMoment(model, memory, moment, { ...few, futures: 4 });
      const futures = outcome_byFuture_byAction.at(-1)!;
      addValue(apart, worth(goOn) - futures.reduce((sum, each) => sum + worth(each), 0) / futures.length);
    }
    expect(apart.count).toBeGreaterThan(30);
    expect(varianceOf(apart)).toBeGreaterThan(0);
    expect(Math.abs(apart.mean)).toBeLessThan(4 * Math.sqrt(varianceOf(apart) / apart.count));
    expect(meanInterval(apart).high - apart.mean).toBeLessThan(0.1);
  });
});

describe('a judgement', () => {
  it('is plain where a man stands alone on the crease', () => {
    const feed: Play = {
      ...samplePlay,
      id: 'sample-feed',
      beats: [
        { id: 'in', when: { kind: 'start' }, actions: [{ kind: 'pass', by: 'TR', to: 'C', style: 'feed' }] },
        {
          id: 'out',
          when: { kind: 'catch', by: 'C' },
          actions: [{ kind: 'pass', by: 'C', to: 'P', style: 'adjacent' }],
        },
      ],
    };
    // Men who hardly move, and no time to bring it in anew: a ball that goes out again is a chance thrown away.
    const { model, memory, moments } = prepared(
      sampleMatchup({ play: feed, defenders: { topSpeed: 1, stickReach: 0.3 }, penalty: { seconds: 14 } }),
    );
    const crease = feed.spots.findIndex(({ id }) => id === 'C');
    const actions = momentActions(feed, crease);
    const alone = moments(0, 4).filter(({ carrier, at: [, y] }) => carrier === crease && y < 6);
    expect(alone.length).toBeGreaterThan(1);
    for (const moment of alone) {
      const outcomes = valueMoment(model, memory, moment, { first: 0, futures: 48, whole: 4, horizon });
      const judged = judgeMoment(outcomes, learnKeeping(outcomes.kept)).actions;
      const behind = (kind: string) => actions.flatMap((each, at) => (each.kind === kind ? [judged[at]!.behind] : []));
      expect(behind('shoot')[0]!.mean).toBeLessThan(0.02);
      for (const { low } of [...behind('pass'), ...behind('goOn')]) expect(low).toBeGreaterThan(0.02);
    }
  });

  const outcomes = (...goals: readonly number[]): readonly Outcome[] =>
    goals.map((each) => ({ goals: each, left: null }));
  const judged = (...rows: readonly (readonly Outcome[])[]) =>
    judgeMoment({ outcome_byFuture_byAction: rows }, () => 0);

  it('compares future by future, so that shared luck does not blur it', () => {
    const { best, actions } = judged(outcomes(0, 0.5, 1, 0.5), outcomes(0.1, 0.6, 1.1, 0.6));
    expect(best).toBe(1);
    expect(actions[0]!.behind.mean).toBeCloseTo(0.1, 9);
    expect(actions[0]!.behind.low).toBeCloseTo(0.1, 6);
    expect(actions[1]!.behind).toEqual({ mean: 0, low: 0, high: 0 });
  });

  it('counts a ball that is kept for what keeping it is worth', () => {
    const kept = [
      { goals: 0, left: 20 },
      { goals: 0, left: 20 },
    ];
    const { best } = judgeMoment({ outcome_byFuture_byAction: [outcomes(0.1, 0.1), kept] }, (left) => left / 100);
    expect(best).toBe(1);
  });

  it('shows the future in the middle, and asks for two', () => {
    expect(judged(outcomes(0.9, 0.1, 0.4)).actions[0]!.middle).toBe(2);
    expect(() => judged(outcomes(0.5))).toThrow(RangeError);
  });
});
