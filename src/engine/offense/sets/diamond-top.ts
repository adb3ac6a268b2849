import { createPair, createSpot, jobs, type OffenseSet } from './offense-set.ts';

/** Four men in a diamond on top that can rotate, two low wings that stay. */
export const diamondTop: OffenseSet = {
  id: 'diamond',
  name: 'diamond top',
  aliases: ['diamond top', 'diamond top and two low'],
  summary: 'Four men in a diamond on top that can rotate, and two low wings that stay.',
  goodFor: 'Four men who can trade places work against a box, a string and a five-man rotation.',
  drawback: 'Traffic up top, and care on the way back.',
  spots: [
    createSpot('P', 0, 16, jobs.point, 'getBack'),
    ...createPair('T', 8, 12, jobs.top, 'getBack'),
    // The bottom of the diamond: a handler who can also finish, not a pure crease man.
    createSpot('C', 0, 8, { feed: 1, shoot: 2, inside: 2, handle: 1 }, 'none'),
    ...createPair('W', 9, 1, jobs.wing, 'backUp'),
  ],
};
