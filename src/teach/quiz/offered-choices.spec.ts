import { describe, expect, it } from 'vitest';
import { type CarrierMoment, type MomentAction, momentActions, type Outcome } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { applyingRead, cuesAt } from './applying-read.ts';
import { chooseQuestions, type PossibleQuestion } from './choose-questions.ts';
import { nearTie, offeredChoices, plainlyWorse } from './offered-choices.ts';

const play = toEnginePlay(demoPlaybook, 'lantern');
const spot = (id: string): number => play.spots.findIndex((one) => one.id === id);
const carrier = spot('WL');
const actions = momentActions(play, carrier);
const moment: CarrierMoment = {
  trial: 1,
  step: 200,
  time: 10,
  sinceStart: 3,
  carrier,
  cues: 0,
  beat: 0,
  at: [-9, 5],
  asked: -1,
};

const nameOf = (action: MomentAction): string =>
  action.kind === 'pass' ? `pass ${play.spots[action.to]!.id}` : action.kind;

/** Futures in which each action makes so many goals on average: what is added is different for each, so that it does not fall together with another's. */
const futures = 43;
function outcomesOf(goals: Readonly<Record<string, number>>, spread = 0.02, usual = 0.05) {
  return {
    outcome_byFuture_byAction: actions.map((action, at) =>
      Array.from({ length: futures }, (_, future): Outcome => {
        const luck = (((future * (at + 1)) % futures) - (futures - 1) / 2) / futures;
        return { goals: (goals[nameOf(action)] ?? usual) + spread * luck, left: null };
      }),
    ),
  };
}

function offered(
  goals: Readonly<Record<string, number>>,
  spread?: number,
  more: Partial<CarrierMoment> = {},
  read?: number,
) {
  const one = offeredChoices(play, { ...moment, ...more }, outcomesOf(goals, spread), () => 0, read, 4);
  return one && { ...one, names: one.choices.map(({ action, right }) => `${right ? '*' : ''}${nameOf(action)}`) };
}

describe('the choices of a question', () => {
  it('are the best and what is plainly worse: what the play goes on with and a shot before others', () => {
    const one = offered({ 'pass C': 0.4, goOn: 0.2, shoot: 0.1, 'pass X': 0.3 });
    expect(one?.names).toEqual(['shoot', '*pass C', 'pass X', 'goOn']);
    expect(one?.best).toBe(1);
    expect(one?.gap).toBeCloseTo(0.1, 2);
  });

  it('are three at most where no more can be held in mind', () => {
    const outcomes = outcomesOf({ 'pass C': 0.4, goOn: 0.2, shoot: 0.1, 'pass X': 0.3 });
    const three = offeredChoices(play, moment, outcomes, () => 0, undefined, 3);
    expect(three?.choices.map(({ action }) => nameOf(action))).toEqual(['shoot', 'pass C', 'goOn']);
  });

  it('count a near tie as right, and leave out what is neither near nor plainly worse', () => {
    const one = offered({
      'pass C': 0.4,
      'pass X': 0.4 - nearTie / 2,
      'pass P': 0.4 - (nearTie + plainlyWorse) / 2,
      shoot: 0.1,
      goOn: 0.1,
    });
    expect(one?.names).toEqual(['shoot', '*pass C', '*pass X', 'goOn']);
  });

  it('are none where luck alone could have told them apart', () => {
    expect(offered({ 'pass C': 0.4, shoot: 0.38, goOn: 0.37 }, 4)).toBeUndefined();
  });

  it('show going on with the play as what it comes to', () => {
    const same = outcomesOf({ 'pass C': 0.4, shoot: 0.2 });
    const shoot = same.outcome_byFuture_byAction[0]!;
    const goOn = actions.length - 1;
    const alike = {
      outcome_byFuture_byAction: same.outcome_byFuture_byAction.map((row, at) => (at === goOn ? shoot : row)),
    };
    const one = offeredChoices(play, moment, alike, () => 0, undefined, 4)!;
    expect(one.choices.map(({ action }) => action.kind)).not.toContain('shoot');
    expect(one.choices.find(({ action }) => action.kind === 'goOn')?.drawn).toEqual({ kind: 'shoot' });
  });

  it('hold one button for the pass that the play is waiting for', () => {
    const one = offered({ 'pass C': 0.4, 'pass X': 0.2, goOn: 0.21 }, 0.02, { asked: spot('X') });
    expect(one?.names).not.toContain('pass X');
    expect(one?.choices.find(({ action }) => action.kind === 'goOn')?.drawn).toEqual({ kind: 'pass', to: spot('X') });
  });

  it('call for the reset only where a read does', () => {
    expect(offered({ reset: 0.6, 'pass C': 0.4, shoot: 0.1, goOn: 0.1 })?.names).toContain('*pass C');
  });

  it('tell what the read that applies costs', () => {
    const read = play.reads.findIndex(({ carrier: by, then }) => by === 'WL' && then.kind === 'shot');
    expect(read).toBeGreaterThanOrEqual(0);
    expect(offered({ 'pass C': 0.4, shoot: 0.25, goOn: 0.1 }, 0.02, {}, read)?.taughtBehind).toBeCloseTo(0.15, 2);
  });
});

describe('the read that applies', () => {
  it('is the first whose cues hold while its step is the newest', () => {
    // Bit 0 of his vocabulary: he is free. The demo has him shoot then, once the ball goes behind.
    expect(cuesAt(play, { carrier, cues: 1 })).toEqual([{ kind: 'iAmFree' }]);
    const beat = play.beats.findIndex(({ id }) => id === 'behind');
    const read = applyingRead(play, { carrier, cues: 1, beat });
    expect(play.reads[read ?? -1]).toMatchObject({ carrier: 'WL', during: 'behind', then: { kind: 'shot' } });
    expect(applyingRead(play, { carrier, cues: 1, beat: beat - 1 })).toBeUndefined();
    expect(applyingRead(play, { carrier, cues: 0, beat })).toBeUndefined();
  });
});

describe('the questions of a quiz', () => {
  const possible = (scheme: string, man: string, best: string, worth: number, trial: number): PossibleQuestion => ({
    scheme,
    moment: { ...moment, carrier: spot(man), trial, time: trial },
    offered: offeredChoices(play, moment, outcomesOf({ [best]: worth, shoot: 0.1, goOn: 0.1 }), () => 0, undefined, 4)!,
    hasSign: true,
    isTaught: false,
  });
  const all = [
    possible('jump', 'WL', 'pass C', 0.5, 1),
    possible('jump', 'WL', 'pass C', 0.49, 2),
    possible('jump', 'WL', 'pass C', 0.48, 3),
    possible('box-zone', 'TR', 'pass X', 0.3, 4),
  ];

  it('differ before they repeat', () => {
    const chosen = chooseQuestions(all, 2);
    expect(chosen.map(({ scheme }) => scheme).sort()).toEqual(['box-zone', 'jump']);
  });

  it('are no two looks of one moment, and no more than there are', () => {
    const twice = { ...all[0]!, moment: { ...all[0]!.moment, time: all[0]!.moment.time + 1 } };
    expect(chooseQuestions([all[0]!, twice], 5)).toHaveLength(1);
    expect(chooseQuestions(all, 9)).toHaveLength(4);
    expect(chooseQuestions([], 3)).toEqual([]);
  });
});
