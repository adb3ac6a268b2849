import {
  type BoxedPenalty,
  menOnField,
  otherSide,
  penaltyBox,
  type RuleCode,
  type TeamSide,
  timesBack,
} from '../../engine/index.ts';
import type { BenchState } from './fold-game.ts';

/** Men that the attack and the defense may have where the ball is, goalkeeper not counted. */
export interface Strength {
  readonly attackers: number;
  readonly defenders: number;
}

/** What a bench has to deal with at a moment. */
export type Situation =
  /** The code has no man-up: the man who fouled is replaced. */
  | { readonly kind: 'noManUp' }
  | { readonly kind: 'even' }
  | {
      readonly kind: 'periodOver';
      readonly period: number;
      /** Who goes on serving in the next one. */
      readonly carried: readonly BoxedPenalty[];
      readonly strength: Strength;
      readonly manUp: TeamSide | null;
    }
  | { readonly kind: 'flagDown'; readonly forUs: boolean }
  | {
      readonly kind: 'manUp' | 'manDown';
      readonly strength: Strength;
      /** Until the next man is back, s of play. */
      readonly left: number;
      /** Until all of that side are, s of play. */
      readonly allLeft: number;
      /** Until the sides are even, s of play. */
      readonly edgeLeft: number;
      /** Men that the short side is short. */
      readonly short: number;
      /** Men of the short side whom a goal against it lets back at once. */
      readonly goalFrees: number;
      /** Penalties of the short side that wait. */
      readonly waiting: number;
    }
  /** His time is over and he runs in: the edge lasts until he is there. `ago` is s of play since. */
  | { readonly kind: 'arriving'; readonly forUs: boolean; readonly ago: number }
  /** Both sides are short by as many. */
  | { readonly kind: 'evenShort'; readonly strength: Strength; readonly left: number };

/** Seconds from the table to his place that a man takes who comes out of the box (common practice, no source). */
export const arrivalSeconds = { least: 5, most: 7 } as const;

/** Where the game is at. */
export function situationOf(state: BenchState, code: RuleCode): Situation {
  const { clock, box, flag, manUp, ranOut } = state;
  if (clock.left <= 0) return periodOver(state, code);
  if (flag !== null) return { kind: 'flagDown', forUs: flag === 'them' };
  if (!code.penalties.playedShort.value) return { kind: 'noManUp' };
  if (manUp !== null) return shortOf(state, code, manUp);
  const ago = ranOut === null ? Number.POSITIVE_INFINITY : clock.played - ranOut.at;
  if (ranOut !== null && ago <= arrivalSeconds.most) return { kind: 'arriving', forUs: ranOut.side === 'us', ago };
  if (box.short.us === 0) return { kind: 'even' };
  const left = Math.min(...timesBack(code, box, 'us'), ...timesBack(code, box, 'them'));
  return { kind: 'evenShort', strength: strengthOf(state, code, 'us'), left };
}

/** How many may be where when this side attacks, as far as the rule code goes: its counts may be to confirm. */
export function strengthOf({ box }: BenchState, code: RuleCode, attack: TeamSide): Strength {
  return menOnField(code, box.short[otherSide(attack)], box.short[attack]);
}

function shortOf(state: BenchState, code: RuleCode, manUp: TeamSide): Situation {
  const { box, boxEvents, clock } = state;
  const short = otherSide(manUp);
  const times = timesBack(code, box, short);
  const after = penaltyBox(code, [...boxEvents, { kind: 'goal', at: clock.played, by: manUp }], clock.played);
  return {
    kind: manUp === 'us' ? 'manUp' : 'manDown',
    strength: strengthOf(state, code, manUp),
    left: times[0]!,
    allLeft: times.at(-1)!,
    edgeLeft: untilEven(times, timesBack(code, box, manUp)),
    short: box.short[short],
    goalFrees: box.short[short] - after.short[short],
    waiting: box.penalties.filter((one) => one.side === short && one.state === 'waiting').length,
  };
}

/** When the short side is short by no more than the other, s of play, by when the men of each are back; the short side comes first. */
function untilEven(short: readonly number[], other: readonly number[]): number {
  let edge = short.length - other.length;
  for (const at of short) {
    edge -= 1;
    if (edge + other.filter((back) => back < at).length <= 0) return at;
  }
  return short.at(-1)!;
}

function periodOver(state: BenchState, code: RuleCode): Situation {
  const { clock, box, manUp } = state;
  return {
    kind: 'periodOver',
    period: clock.period,
    carried: box.penalties.filter((one) => one.state === 'serving' || one.state === 'waiting'),
    strength: strengthOf(state, code, manUp ?? 'us'),
    manUp,
  };
}

/** Seconds before the next man is back at which the bench is warned. */
export const warnedAt = [10, 5] as const;

/** The warning that is passed between two moments, s until the next man is back; `null` when none is, or when another penalty began meanwhile. */
export function warningBetween(before: number | null, now: number | null): number | null {
  if (before === null || now === null || now > before) return null;
  return warnedAt.filter((at) => before > at && now <= at).at(-1) ?? null;
}
