import type { AnswersSnapshot } from './answers-snapshot.ts';

/** Whether what stands on the screen is still that of the play before its edit: the small fields need not run it meanwhile, and the threads need the machine. */
export function awaitsGuess({ schemes, failure }: Pick<AnswersSnapshot, 'schemes' | 'failure'>): boolean {
  return failure === null && schemes.some(({ state, stale }) => state !== 'refused' && stale.goals);
}
