import type { DisciplineName } from '../defense/discipline.ts';
import type { Level } from '../people/athlete.ts';
import { defaultFilmReading, type FilmReading, oddsAtMoment, readFilm, type SuspectFilm } from './film-odds.ts';
import { type MarkReason, reasonsOfMarks } from './mark-reasons.ts';
import type { MarkedFilm } from './marked-film.ts';
import { logOfSum, mixOfSchemes } from './scheme-mix.ts';
import { logOddsOfTicks, type SignTable, type Tick } from './sign-table.ts';
import { type SchemeInQuestion, suspectsOf, type WeighedSuspect } from './suspects.ts';
import { reasonsOfTicks, type TickReason } from './tick-reasons.ts';

/** What was seen of one man-up: marks, ticks or both. */
export interface SeenManUp {
  readonly film?: MarkedFilm;
  readonly ticks?: readonly Tick[];
}

/** What is to be decided, and from what. */
export interface BeliefQuestion {
  readonly schemes: readonly SchemeInQuestion[];
  readonly level: Level;
  /** Man-ups of one opponent; each is seen afresh, and may be of a scheme of its own. */
  readonly manUps?: readonly SeenManUp[];
  /** How often each sign is seen against each suspect; needed where there are ticks. */
  readonly signs?: SignTable;
  readonly reading?: FilmReading;
}

/** What is believed of one scheme. */
export interface BelievedScheme {
  readonly scheme: string;
  /** How often it was to be expected before anything was seen, and is in their next man-up now, 0 to 1; those of all schemes add up to 1. */
  readonly before: number;
  readonly share: number;
  /** If it is this one: how well they play it. Shares that add up to 1. */
  readonly discipline: Readonly<Partial<Record<DisciplineName, number>>>;
  /** If it is a shutoff: how likely each of the six is the man shut off; empty for the others. */
  readonly stars: readonly number[];
}

/** Which scheme one man-up looks like, by its own marks and ticks. In the order of the schemes in question, adding up to 1. */
export interface ManUpReading {
  /** With what was believed before. */
  readonly share_byScheme: readonly number[];
  /** All schemes as likely beforehand: what was seen, and nothing else. */
  readonly alone_byScheme: readonly number[];
}

/** What one moment says, all its marks together. */
export interface MomentSays {
  /** Number of its man-up. */
  readonly film: number;
  readonly moment: number;
  /** How likely its marks are against each scheme, beside the likeliest: 1 for that one. In the order of the schemes in question. */
  readonly odds_byScheme: readonly number[];
}

export interface SchemeBelief {
  /** In the order of the schemes in question. */
  readonly schemes: readonly BelievedScheme[];
  /** In the order of the man-ups. */
  readonly manUps: readonly ManUpReading[];
  /** How likely it is that they play one scheme throughout, 0 to 1. */
  readonly oneScheme: number;
  readonly moments: readonly MomentSays[];
  /** What spoke most for a scheme and against another (`between`; where they mix, the two that the man-up itself is between); what says most first. */
  readonly reasons: readonly MarkReason[];
  readonly tickReasons: readonly TickReason[];
  /** Schemes that nothing seen so far tells from the likeliest: they stand alike with this set and this ball. Numbers, without the likeliest itself. */
  readonly alike: readonly number[];
  /** The likeliest, and the likeliest of those that do not stand alike with it; the same number twice when there is none. */
  readonly between: readonly [number, number];
}

/**
 * Which scheme it is, by Bayes: how likely the marks and ticks are when a unit plays it, times how likely that was before. What is not asked, how well they play and
 * whom they shut off, is summed over. A team plays one scheme throughout or mixes, which is weighed too (`mixOfSchemes`).
 *
 * Moments count as independent once it is known who plays what and how well. Marks of one moment do not: they are weighed together, whoever of the men each is.
 * RangeError for no schemes, weights that are not 0 or more, ticks without a table of signs, or a film that cannot be followed.
 */
