import type { ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import styles from './interval-bar.module.css';

/** Goals per chance that a bar's ends stand for. */
export interface BarScale {
  readonly from: number;
  readonly to: number;
}

const goalsScale: BarScale = { from: 0, to: 0.8 };

/**
 * An interval on one scale for all, so that they can be compared at a glance; the scale alone before there is one. A scale that begins below 0 has a mark
 * there. Figures beside it say what it says.
 */
export function IntervalBar({
  goals,
  scale = goalsScale,
}: {
  readonly goals: Interval | undefined;
  readonly scale?: BarScale;
}): ReactNode {
  const { from, to } = scale;
  const share = (value: number): string => `${(100 * (Math.min(Math.max(value, from), to) - from)) / (to - from)}%`;
  return (
    <svg className={styles.bar} aria-hidden="true" width="100%" height="10">
      <line x1="0" x2="100%" y1="5" y2="5" className={styles.scale} />
      {from < 0 && <line x1={share(0)} x2={share(0)} y1="0" y2="10" className={styles.none} />}
      {goals !== undefined && (
        <>
          <line x1={share(goals.low)} x2={share(goals.high)} y1="5" y2="5" className={styles.range} />
          <circle cx={share(goals.mean)} cy="5" r="4" className={styles.mean} />
        </>
      )}
    </svg>
  );
}
