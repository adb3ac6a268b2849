import type { ReactNode } from 'react';
import styles from './empty-plays.module.css';

/** What stands in the place of a play while the playbook has none. */
export function EmptyPlays(): ReactNode {
  return (
    <div className={styles.empty}>
      <p>This playbook has no play yet.</p>
      <p className={styles.quiet}>
        Make one from a set: drag the men to where they stand, then say step by step what the ball and the men do. It is
        played against every man-down scheme while you write.
      </p>
    </div>
  );
}
