import {
  addValue,
  createMoments,
  type Estimate,
  meanInterval,
  sortedQuantile,
  wilsonInterval,
} from '../../src/engine/index.ts';
import type { ChanceLog, ShotLog } from './chance-log.ts';

/** What the pro table counts, counted in simulated chances, each with its 95 % interval. Times in seconds. */
export interface ProMeasures {
  readonly chances: number;
  readonly conversion: Estimate;
  readonly shotsPerChance: Estimate;
  readonly anyShot: Estimate;
  readonly shooting: Estimate;
  readonly saves: Estimate;
  readonly onTarget: Estimate;
  readonly firstShotQ1: Estimate;
  readonly firstShotMedian: Estimate;
  readonly firstShotQ3: Estimate;
  readonly goalTimeMean: Estimate;
  readonly goalTimeMedian: Estimate;
  readonly firstShotGoal: Estimate;
  readonly laterShotGoal: Estimate;
  readonly assistedGoals: Estimate;
  readonly groundBallBeforeShot: Estimate;
}

/** A shot is on target when it was saved or went in, as a scorekeeper counts. */
export function isOnTarget({ result }: ShotLog): boolean {
  return result === 'goal' || result === 'save';
}

export function isGoal({ result }: ShotLog): boolean {
  return result === 'goal';
}

export function measure(logs: readonly ChanceLog[]): ProMeasures {
  const shots = logs.flatMap((log) => log.shots);
  const firstShots = logs.flatMap((log) => log.shots.slice(0, 1));
  const laterShots = logs.flatMap((log) => log.shots.slice(1));
  const onTarget = shots.filter(isOnTarget);
  const goals = shots.filter(isGoal);
  const firstTimes = sorted(firstShots.map((shot) => shot.time));
  const goalTimes = sorted(goals.map((shot) => shot.time));
  return {
    chances: logs.length,
    conversion: share(logs, (log) => log.shots.some(isGoal)),
    shotsPerChance: mean(logs.map((log) => log.shots.length)),
    anyShot: share(logs, (log) => log.shots.length > 0),
    shooting: share(shots, isGoal),
    saves: share(onTarget, (shot) => shot.result === 'save'),
    onTarget: share(shots, isOnTarget),
    firstShotQ1: quantile(firstTimes, 0.25),
    firstShotMedian: quantile(firstTimes, 0.5),
    firstShotQ3: quantile(firstTimes, 0.75),
    goalTimeMean: mean(goalTimes),
    goalTimeMedian: quantile(goalTimes, 0.5),
    firstShotGoal: share(firstShots, isGoal),
    laterShotGoal: share(laterShots, isGoal),
    assistedGoals: share(goals, (shot) => shot.assisted),
    groundBallBeforeShot: share(logs, (log) => log.groundBallBeforeShot),
  };
}

/** Share of `items` for which `holds`, with Wilson's interval. */
export function share<T>(items: readonly T[], holds: (item: T) => boolean): Estimate {
  return wilsonInterval(items.filter(holds).length, items.length);
}

/** Mean with its normal interval. */
export function mean(values: readonly number[]): Estimate {
  const moments = createMoments();
  for (const value of values) addValue(moments, value);
  return meanInterval(moments);
}

function sorted(values: readonly number[]): readonly number[] {
  return [...values].sort((a, b) => a - b);
}

/** Sample quantile with the interval between the order statistics that the binomial spread of its rank reaches. */
function quantile(ascending: readonly number[], p: number): Estimate {
  const spread = ascending.length === 0 ? 0 : 1.96 * Math.sqrt((p * (1 - p)) / ascending.length);
  const at = (probability: number) => sortedQuantile(ascending, Math.min(1, Math.max(0, probability))) ?? Number.NaN;
  return { mean: at(p), low: at(p - spread), high: at(p + spread) };
}

/** Shots and goals per second of chances that are still alive, in bins of `width` s up to `seconds`. */
export function hazards(logs: readonly ChanceLog[], seconds: number, width: number) {
  return Array.from({ length: Math.round(seconds / width) }, (_, bin) => {
    const from = bin * width;
    const inBin = (shot: ShotLog) => shot.time >= from && shot.time < from + width;
    // Alive as the pro logs can tell it: nobody has scored. A ball that was lost does not end a penalty.
    const exposed = logs.reduce((sum, log) => sum + Math.min(width, Math.max(0, goalTime(log) - from)), 0);
    const shots = logs.flatMap((log) => log.shots.filter(inBin));
    return { from, shots: shots.length / exposed, goals: shots.filter(isGoal).length / exposed, exposed };
  });
}

function goalTime(log: ChanceLog): number {
  return log.shots.find(isGoal)?.time ?? Number.POSITIVE_INFINITY;
}
