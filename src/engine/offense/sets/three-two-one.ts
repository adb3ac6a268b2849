import { createPair, createSpot, jobs, type OffenseSet } from './offense-set.ts';

/** Six on a circle round the goal and nobody on the crease. */
export const threeTwoOne: OffenseSet = {
  id: '3-2-1',
  name: '3-2-1 circle',
  aliases: ['321', 'circle', 'open'],
  summary: 'Six on a circle round the goal: three on top, two wings on the goal line, one at X; nobody on the crease.',
  goodFor: 'The crease defender has no man; room for cutters.',
  drawback: 'No screen in front of the keeper and nobody for the rebound.',
  spots: [
    createSpot('P', 0, 15, jobs.point, 'getBack'),
    ...createPair('T', 11, 11, jobs.top, 'getBack'),
    ...createPair('W', 10, 0, jobs.wing, 'none'),
    createSpot('X', 0, -6, jobs.feeder, 'backUp'),
  ],
};
