import type { Point } from '../geometry/point.ts';
import type { Play } from '../offense/play.ts';
import type { Interval } from '../trials/report.ts';
import { examplesOf, type ReadExample } from './card-examples.ts';
import { chancesOf, type DecisionTable } from './decision-table.ts';
import type { CarrierChance, Outcome } from './gather-decisions.ts';
import { gradeReads, type ReadGrade } from './grade-reads.ts';
import { knowTheScheme, type SchemeKnown } from './know-the-scheme.ts';
import { learnDecisions, ridge, tryDecisions } from './learn-decisions.ts';
import { type Keeping, learnKeeping, worthOf } from './learn-keeping.ts';
import { measureIn, measureWhere, type ValuedDecisions } from './measure-decisions.ts';
import type { RuleList } from './rule-list.ts';
import {
  allChances,
  isIn,
  type SchemeChances,
  type SchemeSpan,
  shareThatComes,
  spansOf,
  tableOf,
} from './scheme-chances.ts';
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
  const learnt = learnDecisions(play, carrier, learn, limits);
  const tried = tryDecisions(play, carrier, learnt, held);
  const { table, byBest: best, byLists } = tried;
  const spans = spansOf(held);
  const measure = measureIn(table);
  const cards = learnt.lists.map(({ list, worth }, reads) => ({ list, learnt: worth, worths: byLists[reads]! }));
  return {
    carrier,
    comes: shareThatComes(held),
    learntFrom: chancesOf(learnt.table),
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
    byScheme: spans.map((span) => {
      const within = measureWhere(table, isIn(span));
      return {
        scheme: span.scheme,
        goOn: within.goals(table.goOn_byChance),
        best: within.goals(best),
        gain_byCard: cards.map(({ worths }) => within.decisions(worths).gain),
      };
    }),
    known: knowTheScheme(
      { ...learnt, spans: spansOf(learn) },
      { ...tried, spans },
      cards.map(({ worths }) => worths),
      limits,
      ridge,
    ),
    grades: gradeReads(play, carrier, graded(learnt, learn), graded(tried, held)),
  };
}

/** Fewer chances than this tell nothing of decisions. */
const leastChances = 40;

function graded({ table }: { readonly table: DecisionTable }, gathered: readonly SchemeChances[]) {
  return { table, looks: allChances(gathered).flatMap(({ looks }) => looks) };
}

function meanPlace(chances: readonly CarrierChance[]): Point {
  const places = chances.map(({ looks }) => looks[0].at);
  const mean = (axis: 0 | 1): number => places.reduce((sum, place) => sum + place[axis], 0) / places.length;
  return { x: mean(0), y: mean(1) };
}

/** A carrier's held chances as `studyCarrier` counts them, for what is measured in them beside it. */
export interface HeldChances {
  readonly keeping: Keeping;
  readonly table: DecisionTable;
  readonly spans: readonly SchemeSpan[];
}

/** The held chances of a carrier, a ball that is still in hand being worth what the others taught. RangeError when there is none. */
export function heldChances(carrier: number, { learn, held }: Gathered): HeldChances {
  const keeping = learnKeeping(allChances(learn));
  return { keeping, table: tableOf(carrier, held, keeping), spans: spansOf(held) };
}

/**
 * What held chances come to when the carrier goes by another guidance in them: `outcomes` are those of `playGuided`, one for each in their order.
 * RangeError when there are more or fewer.
 */
export function valueGuided(held: HeldChances, outcomes: readonly Outcome[]): ValuedDecisions {
  return measureIn(held.table).decisions(worthsGuided(held, outcomes));
}

/** What each held chance comes to by the outcomes of `playGuided`, goals. RangeError when there are more or fewer of them. */
export function worthsGuided({ keeping, table }: HeldChances, outcomes: readonly Outcome[]): readonly number[] {
  if (chancesOf(table) !== outcomes.length) {
    throw new RangeError(`invalid outcomes: ${outcomes.length} (expected ${chancesOf(table)})`);
  }
  return outcomes.map((outcome) => worthOf(outcome, keeping));
}
