import {
  estimateOdds,
  type Interval,
  type LookSummary,
  type LookWindow,
  type Play,
  type SpotId,
} from '../../engine/index.ts';
import { type TaughtLook, taughtLooks } from './taught-looks.ts';

/** What was watched of a play against one scheme. */
export interface WatchedScheme {
  readonly scheme: string;
  /** How likely it is to be met, beside the others; above 0. */
  readonly weight: number;
  readonly watched: number;
  readonly looks: readonly LookSummary[];
}

/** A taught look against one scheme. */
export interface LookAgainst {
  readonly scheme: string;
  /** How likely the scheme is, 0 to 1: over all of them 1. */
  readonly weight: number;
  /** Share of the man-ups in which it is there, and odds that the ball then arrives; 0 where it is hardly ever there. */
  readonly share: number;
  readonly completion: number;
  /** Goals a man-up that it carries: see `LookWorth`. */
  readonly carries: number;
  /** A man-up in which it is there: number of its trial; `null` where there is none. */
  readonly example: number | null;
}

/** What a look of a play is worth over the schemes that are expected. */
export interface LookWorth extends TaughtLook {
  readonly play: string;
  /** Whether the play teaches it; a look that only comes open while the play runs is new to who is to take it. */
  readonly isTaught: boolean;
  /** Whether the play's script throws this very ball: what is not taught of it is then the shot. */
  readonly isThrown: boolean;
  /**
   * Goals a man-up when it is thrown the first time that it is there, arrives as often as such passes do, and is shot at once: what there is to be had from it, and
   * more than it now brings. 95 %.
   */
  readonly carries: Interval;
  /** What deciding for it by its read earns over going on with the play, goals a man-up; `null` for what no read asks for, or when nobody asked. */
  readonly decides: Interval | null;
  /** In the order of likelihood x what it carries there. */
  readonly against: readonly [LookAgainst, ...LookAgainst[]];
}

/** Looks that a play does not teach are told of, so many at most, when they surely carry so much. Goals a man-up. */
const mostUntaught = 2;
const worthTelling = 0.01;

/**
 * What each look that a play teaches carries, by the man-ups that were watched, in the play's order; then those that come open beside them and carry most, the
 * best first. RangeError without a scheme.
 */
export function lookWorths(play: Play, schemes: readonly WatchedScheme[]): readonly LookWorth[] {
  if (schemes.length === 0) throw new RangeError('no scheme to watch a play against (expected one or more)');
  const taught = taughtLooks(play);
  // The shot of the man to whom a taught look is thrown is the end of that look, and no other.
  const isKnown = ({ from, to }: TaughtLook): boolean =>
    taught.some((look) => look.to === to && (look.from === from || from === to));
  const beside = openLooks(play, schemes).filter((look) => !isKnown(look));
  const untaught = worthsOf(play, beside, schemes, false)
    .filter(({ carries }) => carries.low >= worthTelling)
    .sort((a, b) => b.carries.mean - a.carries.mean);
  return [...worthsOf(play, taught, schemes, true), ...untaught.slice(0, mostUntaught)];
}

/** Every look that comes open, each once, by the kind that it has where it was seen first. */
function openLooks(play: Play, schemes: readonly WatchedScheme[]): readonly TaughtLook[] {
  const all = schemes.flatMap(({ looks }) => looks);
  const first = all.filter(({ from, to }, at) => all.findIndex((one) => one.from === from && one.to === to) === at);
  return first.map(({ kind, from, to }) => ({
    kind,
    from: play.spots[from]!.id,
    to: play.spots[to]!.id,
    read: null,
    beat: null,
  }));
}

