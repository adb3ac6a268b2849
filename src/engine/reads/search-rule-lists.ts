import { chancesOf, checkDecisionTable, type DecisionTable } from './decision-table.ts';
import { type Condition, goOn, holds, type Rule, type RuleList, weightedMean, worthsUnder } from './rule-list.ts';

export interface SearchLimits {
  /** Reads of the longest list that is wanted, at most 8. */
  readonly mostReads: number;
  /** A condition that comes in a smaller share of the chances than this is not worth a child's mind. */
  readonly leastShare: number;
  /** And one that comes in fewer chances than this is known of by luck alone. */
  readonly leastComings: number;
  /** Whether "that man is not open" may be part of a condition too: a read that says what to look for is easier to hold. */
  readonly absence: boolean;
  /** Ordered lists that are tried for each number of reads; what conditions they are made of is chosen so that all can be. */
  readonly lists: number;
}

export const defaultSearchLimits: SearchLimits = {
  mostReads: 4,
  leastShare: 0.02,
  leastComings: 0,
  absence: true,
  lists: 150_000,
};

/** The best list of so many reads or fewer, and its worth in the chances that it was searched in: too high by what the search gained from luck. */
export interface FoundList {
  readonly list: RuleList;
  readonly worth: number;
}

/**
 * The best rule lists of a table for every number of reads from 0 to the most, in goals per chance; more reads are never worth less.
 *
 * The lists are not grown from an imitation of good decisions but searched for what they return. For given conditions in a given order the best
 * action of each is found by itself, because which chances a condition takes does not depend on the actions. So every ordered choice of
 * conditions is tried: all there are, as long as these are no more lists than the limit, otherwise those that do most for lists of one
 * and two. A list of more reads is also made of the best shorter list and any condition at any place in it.
 * RangeError for a broken table.
 */
export function searchRuleLists(
  table: DecisionTable,
  limits: SearchLimits = defaultSearchLimits,
): readonly FoundList[] {
  checkDecisionTable(table);
  const search = createSearch(table);
  const all = distinctConditions(table, limits);
  const found: FoundList[] = [foundBy(search, [])];
  let ranked = byWorth(search, all, []);
  for (let reads = 1; reads <= limits.mostReads; reads++) {
    const before = found[reads - 1];
    const candidates = ranked.slice(0, candidatesFor(reads, limits.lists));
    let best = conditionsIn(before, all);
    let worth = before.worth;
    const attempt = (conditions: readonly Fired[]): void => {
      const now = search.worthOf(conditions);
      if (now <= worth + tie) return;
      worth = now;
      best = [...conditions];
    };
    eachOrdered(candidates, reads, attempt);
    eachInserted(conditionsIn(before, all), all, attempt);
    found.push(worth > before.worth + tie ? foundBy(search, best) : before);
    // What helps most beside the best so far comes next to what helps most alone.
    if (reads === 1) ranked = interleaved(ranked, byWorth(search, all, best));
  }
  return found;
}

/** Lists that differ by less, goals per chance, are the same: then the shorter, and the one that was found first, stays. */
const tie = 1e-9;

/** A condition and when it first holds in each chance. */
interface Fired extends Condition {
  /** Moment, counted from the chance's first; `never` when it does not come. */
  readonly first_byChance: Uint8Array;
  /** Those in which it does. */
  readonly chances: Int32Array;
}

const never = 255;

/** Conditions of one cue or two, each way it can be; of those that come at the same moments always only the simplest. */
function distinctConditions(
  table: DecisionTable,
  { leastShare, leastComings, absence }: SearchLimits,
): readonly Fired[] {
  const byMoments = new Map<string, Fired>();
  for (const condition of conditionsOf(table.cues)) {
    if (!absence && condition.mustHold !== condition.looksAt) continue;
    const first_byChance = firstMoments(table, condition);
    const came = first_byChance.map((moment) => (moment === never ? 0 : 1));
    const share = weightedMean(came, table);
    const key = first_byChance.join();
    const chances = thoseWith(came);
    const counted = chances.filter((chance) => table.weight_byChance[chance] > 0).length;
    if (share < leastShare || share === 0 || counted < leastComings || byMoments.has(key)) continue;
    byMoments.set(key, { ...condition, first_byChance, chances });
  }
  return [...byMoments.values()];
}

function thoseWith(came: Uint8Array): Int32Array {
  return Int32Array.from(came.keys()).filter((chance) => came[chance] === 1);
}

function conditionsOf(cues: number): readonly Condition[] {
  const bits = Array.from({ length: cues }, (_, cue) => 1 << cue);
  const single = bits.flatMap((bit) => [
    { looksAt: bit, mustHold: bit },
    { looksAt: bit, mustHold: 0 },
  ]);
  const pairs = bits.flatMap((one, at) =>
    bits
      .slice(at + 1)
      .flatMap((other) => [one | other, one, other, 0].map((mustHold) => ({ looksAt: one | other, mustHold }))),
  );
  return [...single, ...pairs];
}

