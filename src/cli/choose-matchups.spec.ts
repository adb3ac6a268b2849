import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Playbook } from '../playbook/index.ts';
import { chosenPlays } from './choose-matchups.ts';

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
