import type { Level } from '../people/athlete.ts';
import { pathOfFilm } from './film-path.ts';
import { type MarkSpread, oddsOfMarks } from './mark-odds.ts';
import type { MarkedFilm } from './marked-film.ts';
import {
  createRehearsal,
  createRehearsed,
  type Rehearsal,
  type Rehearsed,
  rehearse,
  type Suspect,
} from './rehearsal.ts';

/** How carefully a film is read. */
export interface FilmReading {
  /** How far marks lie from men. */
  readonly spread: MarkSpread;
  /** Rehearsals of each suspect for a long film; a short one is rehearsed more often (`takesOf`). More are surer and slower. */
  readonly takes: number;
  readonly seed: number;
  /**
   * What a moment counts for beside one that owes nothing to the others, 0 to 1: moments share men, marks and whatever the model has wrong, and whoever takes them for
   * independent is too sure.
   */
  readonly trust: number;
  /**
   * How likely a moment is to be worth nothing: marked at a wrong time, of a broken play, with somebody out of his part. So no moment counts for more than about one
   * over this to 1, and one that is wrong does not decide.
   */
  readonly doubt: number;
  /** +1 when the schemes are met as written, -1 as their mirror image. It only settles ties. */
  readonly sense: 1 | -1;
}

/**
 * `spread.model`, `trust` and `takes` were chosen on four training plays with seeds of their own, and are held out on others (docs/models/scout.md); the rest are
 * assumptions. A mark is off by a yard, as a coach sets them on film.
 */
export const defaultFilmReading: FilmReading = {
  spread: { error: 1, model: 0.6, astray: 0.1, astrayTimes: 3, missing: 0.05, extra: 0.3 },
  takes: 16,
  seed: 20_260,
  trust: 0.7,
  doubt: 0.02,
  sense: 1,
};

/** One suspect held against a film. */
export interface SuspectFilm {
  /** How likely each moment's marks are in each take, beside the suspect whom they fit best; takes of one moment stand together. Only ratios say anything. */
  readonly odds_byMomentTake: Float64Array;
  /** What he did in each take. */
  readonly takes: readonly Rehearsed[];
}

/** Every suspect held against a film. Throws a RangeError for a film that cannot be followed. */
export function readFilm(
  film: MarkedFilm,
  suspects: readonly Suspect[],
  level: Level,
  reading: FilmReading = defaultFilmReading,
): readonly SuspectFilm[] {
  const path = pathOfFilm(film);
  const count = takesOf(reading, film.moments.length);
  const marks = film.moments.map(({ defenders }) => Float64Array.from(defenders.flatMap(({ x, y }) => [x, y])));
  const read = suspects.map((suspect): SuspectFilm => {
    const rehearsal = rehearsalOf(suspect, level, reading);
    const men = suspect.scheme.defenders;
    const odds_byMomentTake = new Float64Array(marks.length * count);
    const takes = Array.from({ length: count }, (_, take) => {
      const out = createRehearsed(marks.length, men);
      rehearse(rehearsal, path, take, out);
      for (const [at, set] of marks.entries()) {
        const odds = oddsOfMarks(set, -1, out.places_byMoment, 2 * men * at, men, reading.spread);
        odds_byMomentTake[at * count + take] = odds;
      }
      return out;
    });
    return { odds_byMomentTake, takes };
  });
  for (let moment = 0; moment < marks.length; moment++) doubtMoment(read, moment, reading.doubt);
  return read;
}

/** Moments from which on a film is long, and how much oftener the shortest is rehearsed. */
const [longFilm, mostTimes] = [8, 4];

/** Rehearsals of each suspect for a film of so many moments: as much work for a short film as for a long one, because it leaves more to luck. */
function takesOf({ takes }: FilmReading, moments: number): number {
  return Math.round(takes * Math.min(mostTimes, Math.max(1, longFilm / Math.max(1, moments))));
}

/** Put a moment's odds beside those of the suspect whom it fits best, and leave the others at least its doubt. */
function doubtMoment(read: readonly SuspectFilm[], moment: number, doubt: number): void {
  const best = Math.max(...read.map((one) => oddsAtMoment(one, moment)));
  for (const { odds_byMomentTake, takes } of read) {
    for (let take = 0; take < takes.length; take++) {
      const at = moment * takes.length + take;
      odds_byMomentTake[at] = doubt + ((1 - doubt) * odds_byMomentTake[at]!) / best;
    }
  }
}

/** How likely the marks of one moment are, over all takes. */
export function oddsAtMoment({ odds_byMomentTake, takes }: SuspectFilm, moment: number): number {
  let sum = 0;
  for (let take = 0; take < takes.length; take++) sum += odds_byMomentTake[moment * takes.length + take]!;
  return sum / takes.length;
}

/** Units that were made ready before: one takes milliseconds, and each film is held against the same ones. It changes no answer. */
const ready = new WeakMap<object, Map<string, Rehearsal>>();

function rehearsalOf(suspect: Suspect, level: Level, { seed, sense }: FilmReading): Rehearsal {
  const { scheme, discipline, star } = suspect;
  const known = ready.get(scheme) ?? new Map<string, Rehearsal>();
  ready.set(scheme, known);
  const key = [level, seed, sense, star, ...Object.values(discipline)].join(' ');
  const before = known.get(key);
  if (before !== undefined) return before;
  const made = createRehearsal(suspect, { level, seed, sense });
  known.set(key, made);
  return made;
}
