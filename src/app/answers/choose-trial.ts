import {
  type LookKind,
  type LookSummary,
  type LookValue,
  leastReplays,
  summarizeLooks,
  type WatchedPlay,
} from '../../engine/index.ts';

/** One of the watched trials, and why it is worth seeing. Offense indices; `among` trials are alike in it. */
export interface ChosenTrial {
  readonly trial: number;
  readonly watched: number;
  readonly why:
    | {
        readonly kind: 'look';
        readonly look: LookKind;
        readonly from: number;
        readonly to: number;
        readonly among: number;
      }
    | {
        readonly kind: 'throw';
        readonly from: number;
        readonly to: number;
        /** The play asks for no pass after it. */
        readonly isLast: boolean;
        readonly among: number;
      }
    | { readonly kind: 'first' };
}

/**
 * The trial that shows most of a play against a scheme: the first in which its best look opens; when none does, the first that comes as far
 * as the play ever comes, told by the passes that its steps ask for; trial 0 when it comes to none. The first and not the best, so that the trial stays the same
 * while more are watched. It depends on what was watched and valued alone.
 */
export function chooseTrial(play: WatchedPlay, watched: number, values: readonly LookValue[]): ChosenTrial {
  const best = bestLook(summarizeLooks(play.windows, watched), values);
  if (best !== undefined) {
    const { kind: look, from, to, windows } = best;
    return { trial: windows[0]!.trial, watched, why: { kind: 'look', look, from, to, among: windows.length } };
  }
  return furthest(play, watched) ?? { trial: 0, watched, why: { kind: 'first' } };
}

/** The one that stands first on the screen: by how often it opens and what it is worth, and by its odds while no worth is known. */
function bestLook(looks: readonly LookSummary[], values: readonly LookValue[]): LookSummary | undefined {
  const promiseOf = ({ from, to, share }: LookSummary): number => {
    const value = values.find((one) => one.from === from && one.to === to);
    return value === undefined || value.trials < leastReplays ? 0 : share * value.value;
  };
  // The sort keeps the order of what is left, which is that of their odds.
  return [...looks].sort((one, other) => promiseOf(other) - promiseOf(one))[0];
}

function furthest({ throws, seen }: WatchedPlay, watched: number): ChosenTrial | undefined {
  const written = [...throws.keys()].filter((own) => throws[own]!.asked === 'script');
  const rank = (own: number): number => throws[own]!.beat;
  const reached = written.filter((own) => seen.some((one) => one.own === own));
  const own = reached.reduce<number | undefined>(
    (last, one) => (last === undefined || rank(one) > rank(last) ? one : last),
    undefined,
  );
  if (own === undefined) return undefined;
  const trials = seen.filter((one) => one.own === own).map(({ trial }) => trial);
  const { from, to } = throws[own]!;
  const isLast = written.every((one) => rank(one) <= rank(own));
  return { trial: Math.min(...trials), watched, why: { kind: 'throw', from, to, isLast, among: trials.length } };
}
