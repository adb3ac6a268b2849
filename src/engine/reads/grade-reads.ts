import type { CompiledCue } from '../chance/program.ts';
import type { Cue, Play, Read } from '../offense/play.ts';
import type { Interval } from '../trials/report.ts';
import { actionOfRead, carrierActions } from './carrier-actions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import type { DecisionTable } from './decision-table.ts';
import type { CarrierLook } from './gather-decisions.ts';
import { measureIn, measureWhere } from './measure-decisions.ts';
import { type Condition, goOn, holds, weightedMean } from './rule-list.ts';

/** Chances as a table, with what a table leaves out of their looks. */
export interface GradedChances {
  readonly table: DecisionTable;
  readonly looks: readonly Pick<CarrierLook, 'beat' | 'time'>[];
}

/** What one taught read is good for, in chances that nothing was learnt from. Goals a chance; intervals 95 %. */
export interface ReadGrade {
  /** Its number in the play. */
  readonly read: number;
  /** Share of his possessions in which he sees its cues before the play has him throw. */
  readonly comes: number;
  /** How it does where it comes; `null` when it comes in too few chances to tell. */
  readonly there: GradeThere | null;
  /** What is lost when he does it at his first look although the cues are not there, against leaving it to the play; `null` when they nearly always are. */
  readonly wrongWay: Interval | null;
  /** What the read alone is worth over all his possessions, more than leaving it to the play. */
  readonly gain: Interval;
  /** The best read that keeps its cues or what it has him do; `null` when none was better where it was learnt. */
  readonly better: BetterRead | null;
}

export interface GradeThere {
  /** Seconds from the moment that he can act until he sees it, on average. */
  readonly after: number;
  /** By what the read has him do, by the play, and by what was found to be best there. */
  readonly goals: Interval;
  readonly goOn: Interval;
  readonly best: Interval;
  /** Number of the action that did most there where it was learnt; `goOn` when leaving it to the play did. */
  readonly bestAction: number;
  /** How much more than leaving it to the play, and how much less than the best. */
  readonly earns: Interval;
  readonly short: Interval;
  /** How much more it would have been one look earlier, where he had one; `null` when he had too few. */
  readonly earlier: Interval | null;
  /** Share of these in which it shows only as the play has him throw. */
  readonly lastMoment: number;
}

export interface BetterRead {
  readonly condition: Condition;
  readonly action: number;
  /** How much more than the taught read, over all his possessions. */
  readonly gain: Interval;
}

/** Fewer chances than this tell nothing of a read. */
const leastToTell = 20;
/** A read that comes in a smaller share of the possessions is not offered. */
const leastShare = 0.04;

/** Grades each read that a play teaches a carrier and that his looks can tell of, in the play's order. */
export function gradeReads(
  play: Play,
  carrier: number,
  learn: GradedChances,
  held: GradedChances,
): readonly ReadGrade[] {
  return play.reads.flatMap((read, number) => {
    if (read.carrier !== play.spots[carrier]!.id) return [];
    const rule = ruleOf(play, carrier, number);
    return rule === undefined
      ? []
      : [gradeRead(rule, candidatesFor(carrierActions(play, carrier).length, held.table.cues, rule), learn, held)];
  });
}

/** A read in the terms of a table; while `during` is the newest beat, -1 at any time. */
interface TaughtRule extends Condition {
  readonly read: number;
  readonly action: number;
  readonly during: number;
}

function ruleOf(play: Play, carrier: number, number: number): TaughtRule | undefined {
  const read: Read = play.reads[number]!;
  const vocabulary = cueVocabulary(carrier);
  const bits = read.cues.map((cue) => vocabulary.findIndex((known) => isSameCue(play, cue, known)));
  const action = actionOfRead(play, carrier, number);
  if (bits.includes(-1) || action < 0) return undefined;
  const looksAt = bits.reduce((all, bit) => all | (1 << bit), 0);
  const during = read.during === undefined ? -1 : play.beats.findIndex(({ id }) => id === read.during);
  return { read: number, looksAt, mustHold: looksAt, action, during };
}

function isSameCue(play: Play, cue: Cue, known: CompiledCue): boolean {
  if (cue.kind !== known.kind) return false;
  return !('who' in cue) || !('who' in known) || play.spots[known.who]!.id === cue.who;
}

/** The same cues with any action, and the same action for any cue or two. */
function candidatesFor(actions: number, cues: number, rule: TaughtRule): readonly TaughtRule[] {
  const sameCues = Array.from({ length: actions }, (_, action): TaughtRule => ({ ...rule, action }));
  const bits = Array.from({ length: cues }, (_, cue) => 1 << cue);
  const pairs = bits.flatMap((one, at) => bits.slice(at + 1).map((other) => one | other));
  const sameAction = [...bits, ...pairs].map((looksAt): TaughtRule => ({ ...rule, looksAt, mustHold: looksAt }));
  return [...sameCues, ...sameAction];
}

function gradeRead(
  rule: TaughtRule,
  candidates: readonly TaughtRule[],
  learn: GradedChances,
  held: GradedChances,
): ReadGrade {
  const { table } = held;
  const fired = momentsOf(rule, held);
  const comes = (chance: number): boolean => fired[chance] >= 0;
  const worths = worthsAlone(rule, fired, table);
  return {
    read: rule.read,
    comes: shareOf(fired, table),
    there:
      fired.filter((moment) => moment >= 0).length < leastToTell ? null : gradeThere(rule, fired, comes, learn, held),
    wrongWay: wrongWay(rule, fired, table),
    gain: measureIn(table).decisions(worths).gain,
    better: betterThan(rule, candidates, learn, held, worths),
  };
}

