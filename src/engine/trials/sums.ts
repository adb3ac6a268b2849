import type { TurnoverKind } from '../chance/trace.ts';
import type { Tally } from './tally.ts';
import { turnoverKinds } from './turnover-kinds.ts';

/** A tally that is still added to. */
export type Sums = { -readonly [Key in keyof Tally]: Tally[Key] };

/** Nothing counted yet of the trials `from` (included) to `to` (excluded). Throws a RangeError when `to` lies before `from`. */
export function emptySums(from: number, to: number, beats: number): Sums {
  if (!(to >= from)) throw new RangeError(`invalid trials: ${from} to ${to} (expected from <= to)`);
  const length = to - from;
  return {
    from,
    to,
    goals_byTrial: new Uint8Array(length),
    goalOdds_byTrial: new Float32Array(length),
    shots_byTrial: new Uint8Array(length),
    turnovers_byTrial: new Uint8Array(length),
    firstShot_byTrial: new Float32Array(length),
    firstGoal_byTrial: new Float32Array(length),
    turnovers: Object.fromEntries(turnoverKinds.map((kind) => [kind, 0])) as Record<TurnoverKind, number>,
    shots: 0,
    goals: 0,
    onTarget: 0,
    saves: 0,
    assistedGoals: 0,
    goalOddsSum: 0,
    farShots: 0,
    farGoals: 0,
    assistedShots: 0,
    passes: 0,
    playPasses: 0,
    passesCaught: 0,
    begun: 0,
    begun_byBeat: new Uint32Array(beats),
    losses: 0,
    backSum: 0,
    fastBreaks: 0,
  };
}
