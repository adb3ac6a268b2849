import type { Interval } from '../../engine/index.ts';
import type { BarScale } from '../schemes/interval-bar.tsx';

/** One scale for some gains, the same on both sides of none; it reaches `least` at the least, so that a hair does not look like a mile. Goals a chance. */
export function gainScale(gains: readonly Interval[], least: number): BarScale {
  const reach = Math.max(least, ...gains.flatMap(({ low, high }) => [-low, high]));
  return { from: -reach, to: reach };
}
