import { describe, expect, it } from 'vitest';
import type { Cue } from '../engine/index.ts';
import { readWords } from './play-words.ts';

const words: readonly (readonly [Cue, string])[] = [
  [{ kind: 'iAmFree' }, 'if TR is free, TR shoots'],
  [{ kind: 'iAmPressed' }, 'if TR is pressed, TR shoots'],
  [{ kind: 'nextSteps' }, 'if the next defender steps to TR, TR shoots'],
  [{ kind: 'myManLeaves' }, "if TR's man drops off him, TR shoots"],
  [{ kind: 'creaseUp' }, 'if the crease defender is pulled up, TR shoots'],
  [{ kind: 'farLowLooksAway' }, 'if the far low defender looks away from the man behind him, TR shoots'],
  [{ kind: 'farLowCrosses' }, 'if the far low defender runs across, TR shoots'],
  [{ kind: 'open', who: 'WL' }, 'if WL is open, TR shoots'],
  [{ kind: 'left', who: 'WL' }, "if WL's man has left him, TR shoots"],
  [{ kind: 'laneTaken', who: 'WL' }, 'if a defender stands in the lane to WL, TR shoots'],
];

describe('a read in words', () => {
  it.each(words)('%o', (cue, sentence) => {
    expect(readWords({ carrier: 'TR', cues: [cue], then: { kind: 'shot', by: 'TR' } })).toBe(sentence);
  });

  it('joins its cues, and needs none', () => {
    const then = { kind: 'pass', by: 'TR', to: 'WL', style: 'skip' } as const;
    expect(readWords({ carrier: 'TR', cues: [{ kind: 'creaseUp' }, { kind: 'open', who: 'WL' }], then })).toBe(
      'if the crease defender is pulled up and WL is open, TR skips to WL',
    );
    expect(readWords({ carrier: 'TR', cues: [], then })).toBe('TR skips to WL in any case');
  });
});
