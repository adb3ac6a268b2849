import type { Play } from '../../engine/index.ts';
import { lineUpFor, type Playbook } from '../../playbook/index.ts';
import { withAbsent } from './absence-questions.ts';

/** Numbers of those who are away today and would be among the best six of a play if everybody were here, in the order of its spots. */
export function missedMen(playbook: Playbook, play: Play): readonly number[] {
  const away = playbook.team.roster.filter(({ absent }) => absent === true).map(({ number }) => number);
  if (away.length === 0) return [];
  const { players } = lineUpFor(withAbsent(playbook, away, false), play);
  return players.map(({ number }) => number).filter((number) => away.includes(number));
}
