import { createPair, jobs, type OffenseSet } from './offense-set.ts';

/** A horseshoe: two on top, two wings, two behind, nobody on the crease. */
export const fourTwo: OffenseSet = {
  id: '4-2',
  name: '4-2',
  aliases: ['42', 'horseshoe'],
  summary: 'A horseshoe: two on top, two wings, two behind the goal; nobody on the crease.',
  goodFor: 'Drags the crease defender out; sneaks from behind.',
  drawback: 'Nobody is on the crease to feed or to screen.',
  spots: [
    ...createPair('T', 5, 14, jobs.top, 'getBack'),
    ...createPair('W', 11, 6, jobs.wing, 'none'),
    ...createPair('B', 6, -4, jobs.feeder, 'backUp'),
  ],
};
