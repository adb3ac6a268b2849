import { describe, expect, it } from 'vitest';
import type { Read } from '../../engine/index.ts';
import {
  demoPlaybook,
  groundOf,
  type PlayEntry,
  parsePlaybook,
  serializePlaybook,
  toEnginePlay,
} from '../../playbook/index.ts';
import { type ReadChange, replaceRead } from './replace-read.ts';

const ground = groundOf(demoPlaybook);
const entry = demoPlaybook.plays.find(({ id }) => id === 'quarry')!;
const taught = toEnginePlay(demoPlaybook, 'quarry').reads;
const [, feedsFirst, skips] = taught as readonly [Read, Read, Read, Read];
const shoots: Read = {
  carrier: 'WL',
  cues: [{ kind: 'iAmFree' }],
  then: { kind: 'shot', by: 'WL' },
};

function replace(change: ReadChange, play: PlayEntry = entry) {
  return replaceRead(play, ground, taught, change);
}

function reasonOf(change: ReadChange): string | undefined {
  const edit = replace(change);
  return edit.kind === 'refused' ? edit.reason : undefined;
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
