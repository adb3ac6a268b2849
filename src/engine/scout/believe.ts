import type { DisciplineName } from '../defense/discipline.ts';
import type { Level } from '../people/athlete.ts';
import { defaultFilmReading, type FilmReading, oddsAtMoment, readFilm, type SuspectFilm } from './film-odds.ts';
import { type MarkReason, reasonsOfMarks } from './mark-reasons.ts';
import type { MarkedFilm } from './marked-film.ts';
import type { SignTable, Tick } from './sign-table.ts';
import { logOddsOfTicks } from './sign-table.ts';
import { type SchemeInQuestion, suspectsOf, type WeighedSuspect } from './suspects.ts';

/** What is to be decided, and from what. */
export interface BeliefQuestion {
  readonly schemes: readonly SchemeInQuestion[];
  readonly level: Level;
  /** Man-ups of one opponent that were marked; each is seen afresh but for what does not change between them. */
  readonly films?: readonly MarkedFilm[];
  /** Signs that were ticked, and how often each is seen against each suspect. */
  readonly ticks?: { readonly table: SignTable; readonly seen: readonly Tick[] };
  readonly reading?: FilmReading;
}

/** What is believed of one scheme. */
export interface BelievedScheme {
  readonly scheme: string;
  /** Share before anything was seen, and after, 0 to 1; those of all schemes add up to 1. */
  readonly before: number;
  readonly share: number;
  /** If it is this one: how well they play it. Shares that add up to 1. */
  readonly discipline: Readonly<Partial<Record<DisciplineName, number>>>;
  /** If it is a shutoff: how likely each of the six is the man shut off; empty for the others. */
  readonly stars: readonly number[];
}

/** What one moment says, all its marks together. */
export interface MomentSays {
  readonly film: number;
  readonly moment: number;
  /** How likely its marks are against each scheme, beside the likeliest: 1 for that one. In the order of the schemes in question. */
  readonly odds_byScheme: readonly number[];
}

export interface SchemeBelief {
  /** In the order of the schemes in question. */
  readonly schemes: readonly BelievedScheme[];
  readonly moments: readonly MomentSays[];
  /** What spoke most for the likeliest scheme and against the next, and the other way; what says most first. */
  readonly reasons: readonly MarkReason[];
  /** Schemes that nothing seen so far tells from the likeliest: they stand alike with this set and this ball. Numbers, without the likeliest itself. */
  readonly alike: readonly number[];
  /** The two that `reasons` are about: the likeliest, and the likeliest of those that do not stand alike with it; the same number twice when there is none. */
  readonly between: readonly [number, number];
}

/**
 * Which scheme it is, by Bayes: how likely the marks and ticks are when a unit plays it, times how likely that was before. What is not asked, how well they play and
 * whom they shut off, is summed over.
 *
 * Moments count as independent once it is known who plays what and how well. Marks of one moment do not: they are weighed together, whoever of the men each is.
 * RangeError for no schemes, weights that are not 0 or more, or a film that cannot be followed.
 */
export function believeSchemes(question: BeliefQuestion): SchemeBelief {
  const { schemes, level, films = [], ticks, reading = defaultFilmReading } = question;
  checkSchemes(schemes);
  const suspects = suspectsOf(schemes, level);
  const read = films.map((film) => readFilm(film, suspects, level, reading));
  const said = suspects.map((suspect, at) => {
    let sum = Math.log(suspect.share) + (ticks === undefined ? 0 : logOddsOfTicks(ticks.table, suspect, ticks.seen));
    for (const [number, film] of films.entries())
      for (let moment = 0; moment < film.moments.length; moment++)
        sum += reading.trust * Math.log(oddsAtMoment(read[number]![at]!, moment));
    return sum;
  });
  const believed = schemesBelieved(schemes, suspects, said);
  const order = believed.map((_, at) => at).sort((one, other) => believed[other]!.share - believed[one]!.share);
  const [first] = order as [number];
  const alike = order.filter((at) => at !== first && standsAlike(believed[first]!, believed[at]!));
  const between = [first, order.find((at) => at !== first && !alike.includes(at)) ?? first] as const;
  const shares = sharesWithin(suspects, said);
  return {
    schemes: believed,
    alike,
    between,
    moments: films.flatMap((film, number) =>
      film.moments.map((_, moment) => ({
        film: number,
        moment,
        odds_byScheme: momentOdds(schemes.length, suspects, shares, read[number]!, moment),
      })),
    ),
    reasons: films
      .flatMap((film, number) =>
        reasonsOfMarks(film, number, { suspects, shares, read: read[number]!, between, reading }),
      )
      .sort((one, other) => Math.abs(Math.log(other.odds)) - Math.abs(Math.log(one.odds))),
  };
}

