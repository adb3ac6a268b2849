import type { ChanceModel } from '../chance/model.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import type { ChanceState } from '../chance/state.ts';
import { type Left, whoLeft } from '../looks/who-left.ts';

/** Shots of one man off one man's passes, in some trials. Offense and defender indices. */
export interface ConcededShots {
  /** Who threw to him; -1 for a shot that nobody passed to. */
  readonly from: number;
  readonly to: number;
  readonly shots: number;
  /** Sum of the goal odds of those shots, goals. */
  readonly goals: number;
  /** Who should have been there most often (-1: the scheme gives the man to nobody), his duty, and by how much he was too late on average, s. */
  readonly leftBy: { readonly defender: number; readonly duty: number; readonly lateBy: number };
}

/**
 * Every shot of trials `from` (included) to `to` (excluded), by who took it off whose pass and who should have been there: what a scheme gives up, whatever led to it.
 * What costs most goals comes first.
 */
export function concededShots(
  model: ChanceModel,
  state: ChanceState,
  from: number,
  to: number,
): readonly ConcededShots[] {
  const found = new Map<
    number,
    { shots: number; goals: number; readonly left: Map<number, { count: number; late: number }> }
  >();
  for (let trial = from; trial < to; trial++) {
    beginTrial(model, state, trial);
    const left_byReceiver = new Map<number, Left>();
    state.recorder = {
      event: (event) => {
        if (event.kind === 'pass') left_byReceiver.set(event.to, whoLeft(model, state, event.from, event.to));
        if (event.kind !== 'shot') return;
        const key = 6 * (event.assistedBy + 1) + event.who;
        const one = found.get(key) ?? { shots: 0, goals: 0, left: new Map() };
        found.set(key, one);
        one.shots++;
        one.goals += event.goalOdds;
        // Asked as the pass left the stick: when he shoots everybody is on his way to him.
        const passed = event.assistedBy < 0 ? undefined : left_byReceiver.get(event.who);
        const { leftBy, duty, lateBy } = passed ?? whoLeft(model, state, event.who, event.who);
        const who = leftBy < 0 ? -1 : 8 * leftBy + duty;
        const before = one.left.get(who) ?? { count: 0, late: 0 };
        one.left.set(who, { count: before.count + 1, late: before.late + lateBy });
      },
      frame: () => undefined,
    };
    while (state.end === null) advanceTrial(model, state);
  }
  state.recorder = null;
  return [...found]
    .map(([key, { shots, goals, left }]): ConcededShots => {
      const [who, { count, late }] = [...left].reduce((best, one) => (one[1].count > best[1].count ? one : best));
      return {
        from: Math.floor(key / 6) - 1,
        to: key % 6,
        shots,
        goals,
        leftBy:
          who < 0 ? { defender: -1, duty: 0, lateBy: 0 } : { defender: who >> 3, duty: who & 7, lateBy: late / count },
      };
    })
    .sort((one, other) => other.goals - one.goals || one.from - other.from || one.to - other.to);
}
