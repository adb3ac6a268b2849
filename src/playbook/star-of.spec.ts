import { expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { starOf } from './star-of.ts';
import { toEnginePlay } from './to-engine.ts';

const play = toEnginePlay(demoPlaybook, 'lantern');
const usual = play.spots.map((_, i) => ({ number: i + 1, name: `Man ${i + 1}`, hand: 'both' as const }));
const starWith = (at: number, more: object) =>
  starOf(
    demoPlaybook,
    play,
    usual.map((man, i) => (i === at ? { ...man, ...more } : man)),
  );
const top = play.spots.findIndex(({ id }) => id === 'TL');

test('the man to shut off is the best shooter where shots are taken, graded or measured', () => {
  expect(starWith(top, { grades: { shoot: 5 } })).toBe('TL');
  expect(starWith(top, { measured: { shotSpeedMph: [85, 85, 85, 85] } })).toBe('TL');
  expect(starWith(top, { measured: { shotSpeedMph: [35, 35, 35, 35] } })).not.toBe('TL');
});
