import {
  believeSchemes,
  createDraws,
  type MarkedFilm,
  type SchemeBelief,
  uniform,
  wilsonInterval,
} from '../../src/engine/index.ts';
import { askedRow, estimateWords, type FigureTable, type Group } from './row.ts';
import {
  heldDisciplines,
  heldFilms,
  heldModel,
  heldPlays,
  type KnownFilm,
  longest,
  scoutSchemes,
  seenSeed,
} from './scout-films.ts';
import { logOddsSeen, type SchemeSeen, watchScheme } from './scout-optimum.ts';

/** After how many marked moments it is asked. */
const asks = [1, 3, longest] as const;

/** Written down before the first run on these films: what share of an observer's success who knows the play by heart. */
const asked = 0.95;
/** Of shares of 90 % and more at least so many must be right; and a wrong mark in each moment may cost so much. */
const askedSure = 0.85;
const askedWrong = 0.9;

/** One film judged: how likely each scheme is after each number of moments. */
interface Judged {
  readonly known: KnownFilm;
  readonly shares_byAsk: readonly (readonly number[])[];
}

/** The same by ours, with what each moment says. */
interface JudgedByUs extends Judged {
  readonly told_byMoment: readonly (readonly number[])[];
}

/** How well marks tell schemes on held-out plays, seeds and disciplines; `perMatchup` films of each, `trials` of each seen beforehand by the observer who is compared. */
export function scoutGroups(perMatchup: number, trials: number): readonly Group[] {
  const films = heldFilms(perMatchup);
  const ours = films.map((known): JudgedByUs => {
    const beliefs = asks.map((moments) => beliefOf(known.film, moments));
    return {
      known,
      shares_byAsk: beliefs.map(readingOf),
      told_byMoment: beliefs.at(-1)!.moments.map(({ odds_byScheme }) => odds_byScheme),
    };
  });
  const optimum = judgedBySeen(films, trials, trials);
  const half = judgedBySeen(films, trials, Math.floor(trials / 2));
  const some = ours.filter((_, at) => at % 3 === 0);
  const wrong = some.map(({ known }, at) => ({
    known,
    shares_byAsk: [sharesOf(withWrongMarks(known.film, at), longest)],
  }));
  const noSix = some.map(({ known }) => ({ known, shares_byAsk: [sharesOf(withoutSix(known.film), longest)] }));
  return [
    {
      id: 'scout',
      title: 'Which scheme it is, by marks',
      about: `${films.length} simulated man-ups of high-school men, on which no number was fitted (how a film may begin, and that a restart can be told, was changed once after a look at half of them): five plays and sets (the demo's three, the ball round a 3-3 and a 1-3-2), nine schemes, units that are faultless or have one loose man. A mark is off by a yard along each axis, each moment is one man's touch, men are not named, nobody says when the ball came. Beside ours stands an observer who has seen this very play against this very scheme by these very units ${trials} times, every man in his true place, and asks how often marks like these came with the same pass: no observer of the same marks is known to do better. Half as many trials give him the same (row below), so more would not. All schemes are as likely beforehand; a tie of two counts a half.`,
      rows: [
        ...asks.map((moments, at) => againstOptimum(moments, ours, optimum, at)),
        growthRow(optimum, half),
        sureRow(ours),
        costRow('wrong', 'a wrong mark in every moment, anywhere on the ground', wrong, some, askedWrong),
        costRow(
          'no-six',
          'only the defenders and the ball are marked, the six stand at their spots',
          noSix,
          some,
          0.75,
        ),
      ],
    },
    {
      id: 'scout-confusion',
      title: 'Which schemes are taken for which',
      about: `After ${longest} moments, in 100 man-ups: a line for what is played, a column for what it is taken for.`,
      figures: confusion(ours),
      rows: [],
    },
    {
      id: 'scout-alike',
      title: 'Which schemes stand alike, and where they do not',
      about:
        'For each pair that was confused in at least one of twenty man-ups of either: with the ball at which spot of which play a moment tells them apart best (odds for the true one, geometric mean), and at how many of the spots a moment tells less than 1.2 to 1.',
      figures: alike(ours),
      rows: [],
    },
  ];
}

function sharesOf(film: MarkedFilm, moments: number): readonly number[] {
  return readingOf(beliefOf(film, moments));
}

/** What is said of the man-up itself: of their next one less is known. */
function readingOf({ manUps }: SchemeBelief): readonly number[] {
  return manUps[0]!.share_byScheme;
}

