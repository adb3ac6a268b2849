import { useMemo } from 'react';
import type { SideAnswer } from '../answers/side-answers.ts';
import { useSideAnswers } from '../answers/use-side-answers.ts';
import { readPlayOf } from '../play/play-reading.ts';
import { absenceQuestions } from './absence-questions.ts';
import type { ChosenLineUps } from './use-line-ups.ts';

/** What each of the best six costs in goals a chance when he is missing, by `absenceId`; nothing while the play cannot be played. */
export function useAbsenceCosts(chosen: ChosenLineUps | undefined): ReadonlyMap<string, SideAnswer> {
  const questions = useMemo(() => {
    if (chosen === undefined) return [];
    const { playbook, play, sides } = chosen;
    const { schemes: _, opponents: __, ...standing } = playbook;
    return readPlayOf(standing, play).isWhole ? absenceQuestions(playbook, play, sides) : [];
  }, [chosen]);
  return useSideAnswers(questions);
}