function worthsOf(
  play: Play,
  looks: readonly TaughtLook[],
  schemes: readonly WatchedScheme[],
  isTaught: boolean,
): readonly LookWorth[] {
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  return looks.map((look) => {
    const found = schemes.map((one) => ({ ...one, weight: one.weight / all, summary: summaryOf(play, look, one) }));
    const against = found.map(
      ({ scheme, weight, watched, summary }): LookAgainst => ({
        scheme,
        weight,
        share: summary?.share ?? 0,
        completion: summary?.completion ?? 0,
        carries: (summary?.windows ?? []).reduce((sum, window) => sum + oddsOf(window), 0) / Math.max(1, watched),
        example: exampleOf(summary),
      }),
    );
    return {
      ...look,
      play: play.id,
      isTaught,
      isThrown: isThrown(play, look),
      carries: carriedOver(found),
      decides: null,
      against: byLikelyWorth(against),
    };
  });
}

/** Whether a play's script has the one throw to the other. */
export function isThrown({ beats }: Play, { from, to }: Pick<TaughtLook, 'from' | 'to'>): boolean {
  return beats.some(({ actions }) =>
    actions.some((action) => action.kind === 'pass' && action.by === from && action.to === to),
  );
}

/** Where it is met most and carries most first; there is one scheme at least. */
function byLikelyWorth(against: readonly LookAgainst[]): LookWorth['against'] {
  const [first, ...others] = [...against].sort(
    (a, b) => b.weight * b.carries - a.weight * a.carries || b.weight - a.weight,
  );
  return [first!, ...others];
}

function summaryOf(play: Play, { from, to }: TaughtLook, { looks }: WatchedScheme): LookSummary | undefined {
  const index = (spot: SpotId): number => play.spots.findIndex(({ id }) => id === spot);
  return looks.find((one) => one.from === index(from) && one.to === index(to));
}

/** That the ball arrives and is a goal. */
function oddsOf({ completion, shotOdds }: LookWindow): number {
  return completion * shotOdds;
}

/** Man-up for man-up the schemes share their luck, so what they come to is added up before its spread is taken. */
function carriedOver(
  found: readonly { readonly weight: number; readonly watched: number; readonly summary: LookSummary | undefined }[],
): Interval {
  const odds_byTrial = new Float64Array(Math.min(...found.map(({ watched }) => watched)));
  for (const { weight, summary } of found)
    for (const window of summary?.windows ?? [])
      if (window.trial < odds_byTrial.length) odds_byTrial[window.trial]! += weight * oddsOf(window);
  return estimateOdds(odds_byTrial);
}

/** The man-up in the middle of those in which it is there, by how good it is: neither the best nor the worst is an example. */
export function exampleOf(summary: LookSummary | undefined): number | null {
  if (summary === undefined || summary.windows.length === 0) return null;
  const sorted = [...summary.windows].sort((a, b) => oddsOf(a) - oddsOf(b) || a.trial - b.trial);
  return sorted[Math.floor(sorted.length / 2)]!.trial;
}

/**
 * What reps are shared out by: what it carries, and what deciding for it surely earns on top; nothing for a read that surely costs goals, which wants mending and
 * no reps. Goals a man-up.
 */
export function worthOfLook(look: Pick<LookWorth, 'carries' | 'decides'>): number {
  const { carries, decides } = look;
  if (costsGoals(look)) return 0;
  return carries.mean + (decides !== null && decides.low > 0 ? decides.mean : 0);
}

/** Below this nobody sees in a season whether a look was practised. Goals a man-up. */
const worthReps = 0.01;

/** The taught looks that are worth reps against a defense, the worthiest first. */
export function worthyLooks(looks: readonly LookWorth[]): readonly LookWorth[] {
  return byWorth(looks.filter((look) => look.isTaught && worthOfLook(look) >= worthReps));
}

/** Whether deciding for it by its read surely costs goals. */
export function costsGoals({ decides }: Pick<LookWorth, 'decides'>): boolean {
  return decides !== null && decides.high < 0;
}

/** The worthiest first; of equals in the play's order. */
export function byWorth(looks: readonly LookWorth[]): readonly LookWorth[] {
  return [...looks].sort((a, b) => worthOfLook(b) - worthOfLook(a));
}
