import { describe, expect, it } from 'vitest';
import { type SchemeId, schemes } from '../defense/schemes.ts';
import type { Level } from '../people/athlete.ts';
import { compileChance } from './model.ts';
import { recordTrace } from './run.ts';
import { busyPlay, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import type { TraceEvent } from './trace.ts';

const trials = 40;
const levels: readonly Level[] = ['12U', 'highSchool', 'pro'];
const against: readonly SchemeId[] = ['box-zone', 'jump'];
const ends: readonly TraceEvent['kind'][] = ['catch', 'dropped', 'badPass', 'intercepted', 'deflected'];

/** What a trace says of a pass, and what became of it. Passes that the end of the chance cut short are left out. */
interface Told {
  readonly level: Level;
  readonly odds: number;
  readonly caught: boolean;
}

const passes: readonly Told[] = levels.flatMap((level) =>
  against.flatMap((id) =>
    [samplePlay, busyPlay].flatMap((play) => {
      const model = compileChance(sampleMatchup({ play, level, scheme: schemes[id] }), 5);
      return Array.from({ length: trials }, (_, trial) => passesOf(level, recordTrace(model, trial).events)).flat();
    }),
  ),
);

function passesOf(level: Level, events: readonly TraceEvent[]): Told[] {
  return events.flatMap((event, at) => {
    if (event.kind !== 'pass') return [];
    const fate = events.slice(at + 1).find(({ kind }) => ends.includes(kind));
    return fate === undefined ? [] : [{ level, odds: event.completion, caught: fate.kind === 'catch' }];
  });
}

function check(told: readonly Told[]): void {
  // Off by a few in a hundred, and two standard errors of the count.
  const allowed = 0.05;
  const mean = told.reduce((sum, { odds }) => sum + odds, 0) / told.length;
  const share = told.filter(({ caught }) => caught).length / told.length;
  const standardError = Math.sqrt((mean * (1 - mean)) / told.length);
  expect(told.length).toBeGreaterThan(100);
  expect(Math.abs(share - mean), `told ${mean}, caught ${share}`).toBeLessThan(allowed + 2 * standardError);
}

describe('of the passes that a trace gives some odds, about so many are caught', () => {
  it.each(levels)('by %s', (level) => check(passes.filter((told) => told.level === level)));

  it.each([
    [0, 0.5],
    [0.5, 0.7],
    [0.7, 0.85],
    [0.85, 0.95],
    [0.95, 1],
  ])('from %d to %d', (low, high) => check(passes.filter(({ odds }) => odds >= low && odds < high)));

  it('so that all of 1 is never told of a pass that anybody can drop', () => {
    expect(passes.every(({ odds }) => odds >= 0 && odds < 1)).toBe(true);
  });
});
