import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { runsOfPlay } from './runs-of-play.ts';

describe('the runs of a play', () => {
  it('are named by man and step, in the order of the steps', () => {
    expect(runsOfPlay(toEnginePlay(demoPlaybook, 'ferry')).map(({ text }) => text)).toEqual([
      'P cuts, step "go"',
      'TL fills the empty place, step "go"',
      'WL fills the empty place, step "go"',
      'P cuts, step "across"',
    ]);
  });

  it.each(demoPlaybook.plays.map(({ id }) => [id] as const))('can be told apart: %s', (id) => {
    const play = toEnginePlay(demoPlaybook, id);
    const runs = runsOfPlay(play);
    const asked = play.beats.flatMap(({ actions }) => actions.filter(({ kind }) => kind === 'run'));
    expect(runs).toHaveLength(asked.length);
    expect(new Set(runs.map(({ name }) => name)).size).toBe(runs.length);
  });
});
