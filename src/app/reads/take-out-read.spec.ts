import { describe, expect, it } from 'vitest';
import type { Read } from '../../engine/index.ts';
import { demoPlaybook, type PlayEntry, toEnginePlay } from '../../playbook/index.ts';
import { takeOutRead } from './take-out-read.ts';

const entry = demoPlaybook.plays.find(({ id }) => id === 'quarry')!;
const readsIn = (play: PlayEntry): readonly Read[] => toEnginePlay({ ...demoPlaybook, plays: [play] }, play.id).reads;

function takeOut(play: PlayEntry, read: Read) {
  return takeOutRead(play, demoPlaybook, readsIn(play), read);
}

describe('a read that is taken out', () => {
  it('is gone, and the others stay in their order', () => {
    const taught = readsIn(entry);
    for (const read of taught) {
      const edit = takeOut(entry, read);
      if (edit.kind === 'refused') throw new Error(edit.reason);
      expect(readsIn(edit.play)).toEqual(taught.filter((each) => each !== read));
    }
  });

  it('is told to be gone when it is gone already', () => {
    const [first] = readsIn(entry);
    const edit = takeOut(entry, first!);
    expect(edit.kind === 'edited' && takeOut(edit.play, first!)).toEqual({
      kind: 'refused',
      reason: 'The play does not teach this read any more.',
    });
  });

  it('stays when another read needs the ball that it brings', () => {
    // No step of Quarry brings CL the ball: only this feed does.
    const play: PlayEntry = {
      ...entry,
      reads: [
        { carrier: 'WL', if: ['open CL'], then: 'feed CL' },
        { carrier: 'CL', if: ['free'], then: 'shoot' },
      ],
    };
    const edit = takeOut(play, readsIn(play)[0]!);
    expect(edit.kind === 'refused' && edit.reason).toMatch(/of CL: .* the ball never comes to CL\.$/);
  });
});
