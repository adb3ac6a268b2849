import { describe, expect, it } from 'vitest';
import { type Cue, compileChance, countCues, createChanceState } from '../engine/index.ts';
import { demoPlaybook } from '../playbook/index.ts';
import { buildMatchup, manDownSchemeIds } from './build-matchup.ts';

/** How often each cue holds for the men with the ball of the demo's plays against every scheme: looks at which it was asked, and held. */
function sharesOfDemo(): ReadonlyMap<Cue['kind'], { readonly asked: number; readonly held: number }> {
  const sums = new Map<Cue['kind'], { asked: number; held: number }>();
  for (const { id } of demoPlaybook.plays) {
    for (const scheme of manDownSchemeIds(demoPlaybook)) {
      const built = buildMatchup(demoPlaybook, { play: id, scheme, side: 'right', penalty: null, level: null });
      if (built.kind === 'refused') throw new Error(built.reason);
      const model = compileChance(built.matchup, 5);
      for (const { looks, cues } of countCues(model, createChanceState(model), 0, 4)) {
        for (const { cue, held } of cues) {
          const sum = sums.get(cue.kind) ?? { asked: 0, held: 0 };
          sums.set(cue.kind, { asked: sum.asked + looks, held: sum.held + held });
        }
      }
    }
  }
  return sums;
}

describe('what the men of the demo can see', () => {
  const shares = sharesOfDemo();

  // A cue that is always or never there tells nobody anything. The bounds are ours: one look in fifty, and three in five.
  it.each([...shares])('%s comes and goes', (_, { asked, held }) => {
    expect(held / asked).toBeGreaterThan(0.02);
    expect(held / asked).toBeLessThan(0.6);
  });

  it('is every cue there is', () => {
    expect([...shares.keys()].sort()).toEqual(
      [
        'creaseUp',
        'farLowCrosses',
        'farLowLooksAway',
        'iAmFree',
        'iAmPressed',
        'laneTaken',
        'left',
        'myManLeaves',
        'nextSteps',
        'open',
      ].sort(),
    );
  });
});
