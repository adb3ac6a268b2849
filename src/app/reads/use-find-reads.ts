import { useCallback, useEffect, useRef } from 'react';
import type { Play } from '../../engine/index.ts';
import { requestsOfStudy, studyReads, type TrialPool } from '../../worker/index.ts';
import { urgency } from '../answers/answer-plan.ts';
import { useDesk } from '../shell/desk.tsx';
import { findRounds } from './find-rounds.ts';
import type { ReadsQuestion } from './reads-question.ts';
import { useReads } from './reads-state.ts';

/** The man at a spot of a play as it is now, and what is asked about him. */
export interface AskedReads {
  readonly play: Play;
  readonly carrier: string;
  readonly question: ReadsQuestion;
}

export interface FindReads {
  /** Begins anew; what was on its way is dropped. */
  readonly find: (asked: AskedReads) => void;
  readonly stop: () => void;
}

/** The search for a man's reads, round after round. Whoever leaves the place or asks something else (another `text`) stops it. */
export function useFindReads(text: string | undefined): FindReads {
  const { threads } = useDesk();
  const running = useRef<AbortController>(undefined);
  const stop = useCallback(() => {
    if (running.current === undefined) return;
    running.current.abort();
    running.current = undefined;
    useReads.getState().change({ search: { kind: 'stopped' } });
  }, []);
  const find = useCallback(
    (asked: AskedReads) => {
      running.current?.abort();
      const controller = new AbortController();
      running.current = controller;
      void searchReads(threads, asked, controller.signal).then(() => {
        if (running.current === controller) running.current = undefined;
      });
    },
    [threads],
  );
  useEffect(() => stop, [stop]);
  const asked = useRef(text);
  useEffect(() => {
    if (asked.current === text) return;
    asked.current = text;
    stop();
    // What was said of the question before is not true of this one.
    useReads.getState().change({ search: { kind: 'idle' } });
  }, [stop, text]);
  return { find, stop };
}

/** Goes through the rounds and tells what comes of each; tells nothing more once the signal is given. */
async function searchReads(
  pool: TrialPool,
  { play, carrier, question }: AskedReads,
  signal: AbortSignal,
): Promise<void> {
  const { change } = useReads.getState();
  const isTaught = play.reads.some((read) => read.carrier === carrier);
  const man = play.spots.findIndex(({ id }) => id === carrier);
  try {
    for (const [round, effort] of findRounds.entries()) {
      const { trials } = effort;
      const planned = requestsOfStudy(question.setups.length, trials, isTaught);
      let answered = 0;
      const tell = (): void => change({ search: { kind: 'finding', trials, answered, planned } });
      tell();
      const study = await studyReads(pool, question.setups, { play, carrier: man }, effort, {
        signal,
        priority: urgency.coarse,
        onAnswer: () => {
          answered += 1;
          if (!signal.aborted) tell();
        },
      });
      if (signal.aborted) return;
      if (study !== null) change({ found: { study, play, trials, isRough: round === 0, question: question.text } });
      // With few trials a man who seldom has the ball has it hardly ever: one more round tells.
      else if (round > 0) return change({ search: { kind: 'never', carrier } });
    }
    change({ search: { kind: 'idle' } });
  } catch (error) {
    if (signal.aborted) return;
    change({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}
