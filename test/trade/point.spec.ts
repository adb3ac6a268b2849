import { expect, test } from 'vitest';
import { comesOpen, isMore, lessPaired, type Pair, pointPlay, watch } from './trade-unit.ts';

// Facts 1 and 3 of docs/models/trade-facts.md: the ball at the point.

const trials = 600;
const box = watch({ scheme: 'box-zone', play: pointPlay }, trials);
const fourMan = watch({ scheme: 'four-man-rotation', play: pointPlay }, trials);
const fiveMan = watch({ scheme: 'five-man-rotation', play: pointPlay }, trials);
const string = watch({ scheme: 'box-string', play: pointPlay }, trials);

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
  ['1a the skip from the point: box against four-man rotation', box, fourMan, skips, 0.05],
  ['1b the man left up top: box against four-man rotation', box, fourMan, tops, 0.05],
  ['1c the skip from the point: box against five-man rotation', box, fiveMan, skips, 0.05],
  ['3 the crease with the ball at the point: string against box', string, box, crease, 0.05],
])('%s', (_, open, shut, pairs, least) => {
  const difference = lessPaired(comesOpen(open, pairs), comesOpen(shut, pairs));
  expect(isMore(difference, 3, least), JSON.stringify(difference)).toBe(true);
});
