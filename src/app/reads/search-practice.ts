import type { Playbook } from '../../playbook/index.ts';
import {
  type PracticeEffort,
  practiceChoices,
  practiceEffortOver,
  requestsOfSkillWorths,
  studySkillWorths,
  type TrialPool,
  type WeighedSetup,
} from '../../worker/index.ts';
import { urgency } from '../answers/answer-plan.ts';
import type { FoundPractice, PracticeSearch } from './practice-state.ts';

/** A play that can be played, by whom, against what. */
export interface AskedPractice {
  /** The playbook that holds the team and the play as it is now. */
  readonly playbook: Playbook;
  readonly play: string;
  readonly setups: readonly WeighedSetup[];
  /** All that the answer depends on, as text. */
  readonly question: string;
}

/** What is told of a search: what it is at, or what it found. */
export type PracticeNews = { readonly search: PracticeSearch } | { readonly found: FoundPractice };

/** Man-ups over all schemes that what leads is measured in: a minute or two of work, and known to about .8 goals in 100 man-ups. */
const usualManUps = 3600;

/** Finds what practice is worth and tells how far it is and after each round what is known, of the whole unit first; nothing more once the signal is given. */
export async function searchPractice(
  pool: TrialPool,
  { playbook, play, setups, question }: AskedPractice,
  tell: (news: PracticeNews) => void,
  signal: AbortSignal,
  effort: PracticeEffort = practiceEffortOver(setups.length, usualManUps),
): Promise<void> {
  const choices = practiceChoices(playbook, { play, side: 'right', level: null });
  if (choices.kind === 'refused') return tell({ search: { kind: 'failed', reason: choices.reason } });
  const planned = requestsOfSkillWorths(choices, setups.length, effort);
  let answered = 0;
  const tellProgress = (): void => tell({ search: { kind: 'finding', answered, planned } });
  tellProgress();
  const onAnswer = (): void => {
    answered += 1;
    if (!signal.aborted) tellProgress();
  };
  const foundOf = (worths: FoundPractice['worths']): PracticeNews => ({
    found: { worths, men: choices.men, play, question },
  });
  try {
    // Of all that is asked for this waits best: it is long, and what a coach does meanwhile is to be answered first.
    const options = { signal, priority: urgency.side, onAnswer };
    const worths = await studySkillWorths(pool, setups, choices, effort, {
      ...options,
      onFound: (unit) => {
        if (!signal.aborted) tell(foundOf(unit));
      },
    });
    if (signal.aborted) return;
    tell(foundOf(worths));
    tell({ search: { kind: 'idle' } });
  } catch (error) {
    if (signal.aborted) return;
    tell({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}
