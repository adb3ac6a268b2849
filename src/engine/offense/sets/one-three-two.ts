import { createPair, createSpot, jobs, type OffenseSet } from './offense-set.ts';

/** One on top, two wings with a crease man, two behind. */
export const oneThreeTwo: OffenseSet = {
  id: '1-3-2',
  name: '1-3-2 (two behind)',
  aliases: ['132', '2-3-1 from behind', 'two behind'],
  summary: 'One on top, two wings with a crease man between them, two behind the goal.',
  goodFor: 'Two feeders pull the low defenders under the goal line and open the skip from wing to wing and to the top.',
  drawback: 'Only one man is on top to get back.',
  spots: [
    createSpot('P', 0, 14, jobs.point, 'getBack'),
    // With one man on top, the high wings are the next to run back.
    ...createPair('W', 11, 8, jobs.wing, 'getBack'),
    createSpot('C', 0, 6, jobs.crease, 'none'),
    ...createPair('B', 6, -4, jobs.feeder, 'backUp'),
  ],
};
