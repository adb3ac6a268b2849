import { describe, expect, it } from 'vitest';
import type { Read } from '../../engine/index.ts';
import {
  addRead,
  demoPlaybook,
  groundOf,
  type PlayEntry,
  parsePlaybook,
  serializePlaybook,
  toEnginePlay,
} from '../../playbook/index.ts';
import { type ReadChange, replaceRead } from './replace-read.ts';

const entry = demoPlaybook.plays.find(({ id }) => id === 'quarry')!;
const taught = toEnginePlay(demoPlaybook, 'quarry').reads;
const [, feedsFirst, skips] = taught as readonly [Read, Read, Read, Read];
const shoots: Read = {
  carrier: 'WL',
  cues: [{ kind: 'iAmFree' }],
  then: { kind: 'shot', by: 'WL' },
};

function replace(change: ReadChange, play: PlayEntry = entry) {
  return replaceRead(play, demoPlaybook, taught, change);
}

function reasonOf(change: ReadChange): string | undefined {
  const edit = replace(change);
  return edit.kind === 'refused' ? edit.reason : undefined;
}

/** Quarry with what TL is taught, then these of WL. */
function withReads(...reads: readonly Read[]): PlayEntry {
  return reads.reduce<PlayEntry>(
    (play, read) => {
      const edit = addRead(play, groundOf(demoPlaybook), 'main', read);
      if (edit.kind === 'refused') throw new Error(edit.reason);
      return edit.play;
    },
    { ...entry, reads: entry.reads!.slice(0, 1) },
  );
}

function readsIn(play: PlayEntry): readonly Read[] {
  return toEnginePlay({ ...demoPlaybook, plays: [play] }, play.id).reads;
}

describe('a read in the place of another', () => {
  it('stands where that one stood, and the others stay', () => {
    const edit = replace({ before: skips, after: shoots });
    if (edit.kind === 'refused') throw new Error(edit.reason);
    const plays = demoPlaybook.plays.map((play) => (play === entry ? edit.play : play));
    const { value } = parsePlaybook(serializePlaybook({ ...demoPlaybook, plays }));
    const after = toEnginePlay(value!, 'quarry').reads;
    expect(after).toEqual(taught.map((read) => (read === skips ? shoots : read)));
  });

  it('is known by what it says, however the coach has written it', () => {
    const reads = entry.reads!.map((read) => ({ ...read, if: read.if.map((cue) => cue.replace(' ', '  ')) }));
    const edit = replace({ before: skips, after: shoots }, { ...entry, reads });
    expect(edit.kind).toBe('edited');
  });

  it('goes before the one behind which it could never be used', () => {
    const freeAndOpen: Read = { ...shoots, cues: [{ kind: 'iAmFree' }, { kind: 'open', who: 'CR' }] };
    const play = withReads(shoots, skips);
    const edit = replaceRead(play, demoPlaybook, readsIn(play), { before: skips, after: freeAndOpen });
    if (edit.kind === 'refused') throw new Error(edit.reason);
    expect(readsIn(edit.play)).toEqual([taught[0], freeAndOpen, shoots]);
    expect(edit.also).toEqual(['It is read 2 of the play now, before the one behind which it could never be used.']);
  });

  it('is refused, with the read that is wrong, when no place lets the play be played', () => {
    expect(reasonOf({ before: feedsFirst, after: { ...shoots, cues: [] } })).toMatch(
      /^Then the play could not be played\. Quarry, read 3, of WL: This read of WL can never be used: /,
    );
  });

  it('is refused when that one is gone, when it is taught already, and when it cannot be', () => {
    expect(reasonOf({ before: shoots, after: skips })).toBe('The play does not teach this read any more.');
    expect(reasonOf({ before: skips, after: feedsFirst })).toBe(
      'The play teaches the better one already, in another place.',
    );
    expect(reasonOf({ before: skips, after: { ...shoots, cues: [{ kind: 'open', who: 'Z' }] } })).toBe(
      'The play has no spot Z.',
    );
  });
});
