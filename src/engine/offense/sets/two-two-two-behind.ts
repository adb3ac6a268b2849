import { createPair, jobs, type OffenseSet } from './offense-set.ts';

/** Two on top, two in the slot, two behind the goal. */
export const twoTwoTwoBehind: OffenseSet = {
  id: '2-2-2-behind',
  name: '2-2-2 behind',
  aliases: ['222 behind'],
  summary: 'Two on top, two in the slot, two behind the goal.',
  goodFor: 'Two inside men fed from behind, where the defenders have to turn their heads.',
  drawback: 'Nobody is on the wings: no skip across, and only the tops shoot from outside.',
  spots: [
    ...createPair('T', 7, 14, jobs.top, 'getBack'),
    ...createPair('C', 3, 6, jobs.crease, 'none'),
    ...createPair('B', 6, -4, jobs.feeder, 'backUp'),
  ],
};