function beliefOf(film: MarkedFilm, moments: number): SchemeBelief {
  return believeSchemes({
    schemes: scoutSchemes.map((scheme) => ({ scheme, weight: 1 })),
    level: 'highSchool',
    manUps: [{ film: { ...film, moments: film.moments.slice(0, moments) } }],
  });
}

/** The observer who knows the play by heart, with the unit's discipline as likely either way. */
function judgedBySeen(films: readonly KnownFilm[], watched: number, trials: number): readonly Judged[] {
  return heldPlays().flatMap((play) => {
    const seen = scoutSchemes.map((scheme) =>
      heldDisciplines.map((discipline) => seenOf(play.id, scheme.id, discipline, watched)),
    );
    return films
      .filter((known) => known.play.id === play.id)
      .map((known) => {
        const logs = seen.map((byDiscipline) =>
          byDiscipline.map((one) => logOddsSeen(one, known.film, longest, trials)),
        );
        return { known, shares_byAsk: asks.map((moments) => normalized(logs.map((one) => meanOdds(one, moments)))) };
      });
  });
}

const watchedBefore = new Map<string, SchemeSeen>();

function seenOf(
  playId: string,
  schemeId: string,
  discipline: (typeof heldDisciplines)[number],
  trials: number,
): SchemeSeen {
  const key = `${playId} ${schemeId} ${discipline} ${trials}`;
  const before = watchedBefore.get(key);
  if (before !== undefined) return before;
  const play = heldPlays().find(({ id }) => id === playId)!;
  const scheme = scoutSchemes.find(({ id }) => id === schemeId)!;
  const seen = watchScheme(heldModel(play, scheme, discipline, seenSeed), play, 0, trials);
  watchedBefore.set(key, seen);
  return seen;
}

/** Densities have no natural size: this keeps eight of them inside what numbers hold. */
const scale = 14;

function meanOdds(logs: readonly (readonly number[])[], moments: number): number {
  return logs.reduce(
    (sum, one) => sum + Math.exp(one.slice(0, moments).reduce((a, b) => a + b, 0) + scale * moments),
    0,
  );
}

function normalized(values: readonly number[]): readonly number[] {
  const all = values.reduce((sum, value) => sum + value, 0);
  return values.map((value) => value / all);
}

/** Shares that differ by less than this part are a tie: the schemes have the same duties there. */
const tie = 1e-6;

/** 1 when the true scheme is the likeliest, a half when it is one of two, 0 when it is not. */
function rightness(shares: readonly number[], truth: number): number {
  const most = Math.max(...shares);
  if (shares[truth]! < most * (1 - tie)) return 0;
  return 1 / shares.filter((share) => share >= most * (1 - tie)).length;
}

function rightOf(judged: readonly Judged[], ask: number): number {
  return judged.reduce((sum, { known, shares_byAsk }) => sum + rightness(shares_byAsk[ask]!, known.truth), 0);
}

function againstOptimum(moments: number, ours: readonly Judged[], optimum: readonly Judged[], ask: number) {
  const [mine, best] = [rightOf(ours, ask), rightOf(optimum, ask)];
  return askedRow(
    { id: `scout-${moments}`, what: `right after ${moments === 1 ? 'one moment' : `${moments} moments`}` },
    estimateWords(wilsonInterval(best, optimum.length)),
    estimateWords(wilsonInterval(mine, ours.length)),
    `at least ${asked} of the observer's`,
    mine / ours.length >= (asked * best) / optimum.length,
  );
}

function growthRow(optimum: readonly Judged[], half: readonly Judged[]) {
  const last = asks.length - 1;
  const [all, less] = [rightOf(optimum, last) / optimum.length, rightOf(half, last) / half.length];
  return askedRow(
    { id: 'scout-growth', what: `the observer after ${longest} moments, with all and with half of what he has seen` },
    all.toFixed(3),
    less.toFixed(3),
    'within .02',
    Math.abs(all - less) <= 0.02,
  );
}

function sureRow(ours: readonly Judged[]) {
  const sure = ours.flatMap(({ known, shares_byAsk }) =>
    shares_byAsk.flatMap((shares) => {
      const most = Math.max(...shares);
      return most >= 0.9 ? [shares.indexOf(most) === known.truth ? 1 : 0] : [];
    }),
  );
  const right = sure.reduce<number>((sum, one) => sum + one, 0);
  return askedRow(
    { id: 'scout-sure', what: 'of those said to be 90 % sure and more, right' },
    `${askedSure} and more`,
    estimateWords(wilsonInterval(right, sure.length)),
    `at least ${askedSure}`,
    right / sure.length >= askedSure,
  );
}

