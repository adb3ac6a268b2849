import { describe, expect, it } from 'vitest';
import type { Read } from '../../engine/index.ts';
import { demoPlaybook, groundOf, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import { teachReads, untaughtReads } from './teach-reads.ts';

const ground = groundOf(demoPlaybook);
const ferry = demoPlaybook.plays.find(({ id }) => id === 'ferry')!;
const carrier = ferry.start.ball;
const card: readonly Read[] = [
  // A place with more digits than a play is written with.
  {
    carrier,
    cues: [{ kind: 'iAmFree' }],
    then: { kind: 'stepIn', by: carrier, to: { x: 1.23456, y: 12.98765 } },
  },
  // What he does in any case.
  { carrier, cues: [], then: { kind: 'shot', by: carrier } },
];

function taught() {
  const edit = teachReads(ferry, ground, card);
  if (edit.kind === 'refused') throw new Error(edit.reason);
  return edit.play;
}

describe('a card that is taught', () => {
  it('stands at the end of the reads, in its order, and in a playbook that can be played', () => {
    const before = ferry.reads ?? [];
    const after = taught().reads ?? [];
    expect(after.slice(0, before.length)).toEqual(before);
    expect(after.slice(before.length).map(({ if: cues, during }) => [cues, during])).toEqual([
      [['free'], undefined],
      [[], undefined],
    ]);
    const plays = demoPlaybook.plays.map((play) => (play === ferry ? taught() : play));
    expect(parsePlaybook(serializePlaybook({ ...demoPlaybook, plays })).value).toBeDefined();
  });

  it('is known again, and what is missing of it is known to be missing', () => {
    expect(untaughtReads(ferry, ground, card)).toEqual(card);
    expect(untaughtReads(taught(), ground, card)).toEqual([]);
    const { reads = [], ...rest } = taught();
    expect(untaughtReads({ ...rest, reads: reads.slice(0, -1) }, ground, card)).toEqual(card.slice(1));
  });

  it('is refused as a whole when a part of it is', () => {
    const stranger: Read = { carrier: 'Z', cues: [], then: { kind: 'shot', by: 'Z' } };
    expect(teachReads(ferry, ground, [...card, stranger]).kind).toBe('refused');
  });
});
