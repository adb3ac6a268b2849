import { describe, expect, it } from 'vitest';
import { samplePlay } from '../chance/sample-matchup.fixture.ts';
import type { Play, Read } from '../offense/play.ts';
import { carrierActions } from './carrier-actions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import { gradeReads } from './grade-reads.ts';
import { goOn } from './rule-list.ts';
import { tableOfChances, type WrittenChance } from './table-of-chances.fixture.ts';

const carrier = samplePlay.spots.findIndex(({ id }) => id === 'P');
const vocabulary = cueVocabulary(carrier);
const cueBit = (kind: string): number => 1 << vocabulary.findIndex((cue) => cue.kind === kind);
const [free, pressed] = [cueBit('iAmFree'), cueBit('iAmPressed')];
const shootWhenFree: Read = { carrier: 'P', cues: [{ kind: 'iAmFree' }], then: { kind: 'shot', by: 'P' } };
const actions = carrierActions(samplePlay, carrier);
const [shoot, firstPass] = [0, 1];

/** What each action comes to: nothing but for a few. */
function worths(some: Readonly<Record<number, number>>): readonly number[] {
  return actions.map((_, action) => some[action] ?? 0);
}

/**
 * Every second chance he is pressed and then free: a shot is worth .8 before, .5 then, and a pass .6 then. In the others nothing is to be seen, and
 * a shot is worth .1. The play makes .3 of all of them.
 */
const chances: readonly WrittenChance[] = Array.from({ length: 60 }, (_, at) =>
  at % 2 === 0
    ? {
        weight: 1,
        goOn: 0.3,
        looks: [
          { cues: pressed, worths: worths({ [shoot]: 0.8, [firstPass]: 0.1 }) },
          { cues: free, worths: worths({ [shoot]: 0.5, [firstPass]: 0.6 }) },
        ],
      }
    : {
        weight: 1,
        goOn: 0.3,
        looks: [
          { cues: 0, worths: worths({ [shoot]: 0.1 }) },
          { cues: 0, worths: worths({ [shoot]: 0.1 }) },
        ],
      },
);
const times = chances.flatMap(() => [
  { time: 3, beat: 0 },
  { time: 3.2, beat: 1 },
]);
const graded = { table: tableOfChances(vocabulary.length, chances), looks: times };

function grade(reads: readonly Read[]) {
  const play: Play = { ...samplePlay, reads };
  return gradeReads(play, carrier, graded, graded);
}

describe('a read that a play teaches', () => {
  const [only] = grade([shootWhenFree]);

  it('is told how often it comes, and when', () => {
    expect(only!.comes).toBe(0.5);
    expect(only!.there!.after).toBeCloseTo(0.2, 9);
    expect(only!.there!.lastMoment).toBe(1);
  });

  it('is held against the play and against the best there is at its cues', () => {
    const { goals, goOn, best, bestAction, earns, short } = only!.there!;
    expect([goals.mean, goOn.mean, best.mean]).toEqual([0.5, 0.3, 0.6].map((each) => expect.closeTo(each, 6)));
    expect(bestAction).toBe(firstPass);
    expect(earns.mean).toBeCloseTo(0.2, 6);
    expect(short.mean).toBeCloseTo(0.1, 6);
    expect(only!.gain.mean).toBeCloseTo(0.1, 6);
  });

  it('is best left to the play where nothing else does as much', () => {
    const poor = chances.map((chance) => ({ ...chance, goOn: 0.95 }));
    const table = tableOfChances(vocabulary.length, poor);
    const [grade] = gradeReads(
      { ...samplePlay, reads: [shootWhenFree] },
      carrier,
      { table, looks: times },
      { table, looks: times },
    );
    expect(grade!.there!.bestAction).toBe(goOn);
    expect(grade!.there!.best.mean).toBeCloseTo(0.95, 6);
    expect(grade!.there!.short.mean).toBeCloseTo(0.45, 6);
  });

  it('is told to come too late when a look before it would have been better', () => {
    expect(only!.there!.earlier!.mean).toBeCloseTo(0.3, 6);
  });

  it('has its price when it is done without its cue', () => {
    // At the first look: .8 in place of .3 in one half, .1 in place of .3 in the other.
    expect(only!.wrongWay!.mean).toBeCloseTo((0.3 - 0.8 + 0.3 - 0.1) / 2, 6);
  });

  it('is mended by the best read that keeps a part of it', () => {
    const { condition, action, gain } = only!.better!;
    expect(condition).toEqual({ looksAt: pressed, mustHold: pressed });
    expect(action).toBe(shoot);
    // Half of the chances bring .8 in place of .5.
    expect(gain.mean).toBeCloseTo(0.15, 6);
  });

  it('counts only while its beat is the newest', () => {
    const [first, second] = samplePlay.beats;
    expect(grade([{ ...shootWhenFree, during: first!.id }])[0]!.comes).toBe(0);
    expect(grade([{ ...shootWhenFree, during: second!.id }])[0]!.comes).toBe(0.5);
  });

  it('is graded where a carry of the coach’s own is asked for', () => {
    const carry: Read = { ...shootWhenFree, then: { kind: 'carry', by: 'P', path: [{ x: 3, y: 12 }] } };
    const play: Play = { ...samplePlay, reads: [carry] };
    const wide = chances.map((chance) => ({
      ...chance,
      looks: chance.looks.map((look) => ({ ...look, worths: [...look.worths, 0.9] })),
    }));
    const table = tableOfChances(vocabulary.length, wide);
    const [grade] = gradeReads(play, carrier, { table, looks: times }, { table, looks: times });
    expect(grade!.there!.goals.mean).toBeCloseTo(0.9, 6);
    expect(grade!.there!.bestAction).toBe(actions.length);
    // Half of the chances bring .9 in place of .3 already, and no other cue comes in the rest.
    expect(grade!.better).toBeNull();
  });

  it('of another man is none of his', () => {
    expect(grade([{ ...shootWhenFree, carrier: 'TL', then: { kind: 'shot', by: 'TL' } }])).toEqual([]);
  });
});
