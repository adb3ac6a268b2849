import { useEffect, useSyncExternalStore } from 'react';
import { useDesk } from '../shell/desk.tsx';
import type { SideAnswer, SideQuestion } from './side-answers.ts';

/** Asks these beside the play for as long as they are shown; the answers by the questions' ids. The same object asks nothing again. */
export function useSideAnswers(questions: readonly SideQuestion[]): ReadonlyMap<string, SideAnswer> {
  const { side } = useDesk().answers;
  useEffect(() => {
    side.ask(questions);
    return () => side.ask([]);
  }, [side, questions]);
  return useSyncExternalStore(side.subscribe, side.snapshot);
}
