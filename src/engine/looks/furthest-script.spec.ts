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

function wayOf(script: ScriptTrace): readonly [number, number] {
  const { events } = script.trace;
  const steps = new Set(events.filter(({ kind }) => kind === 'beat').map((event) => 'beat' in event && event.beat));
  return [steps.size, events.filter((event) => event.kind === 'pass' && event.why === 'script').length];
}

describe('the man-up of a clip', () => {
  it.each(['box-zone', 'jump', 'shutoff'] as const)(
    'is the first of those in which the play comes farthest (%s)',
    (scheme) => {
      const found = furthestScript(modelOf(scheme), watched)!;
      const [steps, passes] = wayOf(found.script);
      const asFar: number[] = [];
      for (const script of each(scheme)) {
        if (script === undefined) continue;
        const [otherSteps, otherPasses] = wayOf(script);
        expect(otherSteps).toBeLessThanOrEqual(steps);
        if (otherSteps === steps) expect(otherPasses).toBeLessThanOrEqual(passes);
        if (otherSteps === steps && otherPasses === passes) asFar.push(script.trial);
      }
      expect(found.script.trial).toBe(asFar[0]);
      expect(found.asFar).toBe(asFar.length);
      expect(found.watched).toBe(watched);
    },
  );

  it('is none where no man-up is watched', () => {
    expect(furthestScript(modelOf('jump'), 0)).toBeUndefined();
  });
});
