import type { Playbook } from '../../playbook/index.ts';
import { type CallsAsked, type MeasuredCalls, measureCalls, measureTicks } from '../../teach/index.ts';
import type { MeasureOptions, TrialPool } from '../../worker/index.ts';
import type { CallSearch } from './bench-store.ts';

/** What is to be found out before a game. */
export interface AskedCalls {
  readonly playbook: Playbook;
  readonly asked: CallsAsked;
}

export interface CallNews {
  readonly search: CallSearch;
  readonly found?: MeasuredCalls;
}

/** Finds what the calls make and tells how far it is; what is known stays known when it is stopped. */
export async function measureGameCalls(
  pool: TrialPool,
  { playbook, asked }: AskedCalls,
  tell: (news: CallNews) => void,
  signal: AbortSignal,
): Promise<void> {
  let answered = 0;
  // As many requests for each call and time; the first tells how many that is.
  let perCall = 0;
  let isFirst = true;
  const times = 1 + (asked.shorter ?? []).length;
  const say = (news: CallNews): void => {
    if (!signal.aborted) tell(news);
  };
  const progress = (found?: MeasuredCalls): void => {
    const planned = Math.max(1, perCall * asked.calls.length * times, answered);
    say({ search: { kind: 'finding', answered, planned }, ...(found && { found }) });
  };
  try {
    progress();
    const options: MeasureOptions = {
      signal,
      onPlan: (requests) => {
        if (isFirst) perCall += requests;
        progress();
      },
      onAnswer: () => {
        answered += 1;
        progress();
      },
    };
    const found = await measureCalls(pool, playbook, asked, {
      ...options,
      onCall: (part) => {
        isFirst = false;
        progress(part);
      },
    });
    const [first] = asked.calls;
    const ticks = first && (await measureTicks(pool, playbook, first, asked.schemes, options));
    say({ search: { kind: 'idle' }, found: { ...found, ...(ticks && { ticks }) } });
  } catch (error) {
    say({ search: { kind: 'failed', reason: error instanceof Error ? error.message : String(error) } });
  }
}
