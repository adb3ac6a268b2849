import { createPair, createSpot, jobs, type OffenseSet } from './offense-set.ts';

/** Two on top, two wings with a crease man between them, one behind: the usual youth and high-school look. */
export const twoThreeOne: OffenseSet = {
  id: '2-3-1',
  name: '2-3-1',
  aliases: ['231', '1-3-2 from behind', 'rotating triangles'],
  summary: 'Two on top, two wings with a crease man between them, one at X behind the goal.',
  goodFor: 'The end line is covered, the ball behind the goal turns heads, and the whole ring can wheel.',
  drawback: 'The spare man stands at X, where he cannot score.',
  spots: [
    ...createPair('T', 7, 14, jobs.top, 'getBack'),
    ...createPair('W', 11, 4, jobs.wing, 'none'),
    createSpot('C', 0, 6, jobs.crease, 'none'),
    createSpot('X', 0, -5, jobs.feeder, 'backUp'),
  ],
};
