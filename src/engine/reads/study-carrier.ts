import type { Point } from '../geometry/point.ts';
import { weightedMeanInterval } from '../statistics/weighted-mean-interval.ts';
import type { Interval } from '../trials/report.ts';
import { learnJudgement, worthsByJudgement } from './best-decisions.ts';
import { buildDecisionTable } from './build-decision-table.ts';
import { carrierActions } from './carrier-actions.ts';
import { chancesOf, type DecisionTable } from './decision-table.ts';
import type { CarrierChance, Outcome } from './gather-decisions.ts';
import { type Keeping, learnKeeping, worthOf } from './learn-keeping.ts';
import { numbersOf } from './numbers-of-looks.ts';
import { type RuleList, worthsUnder } from './rule-list.ts';
import { type SearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** What was gathered against one scheme. */
export interface SchemeChances {
  readonly scheme: string;
  /** How likely the scheme is to be met; all together more than nothing. */
  readonly weight: number;
  /** Trials that were run for it. */
  readonly trials: number;
  readonly chances: readonly CarrierChance[];
}

/** Goals a chance by one way to decide, and how much more that is than leaving it to the play, in the same chances. 95 %. */
export interface ValuedDecisions {
  readonly goals: Interval;
  readonly gain: Interval;
}

export interface ValuedCard extends ValuedDecisions {
  readonly list: RuleList;
  /** What the search found it worth in the chances that it was searched in: too high. */
  readonly learnt: number;
}

/** What the reads of one carrier are worth. All but `learnt` is measured in chances that nothing was learnt from. */
export interface CarrierStudy {
  readonly carrier: number;
  /** Share of the man-ups in which the play brings him the ball, and chances that were learnt from and measured in. */
  readonly comes: number;
  readonly learntFrom: number;
  readonly measuredIn: number;
  /** Where he stands at his first look, on average. Yards. */
  readonly at: Point;
  /** Goals a chance when he leaves everything to the play. */
  readonly goOn: Interval;
  /** The best decisions that are known. */
  readonly best: ValuedDecisions;
  /** The best card of so many reads or fewer: none, one, two ... */
  readonly cards: readonly ValuedCard[];
  readonly byScheme: readonly {
    readonly scheme: string;
    readonly goOn: Interval;
    readonly best: Interval;
    /** One for each card, how much more than leaving it to the play. */
    readonly gain_byCard: readonly Interval[];
  }[];
}

/** As many chances of no worth as this are added for each number that the judgement learns. */
const ridge = 10;

/**
 * What one carrier's reads are worth: the best decisions and the best cards are learnt in one half of the chances and measured in the
 * other. `null` when the play hardly ever brings him the ball: fewer than `leastChances` in a half.
 */
export function studyCarrier(
  carrier: number,
  learn: readonly SchemeChances[],
  held: readonly SchemeChances[],
  limits: SearchLimits,
): CarrierStudy | null {
  const keeping = learnKeeping(learn.flatMap(({ chances }) => chances));
  const [learning, holding] = [tableOf(carrier, learn, keeping), tableOf(carrier, held, keeping)];
  if (learning === null || holding === null) return null;
  const actions = carrierActions(carrier);
  const judgement = learnJudgement(learning, numbersOf(carrier, allChances(learn), actions), ridge);
  const best = worthsByJudgement(judgement, holding, numbersOf(carrier, allChances(held), actions));
  const measure = measureIn(holding, holding.weight_byChance);
  const cards = searchRuleLists(learning, limits).map(({ list, worth }) => ({
    list,
    learnt: worth,
    worths: worthsUnder(list, holding),
  }));
  return {
    carrier,
    comes: shareThatComes(held),
    learntFrom: chancesOf(learning),
    measuredIn: chancesOf(holding),
    at: meanPlace(allChances(held)),
    goOn: measure.goals(holding.goOn_byChance),
    best: measure.decisions(best),
    cards: cards.map(({ list, learnt, worths }) => ({ list, learnt, ...measure.decisions(worths) })),
    byScheme: spans(held).map(({ scheme, from, to }) => {
      const within = measureIn(holding, new Float64Array(to - from).fill(1), from, to);
      return {
        scheme,
        goOn: within.goals(holding.goOn_byChance),
        best: within.goals(best),
        gain_byCard: cards.map(({ worths }) => within.decisions(worths).gain),
      };
    }),
  };
}

/** Fewer chances than this tell nothing of decisions. */
const leastChances = 40;

function tableOf(carrier: number, gathered: readonly SchemeChances[], keeping: Keeping): DecisionTable | null {
  const chances = allChances(gathered);
  if (chances.length < leastChances) return null;
  return buildDecisionTable(carrier, chances, keeping, weightsOf(gathered));
}

function weightsOf(gathered: readonly SchemeChances[]): Float64Array {
  return Float64Array.from(gathered.flatMap((one) => one.chances.map(() => one.weight / one.trials)));
}

function allChances(gathered: readonly SchemeChances[]): readonly CarrierChance[] {
  return gathered.flatMap(({ chances }) => chances);
}

function shareThatComes(gathered: readonly SchemeChances[]): number {
  const all = gathered.reduce((sum, { weight }) => sum + weight, 0);
  return gathered.reduce((sum, { weight, trials, chances }) => sum + (weight * chances.length) / trials, 0) / all;
}

function meanPlace(chances: readonly CarrierChance[]): Point {
  const places = chances.map(({ looks }) => looks[0].at);
  const mean = (axis: 0 | 1): number => places.reduce((sum, place) => sum + place[axis], 0) / places.length;
  return { x: mean(0), y: mean(1) };
}

/** Where each scheme's chances lie in the table; schemes without any are left out. */
function spans(gathered: readonly SchemeChances[]) {
  let from = 0;
  return gathered.flatMap(({ scheme, chances }) => {
    const span = { scheme, from, to: from + chances.length };
    from = span.to;
    return chances.length === 0 ? [] : [span];
  });
}

/** Intervals over the chances `from` (included) to `to` (excluded) of a table, by their weights there. */
function measureIn(table: DecisionTable, weights: Float64Array, from = 0, to = chancesOf(table)) {
  const goals = (worths: ArrayLike<number>): Interval =>
    weightedMeanInterval(Array.prototype.slice.call(worths, from, to), weights);
  const decisions = (worths: Float64Array): ValuedDecisions => ({
    goals: goals(worths),
    gain: goals(worths.map((worth, chance) => worth - table.goOn_byChance[chance])),
  });
  return { goals, decisions };
}

/**
 * What a carrier's chances come to when he goes by another guidance in them, as `studyCarrier` counts it: `outcomes` are those of
 * `playGuided`, one for each held chance in their order. RangeError when there are more or fewer.
 */
export function valueGuided(
  learn: readonly SchemeChances[],
  held: readonly SchemeChances[],
  outcomes: readonly Outcome[],
): ValuedDecisions {
  const keeping = learnKeeping(allChances(learn));
  const alone = allChances(held).map(({ goOn }) => worthOf(goOn, keeping));
  if (alone.length !== outcomes.length) {
    throw new RangeError(`invalid outcomes: ${outcomes.length} (expected ${alone.length})`);
  }
  const worths = outcomes.map((outcome) => worthOf(outcome, keeping));
  const weights = weightsOf(held);
  return {
    goals: weightedMeanInterval(worths, weights),
    gain: weightedMeanInterval(
      worths.map((worth, at) => worth - alone[at]),
      weights,
    ),
  };
}
