import { test } from 'vitest';
import type { Play, SchemeId } from '../../src/engine/index.ts';
import { expectMore, lessPaired, lookOffPlay, lookUpPlay, openTime, type Pair, watch } from './trade-unit.ts';

// Fact 6 of docs/models/trade-facts.md.

const trials = 200;

function opened(scheme: SchemeId, play: Play, pair: Pair): readonly number[] {
  return openTime(watch({ scheme, play }, trials), [pair]);
}

test('6a looking the lane man off opens the skip', () => {
  const schemes: readonly SchemeId[] = ['five-man-rotation', 'house-3-2'];
  const skip: Pair = ['P', 'WR'];
  const difference = lessPaired(
    schemes.flatMap((scheme) => opened(scheme, lookOffPlay(true), skip)),
    schemes.flatMap((scheme) => opened(scheme, lookOffPlay(false), skip)),
  );
  expectMore('6a', difference, 2, 0.02);
});

test('6b a fake to the point opens the crease behind the string', () => {
  const feed: Pair = ['TR', 'C'];
  const difference = lessPaired(
    opened('box-string', lookUpPlay(true), feed),
    opened('box-string', lookUpPlay(false), feed),
  );
  expectMore('6b', difference, 2, 0.02);
});