function firstMoments(table: DecisionTable, condition: Condition): Uint8Array {
  const first_byChance = new Uint8Array(chancesOf(table)).fill(never);
  for (let chance = 0; chance < first_byChance.length; chance++) {
    const begin = table.first_byChance[chance];
    const end = Math.min(table.first_byChance[chance + 1], begin + never);
    for (let moment = begin; moment < end && first_byChance[chance] === never; moment++) {
      if (holds(condition, table.cues_byMoment[moment])) first_byChance[chance] = moment - begin;
    }
  }
  return first_byChance;
}

interface Search {
  /** Goals per chance of the best list with these conditions in this order. */
  worthOf(conditions: readonly Fired[]): number;
  /** That list. */
  listOf(conditions: readonly Fired[]): RuleList;
  /** It once more, chance by chance. */
  meanOf(list: RuleList): number;
}

function createSearch(table: DecisionTable): Search {
  const all = table.weight_byChance.reduce((sum, each) => sum + each, 0);
  // Of the goals of all chances together.
  const tied = tie * all;
  const sums = createSums(table, tied);
  return {
    worthOf: (conditions) => {
      const { waiting, acting } = sums.of(conditions);
      return Math.max(waiting.goals, acting.goals) / all;
    },
    listOf: (conditions) => {
      const { waiting, acting } = sums.of(conditions);
      const { actions, lastResort } = acting.goals > waiting.goals + tied ? acting : waiting;
      const rules = conditions.map(({ looksAt, mustHold }, at): Rule => ({ looksAt, mustHold, action: actions[at] }));
      return { rules, lastResort };
    },
    meanOf: (list) => weightedMean(worthsUnder(list, table), table),
  };
}

/** The best actions for some conditions, and the goals of all chances that they bring. */
interface BestActions {
  goals: number;
  /** One for each condition. */
  readonly actions: Int32Array;
  lastResort: number;
}

/** For who waits for his conditions and then goes on, and for who acts at his first look in any case. Overwritten by the next question. */
interface Sums {
  of(conditions: readonly Fired[]): { readonly waiting: BestActions; readonly acting: BestActions };
}

/** More reads than this nobody holds in mind. */
const mostRules = 8;

/** Goals by rule and action for some conditions in their order, and which rule takes each chance. */
interface Level {
  /** Moment at which a rule takes the chance; `never` when none does. */
  readonly earliest_byChance: Uint8Array;
  /** That rule; `mostRules` when none does. */
  readonly rule_byChance: Uint8Array;
  /** For those who wait: rule * actions + action. */
  readonly waiting: Float64Array;
  /** For those who act at their first look; `mostRules` stands for the last resort. */
  readonly acting: Float64Array;
  /** Goals of the chances that are left to the play. */
  goOn: number;
}

// Questions that come one after the other begin with the same conditions nearly always: what is known of each beginning is kept, and a
// condition at its end only moves the chances in which it holds.
function createSums(table: DecisionTable, tied: number): Sums {
  const { actions } = table;
  const goals_byMomentAction = weightedGoals(table);
  const levels = Array.from({ length: mostRules + 1 }, () => createLevel(chancesOf(table), actions));
  fillFirst(levels[0], table, goals_byMomentAction);
  const waiting: BestActions = { goals: 0, actions: new Int32Array(mostRules), lastResort: goOn };
  const acting: BestActions = { goals: 0, actions: new Int32Array(mostRules), lastResort: 0 };
  let known: readonly Fired[] = [];
  const chooseBest = (sums: Float64Array, rules: number, best: BestActions): void => {
    for (let rule = 0; rule < rules; rule++) {
      best.actions[rule] = bestIn(sums, rule, actions, tied);
      best.goals += sums[rule * actions + best.actions[rule]];
    }
  };
  return {
    of: (conditions) => {
      const rules = conditions.length;
      let same = 0;
      while (same < rules && same < known.length && conditions[same] === known[same]) same += 1;
      for (let rule = same; rule < rules; rule++) {
        extendInto(levels[rule], conditions[rule], rule, table, goals_byMomentAction, levels[rule + 1]);
      }
      known = conditions;
      const level = levels[rules];
      waiting.goals = level.goOn;
      acting.goals = 0;
      chooseBest(level.waiting, rules, waiting);
      chooseBest(level.acting, rules, acting);
      acting.lastResort = bestIn(level.acting, mostRules, actions, tied);
      acting.goals += level.acting[mostRules * actions + acting.lastResort];
      return { waiting, acting };
    },
  };
}

function createLevel(chances: number, actions: number): Level {
  return {
    earliest_byChance: new Uint8Array(chances).fill(never),
    rule_byChance: new Uint8Array(chances).fill(mostRules),
    waiting: new Float64Array((mostRules + 1) * actions),
    acting: new Float64Array((mostRules + 1) * actions),
    goOn: 0,
  };
}

/** Goals of each action at each moment, by the chance's weight. */
function weightedGoals({
  actions,
  first_byChance,
  weight_byChance,
  worth_byMomentAction,
}: DecisionTable): Float64Array {
  const goals = Float64Array.from(worth_byMomentAction);
  for (let chance = 0; chance < weight_byChance.length; chance++) {
    const end = first_byChance[chance + 1] * actions;
    for (let at = first_byChance[chance] * actions; at < end; at++) goals[at] *= weight_byChance[chance];
  }
  return goals;
}

