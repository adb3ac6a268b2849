import { test } from 'vitest';
import { comesOpen, expectMore, lessPaired, openTime, type Pair, pointPlay, watch } from './trade-unit.ts';

// Facts 1 and 3 of docs/models/trade-facts.md: the ball at the point.

const box = watch({ scheme: 'box-zone', play: pointPlay }, 600);
const string = watch({ scheme: 'box-string', play: pointPlay }, 600);
const fourMan = watch({ scheme: 'four-man-rotation', play: pointPlay }, 200);
const fiveMan = watch({ scheme: 'five-man-rotation', play: pointPlay }, 200);

const skips: readonly Pair[] = [
  ['P', 'WR'],
  ['P', 'WL'],
];
const tops: readonly Pair[] = [
  ['P', 'TR'],
  ['P', 'TL'],
];
const crease: readonly Pair[] = [['P', 'C']];

test.each([
  ['1a', 'the skip from the point: box against four-man rotation', box, fourMan, skips],
  ['1b', 'the man left up top: box against four-man rotation', box, fourMan, tops],
  ['1c', 'the skip from the point: box against five-man rotation', box, fiveMan, skips],
  ['3', 'the crease with the ball at the point: string against box', string, box, crease],
])('%s %s', (fact, _, open, shut, pairs) => {
  const trials = Math.min(open.length, shut.length);
  const difference = lessPaired(comesOpen(open.slice(0, trials), pairs), comesOpen(shut.slice(0, trials), pairs));
  expectMore(fact, difference, 3, 0.05);
});

test('1b by time (added after the first run)', () => {
  expectMore('1b by time', lessPaired(openTime(box.slice(0, 200), tops), openTime(fourMan, tops)), 3, 0.1);
});
