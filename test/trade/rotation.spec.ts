import { test } from 'vitest';
import { type Discipline, disciplines } from '../../src/engine/index.ts';
import {
  comesOpen,
  expectMore,
  feeds,
  firstOpen,
  lessPaired,
  meanOf,
  openTime,
  type Pair,
  roundPlay,
  usualHold,
  watch,
} from './trade-unit.ts';

// Facts 2 and 4 of docs/models/trade-facts.md: what the rotations leave.

const trials = 600;
const round = roundPlay(usualHold);

/** For each carrier the two perimeter men farthest along the ring: the pair that one defender splits. */
const farPairs: readonly Pair[] = [
  ['P', 'WR'],
  ['P', 'WL'],
  ['TR', 'WL'],
  ['TR', 'TL'],
  ['WR', 'TL'],
  ['WR', 'P'],
  ['TL', 'WR'],
  ['TL', 'TR'],
  ['WL', 'TR'],
  ['WL', 'P'],
];
const onePassAway: readonly Pair[] = [
  ['P', 'TR'],
  ['TR', 'P'],
  ['TR', 'WR'],
  ['WR', 'TR'],
  ['P', 'TL'],
  ['TL', 'P'],
  ['TL', 'WL'],
  ['WL', 'TL'],
];

const fourMan = watch({ scheme: 'four-man-rotation', play: round }, trials);

test('2a a locked crease leaves the far pair open', () => {
  const difference = lessPaired(comesOpen(fourMan, farPairs), comesOpen(fourMan, feeds));
  expectMore('2a', difference, 3, 0.2);
});

test('2b a locked crease leaves the crease man shut', () => {
  const { mean, error } = meanOf(comesOpen(fourMan, feeds));
  expectMore('2b', { mean: 0.15 - mean, error }, 3, 0);
});

test('2b by time (added after the first run)', () => {
  const { mean, error } = meanOf(openTime(fourMan, feeds));
  expectMore('2b by time', { mean: 0.15 - mean, error }, 3, 0);
});

const late: Discipline = { ...disciplines.faultless, late: 0.35 };
const onTime = watch({ scheme: 'five-man-rotation', play: round, discipline: disciplines.faultless }, trials);
const tooLate = watch({ scheme: 'five-man-rotation', play: round, discipline: late }, trials);

test('4a a five-man rotation gives up one-pass-away shots first', () => {
  const difference = lessPaired(firstOpen(onTime, onePassAway), firstOpen(onTime, feeds));
  expectMore('4a', difference, 3, 0.1);
});

test('4b and the crease when a defender is late', () => {
  const difference = lessPaired(comesOpen(tooLate, feeds), comesOpen(onTime, feeds));
  expectMore('4b', difference, 3, 0.03);
});
