import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleCodes } from '../../engine/index.ts';
import { demoPlaybook, type Playbook } from '../../playbook/index.ts';
import { type BenchGame, type BenchTap, tapped, untapped } from './bench-event.ts';
import { freshGame, wallAtStart } from './bench-taps.fixture.ts';
import { chanceRecords, type WrittenGame, writeChances } from './chance-records.ts';
import { foldGame, stateLater } from './fold-game.ts';
import { keptGameText, readKeptGame } from './kept-game.ts';

const side = fc.constantFrom('us' as const, 'them' as const);
const penalty = fc.record({
  side,
  man: fc.constantFrom(null, 7, 11),
  seconds: fc.constantFrom(30, 60, 120),
  fixedSeconds: fc.constantFrom(0, 30),
});
const tap: fc.Arbitrary<BenchTap> = fc.oneof(
  fc.constantFrom<BenchTap>(
    { kind: 'clock', does: 'start' },
    { kind: 'clock', does: 'start' },
    { kind: 'clock', does: 'stop' },
    { kind: 'flagOff' },
    { kind: 'begun' },
    { kind: 'shot' },
    { kind: 'period', period: 2 },
    { kind: 'seen', scheme: 'box-zone' },
    { kind: 'called', play: 'ferry', fromSide: 'left', drawn: true },
    { kind: 'result', result: 'goal' },
    { kind: 'result', result: 'saved' },
    { kind: 'look', look: { kind: 'shot' } },
    { kind: 'absent', man: 7, isAbsent: true },
  ),
  fc.record({ kind: fc.constant('flag' as const), on: side }),
  fc.record({ kind: fc.constant('goal' as const), by: side }),
  fc.record({ kind: fc.constant('timeout' as const), by: side }),
  fc.record({ kind: fc.constant('letGo' as const), penalty: fc.integer({ min: 0, max: 4 }) }),
  fc.record({
    kind: fc.constant('fouls' as const),
    penalties: fc.array(penalty, { minLength: 1, maxLength: 3 }),
    simultaneous: fc.boolean(),
  }),
);
const taps = fc.array(fc.record({ tap, wait: fc.integer({ min: 0, max: 90 }) }), { maxLength: 14 });
const code = fc.constantFrom(...Object.values(ruleCodes));

function gameOf(all: readonly { readonly tap: BenchTap; readonly wait: number }[], running = false): BenchGame {
  const settings = { ...freshGame.settings, runningTime: running };
  let wall = wallAtStart;
  return all.reduce<BenchGame>(
    (game, one) => {
      wall += one.wait;
      return tapped(game, one.tap, wall);
    },
    { ...freshGame, settings },
  );
}

const endOf = ({ events }: BenchGame): number => events.at(-1)?.wall ?? wallAtStart;

describe('a game on the bench, whatever is tapped', () => {
  it('runs no clock backward, and play never lasts longer than the time that went by', () => {
    fc.assert(
      fc.property(taps, code, fc.boolean(), (all, rules, running) => {
        const game = gameOf(all, running);
        let before = foldGame({ ...game, events: [] }, rules).clock;
        for (const [at, { wall }] of game.events.entries()) {
          const { clock } = foldGame({ ...game, events: game.events.slice(0, at + 1) }, rules);
          expect(clock.played).toBeGreaterThanOrEqual(before.played);
          expect(clock.played).toBeLessThanOrEqual(wall - game.events[0]!.wall + 1e-6);
          before = clock;
        }
      }),
    );
  });

  it('plays in a period what is gone of its clock', () => {
    fc.assert(
      fc.property(taps, code, (all, rules) => {
        const within = all.filter((one) => one.tap.kind !== 'period');
        const game = gameOf(within);
        const { clock } = stateLater(foldGame(game, rules), rules, endOf(game) + 33);
        expect(clock.played + clock.left).toBeCloseTo(game.settings.periodSeconds, 6);
      }),
    );
  });

  it('is the same after a reload in the middle, and however often it was looked at on the way', () => {
    fc.assert(
      fc.property(
        taps,
        code,
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 0, max: 200 }),
        (all, rules, one, more) => {
          const game = gameOf(all);
          const wall = endOf(game);
          const reading = readKeptGame(keptGameText({ game, written: {} }));
          expect(reading).toEqual({ kind: 'game', kept: { game, written: {} } });
          const watched = stateLater(stateLater(foldGame(game, rules), rules, wall + one), rules, wall + one + more);
          const reloaded = stateLater(foldGame(game, rules), rules, wall + one + more);
          expect(watched.chances).toHaveLength(reloaded.chances.length);
          expect(watched.manUp).toBe(reloaded.manUp);
          expect(watched.clock.played).toBeCloseTo(reloaded.clock.played, 6);
          for (const [at, penalty] of reloaded.box.penalties.entries())
            expect(watched.box.penalties[at]!.left).toBeCloseTo(penalty.left, 6);
        },
      ),
    );
  });

  it('is after a tap that was taken back what it was before', () => {
    fc.assert(
      fc.property(taps, tap, code, (all, one, rules) => {
        const game = gameOf(all);
        const back = untapped(tapped(game, one, endOf(game) + 5));
        expect(foldGame(back, rules)).toEqual(foldGame(game, rules));
      }),
    );
  });

  it('has no two chances at once, and a goal in the score for each that ended so', () => {
    fc.assert(
      fc.property(taps, code, (all, rules) => {
        const { chances, score } = foldGame(gameOf(all), rules);
        const goals = chances.filter(({ result }) => result === 'goal');
        expect(goals.filter((one) => one.side === 'us').length).toBeLessThanOrEqual(score.us);
        for (const [at, chance] of chances.entries()) {
          expect(chance.to!).toBeGreaterThanOrEqual(chance.from);
          expect(chances[at + 1]?.from ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(chance.to!);
        }
      }),
    );
  });

  it('writes into the playbook what it would after all taps at once, and takes all of it out again', () => {
    const playbook: Playbook = { ...demoPlaybook, chances: [{ id: 'old', side: 'ours', result: 'goal' }] };
    fc.assert(
      fc.property(taps, code, (all, rules) => {
        const game = gameOf(all);
        let now: WrittenGame = { playbook, written: {}, left: 0 };
        for (let at = 0; at <= game.events.length; at++) {
          const part = { ...game, events: game.events.slice(0, at) };
          now = writeChances(now.playbook, chanceRecords(part, foldGame(part, rules).chances), now.written);
        }
        const records = chanceRecords(game, foldGame(game, rules).chances);
        const once = writeChances(playbook, records, {});
        expect(now.playbook.chances).toEqual(once.playbook.chances);
        expect(writeChances(now.playbook, records, now.written).playbook).toBe(now.playbook);
        expect(writeChances(now.playbook, [], now.written).playbook.chances).toHaveLength(1);
      }),
    );
  });
});
