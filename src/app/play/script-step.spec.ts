import { expect, it } from 'vitest';
import { addBeat, demoPlaybook, groundOf, type PlayEntry, toEnginePlay } from '../../playbook/index.ts';
import { ofScript, stepOfBeat } from './script-step.ts';

function withLate(): PlayEntry {
  const lantern = demoPlaybook.plays.find(({ id }) => id === 'lantern')!;
  const more = addBeat(lantern, groundOf(demoPlaybook), 'lastTen', { kind: 'catch', by: 'TL' }, 1, 'late-catch');
  if (more.kind === 'refused') throw new Error(more.reason);
  return more.play;
}

const play = toEnginePlay({ ...demoPlaybook, plays: [withLate()] }, 'lantern');

it('a step of the last ten seconds is found in its own script, and in no other', () => {
  const late = ofScript(play, 'lastTen').beats.map(({ id }) => id);
  expect(late).toContain('late-catch');
  expect(stepOfBeat(play, 'lastTen', 'late-catch')).toBe(late.indexOf('late-catch') + 1);
  expect(stepOfBeat(play, 'main', 'late-catch')).toBeUndefined();
  expect(stepOfBeat(play, 'main', 'down')).toBe(2);
  expect(stepOfBeat(play, 'lastTen', 'down')).toBeUndefined();
});
