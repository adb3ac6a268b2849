import { menOnField, otherSide, type RuleCode, type TeamSide } from '../../engine/index.ts';
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
  | { readonly kind: 'periodOver'; readonly period: number; readonly carries: boolean }
  | { readonly kind: 'flagDown'; readonly forUs: boolean }
  | {
      readonly kind: 'manUp' | 'manDown';
      readonly strength: Strength;
      /** Until the next man is back, s of play. */
      readonly left: number;
      /** Until all who serve are, s of play. */
      readonly allLeft: number;
      /** No goal ends what is served next. */
      readonly fixed: boolean;
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
  if (clock.left <= 0) return { kind: 'periodOver', period: clock.period, carries: isAnybodyServing(state) };
  if (flag !== null) return { kind: 'flagDown', forUs: flag === 'them' };
  if (!code.penalties.playedShort.value) return { kind: 'noManUp' };
  if (manUp !== null) return shortOf(state, code, manUp);
  const ago = ranOut === null ? Number.POSITIVE_INFINITY : clock.played - ranOut.at;
  if (ranOut !== null && ago <= arrivalSeconds.most) return { kind: 'arriving', forUs: ranOut.side === 'us', ago };
  if (box.short.us === 0) return { kind: 'even' };
  const left = Math.min(...box.penalties.filter(({ state: at }) => at === 'serving').map((one) => one.left));
  return { kind: 'evenShort', strength: strengthOf(state, code, 'us'), left };
}

/** How many may be where when this side attacks, as far as the rule code goes: its counts may be to confirm. */
export function strengthOf({ box }: BenchState, code: RuleCode, attack: TeamSide): Strength {
  return menOnField(code, box.short[otherSide(attack)], box.short[attack]);
}

function shortOf(state: BenchState, code: RuleCode, manUp: TeamSide): Situation {
  const short = otherSide(manUp);
  const penalties = state.box.penalties.filter(({ side }) => side === short);
  const serving = penalties.filter((one) => one.state === 'serving');
  const next = serving.reduce((first, one) => (one.left < first.left ? one : first), serving[0]!);
  return {
    kind: manUp === 'us' ? 'manUp' : 'manDown',
    strength: strengthOf(state, code, manUp),
    left: next.left,
    allLeft: Math.max(...serving.map(({ left }) => left)),
    fixed: next.fixedLeft > 0 || !code.penalties.goalReleases.value,
    waiting: penalties.length - serving.length - penalties.filter(({ endedAt }) => endedAt !== null).length,
  };
}

function isAnybodyServing({ box }: BenchState): boolean {
  return box.penalties.some(({ state }) => state === 'serving' || state === 'waiting');
}

/** Seconds before the next man is back at which the bench is warned. */
export const warnedAt = [10, 5] as const;

/** The warning that is passed between two moments, s until the next man is back; `null` when none is, or when another penalty began meanwhile. */
export function warningBetween(before: number | null, now: number | null): number | null {
  if (before === null || now === null || now > before) return null;
  return warnedAt.filter((at) => before > at && now <= at).at(-1) ?? null;
}
