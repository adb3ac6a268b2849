import type { Matchup } from '../engine/index.ts';
import type { Player } from '../playbook/index.ts';
import type { Cast } from './protocol.ts';

/** A matchup as a message carries it. `players` are those of the six, in the order of the spots. */
export function castOf({ play, sense, scheme, six, defenders, star }: Matchup, players: readonly Player[]): Cast {
  const { id, notes, names } = scheme;
  const shutOff = scheme.locksStar === true ? (star ?? null) : null;
  const numbers = players.map(({ number }) => number);
  return { play, sense, scheme: { id, notes, names }, numbers, shutOff, six, defenders };
}