/** The moment at which a rule acts in each chance; -1 where it never does. */
function momentsOf({ during, ...condition }: TaughtRule, { table, looks }: GradedChances): Int32Array {
  return Int32Array.from(table.goOn_byChance, (_, chance) => {
    for (let moment = table.first_byChance[chance]; moment < table.first_byChance[chance + 1]; moment++) {
      const isNow = during < 0 || looks[moment]!.beat === during;
      if (isNow && holds(condition, table.cues_byMoment[moment])) return moment;
    }
    return -1;
  });
}

/** What each chance comes to when this is the only read. */
function worthsAlone({ action }: TaughtRule, fired: Int32Array, table: DecisionTable): Float64Array {
  return Float64Array.from(fired, (moment, chance) =>
    moment < 0 ? table.goOn_byChance[chance] : worthAt(table, moment, action),
  );
}

function worthAt({ worth_byMomentAction, actions }: DecisionTable, moment: number, action: number): number {
  return worth_byMomentAction[moment * actions + action];
}

function shareOf(fired: Int32Array, table: DecisionTable): number {
  return weightedMean(
    fired.map((moment) => (moment < 0 ? 0 : 1)),
    table,
  );
}

function gradeThere(
  rule: TaughtRule,
  fired: Int32Array,
  comes: (chance: number) => boolean,
  learn: GradedChances,
  { table, looks }: GradedChances,
): GradeThere {
  const there = measureWhere(table, comes);
  const by = (action: number): ArrayLike<number> =>
    action === goOn ? table.goOn_byChance : worthsAlone({ ...rule, action }, fired, table);
  const [own, bestAction] = [by(rule.action), bestActionAt(momentsOf(rule, learn), learn.table)];
  const best = by(bestAction);
  const first = (chance: number): number => table.first_byChance[chance];
  const earlier = (chance: number): boolean => comes(chance) && fired[chance] > first(chance);
  const before = Float64Array.from(fired, (moment, chance) =>
    earlier(chance) ? worthAt(table, moment - 1, rule.action) : 0,
  );
  const after = Float64Array.from(fired, (moment, chance) =>
    moment < 0 ? 0 : looks[moment]!.time - looks[first(chance)]!.time,
  );
  const last = Float64Array.from(fired, (moment, chance) => (moment === table.first_byChance[chance + 1] - 1 ? 1 : 0));
  const hadTime = fired.reduce((count, _, chance) => count + (earlier(chance) ? 1 : 0), 0);
  return {
    after: there.goals(after).mean,
    goals: there.goals(own),
    goOn: there.goals(table.goOn_byChance),
    best: there.goals(best),
    bestAction,
    earns: there.difference(own, table.goOn_byChance),
    short: there.difference(best, own),
    earlier: hadTime < leastToTell ? null : measureWhere(table, earlier).difference(before, own),
    lastMoment: there.goals(last).mean,
  };
}

/** The action that does most at some moments, one of a chance or -1, on average; `goOn` when none does more than the play. */
function bestActionAt(fired: Int32Array, table: DecisionTable): number {
  const sums = new Float64Array(table.actions);
  let byPlay = 0;
  fired.forEach((moment, chance) => {
    if (moment < 0) return;
    byPlay += table.weight_byChance[chance] * table.goOn_byChance[chance];
    for (let action = 0; action < table.actions; action++) {
      sums[action] += table.weight_byChance[chance] * worthAt(table, moment, action);
    }
  });
  const best = sums.reduce((most, sum, action) => (sum > sums[most] ? action : most), 0);
  return sums[best] > byPlay ? best : goOn;
}

function wrongWay(rule: TaughtRule, fired: Int32Array, table: DecisionTable): Interval | null {
  const isWrong = (chance: number): boolean => fired[chance] !== table.first_byChance[chance];
  const wrong = fired.reduce((count, _, chance) => count + (isWrong(chance) ? 1 : 0), 0);
  if (wrong < leastToTell) return null;
  const atOnce = Float64Array.from(fired, (_, chance) => worthAt(table, table.first_byChance[chance], rule.action));
  return measureWhere(table, isWrong).difference(table.goOn_byChance, atOnce);
}

function betterThan(
  rule: TaughtRule,
  candidates: readonly TaughtRule[],
  learn: GradedChances,
  held: GradedChances,
  worths: Float64Array,
): BetterRead | null {
  const learnt = (candidate: TaughtRule): number => {
    const fired = momentsOf(candidate, learn);
    if (shareOf(fired, learn.table) < leastShare) return Number.NEGATIVE_INFINITY;
    return weightedMean(worthsAlone(candidate, fired, learn.table), learn.table);
  };
  let best = rule;
  let most = weightedMean(worthsAlone(rule, momentsOf(rule, learn), learn.table), learn.table);
  for (const candidate of candidates) {
    const worth = learnt(candidate);
    if (worth <= most + 1e-9) continue;
    best = candidate;
    most = worth;
  }
  if (best === rule) return null;
  const { looksAt, mustHold, action } = best;
  const better = worthsAlone(best, momentsOf(best, held), held.table);
  return { condition: { looksAt, mustHold }, action, gain: measureIn(held.table).difference(better, worths) };
}
