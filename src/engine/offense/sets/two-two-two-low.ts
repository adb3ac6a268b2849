import { createPair, jobs, type OffenseSet } from './offense-set.ts';

/** Two on top, two in the slot, two low wings just above the goal line. */
export const twoTwoTwoLow: OffenseSet = {
  id: '2-2-2-low',
  name: '2-2-2 low',
  aliases: ['222 low', '2-4'],
  summary: 'Two on top, two in the slot, two low wings just above the goal line.',
  goodFor: 'Two inside men who pick for each other against a lone crease defender; the low wings feed.',
  drawback: 'Nobody is at the point, so there is no skip through the middle.',
  spots: [
    ...createPair('T', 7, 14, jobs.top, 'getBack'),
    ...createPair('C', 3, 6, jobs.crease, 'none'),
    // Nobody is behind, so the low wings run down missed shots; they feed more than they shoot from so low.
    ...createPair('W', 9, 1, { feed: 3, shoot: 1, inside: 0, handle: 2 }, 'backUp'),
  ],
};
