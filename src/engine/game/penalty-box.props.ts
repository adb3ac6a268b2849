import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleCodes } from '../field/rule-codes.ts';
import type { BoxEvent } from './penalty.ts';
import { penaltyBox, timesBack } from './penalty-box.ts';

const side = fc.constantFrom('us', 'them');
const at = fc.integer({ min: 0, max: 400 });
const penalty = fc
  .record({
    side,
    man: fc.constant(null),
    seconds: fc.constantFrom(30, 60, 120, 180),
    share: fc.constantFrom(0, 0.5, 1),
  })
  .map(({ share, ...given }) => ({ ...given, fixedSeconds: given.seconds * share }));
const event: fc.Arbitrary<BoxEvent> = fc.oneof(
  fc.record({
    kind: fc.constant('given' as const),
    at,
    penalties: fc.array(penalty, { minLength: 1, maxLength: 4 }),
    simultaneous: fc.boolean(),
  }),
  fc.record({ kind: fc.constant('goal' as const), at, by: side }),
  fc.record({ kind: fc.constant('letGo' as const), at, penalty: fc.integer({ min: 0, max: 6 }) }),
);
const events = fc.array(event, { maxLength: 8 });
const code = fc.constantFrom(...Object.values(ruleCodes));
const moment = fc.double({ min: 0, max: 900, noNaN: true });

describe('the box, whatever happens', () => {
  it('never has a team shorter than it may be, and always as short as it should', () => {
    fc.assert(
      fc.property(code, events, moment, (rules, all, now) => {
        const { penalties, short } = penaltyBox(rules, all, now);
        for (const one of ['us', 'them'] as const) {
          const serving = penalties.filter(({ side, state }) => side === one && state === 'serving').length;
          const waiting = penalties.some(({ side, state }) => side === one && state === 'waiting');
          expect(serving).toBeLessThanOrEqual(rules.counts.mostShort.value);
          if (waiting) expect(serving).toBe(rules.counts.mostShort.value);
          expect(short[one]).toBe(rules.penalties.playedShort.value ? serving : 0);
        }
      }),
    );
  });

  it('serves no second twice: without a goal or an official all are served in full, and never more', () => {
    fc.assert(
      fc.property(code, events, (rules, all) => {
        const given = all.filter(({ kind }) => kind === 'given');
        for (const { seconds, endedAt, state, left } of penaltyBox(rules, given, 10_000).penalties) {
          expect(state).toBe('served');
          expect(left).toBe(0);
          expect(endedAt! >= seconds).toBe(true);
        }
      }),
    );
  });

  it('has each man back when it says, if nothing more happens', () => {
    fc.assert(
      fc.property(code, events, moment, side, (rules, all, now, one) => {
        const past = all.filter((each) => each.at <= now);
        const box = penaltyBox(rules, past, now);
        const times = timesBack(rules, box, one);
        expect(times).toHaveLength(box.short[one]);
        for (const [at, time] of times.entries()) {
          expect(penaltyBox(rules, past, now + time + 1e-3).short[one]).toBeLessThanOrEqual(box.short[one] - at - 1);
          if (time > 1e-3)
            expect(penaltyBox(rules, past, now + time - 1e-3).short[one]).toBeGreaterThanOrEqual(box.short[one] - at);
        }
      }),
    );
  });

  it('is the same whether it is looked at on the way or not', () => {
    fc.assert(
      fc.property(code, events, moment, moment, (rules, all, one, other) => {
        const [early, late] = [Math.min(one, other), Math.max(one, other)];
        const nothing: BoxEvent = { kind: 'letGo', at: early, penalty: 999 };
        const [plain, watched] = [all, [...all, nothing]].map((list) => penaltyBox(rules, list, late).penalties);
        expect(watched!.map(({ state }) => state)).toEqual(plain!.map(({ state }) => state));
        for (const [at, { left }] of watched!.entries()) expect(left).toBeCloseTo(plain![at]!.left, 6);
      }),
    );
  });

  it('is helped by no goal against it: who is scored on is short no longer than without the goal', () => {
    fc.assert(
      fc.property(code, events, at, moment, (rules, all, when, now) => {
        const before = penaltyBox(rules, all, now).penalties;
        const after = penaltyBox(rules, [...all, { kind: 'goal', at: when, by: 'us' }], now).penalties;
        const left = (list: typeof before): number =>
          list.filter(({ side }) => side === 'them').reduce((sum, one) => sum + one.left, 0);
        expect(left(after)).toBeLessThanOrEqual(left(before) + 1e-6);
        expect(after.filter(({ side }) => side === 'us')).toEqual(before.filter(({ side }) => side === 'us'));
      }),
    );
  });
});
