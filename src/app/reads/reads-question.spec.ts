import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Playbook } from '../../playbook/index.ts';
import { type AgainstChoice, againstOf, opponentsWithMix, readsQuestion } from './reads-question.ts';
import { teachReads } from './teach-reads.ts';

const ferry = demoPlaybook.plays.find(({ id }) => id === 'ferry')!;
const schemes = ['box-zone', 'jump'];
const ask = (
  entry = ferry,
  carrier = 'P',
  playbook: Playbook = demoPlaybook,
  choice: AgainstChoice = { kind: 'alike' },
  ownMix: Readonly<Record<string, number>> = {},
) =>
  readsQuestion(playbook, entry, carrier, playbook.opponents, againstOf(playbook.opponents, choice, schemes, ownMix));
const mixed = (ownMix: Readonly<Record<string, number>>) => ask(ferry, 'P', demoPlaybook, { kind: 'ownMix' }, ownMix);

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
    const { setups } = ask(ferry, 'P', playbook, { kind: 'opponent', opponent: 'alder' });
    expect(setups.map(({ setup, weight }) => [setup.scheme, setup.opponent, weight])).toEqual([['jump', 'alder', 3]]);
  });

  it('is put to the schemes alike when nothing is known of the opponent any more', () => {
    expect(ask(ferry, 'P', demoPlaybook, { kind: 'opponent', opponent: 'gone' })).toEqual(ask());
  });

  it("is put by a mix of one's own, which is all alike until something is said", () => {
    const weightsIn = (ownMix: Readonly<Record<string, number>>) =>
      mixed(ownMix).setups.map(({ setup, weight }) => [setup.scheme, weight]);
    expect(weightsIn({})).toEqual(ask().setups.map(({ setup, weight }) => [setup.scheme, weight]));
    expect(weightsIn({ jump: 4, stranger: 9 })).toEqual([
      ['box-zone', 1],
      ['jump', 4],
    ]);
    expect(weightsIn({ jump: 4, 'box-zone': 0 })).toEqual([['jump', 4]]);
    expect(weightsIn({ jump: 0, 'box-zone': 0 })).toEqual([]);
    expect(mixed({ jump: 4 }).text).not.toBe(mixed({ jump: 3 }).text);
  });

  it('stays the same when the play is taught, and is another for another man or another play', () => {
    const read = { carrier: 'P', cues: [], then: { kind: 'shot', by: 'P' } } as const;
    const edit = teachReads(ferry, demoPlaybook, { carrier: 'P', reads: [read] });
    const taught = edit.kind === 'edited' ? edit.play : undefined;
    expect(taught?.reads?.length).toBeGreaterThan(0);
    expect(ask(taught).text).toBe(ask().text);
    expect(ask(ferry, 'TR').text).not.toBe(ask().text);
    expect(ask({ ...ferry, beats: ferry.beats.slice(0, 1) }).text).not.toBe(ask().text);
  });
});
