import type { Tally } from '../../engine/index.ts';
import type { TrialSetup } from '../../worker/index.ts';
import type { MatchupRecord } from './matchup-record.ts';
import { extendTally, type Work } from './measure-record.ts';

/** What new answers are compared with: the play as it was when the coach began to change it. Its tallies grow beside the new ones. */
export interface Baseline {
  readonly setup: TrialSetup;
  /** Null while nothing was counted of it: a coach who changes a play at once still sees what that gained. */
  tally: Tally | null;
}

/** By scheme. What cannot be played has nothing to compare with. */
export function baselineOf(records: readonly MatchupRecord[]): ReadonlyMap<string, Baseline> {
  return new Map(
    records.flatMap(({ setup, tally, refused }) =>
      refused === null ? [[setup.scheme, { setup, tally }] as const] : [],
    ),
  );
}

/** Whether an edit came between a record and what it is compared with: a note or a name changes no trial. */
export function isEdited({ setup }: MatchupRecord, baseline: ReadonlyMap<string, Baseline>): boolean {
  const before = baseline.get(setup.scheme);
  return before !== undefined && before.setup !== setup;
}

/** How far a baseline is counted, and how urgently. */
export interface BaselineEffort {
  /** Trials, at most. */
  readonly most: number;
  readonly priority: number;
}

/**
 * Counts a baseline as far as the record that is compared with it: a comparison is as narrow as the fewer trials let it be. The record is told of each
 * step as of one of its own. Rejects as `measureRecord` does, and with a `Refusal` too.
 */
export async function growBaseline(
  record: MatchupRecord,
  before: Baseline,
  work: Work,
  { most, priority }: BaselineEffort,
): Promise<void> {
  const goal = (): number => Math.min(most, record.tally?.to ?? 0);
  while ((before.tally?.to ?? 0) < goal()) {
    const from = before.tally?.to ?? 0;
    const to = Math.min(goal(), from + batchesAtOnce * work.plan.batch.tally);
    before.tally = await extendTally(before.setup, before.tally, to, work, priority);
    record.changes += 1;
    work.onChange();
  }
}

const batchesAtOnce = 4;
