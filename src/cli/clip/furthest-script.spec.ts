import { describe, expect, it } from 'vitest';
import { compileChance, createChanceState, type ScriptTrace, traceScript } from '../../engine/index.ts';
import { demoPlaybook } from '../../playbook/index.ts';
import { buildMatchup } from '../../worker/index.ts';
import { furthestScript } from './furthest-script.ts';

function modelOf(scheme: string) {
  const built = buildMatchup(demoPlaybook, { play: 'lantern', scheme, side: 'right', penalty: null, level: null });
  if (built.kind === 'refused') throw new TypeError(built.reason);
  return compileChance(built.matchup, 1);
}

const watched = 16;

/** Every man-up by itself, in which the play begins: `undefined` where it does not. */
function each(scheme: string): readonly (ScriptTrace | undefined)[] {
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
  it.each(['box-zone', 'jump', 'shutoff'])('is the first of those in which the play comes farthest (%s)', (scheme) => {
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
  });

  it('is none where no man-up is watched', () => {
    expect(furthestScript(modelOf('jump'), 0)).toBeUndefined();
  });
});
