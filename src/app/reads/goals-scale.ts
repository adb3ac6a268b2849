import type { Interval } from '../../engine/index.ts';
import type { BarScale } from '../schemes/interval-bar.tsx';

/** One scale on which some goals a chance can be told apart: it ends at the tenths around them. The usual scale when there are none. */
export function goalsScale(goals: readonly Interval[]): BarScale {
  if (goals.length === 0) return { from: 0, to: 0.8 };
  const from = Math.floor(10 * Math.max(0, Math.min(...goals.map(({ low }) => low)))) / 10;
  const to = Math.ceil(10 * Math.max(...goals.map(({ high }) => high))) / 10;
  return { from, to: Math.max(to, from + 0.1) };
}
