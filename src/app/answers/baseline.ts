import type { Tally } from '../../engine/index.ts';
import type { TrialSetup } from '../../worker/index.ts';
import type { MatchupRecord } from './matchup-record.ts';

/** What new answers are compared with: the play as it was when the coach began to change it. Its tallies grow beside the new ones. */
export interface Baseline {
  readonly setup: TrialSetup;
  tally: Tally;
}

/** By scheme. Records without a count have nothing to compare with. */
export function baselineOf(records: readonly MatchupRecord[]): ReadonlyMap<string, Baseline> {
  return new Map(
    records.flatMap(({ setup, tally }) => (tally === null ? [] : [[setup.scheme, { setup, tally }] as const])),
  );
}
