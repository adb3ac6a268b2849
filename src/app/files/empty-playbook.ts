import type { Level } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';

/** A playbook with a team and nothing else. */
export function emptyPlaybook(name: string, level: Level): Playbook {
  return { format: 'sliderule-playbook', version: 1, team: { name, level, roster: [] }, plays: [] };
}
