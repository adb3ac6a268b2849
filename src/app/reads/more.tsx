import type { ReactNode } from 'react';
import styles from './more.module.css';

export interface MoreProps {
  readonly title: string;
  /** Beside each other where there is room. */
  readonly children: ReactNode;
}

/** What only some want to know, behind a line that says what it is. */
export function More({ title, children }: MoreProps): ReactNode {
  return (
    <details className={styles.more}>
      <summary>{title}</summary>
      <div className={styles.parts}>{children}</div>
    </details>
  );
}
