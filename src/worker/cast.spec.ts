import { expect, it } from 'vitest';
import { demoPlaybook, starOf } from '../playbook/index.ts';
import { buildMatchup } from './build-matchup.ts';
import { castOf } from './cast.ts';

const play = demoPlaybook.plays[0]!.id;

it.each(['right', 'left'] as const)('a cast says whom a shutoff shuts off, and nobody else does: %s', (side) => {
  const shutOff = (scheme: string) => {
    const built = buildMatchup(demoPlaybook, { play, scheme, side, penalty: null, level: null });
    if (built.kind === 'refused') throw new Error(built.reason);
    const star = starOf(demoPlaybook, built.matchup.play, built.players);
    return { star, said: castOf(built.matchup, built.players).shutOff };
  };
  const { star, said } = shutOff('shutoff');
  expect(said).toBe(star);
  expect(shutOff('box-zone').said).toBeNull();
});
