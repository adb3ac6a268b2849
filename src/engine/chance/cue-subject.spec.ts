import { describe, expect, it } from 'vitest';
import { cueSubject } from './cue-subject.ts';
import { defaultChanceParameters } from './parameters.ts';
import type { CompiledCue } from './program.ts';

// Pictures placed by hand: TR of a 3-3 has the ball at (9, 12) against a box with a man on the crease. Each is asked in its mirror image too.

const attack = { P: [0, 14], TR: [9, 12], TL: [-9, 12], WR: [8, 4], WL: [-8, 4], C: [0, 6] } as const;
/** x, y, vx, vy: at his place and standing still. */
const house = {
  tr: [7.5, 10.5, 0, 0],
  tl: [0, 9.5, 0, 0],
  lr: [6.5, 4, 0, 0],
  ll: [-6.5, 3.5, 0, 0],
  c: [0.5, 5, 0, 0],
} as const;
type Defender = keyof typeof house;
type Moved = Partial<Record<Defender, readonly [number, number, number, number]>>;

const carrier = Object.keys(attack).indexOf('TR');
const who = (spot: keyof typeof attack): number => Object.keys(attack).indexOf(spot);

function pictureOf(moved: Moved, sense: 1 | -1): Float64Array {
  const men = [
    ...Object.values(attack).map(([x, y]) => [x, y, 0, 0] as const),
    ...Object.entries({ ...house, ...moved }).map(([, each]) => each),
    [0, 1, 0, 0] as const,
  ];
  return Float64Array.from(men.flatMap(([x, y, vx, vy]) => [sense * x, y, sense * vx, vy]));
}

function subject(cue: CompiledCue, moved: Moved, sense: 1 | -1, from = carrier): Defender | null {
  const ground = { covering: 5, parameters: defaultChanceParameters };
  const agent = cueSubject(ground, pictureOf(moved, sense), from, cue);
  return agent < 0 ? null : (Object.keys(house)[agent - 6] as Defender);
}

interface Case {
  readonly says: string;
  readonly cue: CompiledCue;
  readonly moved: Moved;
  readonly is: Defender | null;
}

