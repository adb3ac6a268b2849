import type { Matchup } from '../engine/index.ts';
import type { Player } from '../playbook/index.ts';
import type { Cast } from './protocol.ts';

/** A matchup as a message carries it. `players` are those of the six, in the order of the spots. */
export function castOf({ play, sense, scheme, six, defenders }: Matchup, players: readonly Player[]): Cast {
  const { id, notes, names } = scheme;
  return { play, sense, scheme: { id, notes, names }, numbers: players.map(({ number }) => number), six, defenders };
}
