import type { Block } from './block.ts';

/** An estimate on a line from 0 to 1: where the truth lies 95 times in 100 as a bar, the estimate as a stroke across it, and what is usual as a dashed one. */
export interface IntervalOnLine {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** What it is held against. */
  readonly mark: number;
}

/** Width of the strokes, points: seen in a bad copy too. */
const stroke = 2;

/** Draws an interval so wide and high, in grey and black alone. */
export function intervalBar({ mean, low, high, mark }: IntervalOnLine, width: number, height: number): Block {
  return {
    height,
    draw: (left, top) => {
      const x = (share: number): number => left + Math.min(1, Math.max(0, share)) * width;
      const middle = top + height / 2;
      const upright = (at: number, dash?: readonly [number, number]) =>
        ({
          kind: 'rule',
          from: { x: x(at), y: top + 0.5 },
          to: { x: x(at), y: top + height - 0.5 },
          width: dash === undefined ? stroke : 0.75,
          ...(dash !== undefined && { dash }),
        }) as const;
      return [
        { kind: 'rule', from: { x: left, y: middle }, to: { x: left + width, y: middle }, width: 0.5 },
        {
          kind: 'box',
          left: x(low),
          top: middle - 3,
          width: Math.max(1, x(high) - x(low)),
          height: 6,
          fill: 'tint',
          edge: 0.75,
        },
        upright(mark, [2, 1.5]),
        upright(mean),
      ];
    },
  };
}
