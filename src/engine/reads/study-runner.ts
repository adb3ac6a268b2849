import type { Interval } from '../trials/report.ts';
import { learnJudgement, worthsByJudgement } from './best-decisions.ts';
import { buildRunTable, numbersOfRuns, worthsOfGoingAfter } from './build-run-table.ts';
import { mostRunLooks, type RunnerChance, timeOfLook } from './gather-runs.ts';
import { type Keeping, learnKeeping, worthOf } from './learn-keeping.ts';
import { measureIn, measureWhere, type ValuedDecisions } from './measure-decisions.ts';
import type { RunOrder } from './run-orders.ts';
import { allChances, isIn, type SchemeChances, shareThatComes, spansOf, weightsOf } from './scheme-chances.ts';
import type { SearchLimits } from './search-rule-lists.ts';
import { type RunList, searchRunCards, type WeighedRuns, worthsByRunList } from './search-run-cards.ts';

/** What was gathered of one run against one scheme. */
export type SchemeRuns = SchemeChances<RunnerChance>;

/** What it is worth to go so many seconds after the order, whatever is seen. */
export interface ValuedTime extends ValuedDecisions {
  readonly after: number;
}

export interface ValuedRunCard extends ValuedDecisions {
  readonly list: RunList;
  /** What the search found it worth in the chances that it was searched in: too high. */
  readonly learnt: number;
}

/** What the timing of one run is worth. Gains are over going as the play has it. All but `learnt` is measured in chances that nothing was learnt from. */
export interface RunnerStudy {
  readonly order: RunOrder;
  /** Share of the man-ups in which the play comes to the order, and chances that were learnt from and measured in. */
  readonly comes: number;
  readonly learntFrom: number;
  readonly measuredIn: number;
  /** Goals a chance, from the order on, when he goes as the play has it; the share of these in which he then goes at all, and how long after the order, on average (seconds, 0 when he never does). */
  readonly goOn: Interval;
  readonly goes: number;
  readonly wentAfter: number;
  /** One for each look, from the order on. */
  readonly byTime: readonly ValuedTime[];
  /** The best decisions that are known, by what he sees. */
  readonly best: ValuedDecisions;
  /** The best card of so many reads or fewer: none (a fixed time), one, two ... */
  readonly cards: readonly ValuedRunCard[];
  readonly byScheme: readonly {
    readonly scheme: string;
    readonly goOn: Interval;
    /** How much more he makes by going at once. */
    readonly atOnce: Interval;
    /** One for each card. */
    readonly gain_byCard: readonly Interval[];
  }[];
}

/** As many chances of no worth as this are added for each number that the judgement learns. */
const ridge = 10;
/** Fewer chances than this tell nothing of decisions. */
const leastChances = 40;

/**
 * What the timing of one run is worth: the best moment, the best cards and the best decisions are learnt in one half of the chances and
 * measured in the other. `null` when the play hardly ever comes to it: fewer than `leastChances` in a half.
 */
export function studyRunner(
  order: RunOrder,
  learn: readonly SchemeRuns[],
  held: readonly SchemeRuns[],
  limits: SearchLimits,
): RunnerStudy | null {
  const [learning, holding] = [weighed(order, learn), weighed(order, held)];
  if (Math.min(learning.chances.length, holding.chances.length) < leastChances) return null;
  const keeping = learnKeeping(learning.chances);
  const table = {
    ...buildRunTable(order.runner, holding.chances, keeping, mostRunLooks, holding.weight_byChance),
    // What a gain is over.
    goOn_byChance: Float32Array.from(holding.chances, ({ goOn }) => worthOf(goOn, keeping)),
  };
  const measure = measureIn(table);
  const cards = searchRunCards(learning, keeping, limits).map(({ list, worth }) => ({
    list,
    learnt: worth,
    worths: worthsByRunList(list, holding, keeping),
  }));
  const atOnce = worthsOfGoingAfter(holding.chances, keeping, 0);
  return {
    order,
    comes: shareThatComes(held),
    learntFrom: learning.chances.length,
    measuredIn: holding.chances.length,
    goOn: measure.goals(table.goOn_byChance),
    ...howHeGoes(holding),
    byTime: Array.from({ length: mostRunLooks + 1 }, (_, look) => ({
      after: timeOfLook(look),
      ...measure.decisions(worthsOfGoingAfter(holding.chances, keeping, look)),
    })),
    best: measure.decisions(bestWorths(learning, holding, keeping)),
    cards: cards.map(({ list, learnt, worths }) => ({ list, learnt, ...measure.decisions(worths) })),
    byScheme: spansOf(held).map((span) => {
      const within = measureWhere(table, isIn(span));
      return {
        scheme: span.scheme,
        goOn: within.goals(table.goOn_byChance),
        atOnce: within.decisions(atOnce).gain,
        gain_byCard: cards.map(({ worths }) => within.decisions(worths).gain),
      };
    }),
  };
}

function weighed({ runner }: RunOrder, gathered: readonly SchemeRuns[]): WeighedRuns {
  return {
    runner,
    chances: allChances(gathered),
    weight_byChance: weightsOf(gathered),
  };
}

/** The share of the chances in which he goes, and when on average, by their weights. */
function howHeGoes({ chances, weight_byChance }: WeighedRuns): Pick<RunnerStudy, 'goes' | 'wentAfter'> {
  let [all, gone, time] = [0, 0, 0];
  chances.forEach(({ wentAfter }, chance) => {
    const weight = weight_byChance[chance];
    all += weight;
    if (wentAfter === null) return;
    gone += weight;
    time += weight * wentAfter;
  });
  return { goes: gone / all, wentAfter: gone === 0 ? 0 : time / gone };
}

/** What each held chance comes to by the judgement that is learnt in the others. */
function bestWorths(learning: WeighedRuns, holding: WeighedRuns, keeping: Keeping): Float64Array {
  const table = ({ runner, chances, weight_byChance }: WeighedRuns) =>
    buildRunTable(runner, chances, keeping, mostRunLooks, weight_byChance);
  const judgement = learnJudgement(table(learning), numbersOfRuns(learning.chances), ridge);
  return worthsByJudgement(judgement, table(holding), numbersOfRuns(holding.chances));
}
