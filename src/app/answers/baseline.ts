import type { Tally } from '../../engine/index.ts';
import type { TrialSetup } from '../../worker/index.ts';
import type { MatchupRecord } from './matchup-record.ts';

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
