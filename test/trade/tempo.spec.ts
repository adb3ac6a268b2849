import { test } from 'vitest';
import type { SchemeId } from '../../src/engine/index.ts';
import { bestLook, expectMore, meanOf, roundPlay, watch } from './trade-unit.ts';

// Fact 5 of docs/models/trade-facts.md.

const trials = 300;
const play = roundPlay(0);
const faster = { speed: 1.25, release: 0.7 };

/** What the faster ball adds to each trial's best look, mean of the schemes. */
function gain(schemes: readonly SchemeId[]): readonly number[] {
  const gains = schemes.map((scheme) => {
    const fast = bestLook(watch({ scheme, play, ball: faster }, trials));
    const usual = bestLook(watch({ scheme, play }, trials));
    return fast.map((value, trial) => value - usual[trial]);
  });
  return Array.from({ length: trials }, (_, trial) => meanOf(gains.map((each) => each[trial])).mean);
}

const rotations = gain(['four-man-rotation', 'five-man-rotation']);
const zones = gain(['box-zone', 'house-3-2']);

test('5 faster ball helps against rotations more than against zones', () => {
  const difference = meanOf(rotations.map((value, trial) => value - zones[trial]));
  expectMore('5', difference, 2, 0.005);
});
