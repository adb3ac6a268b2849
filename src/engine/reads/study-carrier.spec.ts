import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { schemesFor } from '../defense/schemes.ts';
import { cardOfList, readsOfCard } from './card-of-list.ts';
import { carrierActions } from './carrier-actions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import { gatherDecisions } from './gather-decisions.ts';
import { learnKeeping, worthOf } from './learn-keeping.ts';
import { playGuided } from './play-guided.ts';
import { goOn, worthsUnder } from './rule-list.ts';
import { type SchemeChances, tableOf } from './scheme-chances.ts';
import { defaultSearchLimits } from './search-rule-lists.ts';
import { studyCarrier } from './study-carrier.ts';

const limits = { ...defaultSearchLimits, absence: false, leastShare: 0.04, lists: 1000, mostReads: 2 };
const houses = schemesFor(5)
  .slice(0, 3)
  .map((scheme) => {
    const model = compileChance(sampleMatchup({ scheme, play: samplePlay }), 9);
    return { scheme: scheme.id, model, state: createChanceState(model), spare: createChanceState(model) };
  });
const man = (id: string): number => samplePlay.spots.findIndex((spot) => spot.id === id);

function gathered(carrier: number, from: number, to: number): readonly SchemeChances[] {
  return houses.map(({ scheme, model, state, spare }) => {
    const span = { from, to, horizon: 8 };
    const chances = gatherDecisions(model, { state, spare }, carrier, carrierActions(samplePlay, carrier), span);
    return { scheme, weight: 1, trials: to - from, chances };
  });
}

describe('the reads of one carrier', () => {
  const carrier = man('P');
  const held = gathered(carrier, 40, 80);
  const study = studyCarrier(samplePlay, carrier, { learn: gathered(carrier, 0, 40), held }, limits)!;

  it('are measured in other chances than they were learnt from', () => {
    expect(study.comes).toBeGreaterThan(0.5);
    expect(study.measuredIn).toBe(held.flatMap(({ chances }) => chances).length);
    expect(study.cards).toHaveLength(3);
    study.cards.forEach(({ learnt, list }, reads) => {
      expect(list.rules.length).toBeLessThanOrEqual(reads);
      if (reads > 0) expect(learnt).toBeGreaterThanOrEqual(study.cards[reads - 1]!.learnt);
    });
  });

  it('say what they gain over the play, in the same chances', () => {
    for (const { goals, gain } of [study.best, ...study.cards]) {
      expect(gain.mean).toBeCloseTo(goals.mean - study.goOn.mean, 9);
      expect(gain.low).toBeLessThanOrEqual(gain.mean);
      expect(gain.high).toBeGreaterThanOrEqual(gain.mean);
    }
    study.cards.forEach(({ goals, overShorter }, reads) => {
      if (reads === 0) expect(overShorter).toBeNull();
      else expect(overShorter!.mean).toBeCloseTo(goals.mean - study.cards[reads - 1]!.goals.mean, 9);
    });
    const weighed = study.byScheme.map((each, at) => each.goOn.mean * held[at]!.chances.length);
    expect(weighed.reduce((sum, each) => sum + each, 0) / study.measuredIn).toBeCloseTo(study.goOn.mean, 9);
  });

  it('weigh a scheme by how likely it is', () => {
    const only = held.map((one, at) => ({ ...one, weight: at === 1 ? 1 : 0 }));
    const alone = studyCarrier(samplePlay, carrier, { learn: gathered(carrier, 0, 40), held: only }, limits)!;
    expect(alone.goOn.mean).toBeCloseTo(study.byScheme[1]!.goOn.mean, 9);
  });

  it.each([
    ['pass', 'shoot', 'fake'],
    ['reset', 'hold', 'goOn'],
    ['fake', 'reset', 'pass'],
    ['stepIn', 'pass', 'stepIn'],
  ])('play out in the full simulation as the search reckons, chance by chance: %s, %s, else %s', (one, other, last) => {
    const actions = carrierActions(samplePlay, carrier);
    const number = (kind: string): number => actions.findIndex((action) => action.kind === kind);
    const cue = (kind: string): number => 1 << cueVocabulary(carrier).findIndex((known) => known.kind === kind);
    const rule = (looksAt: number, kind: string) => ({ looksAt, mustHold: looksAt, action: number(kind) });
    const rules = [rule(cue('nextSteps'), one), rule(cue('open'), other)];
    const list = { rules, lastResort: last === 'goOn' ? goOn : number(last) };
    const reads = readsOfCard(cardOfList(samplePlay, carrier, list, study.at));
    const keeping = learnKeeping(held.flatMap(({ chances }) => chances));
    const reckoned = worthsUnder(list, tableOf(carrier, held, keeping));
    const played = houses.flatMap(({ model, state }, at) => {
      const trials = held[at]!.chances.map(({ trial }) => trial);
      return playGuided(model, state, carrier, { reads }, { trials, horizon: 8 });
    });
    played.forEach((outcome, chance) => {
      expect(worthOf(outcome, keeping)).toBeCloseTo(reckoned[chance]!, 5);
    });
  });

  it('are none for a man to whom the play never brings the ball', () => {
    const never = man('C');
    const chances = { learn: gathered(never, 0, 10), held: gathered(never, 10, 20) };
    expect(studyCarrier(samplePlay, never, chances, limits)).toBeNull();
  });
});

describe('a card', () => {
  it('is written as the reads of a play', () => {
    // Cues are those of himself, then of his mates in order; actions shoot, then pass to each mate.
    const carrier = man('P');
    const openFirst = 1 << cueVocabulary(carrier).findIndex(({ kind }) => kind === 'open');
    const list = { rules: [{ looksAt: openFirst | 1, mustHold: openFirst | 1, action: 1 }], lastResort: goOn };
    const spots = samplePlay.spots.map(({ id }) => id);
    const mate = spots.filter((id) => id !== 'P')[0]!;
    const card = cardOfList(samplePlay, carrier, list, samplePlay.spots[carrier]!.at);
    expect(card.lastResort).toBeNull();
    expect(card.reads).toMatchObject([
      {
        carrier: 'P',
        cues: [{ kind: 'iAmFree' }, { kind: 'open', who: mate }],
        then: { kind: 'pass', by: 'P', to: mate },
      },
    ]);
  });

  it('does not ask for what must not be seen', () => {
    const list = { rules: [{ looksAt: 1, mustHold: 0, action: 0 }], lastResort: goOn };
    expect(() => cardOfList(samplePlay, man('P'), list, { x: 0, y: 14 })).toThrow(RangeError);
  });
});
