import { chancesOf, checkDecisionTable, type DecisionTable } from './decision-table.ts';
import { type Condition, goOn, holds, type Rule, type RuleList, weightedMean, worthsUnder } from './rule-list.ts';

export interface SearchLimits {
  /** Reads of the longest list that is wanted, at most 8. */
  readonly mostReads: number;
  /** A condition that comes in a smaller share of the chances than this is not worth a child's mind. */
  readonly leastShare: number;
  /** Whether "that man is not open" may be part of a condition too: a read that says what to look for is easier to hold. */
  readonly absence: boolean;
  /** Ordered lists that are tried for each number of reads; what conditions they are made of is chosen so that all can be. */
  readonly lists: number;
}

export const defaultSearchLimits: SearchLimits = { mostReads: 4, leastShare: 0.02, absence: true, lists: 150_000 };

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
}

const never = 255;

/** Conditions of one cue or two, each way it can be; of those that come at the same moments always only the simplest. */
function distinctConditions(table: DecisionTable, { leastShare, absence }: SearchLimits): readonly Fired[] {
  const byMoments = new Map<string, Fired>();
  for (const condition of conditionsOf(table.cues)) {
    if (!absence && condition.mustHold !== condition.looksAt) continue;
    const first_byChance = firstMoments(table, condition);
    const came = first_byChance.map((moment) => (moment === never ? 0 : 1));
    const share = weightedMean(came, table);
    const key = first_byChance.join();
    if (share >= leastShare && share > 0 && !byMoments.has(key)) byMoments.set(key, { ...condition, first_byChance });
  }
  return [...byMoments.values()];
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

function createSums(table: DecisionTable, tied: number): Sums {
  const { actions, first_byChance: begin, weight_byChance: weight, worth_byMomentAction: worth } = table;
  const chances = chancesOf(table);
  const waiting: BestActions = { goals: 0, actions: new Int32Array(mostRules), lastResort: goOn };
  const acting: BestActions = { goals: 0, actions: new Int32Array(mostRules), lastResort: 0 };
  // Goals by rule and action, for those who wait and for those who act at once; the rule after the last is the last resort.
  const waitingSums = new Float64Array((mostRules + 1) * actions);
  const actingSums = new Float64Array((mostRules + 1) * actions);
  const add = (sums: Float64Array, rule: number, chance: number, moment: number): void => {
    for (let action = 0; action < actions; action++) {
      sums[rule * actions + action] += weight[chance] * worth[moment * actions + action];
    }
  };
  const chooseBest = (sums: Float64Array, rules: number, best: BestActions): void => {
    for (let rule = 0; rule < rules; rule++) {
      best.actions[rule] = bestIn(sums, rule, actions, tied);
      best.goals += sums[rule * actions + best.actions[rule]];
    }
  };
  return {
    of: (conditions) => {
      const rules = conditions.length;
      waitingSums.fill(0, 0, rules * actions);
      actingSums.fill(0, 0, (rules + 1) * actions);
      waiting.goals = 0;
      acting.goals = 0;
      for (let chance = 0; chance < chances; chance++) {
        let rule = rules;
        let earliest = never;
        for (let at = 0; at < rules; at++) {
          const moment = conditions[at].first_byChance[chance];
          if (moment >= earliest) continue;
          earliest = moment;
          rule = at;
        }
        if (earliest === never) waiting.goals += weight[chance] * table.goOn_byChance[chance];
        else add(waitingSums, rule, chance, begin[chance] + earliest);
        add(actingSums, earliest === 0 ? rule : rules, chance, begin[chance]);
      }
      chooseBest(waitingSums, rules, waiting);
      chooseBest(actingSums, rules, acting);
      acting.lastResort = bestIn(actingSums, rules, actions, tied);
      acting.goals += actingSums[rules * actions + acting.lastResort];
      return { waiting, acting };
    },
  };
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
  for (const candidate of candidates) {
    if (list.includes(candidate)) continue;
    for (let at = 0; at <= list.length; at++) use([...list.slice(0, at), candidate, ...list.slice(at)]);
  }
}
