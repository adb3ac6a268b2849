import { describe, expect, it } from 'vitest';
import type { Read } from '../../engine/index.ts';
import { addRead, demoPlaybook, groundOf, toEnginePlay } from '../../playbook/index.ts';
import { readOfLook } from './read-of-look.ts';
import { taughtAs } from './taught-read.ts';

const feed = readOfLook({ kind: 'feed', from: 'X', to: 'C' }, 'finish');
const skip = readOfLook({ kind: 'skip', from: 'X', to: 'TR' }, 'finish');
const shot = readOfLook({ kind: 'shot', from: 'TR', to: 'TR' }, 'rip');

/** Lantern with no reads but these, written down and read back. */
function lanternReads(reads: readonly Read[]): readonly Read[] {
  const ground = groundOf(demoPlaybook);
  const { reads: _, ...bare } = demoPlaybook.plays.find(({ id }) => id === 'lantern')!;
  const taught = reads.reduce((play, read) => {
    const made = addRead(play, ground, 'main', read);
    if (made.kind === 'refused') throw new Error(made.reason);
    return made.play;
  }, bare);
  return toEnginePlay({ ...demoPlaybook, plays: [taught] }, 'lantern').reads;
}

describe('whether a read is taught', () => {
  it('knows a read again that was written down, by its place among those of its man', () => {
    const reads = lanternReads([shot, skip, feed]);
    expect([shot, skip, feed].map((read) => taughtAs(read, reads))).toEqual([1, 1, 2]);
  });

  it('knows none that differs in the man, the throw or the step', () => {
    const reads = lanternReads([feed]);
    expect(taughtAs(skip, reads)).toBeUndefined();
    expect(taughtAs(readOfLook({ kind: 'pass', from: 'X', to: 'C' }, 'finish'), reads)).toBeUndefined();
    expect(taughtAs({ ...feed, during: 'behind' }, reads)).toBeUndefined();
    expect(taughtAs({ ...feed, cues: [...feed.cues, { kind: 'iAmPressed' }] }, reads)).toBeUndefined();
  });

  it('counts one of every step as taught in each, and not the other way round', () => {
    const { during: _, ...always } = feed;
    expect(taughtAs(feed, lanternReads([always]))).toBe(1);
    expect(taughtAs(always, lanternReads([feed]))).toBeUndefined();
  });
});
