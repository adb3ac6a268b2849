import type { Point, ScriptTrace, SpotId } from '../../engine/index.ts';
import { type DutyFrame, defenderName, frameAt, traceNames } from '../../render/index.ts';
import type { Cast } from '../../worker/index.ts';
import type { TaughtLook } from './taught-looks.ts';

/** How a look came open in one man-up: who was drawn, by whom, and where the defenders stood. Plain data. */
export interface PartStand {
  readonly scheme: string;
  /** The man-up that it is from. */
  readonly trial: number;
  /** The mate who has the defender that should be on the open man; `null` when nobody was drawn off him. */
  readonly opener: SpotId | null;
  /** The defender who was drawn, by the scheme's name for him; `null` when the scheme gives the open man to nobody. */
  readonly drawn: string | null;
  /** Those who matter there, the first most: who was drawn, who is on the ball, who has one of the others, who is nearest. */
  readonly defenders: readonly StandingDefender[];
}

/** A defender, and where he stands as each step begins, as far as the man-up came. Yards. */
export interface StandingDefender {
  readonly name: string;
  readonly at_byBeat: Readonly<Record<string, Point>>;
  /** And at the moment of the look. */
  readonly atLook: Point;
}

/** How far back it is asked who had a man before he was left, s. */
const hadWithin = 3;

/** What one watched script tells of a look; of one that never opens in it, at the moment of its step or at the end. */
export function partStand(script: ScriptTrace, cast: Cast, look: TaughtLook, scheme: string): PartStand {
  const { trace, windows, began } = script;
  const spots = cast.play.spots.map(({ id }) => id);
  const [from, to] = [spots.indexOf(look.from), spots.indexOf(look.to)];
  const window = windows.find((one) => one.from === from && one.to === to);
  const beats = trace.events.flatMap((event) => (event.kind === 'beat' && !event.lastTen ? [event] : []));
  const step = beats.find(({ beat }) => beat === look.beat);
  const time = window === undefined ? (step?.time ?? trace.frames * trace.step) : began + window.opens;
  const frame = frameAt(trace, time);
  const drawn = window !== undefined && window.leftBy >= 0 ? window.leftBy : lastOn(script, time, to);
  const near = (defender: number, man: number): number => distance(frame.defense[defender]!, frame.offense[man]!);
  // The man who is released when the penalty ends is no part of the scheme yet.
  const order = cast.scheme.names
    .map((_, index) => index)
    .sort((a, b) => rank(a) - rank(b) || near(a, to) - near(b, to));
  function rank(defender: number): number {
    const duty = frame.duties[defender]!;
    if (defender === drawn) return 0;
    if (duty.duty === 'ball') return 1;
    return isOn(duty, from) || isOn(duty, to) ? 2 : 3;
  }
  const names = traceNames(cast);
  return {
    scheme,
    trial: script.trial,
    opener: drawn < 0 ? null : openerOf(drawn),
    drawn: drawn < 0 ? null : defenderName(names, drawn),
    defenders: order.map((index) => ({
      name: defenderName(names, index),
      at_byBeat: Object.fromEntries(beats.map((event) => [event.beat, frameAt(trace, event.time).defense[index]!])),
      atLook: frame.defense[index]!,
    })),
  };

  /** The man whom he has now instead; who stands nearest to him when his duty names nobody else. */
  function openerOf(defender: number): SpotId | null {
    const { duty, a, b } = frame.duties[defender]!;
    const holder = frame.holder.kind === 'attacker' ? frame.holder.index : from;
    const named = duty === 'ball' ? [holder] : duty === 'place' ? [] : [a, b];
    const other = named.find((man) => man >= 0 && man !== to && man !== from);
    const others = [0, 1, 2, 3, 4, 5].filter((man) => man !== to && man !== from);
    const nearest = others.sort((one, two) => near(defender, one) - near(defender, two))[0];
    return spots[other ?? nearest ?? -1] ?? null;
  }
}

/** The last defender who was asked to see to a man; -1 for none within some seconds. */
function lastOn({ trace }: ScriptTrace, time: number, man: number): number {
  for (let back = time; back >= Math.max(0, time - hadWithin); back -= trace.step) {
    const defender = frameAt(trace, back).duties.findIndex((duty) => isOn(duty, man));
    if (defender >= 0) return defender;
  }
  return -1;
}

function isOn({ duty, a, b }: DutyFrame, man: number): boolean {
  return duty !== 'place' && duty !== 'ball' && (a === man || (duty === 'split' && b === man));
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