export function believeSchemes(question: BeliefQuestion): SchemeBelief {
  const { schemes, level, manUps = [], reading = defaultFilmReading } = question;
  checkSchemes(schemes);
  const suspects = suspectsOf(schemes, level);
  const read = manUps.map(({ film }) => (film === undefined ? [] : readFilm(film, suspects, level, reading)));
  const said_byManUp = manUps.map((manUp, number) =>
    suspects.map((suspect, at) => logOddsSeen(question, manUp, suspect, read[number]![at])),
  );
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  const prior = schemes.map(({ weight }) => weight / all);
  const logs_byManUp = said_byManUp.map((said) => logsOfSchemes(schemes.length, suspects, said));
  const together = logsOfSchemes(
    schemes.length,
    suspects,
    suspects.map((_, at) => said_byManUp.reduce((sum, said) => sum + said[at]!, 0)),
  );
  const { share_byScheme, oneScheme } = mixOfSchemes(prior, together, logs_byManUp);
  const readings = logs_byManUp.map(
    (logs): ManUpReading => ({
      share_byScheme: sharesOfLogs(logs.map((log, of) => log + Math.log(prior[of]!))),
      alone_byScheme: sharesOfLogs(logs),
    }),
  );
  const shares = sharesWithin(suspects, saidOfScheme(suspects, said_byManUp, readings, oneScheme));
  const isAlike = alikeBy(prior, logs_byManUp);
  const between = twoOf(share_byScheme, isAlike);
  const betweenOf = (manUp: number): readonly [number, number] =>
    oneScheme >= 0.5 ? between : twoOf(readings[manUp]!.share_byScheme, isAlike);
  const films = manUps.flatMap(({ film }, number) => (film === undefined ? [] : [{ film, number }]));
  return {
    schemes: schemesBelieved(schemes, suspects, shares, prior, share_byScheme),
    manUps: readings,
    oneScheme,
    alike: schemes.map((_, at) => at).filter((at) => at !== between[0] && isAlike(between[0], at)),
    between,
    moments: films.flatMap(({ film, number }) =>
      film.moments.map((_, moment) => ({
        film: number,
        moment,
        odds_byScheme: momentOdds(schemes.length, suspects, shares, read[number]!, moment),
      })),
    ),
    reasons: films
      .flatMap(({ film, number }) =>
        reasonsOfMarks(film, number, { suspects, shares, read: read[number]!, between: betweenOf(number), reading }),
      )
      .sort((one, other) => other.odds - one.odds),
    tickReasons: manUps
      .flatMap(({ ticks = [] }, number) =>
        ticks.length === 0
          ? []
          : reasonsOfTicks(ticks, number, { table: tableOf(question), suspects, shares, between: betweenOf(number) }),
      )
      .sort((one, other) => other.odds - one.odds),
  };
}

/** The logarithm of how likely all that was seen of a man-up is against a suspect. */
function logOddsSeen(
  question: BeliefQuestion,
  { film, ticks = [] }: SeenManUp,
  suspect: WeighedSuspect,
  read: SuspectFilm | undefined,
): number {
  const { trust } = question.reading ?? defaultFilmReading;
  let sum = ticks.length === 0 ? 0 : logOddsOfTicks(tableOf(question), suspect, ticks);
  if (film === undefined || read === undefined) return sum;
  for (let moment = 0; moment < film.moments.length; moment++) sum += trust * Math.log(oddsAtMoment(read, moment));
  return sum;
}

function tableOf({ signs }: BeliefQuestion): SignTable {
  if (signs === undefined) throw new RangeError('missing signs: ticks say nothing without a table of them');
  return signs;
}

/** The same of schemes: summed over how each may be played. */
function logsOfSchemes(count: number, suspects: readonly WeighedSuspect[], said: readonly number[]): readonly number[] {
  return Array.from({ length: count }, (_, of) =>
    logOfSum(suspects.flatMap((one, at) => (one.of === of ? [Math.log(one.share) + said[at]!] : []))),
  );
}

/** What was seen of each suspect's own scheme: where they mix, the man-ups that do not look like it say nothing of how well they play it. */
function saidOfScheme(
  suspects: readonly WeighedSuspect[],
  said_byManUp: readonly (readonly number[])[],
  readings: readonly ManUpReading[],
  oneScheme: number,
): readonly number[] {
  return suspects.map(({ of, share }, at) => {
    const most = Math.max(...readings.map(({ alone_byScheme }) => alone_byScheme[of]!));
    return said_byManUp.reduce((sum, said, manUp) => {
      const looks = readings[manUp]!.alone_byScheme[of]! / most;
      return sum + (oneScheme + (1 - oneScheme) * looks) * said[at]!;
    }, Math.log(share));
  });
}

function schemesBelieved(
  schemes: readonly SchemeInQuestion[],
  suspects: readonly WeighedSuspect[],
  within: readonly number[],
  prior: readonly number[],
  share_byScheme: readonly number[],
): readonly BelievedScheme[] {
  return schemes.map(({ scheme }, of) => {
    const names = [...new Set(suspects.filter((one) => one.of === of).map(({ disciplineName }) => disciplineName))];
    return {
      scheme: scheme.id,
      before: prior[of]!,
      share: share_byScheme[of]!,
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

/** Two schemes whose odds no man-up has moved by more than this part are as they were before. */
const unmoved = 0.02;

/** Whether nothing that was seen tells two schemes apart. */
function alikeBy(
  prior: readonly number[],
  logs_byManUp: readonly (readonly number[])[],
): (one: number, other: number) => boolean {
  return (one, other) =>
    prior[one]! > 0 &&
    prior[other]! > 0 &&
    logs_byManUp.every((logs) => Math.abs(logs[one]! - logs[other]!) < Math.log1p(unmoved));
}

/** The likeliest, and the likeliest of those that are told from it. */
function twoOf(shares: readonly number[], isAlike: (one: number, other: number) => boolean): readonly [number, number] {
  const order = shares.map((_, at) => at).sort((one, other) => shares[other]! - shares[one]!);
  const [first] = order as [number];
  return [first, order.find((at) => at !== first && !isAlike(first, at)) ?? first];
}

function sharesOfLogs(logs: readonly number[]): readonly number[] {
  const all = logOfSum(logs);
  return logs.map((log) => Math.exp(log - all));
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
