import { coverDangers } from '../cover.ts';
import type { Scheme } from '../scheme.ts';
import { assignTwoTop, type TwoTopRules, twoTopMemory } from './two-top-zone.ts';

/** Corners of the box and the crease man's man (doctrine 3.0; yards common practice, no source). */
export const boxHome = [5, 10, -5, 10, 5, 3, -5, 3, 0, 5] as const;

const rules: TwoTopRules = { home: boxHome, locked: true, lanes: true };

/** Box-and-one played as a zone: each corner owns his quarter, the inside man goes with the crease man. */
export const boxZone: Scheme = {
  id: 'box-zone',
  notes: {
    name: 'Box-and-one zone',
    summary: 'Four corners own their quarters and pass the ball on at the border; one man stays with the crease man.',
    leaves: 'The far top man or the man behind; skips from the point to a low wing; three against two on top.',
  },
  defenders: 5,
  names: ['tr', 'tl', 'lr', 'll', 'c'],
  shortSticks: [4],
  home: boxHome,
  memorySize: twoTopMemory,
  extends: 12,
  assign(view, memory, out) {
    const { ball } = assignTwoTop(view, memory, rules, out);
    coverDangers(view, ball, boxHome, out);
  },
};
