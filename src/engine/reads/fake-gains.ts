import type { Play } from '../offense/play.ts';
import type { Interval } from '../trials/report.ts';
import { carrierActions } from './carrier-actions.ts';
import type { Outcome } from './gather-decisions.ts';
import { measureIn, measureWhere } from './measure-decisions.ts';
import { isIn } from './scheme-chances.ts';
import { type HeldChances, worthsGuided } from './study-carrier.ts';

/** What it buys to show the ball to one mate first: goals a chance more than to play by eye without it, 95 %. */
export interface FakeGain {
  /** Offense index of the mate. */
  readonly toward: number;
  readonly gain: Interval;
  readonly byScheme: readonly { readonly scheme: string; readonly gain: Interval }[];
}

/**
 * What a fake to each mate buys at the carrier's first look, after which he plays by eye: pair by pair with what the same chances come to when
 * he plays by eye from there. `byEye` are the outcomes of `playGuided`, one for each held chance in their order. RangeError when there are
 * more or fewer, or none.
 */
export function fakeGains(
  play: Play,
  carrier: number,
  held: HeldChances,
  byEye: readonly Outcome[],
): readonly FakeGain[] {
  const { table, spans } = held;
  const without = Float64Array.from(worthsGuided(held, byEye));
  return carrierActions(play, carrier).flatMap((action, number) => {
    if (action.kind !== 'fake') return [];
    const shown = Float64Array.from(
      without,
      (_, chance) => table.worth_byMomentAction[table.first_byChance[chance] * table.actions + number],
    );
    const byScheme = spans.map((span) => {
      const within = measureWhere(table, isIn(span));
      return { scheme: span.scheme, gain: within.difference(shown, without) };
    });
    return [{ toward: action.toward, gain: measureIn(table).difference(shown, without), byScheme }];
  });
}
