import type { Point } from '../geometry/point.ts';
import type { Play } from '../offense/play.ts';
import type { Interval } from '../trials/report.ts';
import { examplesOf, type ReadExample } from './card-examples.ts';
import { carrierActions } from './carrier-actions.ts';
import { chancesOf } from './decision-table.ts';
import type { CarrierChance, Outcome } from './gather-decisions.ts';
import { gradeReads, type ReadGrade } from './grade-reads.ts';
import { knowTheScheme, type SchemeKnown, type SpannedTable } from './know-the-scheme.ts';
import { learnDecisions, ridge, tryDecisions } from './learn-decisions.ts';
import { type Keeping, learnKeeping, worthOf } from './learn-keeping.ts';
import { measureIn, measureWhere, type ValuedDecisions } from './measure-decisions.ts';
import { numbersOf } from './numbers-of-looks.ts';
import type { RuleList } from './rule-list.ts';
import { allChances, type SchemeChances, shareThatComes, spansOf, tableOf } from './scheme-chances.ts';
import type { SearchLimits } from './search-rule-lists.ts';

export interface ValuedCard extends ValuedDecisions {
  readonly list: RuleList;
  /** What the search found it worth in the chances that it was searched in: too high. */
  readonly learnt: number;
  /** How much more it comes to than the card of one read fewer, in the same chances; `null` for the card of none. */
  readonly overShorter: Interval | null;
  /** A trial in which each read is acted on; `null` for one that never is. */
  readonly examples: readonly (ReadExample | null)[];
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
  /** How many reads are worth holding in mind, by the chances that were learnt from: see `tryUnmet`. */
  readonly worthHolding: number;
  readonly byScheme: readonly {
    readonly scheme: string;
    readonly goOn: Interval;
    readonly best: Interval;
    /** One for each card, how much more than leaving it to the play. */
    readonly gain_byCard: readonly Interval[];
  }[];
  /** What it is worth to know the scheme. */
  readonly known: SchemeKnown;
  /** The reads that the play teaches him, each by itself. */
  readonly grades: readonly ReadGrade[];
}

/** The chances that are learnt from, and others to measure in. */
export interface Gathered {
  readonly learn: readonly SchemeChances[];
  readonly held: readonly SchemeChances[];
}

/**
 * What one carrier's reads are worth: the best decisions and the best cards are learnt in one half of the chances and measured in the
 * other. `null` when the play hardly ever brings him the ball: fewer than `leastChances` in a half.
 */
export function studyCarrier(
  play: Play,
  carrier: number,
  { learn, held }: Gathered,
  limits: SearchLimits,
): CarrierStudy | null {
  if (allChances(learn).length < leastChances || allChances(held).length < leastChances) return null;
  const keeping = learnKeeping(allChances(learn));
  const [learning, holding] = [spanned(play, carrier, learn, keeping), spanned(play, carrier, held, keeping)];
  const { table } = holding;
  const learnt = learnDecisions(play, carrier, learn, limits);
  const { byBest: best, byLists } = tryDecisions(play, carrier, learnt, held);
  const measure = measureIn(table);
  const cards = learnt.lists.map(({ list, worth }, reads) => ({ list, learnt: worth, worths: byLists[reads]! }));
  return {
    carrier,
    comes: shareThatComes(held),
    learntFrom: chancesOf(learning.table),
    measuredIn: chancesOf(table),
    at: meanPlace(allChances(held)),
    goOn: measure.goals(table.goOn_byChance),
    best: measure.decisions(best),
    cards: cards.map(({ list, learnt, worths }, reads) => ({
      list,
      learnt,
      overShorter: reads === 0 ? null : measure.difference(worths, cards[reads - 1]!.worths),
      examples: examplesOf(play, carrier, list, held, table),
      ...measure.decisions(worths),
    })),
    worthHolding: learnt.unmet.worthHolding,
    byScheme: holding.spans.map(({ scheme, from, to }) => {
      const within = measureWhere(table, (chance) => chance >= from && chance < to);
      return {
        scheme,
        goOn: within.goals(table.goOn_byChance),
        best: within.goals(best),
        gain_byCard: cards.map(({ worths }) => within.decisions(worths).gain),
      };
    }),
    known: knowTheScheme(
      learning,
      holding,
      cards.map(({ worths }) => worths),
      limits,
      ridge,
    ),
    grades: gradeReads(play, carrier, graded(learning, learn), graded(holding, held)),
  };
}

/** Fewer chances than this tell nothing of decisions. */
const leastChances = 40;

function spanned(play: Play, carrier: number, gathered: readonly SchemeChances[], keeping: Keeping): SpannedTable {
  return {
    table: tableOf(carrier, gathered, keeping),
    numbers: numbersOf(carrier, allChances(gathered), carrierActions(play, carrier).length),
    spans: spansOf(gathered),
  };
}

function graded({ table }: SpannedTable, gathered: readonly SchemeChances[]) {
  return { table, looks: allChances(gathered).flatMap(({ looks }) => looks) };
}

function meanPlace(chances: readonly CarrierChance[]): Point {
  const places = chances.map(({ looks }) => looks[0].at);
  const mean = (axis: 0 | 1): number => places.reduce((sum, place) => sum + place[axis], 0) / places.length;
  return { x: mean(0), y: mean(1) };
}

/**
 * What a carrier's chances come to when he goes by another guidance in them, as `studyCarrier` counts it: `outcomes` are those of
 * `playGuided`, one for each held chance in their order. RangeError when there are more or fewer.
 */
export function valueGuided(carrier: number, { learn, held }: Gathered, outcomes: readonly Outcome[]): ValuedDecisions {
  const keeping = learnKeeping(allChances(learn));
  const table = tableOf(carrier, held, keeping);
  if (chancesOf(table) !== outcomes.length) {
    throw new RangeError(`invalid outcomes: ${outcomes.length} (expected ${chancesOf(table)})`);
  }
  return measureIn(table).decisions(outcomes.map((outcome) => worthOf(outcome, keeping)));
}