/** What it comes to without a condition. */
function fillFirst(level: Level, table: DecisionTable, goals_byMomentAction: Float64Array): void {
  const { actions, first_byChance, weight_byChance, goOn_byChance } = table;
  for (let chance = 0; chance < weight_byChance.length; chance++) {
    level.goOn += weight_byChance[chance] * goOn_byChance[chance];
    moveGoals(level.acting, -1, mostRules, goals_byMomentAction, first_byChance[chance], actions);
  }
}

/** What it comes to with one condition more, as rule number `rule`. */
function extendInto(
  before: Level,
  { chances, first_byChance }: Fired,
  rule: number,
  { actions, first_byChance: begin, weight_byChance, goOn_byChance }: DecisionTable,
  goals: Float64Array,
  out: Level,
): void {
  out.earliest_byChance.set(before.earliest_byChance);
  out.rule_byChance.set(before.rule_byChance);
  out.waiting.set(before.waiting);
  out.acting.set(before.acting);
  out.goOn = before.goOn;
  out.waiting.fill(0, rule * actions, (rule + 1) * actions);
  out.acting.fill(0, rule * actions, (rule + 1) * actions);
  for (let at = 0; at < chances.length; at++) {
    const chance = chances[at];
    const moment = first_byChance[chance];
    const earlier = before.earliest_byChance[chance];
    if (moment >= earlier) continue;
    const first = begin[chance];
    if (earlier === never) out.goOn -= weight_byChance[chance] * goOn_byChance[chance];
    else moveGoals(out.waiting, before.rule_byChance[chance], -1, goals, first + earlier, actions);
    moveGoals(out.waiting, -1, rule, goals, first + moment, actions);
    if (moment === 0) moveGoals(out.acting, mostRules, rule, goals, first, actions);
    out.earliest_byChance[chance] = moment;
    out.rule_byChance[chance] = rule;
  }
}

/** Take a moment's goals from one rule and give them to another; -1 is nobody. */
function moveGoals(
  sums: Float64Array,
  from: number,
  to: number,
  goals_byMomentAction: Float64Array,
  moment: number,
  actions: number,
): void {
  for (let action = 0; action < actions; action++) {
    const goals = goals_byMomentAction[moment * actions + action];
    if (from >= 0) sums[from * actions + action] -= goals;
    if (to >= 0) sums[to * actions + action] += goals;
  }
}

function bestIn(sums: Float64Array, rule: number, actions: number, tied: number): number {
  let best = 0;
  for (let action = 1; action < actions; action++) {
    if (sums[rule * actions + action] > sums[rule * actions + best] + tied) best = action;
  }
  return best;
}

function foundBy(search: Search, conditions: readonly Fired[]): FoundList {
  const list = search.listOf(conditions);
  return { list, worth: search.meanOf(list) };
}

/** So many conditions that all ordered lists of that many reads are no more than the limit. */
function candidatesFor(reads: number, lists: number): number {
  let count = reads;
  const listsOf = (from: number): number =>
    Array.from({ length: reads }, (_, at) => from - at).reduce((a, b) => a * b, 1);
  while (count < 10_000 && listsOf(count + 1) <= lists) count += 1;
  return count;
}

/** Conditions by what they add to a list when they are put first, the best first. */
function byWorth(search: Search, conditions: readonly Fired[], before: readonly Fired[]): readonly Fired[] {
  return conditions
    .map((condition) => ({ condition, worth: search.worthOf([condition, ...before]) }))
    .sort((a, b) => b.worth - a.worth)
    .map(({ condition }) => condition);
}

function interleaved(ones: readonly Fired[], others: readonly Fired[]): readonly Fired[] {
  return [...new Set(ones.flatMap((one, at) => [one, others[at]]))];
}

function conditionsIn({ list }: FoundList, all: readonly Fired[]): readonly Fired[] {
  return list.rules.map(
    ({ looksAt, mustHold }) => all.find((each) => each.looksAt === looksAt && each.mustHold === mustHold)!,
  );
}

/** Every ordered choice of so many of them. */
function eachOrdered(
  candidates: readonly Fired[],
  count: number,
  use: (conditions: readonly Fired[]) => void,
  chosen: readonly Fired[] = [],
): void {
  if (chosen.length === count) use(chosen);
  else
    for (const candidate of candidates) {
      if (!chosen.includes(candidate)) eachOrdered(candidates, count, use, [...chosen, candidate]);
    }
}

/** The list with one more condition, each at each place. */
function eachInserted(
  list: readonly Fired[],
  candidates: readonly Fired[],
  use: (conditions: readonly Fired[]) => void,
): void {
  const others = candidates.filter((candidate) => !list.includes(candidate));
  for (let at = 0; at <= list.length; at++) {
    for (const candidate of others) use([...list.slice(0, at), candidate, ...list.slice(at)]);
  }
}
