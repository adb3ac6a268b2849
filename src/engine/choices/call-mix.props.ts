import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnCall, mixCalls } from './call-mix.ts';
import { solveMatrixGame } from './matrix-game.ts';

const goals = fc.integer({ min: 0, max: 60 }).map((hundredths) => hundredths / 100);
const choice = fc.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 6 })).chain(([calls, schemes]) =>
  fc.record({
    goals_byCallScheme: fc.array(fc.array(goals, { minLength: schemes, maxLength: schemes }), {
      minLength: calls,
      maxLength: calls,
    }),
    weight_byScheme: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: schemes, maxLength: schemes }),
    trust: fc.constantFrom(0, 0.25, 0.5, 0.9, 1),
    mostCalls: fc.integer({ min: 1, max: 8 }),
  }),
);

describe('a mix of calls', () => {
  it('is whole and never of more calls than the unit can run', () => {
    fc.assert(
      fc.property(choice, (asked) => {
        const { share_byCall, atWorst, asBelieved } = mixCalls(asked);
        expect(share_byCall.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(share_byCall.filter((share) => share > 0).length).toBeLessThanOrEqual(asked.mostCalls);
        expect(atWorst).toBeLessThanOrEqual(asBelieved + 1e-9);
      }),
    );
  });

  it('is with full trust the best call by the belief, and with none the best mix against who knows it', () => {
    fc.assert(
      fc.property(choice, (asked) => {
        const { goals_byCallScheme, weight_byScheme } = asked;
        const all = weight_byScheme.reduce((sum, weight) => sum + weight, 0);
        const byBelief = goals_byCallScheme.map((row) =>
          row.reduce((sum, one, scheme) => sum + (one * weight_byScheme[scheme]!) / all, 0),
        );
        expect(mixCalls({ ...asked, trust: 1 }).asBelieved).toBeCloseTo(Math.max(...byBelief), 6);
        const wary = mixCalls({ ...asked, trust: 0, mostCalls: 8 });
        expect(wary.atWorst).toBeCloseTo(solveMatrixGame(goals_byCallScheme).value, 6);
      }),
    );
  });

  it('gives up nothing by the belief for being trusted less, and nothing at worst for being trusted more', () => {
    fc.assert(
      fc.property(choice, (asked) => {
        const [wary, bold] = [0.25, 0.9].map((trust) => mixCalls({ ...asked, trust, mostCalls: 8 }));
        expect(bold!.asBelieved).toBeGreaterThanOrEqual(wary!.asBelieved - 1e-6);
        expect(wary!.atWorst).toBeGreaterThanOrEqual(bold!.atWorst - 1e-6);
      }),
    );
  });

  it('is drawn as often as its shares say', () => {
    fc.assert(
      fc.property(choice, (asked) => {
        const mix = mixCalls(asked);
        const draws = 2000;
        const counts = asked.goals_byCallScheme.map(() => 0);
        for (let draw = 0; draw < draws; draw++) counts[drawnCall(mix, (draw + 0.5) / draws)]! += 1;
        for (const [call, share] of mix.share_byCall.entries())
          expect(Math.abs(counts[call]! / draws - share)).toBeLessThan(2 / draws + 1e-9);
      }),
      { numRuns: 20 },
    );
  });
});
