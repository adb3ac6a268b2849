import type { Play, SpotId } from '../engine/index.ts';
import type { Playbook, Player } from './schema.ts';
import { toCandidate } from './to-engine.ts';

/** The man whom an opponent would shut off: the one whose feeding and shooting count for most at his spot. `players` in the order of the play's spots. */
export function starOf(playbook: Playbook, play: Play, players: readonly Player[]): SpotId {
  const worth = play.spots.map(({ needs }, index) => {
    const { feed, shoot } = toCandidate(playbook, players[index]!).skills;
    return needs.feed * feed + needs.shoot * shoot;
  });
  const best = worth.reduce((at, value, index) => (value > (worth[at] ?? 0) ? index : at), 0);
  return play.spots[best]?.id ?? '';
}
