import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { carriersOfPlay } from './carriers-of-play.ts';

describe('the men to whom a play brings the ball', () => {
  it.each(demoPlaybook.plays.map(({ id }) => [id] as const))('are its starter and whom it passes to: %s', (id) => {
    const play = toEnginePlay(demoPlaybook, id);
    const found = carriersOfPlay(play);
    const passes = play.beats.flatMap(({ actions }) => actions).filter((action) => action.kind === 'pass');
    expect(found[0]).toBe(play.start.ball);
    expect(new Set(found)).toEqual(new Set([play.start.ball, ...passes.map(({ to }) => to)]));
    expect(new Set(found).size).toBe(found.length);
  });

  it('are those of the last ten seconds too', () => {
    const play = toEnginePlay(demoPlaybook, 'ferry');
    const stranger = play.spots.find(({ id }) => !carriersOfPlay(play).includes(id))?.id ?? '';
    expect(stranger).not.toBe('');
    const pass = { kind: 'pass', by: play.start.ball, to: stranger, style: 'skip' } as const;
    const last = { beats: [{ id: 'late', when: { kind: 'start' }, actions: [pass] }], reads: [] } as const;
    expect(carriersOfPlay({ ...play, lastTen: last })).toContain(stranger);
  });
});
