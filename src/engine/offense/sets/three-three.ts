import { createPair, createSpot, jobs, type OffenseSet } from './offense-set.ts';

/** Three on top, two low, one on the crease: all six can shoot, nobody is behind. */
export const threeThree: OffenseSet = {
  id: '3-3',
  name: '3-3',
  aliases: ['33', '3-1-2', '2-1-3 from behind'],
  summary: 'Three on top, two low wings above the goal line, one on the crease.',
  goodFor: 'All six stand above the goal line and can shoot; the skip from the point to either low wing.',
  drawback:
    'Nobody is behind the goal: the low wings must stay tight enough to back up shots. Needs two accurate skips.',
  spots: [
    createSpot('P', 0, 14, jobs.point, 'getBack'),
    ...createPair('T', 9, 12, jobs.top, 'getBack'),
    // No X here, so the low wings run down missed shots.
    ...createPair('W', 8, 4, jobs.wing, 'backUp'),
    createSpot('C', 0, 6, jobs.crease, 'none'),
  ],
};