function schemesBelieved(
  schemes: readonly SchemeInQuestion[],
  suspects: readonly WeighedSuspect[],
  said: readonly number[],
): readonly BelievedScheme[] {
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  const top = Math.max(...said.filter((_, at) => schemes[suspects[at]!.of]!.weight > 0));
  const after = suspects.map(({ of }, at) => schemes[of]!.weight * Math.exp(said[at]! - top));
  const total = after.reduce((sum, each) => sum + each, 0);
  return schemes.map(({ scheme, weight }, of) => {
    const share = sumWhere(suspects, after, (one) => one.of === of) / total;
    const within = sharesWithin(suspects, said);
    const names = [...new Set(suspects.filter((one) => one.of === of).map(({ disciplineName }) => disciplineName))];
    return {
      scheme: scheme.id,
      before: weight / all,
      share,
      discipline: Object.fromEntries(
        names.map((name) => [name, sumWhere(suspects, within, (one) => one.of === of && one.disciplineName === name)]),
      ),
      stars:
        scheme.locksStar === true
          ? [0, 1, 2, 3, 4, 5].map((star) => sumWhere(suspects, within, (one) => one.of === of && one.star === star))
          : [],
    };
  });
}

/** How likely each suspect is once it is known that it is his scheme. */
function sharesWithin(suspects: readonly WeighedSuspect[], said: readonly number[]): readonly number[] {
  const top = new Map<number, number>();
  for (const [at, { of }] of suspects.entries())
    top.set(of, Math.max(said[at]!, top.get(of) ?? Number.NEGATIVE_INFINITY));
  const raw = suspects.map(({ of }, at) => Math.exp(said[at]! - top.get(of)!));
  return suspects.map(({ of }, at) => raw[at]! / sumWhere(suspects, raw, (one) => one.of === of));
}

function momentOdds(
  count: number,
  suspects: readonly WeighedSuspect[],
  shares: readonly number[],
  read: readonly SuspectFilm[],
  moment: number,
): readonly number[] {
  const odds = Array.from({ length: count }, (_, of) =>
    suspects.reduce((sum, one, at) => (one.of === of ? sum + shares[at]! * oddsAtMoment(read[at]!, moment) : sum), 0),
  );
  const most = Math.max(...odds);
  return odds.map((each) => each / most);
}

/** Two shares whose ratio has changed by less than this part of it are as they were before. */
const unmoved = 0.02;

function standsAlike(one: BelievedScheme, other: BelievedScheme): boolean {
  if (one.before === 0 || other.before === 0) return false;
  return Math.abs(other.share * one.before - one.share * other.before) < unmoved * one.share * other.before;
}

function sumWhere(
  suspects: readonly WeighedSuspect[],
  values: readonly number[],
  is: (one: WeighedSuspect) => boolean,
): number {
  return suspects.reduce((sum, one, at) => (is(one) ? sum + values[at]! : sum), 0);
}

function checkSchemes(schemes: readonly SchemeInQuestion[]): void {
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  if (schemes.every(({ weight }) => weight >= 0) && all > 0 && Number.isFinite(all)) return;
  throw new RangeError(
    `invalid weights of schemes: ${schemes.map(({ weight }) => weight).join(' ')} (expected 0 or more, in all more than 0)`,
  );
}
