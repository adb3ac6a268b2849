import { coverDangers } from '../cover.ts';
import type { Scheme } from '../scheme.ts';
import { boxHome } from './box-zone.ts';
import { assignFourMan, fourManMemory } from './four-man.ts';

/** Box-and-one with four men rotating against the ball and the crease locked. */
export const fourManRotation: Scheme = {
  id: 'four-man-rotation',
  notes: {
    name: 'Four-man rotation, locked crease',
    summary:
      'Four men turn one notch against the ball on each pass: ball, two adjacents, one who splits the far two. The crease man is locked.',
    leaves: 'The two far men, whom one defender splits; a second man inside.',
  },
  defenders: 5,
  names: ['tr', 'tl', 'lr', 'll', 'c'],
  shortSticks: [4],
  home: boxHome,
  memorySize: fourManMemory,
  extends: 12.5,
  assign(view, memory, out) {
    const { ball } = assignFourMan(view, memory, out);
    coverDangers(view, ball, boxHome, out);
  },
};
