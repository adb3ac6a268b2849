import { describe, expect, it } from 'vitest';
import type { Read } from '../../engine/index.ts';
import { demoPlaybook, type PlayEntry, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import { isTaught, readsOf, type TaughtCard, teachReads } from './teach-reads.ts';

const playOf = (id: string): PlayEntry => demoPlaybook.plays.find((play) => play.id === id)!;
const quarry = playOf('quarry');
const carrier = 'WL';
const reads: readonly Read[] = [
  // A place with more digits than a play is written with.
  {
    carrier,
    cues: [{ kind: 'iAmFree' }],
    then: { kind: 'stepIn', by: carrier, to: { x: -1.23456, y: 12.98765 } },
  },
  // What he does in any case.
  { carrier, cues: [], then: { kind: 'shot', by: carrier } },
];
const card: TaughtCard = { carrier, reads };

function taught(entry: PlayEntry, taughtCard: TaughtCard = card): PlayEntry {
  const edit = teachReads(entry, demoPlaybook, taughtCard);
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.play;
}

function isPlayable(entry: PlayEntry): boolean {
  const plays = demoPlaybook.plays.map((play) => (play.id === entry.id ? entry : play));
  return parsePlaybook(serializePlaybook({ ...demoPlaybook, plays })).value !== undefined;
}

const short = (entry: PlayEntry) => (entry.reads ?? []).map((read) => `${read.carrier} ${read.if.join()}`);

describe('a card that is taught', () => {
  it('stands in place of all reads of its man, where his first one stood, in its order, and can be played', () => {
    expect(short(quarry)).toEqual(['TL free', 'WL open CR', 'WL open WR', 'WL pressed']);
    expect(short(taught(quarry))).toEqual(['TL free', 'WL free', 'WL ']);
    const [first, ...others] = quarry.reads!;
    const between: PlayEntry = { ...quarry, reads: [others[0]!, first!, ...others.slice(1)] };
    expect(short(taught(between))).toEqual(['WL free', 'WL ', 'TL free']);
    expect([taught(quarry), taught(between)].map(isPlayable)).toEqual([true, true]);
  });

  it('takes the place of one that said what he does in any case, too', () => {
    const again = taught(taught(quarry), { carrier, reads: reads.slice(0, 1) });
    expect(short(again)).toEqual(['TL free', 'WL free']);
    const other: Read = {
      carrier,
      cues: [{ kind: 'open', who: 'CR' }],
      then: { kind: 'pass', by: carrier, to: 'CR', style: 'feed' },
    };
    const twice = taught(taught(quarry), { carrier, reads: [other, reads[1]!] });
    expect(short(twice)).toEqual(['TL free', 'WL open CR', 'WL ']);
    expect(isPlayable(twice)).toBe(true);
  });

  it('comes after all others when he has no read yet, and leaves the last ten seconds alone', () => {
    const lantern = playOf('lantern');
    const shoots: Read = { carrier: 'TL', cues: [{ kind: 'iAmFree' }], then: { kind: 'shot', by: 'TL' } };
    const after = taught(lantern, { carrier: 'TL', reads: [shoots] });
    expect(short(after)).toEqual([...short(lantern), 'TL free']);
    expect(after.lastTen).toEqual(lantern.lastTen);
    expect(readsOf(after, 'TL')).toEqual([{ carrier: 'TL', if: ['free'], then: 'shoot' }]);
  });

  it('is known again when it is all that he is taught, and only then', () => {
    const after = taught(quarry);
    const isKnown = (changed: PlayEntry['reads']) => isTaught({ ...after, reads: changed }, demoPlaybook, card);
    const [tl, first, last] = after.reads!;
    expect(isKnown(after.reads)).toBe(true);
    expect(isKnown([first!, tl!, last!])).toBe(true);
    expect(isKnown([tl!, first!])).toBe(false);
    expect(isKnown([tl!, last!, first!])).toBe(false);
    expect(isKnown([tl!, first!, quarry.reads![3]!, last!])).toBe(false);
    expect(isTaught(quarry, demoPlaybook, card)).toBe(false);
  });

  it('is refused as a whole when a part of it is', () => {
    const stranger: Read = { carrier, cues: [{ kind: 'open', who: 'Z' }], then: { kind: 'shot', by: carrier } };
    const edit = teachReads(quarry, demoPlaybook, { carrier, reads: [...reads, stranger] });
    expect(edit).toEqual({ kind: 'refused', reason: 'The play has no spot Z.' });
  });

  it('is refused, with the read that is wrong, when the play could not be played with it', () => {
    const edit = teachReads(quarry, demoPlaybook, { carrier, reads: [...reads].reverse() });
    expect(edit.kind === 'refused' && edit.reason).toMatch(
      /^Then the play could not be played\. Quarry, read 3, of WL: This read of WL can never be used: /,
    );
  });
});
