import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { answerRequest, type TrialPool } from '../../worker/index.ts';
import { measureTicks, oddsOfTicks, signsToTick } from './bench-ticks.ts';

/** One thread in this process; messages are copied as between threads, and kept as text as on a device. */
const pool: TrialPool = {
  threads: 1,
  answer: async (requests) => requests.map((request) => structuredClone(answerRequest(structuredClone(request)))),
  close: async () => undefined,
};

describe('what is ticked from the bench', () => {
  it('says which scheme it is by what the engine has them do, after it was kept as text', async () => {
    const schemes = ['box-zone', 'five-man-rotation', 'two-down'];
    const call = { play: 'lantern', fromSide: 'right' } as const;
    const found = JSON.parse(JSON.stringify(await measureTicks(pool, demoPlaybook, call, schemes)));
    expect(found.schemes).toEqual(['box-zone', 'five-man-rotation']);
    expect(signsToTick(found)).toContain('crease-man-out');
    const ticked = (isSo: boolean) => oddsOfTicks(demoPlaybook, found, [{ cue: 'crease-man-out', isSo }]);
    // In a five-man rotation the crease man goes out to the ball; in a box he stays (the schemes' own duties).
    expect(ticked(true)['five-man-rotation']!).toBeGreaterThan(1.5 * ticked(true)['box-zone']!);
    expect(ticked(false)['box-zone']!).toBeGreaterThan(1.5 * ticked(false)['five-man-rotation']!);
    expect(oddsOfTicks(demoPlaybook, found, [{ cue: 'nothing', isSo: true }])).toEqual({});
    // A play that is gone since asks nothing any more, and fails nothing.
    expect(oddsOfTicks({ ...demoPlaybook, plays: [] }, found, [{ cue: 'crease-man-out', isSo: true }])).toEqual({});
  });
});
