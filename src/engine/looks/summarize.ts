import { sortedQuantile } from '../statistics/quantile.ts';
import type { LookKind, LookWindow } from './window.ts';

/** One way that the play comes open, over many watched trials. Plain data; offense and defender indices. */
export interface LookSummary {
  readonly kind: LookKind;
  /** Offense index of the carrier and of the open man (the carrier himself for a shot). */
  readonly from: number;
  readonly to: number;
  /** Share of the watched trials in which it came open at least once, in time for the carrier to see it; 0 (excluded) to 1. */
  readonly share: number;
  /** Median start and end of each trial's first window, seconds after the first beat. */
  readonly opens: number;
  readonly closes: number;
  /** At the moment that the carrier can first have seen it: mean odds of a catch, and goal odds of the shot after it. */
  readonly completion: number;
  readonly shotOdds: number;
  /** Who left it open most often (-1: the scheme gives the man to nobody), by which duty, and his mean lateness, s. */
  readonly leftBy: { readonly defender: number; readonly duty: number; readonly lateBy: number };
  /** Each trial's first window, in trial order. */
  readonly windows: readonly LookWindow[];
}

/**
 * What the windows of `trials` watched trials come to, one summary for each pair of carrier and open man,
 * the ones that promise most first: by share x completion x shot odds, then by pair.
 * Pairs that came open in fewer than `leastShare` of the trials are left out, and so are windows whose ball had gone on by the time that
 * the carrier could have seen them: nobody can be taught to throw a ball that he no longer has.
 */
export function summarizeLooks(windows: readonly LookWindow[], trials: number, leastShare = 0.05): LookSummary[] {
  if (!(trials > 0)) return [];
  return [...firstWindows(windows).values()]
    .filter((firsts) => firsts.length / trials >= leastShare)
    .map((firsts) => summarizeLook(firsts, trials))
    .sort((a, b) => promise(b) - promise(a) || a.from - b.from || a.to - b.to);
}

function promise(look: LookSummary): number {
  return look.share * look.completion * look.shotOdds;
}

/** By pair, the window of each trial that opened first, of those that the carrier could still act on when he could have seen them. */
function firstWindows(windows: readonly LookWindow[]): Map<number, LookWindow[]> {
  const sorted = windows
    .filter((window) => window.completion > 0)
    .sort((a, b) => a.trial - b.trial || a.opens - b.opens);
  const byPair = new Map<number, LookWindow[]>();
  for (const window of sorted) {
    const pair = window.from * 6 + window.to;
    const firsts = byPair.get(pair) ?? [];
    if (firsts.at(-1)?.trial !== window.trial) firsts.push(window);
    byPair.set(pair, firsts);
  }
  return byPair;
}

function summarizeLook(firsts: readonly LookWindow[], trials: number): LookSummary {
  const { from, to } = firsts[0]!;
  return {
    kind: mostFrequent(firsts.map((window) => window.kind)),
    from,
    to,
    share: firsts.length / trials,
    opens: median(firsts.map((window) => window.opens)),
    closes: median(firsts.map((window) => window.closes)),
    completion: mean(firsts.map((window) => window.completion)),
    shotOdds: mean(firsts.map((window) => window.shotOdds)),
    leftBy: whoMostOften(firsts),
    windows: firsts,
  };
}

function whoMostOften(firsts: readonly LookWindow[]): LookSummary['leftBy'] {
  const cause = mostFrequent(firsts.map(causeOf));
  const his = firsts.filter((window) => causeOf(window) === cause);
  const { leftBy, duty } = his[0]!;
  return { defender: leftBy, duty, lateBy: mean(his.map((window) => window.lateBy)) };
}

/** Defender and duty together: the same man late on another duty is another cause. A man left on purpose has no duty. */
function causeOf(window: LookWindow): number {
  return window.leftBy < 0 ? -1 : window.leftBy * 16 + window.duty;
}

/** The value that comes most often; of several, the one that came first. */
function mostFrequent<T>(values: readonly T[]): T {
  const count = new Map<T, number>();
  for (const value of values) count.set(value, (count.get(value) ?? 0) + 1);
  let best = values[0] as T;
  for (const [value, times] of count) if (times > (count.get(best) ?? 0)) best = value;
  return best;
}

function median(values: readonly number[]): number {
  return sortedQuantile(Float64Array.from(values).sort(), 0.5) ?? 0;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
