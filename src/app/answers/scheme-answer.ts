import {
  compareGoals,
  describeLook,
  estimateGoals,
  type GoalChange,
  type LookSummary,
  type LookValue,
  leastReplays,
  reportScheme,
  type SchemeReport,
  summarizeLooks,
  summarizeThrows,
  type Tally,
} from '../../engine/index.ts';
import type { LookAnswer, SchemeAnswer, ShownTrialChoice } from './answers-snapshot.ts';
import type { MatchupRecord } from './matchup-record.ts';

/** What a record is compared with, as far as it was counted. */
export interface ComparedTallies {
  /** The play before the edit. */
  readonly before: Tally | null;
  /** The set without the play. */
  readonly setAlone: Tally | null;
}

/**
 * What a record says, for the screen. `shown` is what stands on the screen for the same play until the record knows better. Fewer than
 * `leastTrials` are a first guess, and compared with the set alone only after that.
 */
export function schemeAnswer(
  record: MatchupRecord,
  { before, setAlone }: ComparedTallies,
  shown: SchemeAnswer | null,
  leastTrials: number,
): SchemeAnswer {
  const { tally, traced, seen, refused, setup } = record;
  if (refused !== null) return { ...nothingKnown(setup.scheme), state: 'refused', reason: refused };
  const known = nothingKnown(setup.scheme);
  const old = shown ?? known;
  const against = (other: Tally | null): GoalChange | null =>
    tally !== null && other !== null ? compareGoals([tally], [other]) : null;
  const overAlone = against(setAlone);
  return {
    scheme: setup.scheme,
    state: stateOf(record, leastTrials),
    reason: null,
    goals: tally === null ? old.goals : estimateGoals([tally]),
    trials: tally === null ? old.trials : tally.to,
    change: tally === null ? old.change : against(before),
    overSetAlone:
      tally === null ? old.overSetAlone : overAlone !== null && overAlone.trials >= leastTrials ? overAlone : null,
    looks: seen === null || traced === null ? old.looks : looksOf(record),
    watched: seen?.trials ?? old.watched,
    report: tally === null || traced === null ? old.report : reportOf(record),
    cast: traced?.cast ?? old.cast,
    script: traced === null ? old.script : traced.script,
    shown: traced === null ? old.shown : shownOf(record),
    stale: {
      goals: tally === null && old.goals !== null,
      looks: (seen === null || traced === null) && old.looks.length > 0,
      script: traced === null && old.script !== null,
    },
  };
}

function nothingKnown(scheme: string): SchemeAnswer {
  return {
    scheme,
    state: 'waiting',
    reason: null,
    goals: null,
    trials: 0,
    change: null,
    overSetAlone: null,
    looks: [],
    watched: 0,
    report: null,
    cast: null,
    script: null,
    shown: null,
    stale: { goals: false, looks: false, script: false },
  };
}

function stateOf({ tally, finished }: MatchupRecord, leastTrials: number): SchemeAnswer['state'] {
  if (tally === null) return 'waiting';
  if (finished) return 'done';
  return tally.to < leastTrials ? 'coarse' : 'sharpening';
}

function looksOf({ traced, seen, values }: MatchupRecord): readonly LookAnswer[] {
  const { cast } = traced!;
  const looks = summarizeLooks(seen!.play.windows, seen!.trials).map((look) => ({
    ...describeLook(cast, look),
    worth: worthOf(look, values),
    seenIn: look.windows.map(({ trial, opens, closes }) => ({ trial, opens, closes })),
  }));
  // Worth that is known comes before odds that were seen; the sort keeps the order of what is left.
  return looks.sort((one, other) => promiseOf(other) - promiseOf(one));
}

function shownOf({ traced, chosen }: MatchupRecord): ShownTrialChoice | null {
  if (traced === null || chosen === null) return null;
  const { why, watched } = chosen;
  const spotOf = (index: number): string => traced.cast.play.spots[index]!.id;
  switch (why.kind) {
    case 'look': {
      const look = { kind: why.look, from: spotOf(why.from), to: spotOf(why.to) };
      return { kind: 'look', look, among: why.among, watched };
    }
    case 'throw':
      return { ...why, from: spotOf(why.from), to: spotOf(why.to), watched };
    case 'first':
      return { kind: 'first', watched };
  }
}

function worthOf(look: LookSummary, values: readonly LookValue[]): LookAnswer['worth'] {
  const value = values.find(({ from, to }) => from === look.from && to === look.to);
  if (value === undefined || value.trials < leastReplays) return null;
  return { mean: value.value, low: value.valueLow, high: value.valueHigh, replays: value.trials };
}

function promiseOf({ share, worth }: LookAnswer): number {
  return worth === null ? 0 : share * worth.mean;
}

function reportOf({ traced, tally, seen, values }: MatchupRecord): SchemeReport {
  const watched = seen?.trials ?? 0;
  const report = reportScheme(traced!.cast, tally!, {
    watched,
    looks: seen === null ? [] : summarizeLooks(seen.play.windows, watched),
    values,
    own: seen === null ? [] : summarizeThrows(seen.play.throws, seen.play.seen, watched),
  });
  // One number for one thing: the odds tell it better than the goals.
  return { ...report, goalsPerChance: estimateGoals([tally!]) };
}
