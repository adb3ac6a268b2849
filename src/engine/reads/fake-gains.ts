import type { Play } from '../offense/play.ts';
import type { Interval } from '../trials/report.ts';
import { carrierActions } from './carrier-actions.ts';
import type { Outcome } from './gather-decisions.ts';
import { learnKeeping, worthOf } from './learn-keeping.ts';
import { measureIn, measureWhere } from './measure-decisions.ts';
import { spansOf, tableOf } from './scheme-chances.ts';
import type { Gathered } from './study-carrier.ts';

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
  { learn, held }: Gathered,
  byEye: readonly Outcome[],
): readonly FakeGain[] {
  const keeping = learnKeeping(learn.flatMap(({ chances }) => chances));
  const table = tableOf(carrier, held, keeping);
  if (byEye.length !== table.goOn_byChance.length) {
    throw new RangeError(`invalid outcomes: ${byEye.length} (expected ${table.goOn_byChance.length})`);
  }
  const without = Float64Array.from(byEye, (outcome) => worthOf(outcome, keeping));
  const spans = spansOf(held);
  return carrierActions(play, carrier).flatMap((action, number) => {
    if (action.kind !== 'fake') return [];
    const shown = Float64Array.from(
      without,
      (_, chance) => table.worth_byMomentAction[table.first_byChance[chance] * table.actions + number],
    );
    const byScheme = spans.map(({ scheme, from, to }) => {
      const within = measureWhere(table, (chance) => chance >= from && chance < to);
      return { scheme, gain: within.difference(shown, without) };
    });
    return [{ toward: action.toward, gain: measureIn(table).difference(shown, without), byScheme }];
  });
}
