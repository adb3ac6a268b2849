import { describe, expect, it } from 'vitest';
import type { Cue, Order, Play, Trigger } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { maybeReadForYou, moveToYou, orderToYou, placeToYou, readToYou, triggerToYou } from './player-words.ts';
import { spotMoves } from './spot-moves.ts';

const play = toEnginePlay(demoPlaybook, 'lantern');

describe('what a player is told', () => {
  it.each<[Order, string]>([
    [{ kind: 'pass', by: 'C', to: 'X', style: 'adjacent' }, 'Pass to X'],
    [{ kind: 'pass', by: 'C', to: 'X', style: 'skip' }, 'Skip it to X'],
    [{ kind: 'pass', by: 'C', to: 'X', style: 'feed' }, 'Feed X'],
    [
      { kind: 'carry', by: 'C', path: [{ x: 5, y: -4 }] },
      'Carry the ball. Your spot: 5 yards right of the goal and 4 behind it',
    ],
    [
      { kind: 'run', run: 'cut', by: 'C', path: [{ x: 0, y: 6 }], go: 'now' },
      'Cut hard. Your spot: 6 yards straight in front of the goal',
    ],
    [{ kind: 'run', run: 'sneak', by: 'C', path: [], go: 'whenOpen' }, 'Sneak in as soon as your man looks away'],
    [{ kind: 'run', run: 'backUp', by: 'C', path: [], go: 'now' }, 'Back up the shot'],
    [
      { kind: 'pick', by: 'C', at: { x: 1, y: 6 }, on: 'X' },
      "Set a pick on X's man: stand still, feet set. Then roll to the ball",
    ],
    [{ kind: 'seal', by: 'C', on: 'C' }, 'Seal your man: keep your body between him and the pass'],
    [{ kind: 'fake', by: 'C', toward: 'X' }, 'Fake to X'],
    [{ kind: 'hold', by: 'C', seconds: 1 }, 'Hold the ball 1 second'],
    [
      { kind: 'stepIn', by: 'C', to: { x: -1, y: 11 } },
      'Step in, stick up, ready to shoot. Your spot: 1 yard left of the goal and 11 in front of it',
    ],
    [{ kind: 'runIn', by: 'C' }, 'Step in, stick up, ready to shoot'],
    [{ kind: 'shot', by: 'C' }, 'Shoot'],
    [{ kind: 'reset', by: 'C' }, 'Call the reset'],
  ])('of %o', (order, words) => {
    expect(orderToYou(order, 'C')).toBe(words);
  });

  it.each<[Trigger, string]>([
    [{ kind: 'start' }, 'When all six are set'],
    [{ kind: 'catch', by: 'C' }, 'When you catch'],
    [{ kind: 'catch', by: 'X' }, 'When X catches'],
    [{ kind: 'pass', from: 'C' }, 'When you have passed'],
    [{ kind: 'pass', from: 'X', to: 'C' }, 'When X passes to you'],
    [{ kind: 'arrival', who: 'C' }, 'When you get there'],
    [{ kind: 'call', beat: 'down', seconds: 0.8 }, 'When TL catches, wait 0.8 seconds'],
    [{ kind: 'call', beat: 'later', seconds: 1 }, '1 second after step 2 starts'],
  ])('starts a step: %o', (trigger, words) => {
    const [first, second] = play.beats;
    const later = { ...second!, id: 'later', when: { kind: 'call', beat: first!.id, seconds: 1 } } as const;
    const known: Play =
      trigger.kind === 'call' && trigger.beat === 'later' ? { ...play, beats: [first!, later] } : play;
    expect(triggerToYou(trigger, known, 'C')).toBe(words);
  });

  it.each<[Cue, string]>([
    [{ kind: 'iAmFree' }, 'If you are free, feed C.'],
    [{ kind: 'iAmPressed' }, 'If a defender is on you, feed C.'],
    [{ kind: 'open', who: 'C' }, 'If C is open, feed C.'],
    [{ kind: 'left', who: 'C' }, 'If C has no man on him, feed C.'],
    [{ kind: 'laneTaken', who: 'TL' }, 'If a stick is in the way to TL, feed C.'],
    [{ kind: 'nextSteps' }, 'If the next defender steps to you, feed C.'],
    [{ kind: 'myManLeaves' }, 'If your man drops off you, feed C.'],
    [{ kind: 'creaseUp' }, 'If the crease defender has come out, feed C.'],
    [{ kind: 'farLowLooksAway' }, 'If the far low defender looks away from the man behind him, feed C.'],
    [{ kind: 'farLowCrosses' }, 'If the far low defender runs across, feed C.'],
  ])('to look for: %o', (cue, words) => {
    const then = { kind: 'pass', by: 'X', to: 'C', style: 'feed' } as const;
    expect(readToYou({ carrier: 'X', cues: [cue], then }, play)).toBe(words);
  });

  it('says in which step a read counts, and what is done in any case', () => {
    const then = { kind: 'shot', by: 'X' } as const;
    expect(readToYou({ carrier: 'X', during: 'finish', cues: [{ kind: 'iAmFree' }], then }, play)).toBe(
      'Step 5: if you are free, shoot.',
    );
    expect(readToYou({ carrier: 'X', cues: [], then }, play)).toBe('Shoot in any case.');
  });

  it('tells him of the mates’ reads that bring him the ball', () => {
    const told = play.reads.flatMap((read) => maybeReadForYou(read, 'WR') ?? []);
    expect(told).toEqual(['X feeds you if you are open and your man has left you.']);
    expect(play.reads.flatMap((read) => maybeReadForYou(read, 'TL') ?? [])).toEqual([
      'TR passes to you if TR is pressed.',
    ]);
  });

  it('tells him that the ball comes before what he does himself', () => {
    const [, , receives] = spotMoves(play, 'TR');
    expect(moveToYou(receives!, play, 'TR')).toMatch(/^When X gets there: be ready, X throws to you\. Step in/);
  });

  it.each([
    [0, 0, 'at the goal'],
    [0, -6, '6 yards straight behind the goal'],
    [-9, 0.2, '9 yards left of the goal, level with it'],
    [11, 4, '11 yards right of the goal and 4 in front of it'],
  ])('where %d, %d is', (x, y, words) => {
    expect(placeToYou({ x, y })).toBe(words);
  });
});
