import { createPair, createSpot, jobs, type OffenseSet } from './offense-set.ts';

/** One on top, two wide wings, two on the crease, one behind. */
export const oneFourOne: OffenseSet = {
  id: '1-4-1',
  name: '1-4-1',
  aliases: ['141', '1-4-1 from behind'],
  summary: 'One on top, two wide wings, two on the crease, one at X behind the goal.',
  goodFor: 'Two crease men against one crease defender, fed from X.',
  drawback: 'Only four men on the ring: the passes are long (18 yd from wing to X) and get picked off.',
  spots: [
    createSpot('P', 0, 15, jobs.point, 'getBack'),
    ...createPair('W', 12, 8, { ...jobs.wing, handle: 2 }, 'getBack'),
    ...createPair('C', 3, 5, jobs.crease, 'none'),
    createSpot('X', 0, -6, jobs.feeder, 'backUp'),
  ],
};
