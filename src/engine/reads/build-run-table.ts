import type { LookNumbers } from './best-decisions.ts';
import type { DecisionTable } from './decision-table.ts';
import { mostRunLooks, type RunnerChance } from './gather-runs.ts';
import { type Keeping, worthOf } from './learn-keeping.ts';
import { runNumberCount } from './run-numbers.ts';
import { runnerVocabulary } from './runner-vocabulary.ts';

/** The one thing that a man who waits to run can do. */
export const goNow = 0;

/**
 * The table of some chances of a man who waits to run. He looks at the looks before number `latest` (1 to `mostRunLooks`), and when he goes at none
 * he goes at that one: that is what going on is worth here. RangeError when there is no chance, or no such look.
 */
export function buildRunTable(
  runner: number,
  chances: readonly RunnerChance[],
  keeping: Keeping,
  latest: number,
  weight_byChance: Float64Array,
): DecisionTable {
  if (chances.length === 0) throw new RangeError('invalid chances: none (expected at least one)');
  if (!(latest >= 1 && latest <= mostRunLooks)) {
    throw new RangeError(`invalid latest look: ${latest} (expected 1 to ${mostRunLooks})`);
  }
  const looks_byChance = chances.map(({ looks }) => looks.slice(0, latest));
  const first_byChance = new Int32Array(chances.length + 1);
  looks_byChance.forEach((looks, at) => {
    first_byChance[at + 1] = first_byChance[at] + looks.length;
  });
  const looks = looks_byChance.flat();
  return {
    actions: 1,
    cues: runnerVocabulary(runner).length,
    first_byChance,
    weight_byChance,
    luck_byChance: Int32Array.from(chances, ({ trial }) => trial),
    cues_byMoment: Int32Array.from(looks, ({ cues }) => cues),
    worth_byMomentAction: Float32Array.from(looks, ({ outcome }) => worthOf(outcome, keeping)),
    goOn_byChance: worthsOfGoingAfter(chances, keeping, latest),
  };
}

/** What each chance is worth when he goes at look number `look`, whatever he sees. Where the play is over before, it is worth what came of waiting. */
export function worthsOfGoingAfter(chances: readonly RunnerChance[], keeping: Keeping, look: number): Float32Array {
  return Float32Array.from(chances, ({ looks, stays }) => worthOf(looks[look]?.outcome ?? stays, keeping));
}

/** The numbers of all looks of some chances; what going is worth and what waiting is are judged by all of them. */
export function numbersOfRuns(chances: readonly RunnerChance[]): LookNumbers {
  const every = Array.from({ length: runNumberCount }, (_, number) => number);
  return {
    count: runNumberCount,
    numbers_byMoment: Float64Array.from(chances.flatMap(({ looks }) => looks.flatMap(({ numbers }) => [...numbers]))),
    rank_byMoment: Int32Array.from(chances.flatMap(({ looks }) => looks.map((_, rank) => rank))),
    columns_byAction: [every],
    columnsOfWaiting: every,
  };
}
