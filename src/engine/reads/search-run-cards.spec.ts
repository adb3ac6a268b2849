import { describe, expect, it } from 'vitest';
import { samplePlay } from '../chance/sample-matchup.fixture.ts';
import { buildRunTable } from './build-run-table.ts';
import { mostRunLooks, type RunnerChance } from './gather-runs.ts';
import { runNumberCount } from './run-numbers.ts';
import { runnerCardOf } from './runner-card.ts';
import { defaultSearchLimits } from './search-rule-lists.ts';
import { searchRunCards, worthsByRunList } from './search-run-cards.ts';

const limits = { ...defaultSearchLimits, absence: false, leastShare: 0.01, lists: 50_000, mostReads: 2 };
const keeping = (left: number): number => left / 100;

/** Numbers that look drawn, always the same: 0 (included) to 1 (excluded). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Chances of which the cues tell something: going with cue 0 pays, with cue 1 does not. */
function drawnChances(count: number, seed: number): readonly RunnerChance[] {
  const next = numbers(seed);
  return Array.from({ length: count }, (_, trial): RunnerChance => {
    const looks = Array.from({ length: 1 + Math.floor(mostRunLooks * next()) }, () => {
      const cues = Array.from({ length: 5 }, (_, cue) => (next() < 0.15 ? 1 << cue : 0)).reduce((a, b) => a | b, 0);
      const goals = 0.3 * next() + 0.2 * (cues & 1) - 0.1 * ((cues >> 1) & 1);
      const left = next() < 0.3 ? 20 * next() : null;
      return { cues, numbers: new Float64Array(runNumberCount), outcome: { goals, left } };
    });
    const outcome = { goals: 0.2 * next(), left: null };
    return { trial, looks, stays: outcome, goOn: outcome, after: 0, wentAfter: null };
  });
}

/** What one chance is worth when he goes as soon as a condition holds, at `latest` in any case: told from the words of the card alone. */
function worthOfGoing({ looks, stays }: RunnerChance, conditions: readonly number[], latest: number): number {
  const went = looks.findIndex(({ cues }, at) => at === latest || conditions.some((bits) => (cues & bits) === bits));
  const { goals, left } = (went < 0 || went > latest ? undefined : looks[went]?.outcome) ?? stays;
  return goals + (left === null ? 0 : keeping(left));
}

const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

describe('the best card for a run', () => {
  const chances = drawnChances(60, 5);
  const runs = { runner: 3, chances, weight_byChance: new Float64Array(60).fill(1) };
  const found = searchRunCards(runs, keeping, limits);
  const bits = Array.from({ length: 13 }, (_, cue) => 1 << cue);
  const conditions = [...bits, ...bits.flatMap((one, at) => bits.slice(at + 1).map((other) => one | other))];
  const ofGoing = (list: readonly number[], latest: number): number =>
    mean(chances.map((chance) => worthOfGoing(chance, list, latest)));

  it('of no read is the best fixed time of all', () => {
    const every = Array.from({ length: mostRunLooks + 1 }, (_, latest) => ofGoing([], latest));
    expect(found[0]!.worth).toBeCloseTo(Math.max(...every), 6);
    expect(found[0]!.list).toEqual({ rules: [], latest: every.indexOf(Math.max(...every)) });
  });

  it('of one read is the best that any condition makes with any latest moment that is tried', () => {
    const every = conditions.flatMap((each) =>
      Array.from({ length: mostRunLooks / 2 }, (_, at) => ofGoing([each], 2 * (at + 1))),
    );
    expect(found[1]!.worth).toBeCloseTo(Math.max(found[0]!.worth, ...every), 6);
    expect(found[1]!.worth).toBeGreaterThan(found[0]!.worth + 0.02);
    // It is the read that pays.
    expect(found[1]!.list.rules[0]!.mustHold & 1).toBe(1);
  });

  it('is worth what its words come to, and more reads are never worth less', () => {
    found.forEach(({ list, worth }, reads) => {
      const worths = [...worthsByRunList(list, runs, keeping)];
      expect(mean(worths)).toBeCloseTo(worth, 6);
      const listed = list.rules.map(({ mustHold }) => mustHold);
      chances.forEach((chance, at) => {
        expect(worths[at]).toBeCloseTo(worthOfGoing(chance, listed, list.latest), 6);
      });
      if (reads > 0) expect(worth).toBeGreaterThanOrEqual(found[reads - 1]!.worth);
    });
  });

  it('is refused for no chance, and for a latest look that there is not', () => {
    expect(() => buildRunTable(3, [], keeping, 1, new Float64Array())).toThrow(RangeError);
    expect(() => buildRunTable(3, chances, keeping, 0, runs.weight_byChance)).toThrow(RangeError);
    expect(() => buildRunTable(3, chances, keeping, mostRunLooks + 1, runs.weight_byChance)).toThrow(RangeError);
  });
});

describe('a card for a run', () => {
  const order = { beat: 1, runner: samplePlay.spots.findIndex(({ id }) => id === 'C') };

  it('names the cues, the spots and the latest moment', () => {
    // Bit 1: his man looks away; bits from 8: the ball is with each mate in order.
    const rules = [{ looksAt: 0b1_0000_0010, mustHold: 0b1_0000_0010, action: 0 }];
    expect(runnerCardOf(samplePlay, order, { rules, latest: 6 })).toEqual({
      runner: 'C',
      run: 'pop',
      goesWhen: [[{ kind: 'manLooksAway' }, { kind: 'ballIsWith', who: samplePlay.spots[0]!.id }]],
      latest: 1.2,
    });
  });

  it('does not ask for what must not be seen, nor for a run that is not there', () => {
    const absent = { rules: [{ looksAt: 1, mustHold: 0, action: 0 }], latest: 2 };
    expect(() => runnerCardOf(samplePlay, order, absent)).toThrow(RangeError);
    expect(() => runnerCardOf(samplePlay, { ...order, beat: 0 }, { rules: [], latest: 2 })).toThrow(RangeError);
  });
});
