import { describe, expect, it } from 'vitest';
import { addRead, demoPlaybook, groundOf, toEnginePlay } from '../../playbook/index.ts';
import { readOfLook } from './read-of-look.ts';

const lantern = demoPlaybook.plays.find(({ id }) => id === 'lantern')!;

describe('a look as a read', () => {
  it.each([
    ['pass', 'TR', 'TL', { carrier: 'TR', during: 'rip', if: ['open TL'], then: 'pass TL' }],
    ['skip', 'X', 'TR', { carrier: 'X', during: 'finish', if: ['open TR'], then: 'skip TR' }],
    ['feed', 'X', 'C', { carrier: 'X', during: 'finish', if: ['open C'], then: 'feed C' }],
    ['shot', 'WL', 'WL', { carrier: 'WL', during: 'behind', if: ['free'], then: 'shoot' }],
  ] as const)('%s by %s is written as a coach would write it', (kind, from, to, written) => {
    const read = readOfLook({ kind, from, to }, written.during);
    const taught = addRead(lantern, groundOf(demoPlaybook), 'main', read);
    expect(taught).toMatchObject({ kind: 'edited' });
    if (taught.kind !== 'edited') return;
    expect(taught.play.reads?.at(-1)).toEqual(written);
    const plays = demoPlaybook.plays.map((play) => (play === lantern ? taught.play : play));
    expect(toEnginePlay({ ...demoPlaybook, plays }, 'lantern').reads.at(-1)).toEqual(read);
  });

  it('counts in every step when its step is not known', () => {
    expect(readOfLook({ kind: 'pass', from: 'TR', to: 'TL' }, undefined)).not.toHaveProperty('during');
  });
});
