import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Playbook } from '../playbook/index.ts';
import { chosenPlays, weighedFoes, weightOf } from './choose-matchups.ts';

const archive = (...ids: readonly string[]): Playbook => ({
  ...demoPlaybook,
  plays: demoPlaybook.plays.map((play) => (ids.includes(play.id) ? { ...play, archived: true } : play)),
});

describe('the plays of a test', () => {
  it.each<[string, Playbook, string | undefined, readonly string[]]>([
    ['are all when none is named', demoPlaybook, undefined, ['lantern', 'quarry', 'ferry']],
    ['leave out what is archived', archive('quarry'), undefined, ['lantern', 'ferry']],
    ['hold what is archived when it is named', archive('quarry'), 'quarry,lantern', ['quarry', 'lantern']],
  ])('%s', (_, playbook, list, expected) => {
    expect(chosenPlays(playbook, list)).toEqual(expected);
  });

  it('must be named when all are archived', () => {
    expect(() => chosenPlays(archive('lantern', 'quarry', 'ferry'), undefined)).toThrow('every play is archived');
  });
});

describe('the foes of reads', () => {
  it('may say how often each scheme is met', () => {
    const foes = weighedFoes(demoPlaybook, 'box-zone:3, jump : 0.5');
    expect(foes.schemes).toEqual(['box-zone', 'jump']);
    expect(foes.schemes.map((scheme) => weightOf(foes, scheme))).toEqual([3, 0.5]);
  });

  it('are met alike when nothing is said', () => {
    const foes = weighedFoes(demoPlaybook, 'box-zone,jump');
    expect(foes.schemes.map((scheme) => weightOf(foes, scheme))).toEqual([1, 1]);
  });

  it.each([
    'box-zone:3,jump',
    'box-zone:0',
    'box-zone:-1',
    'box-zone:many',
    'box-zone:1:2',
    'box-zone:',
    'box-zone:3,box-zone:1',
  ])('are refused where that makes no sense: %s', (list) => {
    expect(() => weighedFoes(demoPlaybook, list)).toThrow('invalid --against');
  });

  it('that nobody knows are refused by name', () => {
    expect(() => weighedFoes(demoPlaybook, 'box-zon:2')).toThrow('unknown scheme or opponent: box-zon');
  });
});
