import type { Playbook } from '../../playbook/index.ts';
import type { PlaysAsked } from '../../teach/index.ts';
import { setupsOf } from '../answers/ask.ts';

/** What is asked about one play: the same text for the same question, whatever else the playbook holds. */
export interface WorthQuestion {
  readonly play: string;
  readonly text: string;
}

/** The questions behind the pages of some plays, one a play; none where there is no scheme to play against. */
export function worthQuestions(playbook: Playbook, { plays, ...asked }: PlaysAsked): readonly WorthQuestion[] {
  if (asked.schemes.length === 0) return [];
  return plays.map((play) => ({
    play,
    text: JSON.stringify([setupsOf({ ...asked, playbook, play }), asked.weights ?? null]),
  }));
}
