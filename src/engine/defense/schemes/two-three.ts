import { coverDangers } from '../cover.ts';
import type { Scheme } from '../scheme.ts';
import { assignTwoTop, type TwoTopRules, twoTopMemory } from './two-top-zone.ts';

const home = [4, 10, -4, 10, 6, 4, -6, 4, 0, 4] as const;

const rules: TwoTopRules = { home, locked: false, lanes: false };

/** 2-3 zone: two high, three low; the middle low man owns the crease and lets a popping man go. */
export const twoThree: Scheme = {
  id: 'zone-2-3',
  notes: {
    name: '2-3 zone',
    summary: 'Two high and three low shift with the ball; the middle low man owns the crease.',
    leaves: 'The far top man; step-downs from the top, the point first of all.',
  },
  defenders: 5,
  names: ['tr', 'tl', 'lr', 'll', 'm'],
  shortSticks: [0],
  home,
  memorySize: twoTopMemory,
  extends: 12,
  assign(view, memory, out) {
    const { ball } = assignTwoTop(view, memory, rules, out);
    coverDangers(view, ball, home, out);
  },
};
