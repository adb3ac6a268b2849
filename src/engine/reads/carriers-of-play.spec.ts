import { describe, expect, it } from 'vitest';
import { busyPlay, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { carriersOfPlay } from './carriers-of-play.ts';

describe('the men to whom a play brings the ball', () => {
  it.each([samplePlay, busyPlay])('are its starter and whom it passes to: $id', (play) => {
    const found = carriersOfPlay({ ...play, lastTen: { beats: [], reads: [] } });
    const passes = play.beats.flatMap(({ actions }) => actions).filter((action) => action.kind === 'pass');
    expect(found[0]).toBe(play.start.ball);
    expect(new Set(found)).toEqual(new Set([play.start.ball, ...passes.map(({ to }) => to)]));
    expect(new Set(found).size).toBe(found.length);
  });

  it('are those of the last ten seconds too', () => {
    const stranger = samplePlay.spots.find(({ id }) => !carriersOfPlay(samplePlay).includes(id))?.id ?? '';
    expect(stranger).not.toBe('');
    const pass = { kind: 'pass', by: samplePlay.start.ball, to: stranger, style: 'skip' } as const;
    const last = { beats: [{ id: 'late', when: { kind: 'start' }, actions: [pass] }], reads: [] } as const;
    expect(carriersOfPlay({ ...samplePlay, lastTen: last })).toContain(stranger);
  });
});
