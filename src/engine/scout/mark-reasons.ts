import type { Point } from '../geometry/point.ts';
import type { FilmReading, SuspectFilm } from './film-odds.ts';
import { oddsOfMarks } from './mark-odds.ts';
import type { MarkedFilm } from './marked-film.ts';
import type { WeighedSuspect } from './suspects.ts';

/** Why one mark speaks for one scheme rather than for another. */
export interface MarkReason {
  readonly film: number;
  readonly moment: number;
  /** Number of the mark among the moment's defenders. */
  readonly mark: number;
  readonly at: Point;
  /** Number of the scheme that it speaks for, and of the one that it speaks against. */
  readonly speaksFor: number;
  readonly against: number;
  /** How many times likelier it is there, given the other marks, as it was counted: over 1. */
  readonly odds: number;
  /** Who of the scheme that it speaks for is most likely meant, and what he does then. */
  readonly man: ReasonMan;
  /** Who of the other scheme is nearest to the mark; what he would be doing, and how far away. */
  readonly instead: ReasonMan;
}

export interface ReasonMan {
  /** Index among the scheme's names. */
  readonly defender: number;
  /** His duty: a kind of `duty`, and the offense indices that it names or -1. */
  readonly kind: number;
  readonly a: number;
  readonly b: number;
  /** How far from the mark the scheme has him, yards. */
  readonly away: number;
}

export interface ReasonContext {
  readonly suspects: readonly WeighedSuspect[];
  /** How likely each suspect is once it is known that it is his scheme. */
  readonly shares: readonly number[];
  readonly read: readonly SuspectFilm[];
  /** The schemes that are told apart. */
  readonly between: readonly [number, number];
  readonly reading: FilmReading;
}

/** A mark that is less than this many times likelier on one side says nothing worth reading. */
const leastOdds = 1.5;

/**
 * What each mark of a film says between two schemes: how much less surely they would be told apart without it, all other marks of its moment being as they are. So
 * what the others already say is not said twice.
 */
export function reasonsOfMarks(film: MarkedFilm, number: number, context: ReasonContext): readonly MarkReason[] {
  const [first, second] = context.between;
  if (first === second) return [];
  return film.moments.flatMap(({ defenders }, moment) => {
    const marks = Float64Array.from(defenders.flatMap(({ x, y }) => [x, y]));
    const whole = [first, second].map((of) => schemeOdds(context, of, moment, marks, -1)) as [number, number];
    return defenders.flatMap((at, mark): readonly MarkReason[] => {
      const without = [first, second].map((of) => schemeOdds(context, of, moment, marks, mark)) as [number, number];
      const ratio = whole[0] / without[0] / (whole[1] / without[1]);
      if (!(ratio >= leastOdds || ratio <= 1 / leastOdds)) return [];
      const [speaksFor, against] = ratio > 1 ? [first, second] : [second, first];
      return [
        {
          film: number,
          moment,
          mark,
          at,
          speaksFor,
          against,
          odds: counted(Math.max(ratio, 1 / ratio), context.reading),
          man: manAt(context, speaksFor, moment, at),
          instead: manAt(context, against, moment, at),
        },
      ];
    });
  });
}

/** Odds of a mark as its moment counts: no more than its doubt allows, and by its trust. */
function counted(odds: number, { doubt, trust }: FilmReading): number {
  return Math.min(odds, 1 / doubt) ** trust;
}

/** How likely marks are against a scheme, over its suspects and takes. */
function schemeOdds(
  { suspects, shares, read, reading }: ReasonContext,
  of: number,
  moment: number,
  marks: Float64Array,
  leftOut: number,
): number {
  let sum = 0;
  for (const [at, suspect] of suspects.entries()) {
    if (suspect.of !== of || shares[at]! < leastShare) continue;
    const men = suspect.scheme.defenders;
    const { takes } = read[at]!;
    for (const { places_byMoment } of takes) {
      const odds = oddsOfMarks(marks, leftOut, places_byMoment, 2 * men * moment, men, reading.spread);
      sum += (shares[at]! * odds) / takes.length;
    }
  }
  return sum;
}

/** A suspect who is less likely than this within his scheme changes no reason. */
const leastShare = 0.01;

/** Who of a scheme stands nearest to a place on average, in what its likeliest suspect did, and what he is usually doing. */
function manAt({ suspects, shares, read }: ReasonContext, of: number, moment: number, place: Point): ReasonMan {
  const likeliest = suspects.reduce(
    (best, one, at) => (one.of === of && (best < 0 || shares[at]! > shares[best]!) ? at : best),
    -1,
  );
  const men = suspects[likeliest]!.scheme.defenders;
  const { takes } = read[likeliest]!;
  const away = (take: number, defender: number): number => {
    const { places_byMoment } = takes[take]!;
    const from = 2 * (men * moment + defender);
    return Math.hypot(places_byMoment[from]! - place.x, places_byMoment[from + 1]! - place.y);
  };
  const mean_byDefender = Array.from(
    { length: men },
    (_, defender) => takes.reduce((sum, __, take) => sum + away(take, defender), 0) / takes.length,
  );
  const defender = mean_byDefender.indexOf(Math.min(...mean_byDefender));
  const nearest = takes.reduce((best, _, take) => (away(take, defender) < away(best, defender) ? take : best), 0);
  const { duties_byMoment } = takes[nearest]!;
  const from = 3 * (men * moment + defender);
  return {
    defender,
    kind: duties_byMoment[from]!,
    a: duties_byMoment[from + 1]!,
    b: duties_byMoment[from + 2]!,
    away: mean_byDefender[defender]!,
  };
}
