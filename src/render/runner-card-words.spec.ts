import { describe, expect, it } from 'vitest';
import type { Interval, RunnerCard, RunnerCue, RunnerStudy, SpotId, ValuedTime } from '../engine/index.ts';
import { runBasisWords, runCardName, runnerCardWords, runnerCueWords, whenToGoWords } from './runner-card-words.ts';

const card: RunnerCard = {
  runner: 'BL',
  run: 'sneak',
  goesWhen: [[{ kind: 'manGoesToBall' }, { kind: 'passerIsReady' }], [{ kind: 'placeIsOpen' }]],
  latest: 1.2,
};

describe('the words of a card for a run', () => {
  it('say when he goes, and when in any case', () => {
    expect(runnerCardWords(card)).toEqual({
      goes: 'BL sneaks in when his man moves to the ball and the man with the ball can throw, or when nobody stands where he goes.',
      otherwise: 'Otherwise he goes 1.2 s after the call.',
    });
  });

  it.each([
    [0, 'BL sneaks in at once, whatever he sees.'],
    [0.4, 'BL sneaks in 0.4 s after the call, whatever he sees.'],
  ])('say one time when there is no read: %s', (latest, goes) => {
    expect(runnerCardWords({ ...card, goesWhen: [], latest })).toEqual({ goes, otherwise: null });
  });

  it.each<[readonly RunnerCue<SpotId>[], string]>([
    [[{ kind: 'passerIsReady' }, { kind: 'ballIsWith', who: 'P' }], 'P can throw'],
    [
      [{ kind: 'laneIsOpen' }, { kind: 'passerIsReady' }, { kind: 'ballIsWith', who: 'P' }],
      'the lane to where he goes is open and P can throw',
    ],
    [
      [{ kind: 'manLooksAway' }, { kind: 'ballIsInAir' }],
      'his man cannot watch him and the ball at once and the ball is in the air',
    ],
    [[{ kind: 'manHasLeft' }, { kind: 'wayIsOpen' }], 'no defender is near him and nobody stands in his way'],
    [[{ kind: 'ballIsWith', who: 'X' }], 'X has the ball'],
  ])('say each cue: %j', (cues, words) => {
    expect(runnerCueWords(cues)).toBe(words);
  });
});

const interval = (mean: number, half = 0.01): Interval => ({ mean, low: mean - half, high: mean + half });
const nothing: Interval = { mean: 0, low: 0, high: 0 };

/** A study of which only the gains by time tell something. */
function studyOf(gains: readonly number[]): RunnerStudy {
  const goals = interval(0.3);
  const byTime = gains.map((gain, at): ValuedTime => ({ after: at / 5, goals, gain: interval(gain) }));
  return {
    order: { beat: 0, runner: 0 },
    comes: 0.674,
    learntFrom: 1604,
    measuredIn: 1598,
    goOn: goals,
    goes: 0.79,
    wentAfter: 0.2,
    byTime,
    best: { goals, gain: nothing },
    cards: [],
    byScheme: [],
  };
}

describe('when to go', () => {
  it.each([
    [
      [0, -0.02, -0.04, -0.05],
      'Going 0.2 s after the call or later surely costs goals: 0.02 a chance there (0.01 to 0.03).',
    ],
    [[-0.03, -0.04], 'Going at once or later surely costs goals: 0.03 a chance there (0.02 to 0.04).'],
    // A time that is bad before one that is not is no time from which on all are.
    [[-0.05, 0, -0.05], 'Going 0.4 s after the call or later surely costs goals: 0.05 a chance there (0.04 to 0.06).'],
    [[-0.05, 0], 'Some fixed times surely cost the play goals, though the latest does not.'],
    [[0, -0.01, 0], 'No fixed time surely costs the play goals.'],
  ])('is said from when on it is too late: %j', (gains, words) => {
    expect(whenToGoWords(studyOf(gains), { gain: interval(0) })).toContain(words);
  });

  it.each([
    [interval(0.03), 'This card brings 0.03 goals a chance more than the play (0.02 to 0.04).'],
    [interval(0.01), 'cannot be told from luck: until it can, let him go as the play has it.'],
    [interval(-0.03), 'This card does worse than the play: let him go as the play has it.'],
    [nothing, 'This is what the play has him do anyway: nothing better was found.'],
  ])('is said what the card brings: %j', (gain, words) => {
    expect(whenToGoWords(studyOf([0]), { gain })).toContain(words);
  });

  it('says what it rests on', () => {
    expect(runBasisWords(studyOf([0]))).toBe(
      'The play calls for this run in 67 % of man-ups. As the play has it he goes in 79 % of these, 0.2 s after the call on average. ' +
        'Learnt from 1,604 of these man-ups, measured in 1,598 others.',
    );
  });

  it('names a row', () => {
    const one = { looksAt: 1, mustHold: 1, action: 0 };
    const row = (reads: number, rules: number, latest: number) =>
      runCardName(
        reads,
        { list: { rules: new Array(rules).fill(one), latest: 6 }, learnt: 0, goals: nothing, gain: nothing },
        latest,
      );
    expect([row(0, 0, 0), row(0, 0, 1.2), row(1, 1, 1.2), row(2, 1, 1.2)]).toEqual([
      'the best time: at once',
      'the best time: 1.2 s',
      'a card of 1 read',
      'a card of 2 reads is no better',
    ]);
  });
});
