import type { ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import styles from './interval-bar.module.css';

/** Goals per chance that the bar's right end stands for. */
const barEnd = 0.8;

/** An interval on one scale for all, so that they can be compared at a glance; the scale alone before there is one. Figures beside it say what it says. */
export function IntervalBar({ goals }: { readonly goals: Interval | undefined }): ReactNode {
  const share = (value: number): string => `${(100 * Math.min(Math.max(value, 0), barEnd)) / barEnd}%`;
  return (
    <svg className={styles.bar} aria-hidden="true" width="100%" height="10">
      <line x1="0" x2="100%" y1="5" y2="5" className={styles.scale} />
      {goals !== undefined && (
        <>
          <line x1={share(goals.low)} x2={share(goals.high)} y1="5" y2="5" className={styles.range} />
          <circle cx={share(goals.mean)} cy="5" r="4" className={styles.mean} />
        </>
      )}
    </svg>
  );
}
