import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import { compileChance } from '../chance/model.ts';
import { sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { schemes } from '../defense/schemes.ts';
import { furthestScript } from './furthest-script.ts';
import { type ScriptTrace, traceScript } from './watch-trace.ts';

function modelOf(scheme: 'box-zone' | 'jump' | 'shutoff') {
  return compileChance(sampleMatchup({ scheme: schemes[scheme] }), 1);
}

const watched = 16;

/** Every man-up by itself, in which the play begins: `undefined` where it does not. */
function each(scheme: 'box-zone' | 'jump' | 'shutoff'): readonly (ScriptTrace | undefined)[] {
  const model = modelOf(scheme);
  return Array.from({ length: watched }, (_, trial) => {
    const script = traceScript(model, createChanceState(model), trial);
    return script?.trial === trial ? script : undefined;
  });
}

/** Steps, passes, and how it ends: 2 with a shot, 0 with the ball lost before. */
function wayOf(script: ScriptTrace): readonly [number, number, number] {
  const { events } = script.trace;
  const steps = new Set(events.filter(({ kind }) => kind === 'beat').map((event) => 'beat' in event && event.beat));
  const lost = ['dropped', 'intercepted', 'deflected', 'stripped', 'badPass'];
  const end = events.some(({ kind }) => kind === 'shot') ? 2 : events.some(({ kind }) => lost.includes(kind)) ? 0 : 1;
  return [steps.size, events.filter((event) => event.kind === 'pass' && event.why === 'script').length, end];
}

/** Which of two came farther: above 0 for the first. */
function farther(one: readonly number[], other: readonly number[]): number {
  return one.map((value, at) => value - other[at]!).find((difference) => difference !== 0) ?? 0;
}

describe('the man-up of a clip', () => {
  it.each(['box-zone', 'jump', 'shutoff'] as const)(
    'is the first of those in which the play comes farthest (%s)',
    (scheme) => {
      const found = furthestScript(modelOf(scheme), watched)!;
      const way = wayOf(found.script);
      const asFar: number[] = [];
      for (const script of each(scheme)) {
        if (script === undefined) continue;
        expect(farther(wayOf(script), way)).toBeLessThanOrEqual(0);
        if (farther(wayOf(script), way) === 0) asFar.push(script.trial);
      }
      expect(found.ends).toBe(['lost', 'stuck', 'shot'][way[2]]);
      expect(found.script.trial).toBe(asFar[0]);
      expect(found.asFar).toBe(asFar.length);
      expect(found.watched).toBe(watched);
    },
  );

  it('is one that comes to its shot, where one of them as far as any does', () => {
    for (const scheme of ['box-zone', 'jump', 'shutoff'] as const) {
      const found = furthestScript(modelOf(scheme), watched)!;
      const [steps, passes] = wayOf(found.script);
      const ends = each(scheme)
        .flatMap((script) => (script === undefined ? [] : [wayOf(script)]))
        .filter((way) => way[0] === steps && way[1] === passes);
      if (ends.some(([, , end]) => end === 2)) expect(found.ends).toBe('shot');
    }
  });

  it('is none where no man-up is watched', () => {
    expect(furthestScript(modelOf('jump'), 0)).toBeUndefined();
  });
});