const cases: readonly Case[] = [
  { says: 'free: nobody within four yards', cue: { kind: 'iAmFree' }, moved: { tr: [4, 10, 0, 0] }, is: 'tr' },
  { says: 'free: not with a man two yards off', cue: { kind: 'iAmFree' }, moved: {}, is: null },
  { says: 'pressed: a man on him', cue: { kind: 'iAmPressed' }, moved: { tr: [8.5, 11, 0, 0] }, is: 'tr' },
  { says: 'pressed: not by a man two yards off', cue: { kind: 'iAmPressed' }, moved: {}, is: null },

  { says: 'next steps: lr comes up', cue: { kind: 'nextSteps' }, moved: { lr: [7, 5, 1, 4] }, is: 'lr' },
  { says: 'next steps: not who walks', cue: { kind: 'nextSteps' }, moved: { lr: [7, 5, 0.5, 2] }, is: null },
  {
    says: 'next steps: not who runs past him to a mate',
    cue: { kind: 'nextSteps' },
    moved: { lr: [6.5, 9, 4, -3] },
    is: null,
  },
  { says: 'next steps: not his own man', cue: { kind: 'nextSteps' }, moved: { tr: [6, 9, 3, 3] }, is: null },
  {
    says: 'next steps: not from across the field',
    cue: { kind: 'nextSteps' },
    moved: { ll: [-6, 4, 5, 3] },
    is: null,
  },
  {
    says: 'next steps: of two the nearer',
    cue: { kind: 'nextSteps' },
    moved: { lr: [7, 5, 1, 4], tl: [1.5, 11, 5, 0.5] },
    is: 'lr',
  },

  { says: 'my man leaves: he sinks', cue: { kind: 'myManLeaves' }, moved: { tr: [7.5, 10.5, -2, -2] }, is: 'tr' },
  { says: 'my man leaves: not while he stands', cue: { kind: 'myManLeaves' }, moved: {}, is: null },
  {
    says: 'my man leaves: not while he goes across',
    cue: { kind: 'myManLeaves' },
    moved: { tr: [7.5, 10.5, 2, -2] },
    is: null,
  },
  {
    says: 'my man leaves: not who never minded him',
    cue: { kind: 'myManLeaves' },
    moved: { tr: [4, 9, -3, -2] },
    is: null,
  },

  {
    says: 'lane taken to WL: ll in the line',
    cue: { kind: 'laneTaken', who: who('WL') },
    moved: { ll: [-4, 6, 0, 0] },
    is: 'll',
  },
  {
    says: 'lane taken to WL: not by who is two yards off the line',
    cue: { kind: 'laneTaken', who: who('WL') },
    moved: { c: [0, 4, 0, 0], tl: [0, 10.5, 0, 0] },
    is: null,
  },
  {
    says: 'lane taken to WL: not by the man who is on the carrier',
    cue: { kind: 'laneTaken', who: who('WL') },
    moved: { tr: [7.9, 11.4, 0, 0] },
    is: null,
  },
  {
    says: 'lane taken to P: not by who stands behind P',
    cue: { kind: 'laneTaken', who: who('P') },
    moved: { tl: [-3, 14.6, 0, 0] },
    is: null,
  },

  {
    says: 'crease up: c followed C out, the low men are wide',
    cue: { kind: 'creaseUp' },
    moved: { c: [0, 9, 0, 0] },
    is: 'c',
  },
  {
    says: 'crease up: c is the man, though a low one is nearer to the crease',
    cue: { kind: 'creaseUp' },
    moved: { c: [0, 7.5, 0, 0], lr: [3.5, 4, 0, 0] },
    is: 'c',
  },
  {
    says: 'crease up: the nearest man when nobody is before the goal',
    cue: { kind: 'creaseUp' },
    moved: { c: [4, 8, 0, 0], tl: [-4, 9, 0, 0], lr: [5, 4, 0, 0] },
    is: 'lr',
  },
  {
    says: 'crease up: not when a low man took the crease',
    cue: { kind: 'creaseUp' },
    moved: { c: [0, 9, 0, 0], ll: [-1, 4, 0, 0] },
    is: null,
  },
  { says: 'crease up: not while c is home', cue: { kind: 'creaseUp' }, moved: {}, is: null },

  {
    says: 'far low looks away: he sank to the near pipe',
    cue: { kind: 'farLowLooksAway' },
    moved: { ll: [-1, 6, 0, 0] },
    is: 'll',
  },
  { says: 'far low looks away: not from his man', cue: { kind: 'farLowLooksAway' }, moved: {}, is: null },
  {
    says: 'far low looks away: not who sank, but stands where he sees both',
    cue: { kind: 'farLowLooksAway' },
    moved: { ll: [-3, 1.5, 0, 0] },
    is: null,
  },

  { says: 'far low crosses: ll runs', cue: { kind: 'farLowCrosses' }, moved: { ll: [-4, 4, 4, 0] }, is: 'll' },
  {
    says: 'far low crosses: not who shuffles along',
    cue: { kind: 'farLowCrosses' },
    moved: { ll: [-4, 4, 1, 0] },
    is: null,
  },
  {
    says: 'far low crosses: not who runs home',
    cue: { kind: 'farLowCrosses' },
    moved: { ll: [-4, 4, -4, 0] },
    is: null,
  },
  {
    says: 'far low crosses: not the near low man',
    cue: { kind: 'farLowCrosses' },
    moved: { lr: [5, 4, 4, 0] },
    is: null,
  },

  { says: 'open: WL with ll inside', cue: { kind: 'open', who: who('WL') }, moved: { ll: [-4, 3, 0, 0] }, is: 'll' },
  { says: 'open: not with ll on him', cue: { kind: 'open', who: who('WL') }, moved: {}, is: null },
  { says: 'left: ll goes to the ball', cue: { kind: 'left', who: who('WL') }, moved: { ll: [-4, 4, 3, 1] }, is: 'll' },
  { says: 'left: not while he waits', cue: { kind: 'left', who: who('WL') }, moved: { ll: [-4, 4, 0, 0] }, is: null },
];

describe('whom a cue is about', () => {
  it.each(cases)('$says', ({ cue, moved, is }) => {
    expect(subject(cue, moved, 1)).toBe(is);
    expect(subject(cue, moved, -1)).toBe(is);
  });

  it('is nobody far away while the ball is in the middle, where there is no far side', () => {
    const moved: Moved = { ll: [-3, 5, 4, 0], lr: [3, 5, -4, 0] };
    for (const kind of ['farLowLooksAway', 'farLowCrosses'] as const)
      expect(subject({ kind }, moved, 1, who('P'))).toBeNull();
  });
});
