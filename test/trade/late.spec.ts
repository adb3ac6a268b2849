import { test } from 'vitest';
import { type Discipline, disciplines, type SchemeId } from '../../src/engine/index.ts';
import { expectMore, goalsOf, lessPaired, roundPlay, usualHold } from './trade-unit.ts';

// Fact 7 of docs/models/trade-facts.md.

const trials = 1500;
const play = roundPlay(usualHold);
const schemes: readonly SchemeId[] = ['box-zone', 'four-man-rotation', 'five-man-rotation'];
const late: Discipline = { ...disciplines.faultless, late: 0.5 };

function goals(discipline: Discipline): readonly number[] {
  return schemes.flatMap((scheme) => goalsOf({ scheme, play, discipline }, trials));
}

test('7 a late defender costs goals', () => {
  const difference = lessPaired(goals(late), goals(disciplines.faultless));
  expectMore('7', difference, 2, 0.02);
});
