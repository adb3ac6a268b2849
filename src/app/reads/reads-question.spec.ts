import { describe, expect, it } from 'vitest';
import { demoPlaybook, groundOf, type Playbook } from '../../playbook/index.ts';
import { opponentsWithMix, readsQuestion } from './reads-question.ts';
import { teachReads } from './teach-reads.ts';

const ferry = demoPlaybook.plays.find(({ id }) => id === 'ferry')!;
const schemes = ['box-zone', 'jump'];
const ask = (entry = ferry, carrier = 'P', playbook: Playbook = demoPlaybook, opponent?: string) =>
  readsQuestion(playbook, entry, carrier, playbook.opponents, { schemes, opponent });

describe('the question about a man', () => {
  it('is put to every scheme alike', () => {
    expect(ask().setups.map(({ setup, weight }) => [setup.scheme, weight])).toEqual([
      ['box-zone', 1],
      ['jump', 1],
    ]);
  });

  it('is put by the mix of an opponent, who plays it', () => {
    const opponents = [{ id: 'alder', name: 'Alder', schemes: { jump: 3, 'box-zone': 0, gone: 2 } }];
    const playbook = { ...demoPlaybook, opponents };
    expect(opponentsWithMix(playbook)).toEqual(opponents);
    const { setups } = ask(ferry, 'P', playbook, 'alder');
    expect(setups.map(({ setup, weight }) => [setup.scheme, setup.opponent, weight])).toEqual([['jump', 'alder', 3]]);
  });

  it('stays the same when the play is taught, and is another for another man or another play', () => {
    const read = { carrier: 'P', cues: [], then: { kind: 'shot', by: 'P' } } as const;
    const edit = teachReads(ferry, groundOf(demoPlaybook), [read]);
    const taught = edit.kind === 'edited' ? edit.play : undefined;
    expect(taught?.reads?.length).toBeGreaterThan(0);
    expect(ask(taught).text).toBe(ask().text);
    expect(ask(ferry, 'TR').text).not.toBe(ask().text);
    expect(ask({ ...ferry, beats: ferry.beats.slice(0, 1) }).text).not.toBe(ask().text);
  });
});
