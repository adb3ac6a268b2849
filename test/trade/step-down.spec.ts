import { describe, expect, test } from 'vitest';
import {
  createAthlete,
  createKeeper,
  createShotOdds,
  createShotSituation,
  defaultShotParameters,
  disciplines,
  faceKeeperInto,
  keeperPlaceInto,
  type Level,
  levels,
  releaseInto,
  type SchemeId,
  shotOddsInto,
} from '../../src/engine/index.ts';
import { expectMore, lessApart, roundPlay, tracesOf, usualHold } from './trade-unit.ts';

// Fact 8 of docs/models/trade-facts.md.

const places = [10, 11, 12].flatMap((distance) =>
  [-30, 0, 30].map((degree) => {
    const angle = (degree * Math.PI) / 180;
    return { distance, degree, x: distance * Math.sin(angle), y: distance * Math.cos(angle) };
  }),
);

/** Goal odds of a usual man's shot with the keeper in his place and nobody in the way. */
function oddsOf(level: Level, x: number, y: number, rush: number): number {
  const { shotSpeed, shotScatter } = createAthlete({ level, hand: 'both', crosse: 'short' });
  const shot = { ...createShotSituation(), x, y };
  releaseInto(shot, shotSpeed, shotScatter, rush, 0, 1, defaultShotParameters);
  faceKeeperInto(shot, createKeeper({ level }));
  const keeper = new Float64Array(2);
  keeperPlaceInto(keeper, x, y);
  shot.keeperX = keeper[0];
  shot.keeperY = keeper[1];
  const odds = createShotOdds();
  shotOddsInto(odds, shot);
  return odds.goal;
}

describe('8a a step-down with time and room is worth more than a rushed one', () => {
  test.each(levels)('%s', (level) => {
    for (const { x, y, distance, degree } of places) {
      const gain = oddsOf(level, x, y, 0) - oddsOf(level, x, y, 1);
      expect(gain, `${distance} yd, ${degree} degrees`).toBeGreaterThan(0.04);
    }
  });
});

test('8b and it is in play', () => {
  const schemes: readonly SchemeId[] = ['box-zone', 'five-man-rotation'];
  const play = roundPlay(usualHold);
  const free: number[] = [];
  const pressed: number[] = [];
  for (const scheme of schemes) {
    for (const { events } of tracesOf({ scheme, play, level: 'college', discipline: disciplines.sharp }, 300)) {
      for (const event of events) {
        if (event.kind !== 'shot' || event.distance < 10 || event.distance > 12) continue;
        (event.pressed ? pressed : free).push(event.goalOdds);
      }
    }
  }
  expect(Math.min(free.length, pressed.length), 'shots of each kind').toBeGreaterThan(30);
  const difference = lessApart(free, pressed);
  expectMore('8b', difference, 3, 0.03);
});
