import { useSyncExternalStore } from 'react';
import { useDesk } from '../shell/desk.tsx';
import type { AnswersSnapshot } from './answers-snapshot.ts';

/** What the simulation knows now. What did not change keeps its identity. */
export function useAnswers(): AnswersSnapshot {
  const { answers } = useDesk();
  return useSyncExternalStore(answers.subscribe, answers.snapshot);
}