function costRow(id: string, what: string, changed: readonly Judged[], before: readonly Judged[], least: number) {
  const [now, then] = [rightOf(changed, 0) / changed.length, rightOf(before, asks.length - 1) / before.length];
  return askedRow(
    { id: `scout-${id}`, what: `${what}: right after ${longest} moments` },
    then.toFixed(3),
    estimateWords(wilsonInterval(now * changed.length, changed.length)),
    `at least ${least} of it`,
    now >= least * then,
  );
}

function withWrongMarks(film: MarkedFilm, number: number): MarkedFilm {
  const draws = createDraws(seenSeed);
  return {
    ...film,
    moments: film.moments.map((moment, at) => {
      const x = 24 * uniform(draws, number, at, 0, 0) - 12;
      const y = 16 * uniform(draws, number, at, 1, 0);
      return { ...moment, defenders: [{ x, y }, ...moment.defenders.slice(1)] };
    }),
  };
}

function withoutSix({ spots, moments }: MarkedFilm): MarkedFilm {
  return { spots, moments: moments.map(({ time, ball, defenders }) => ({ time, ball, defenders })) };
}

function confusion(ours: readonly Judged[]): FigureTable {
  const last = asks.length - 1;
  const lines = scoutSchemes.map((scheme, truth) => {
    const of = ours.filter(({ known }) => known.truth === truth);
    const taken = scoutSchemes.map(
      (_, as) => of.filter(({ shares_byAsk }) => likeliest(shares_byAsk[last]!) === as).length,
    );
    return [scheme.id, ...taken.map((count) => (count === 0 ? '' : String(Math.round((100 * count) / of.length))))];
  });
  return { head: ['played', ...scoutSchemes.map(({ id }) => id)], lines };
}

function likeliest(shares: readonly number[]): number {
  return shares.indexOf(Math.max(...shares));
}

/** Odds of a moment by which two schemes are hardly told apart. */
const hardly = 1.2;

function alike(ours: readonly JudgedByUs[]): FigureTable {
  const pairs = scoutSchemes.flatMap((_, one) =>
    scoutSchemes.slice(one + 1).map((__, at) => [one, one + 1 + at] as const),
  );
  const lines = pairs.flatMap(([one, other]) => {
    const among = ours.filter(({ known }) => known.truth === one || known.truth === other);
    const mixed = among.filter(({ known, shares_byAsk }) => {
      const as = likeliest(shares_byAsk.at(-1)!);
      return as !== known.truth && (as === one || as === other);
    });
    if (20 * mixed.length < among.length) return [];
    const told = toldAt(among, one, other);
    const [best] = told;
    return [
      [
        `${scoutSchemes[one]!.id} and ${scoutSchemes[other]!.id}`,
        `${mixed.length} of ${among.length}`,
        best === undefined ? '' : `${best.spot}: ${best.odds.toFixed(1)} to 1`,
        `${told.filter(({ odds }) => odds < hardly).length} of ${told.length}`,
      ],
    ];
  });
  return { head: ['pair', 'confused', 'told best with the ball at', 'spots that hardly tell'], lines };
}

/** Moments of a spot from which its odds are told. */
const enough = 5;

/** By how much a moment with the ball at each spot tells two schemes apart, the best spot first: odds for the true one, geometric mean. */
function toldAt(among: readonly JudgedByUs[], one: number, other: number) {
  const logs_bySpot = new Map<string, readonly number[]>();
  for (const { known, told_byMoment } of among) {
    const { truth, film, play } = known;
    for (const [moment, odds] of told_byMoment.entries()) {
      const spot = `${play.spots[film.moments[moment]!.ball]!.id} of ${play.name}`;
      const log = Math.log(odds[truth]! / odds[truth === one ? other : one]!);
      logs_bySpot.set(spot, [...(logs_bySpot.get(spot) ?? []), log]);
    }
  }
  return [...logs_bySpot]
    .filter(([, logs]) => logs.length >= enough)
    .map(([spot, logs]) => ({ spot, odds: Math.exp(logs.reduce((a, b) => a + b, 0) / logs.length) }))
    .sort((a, b) => b.odds - a.odds);
}
