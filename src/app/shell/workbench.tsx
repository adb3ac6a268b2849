import type { ReactNode } from 'react';
import { Masthead } from './masthead.tsx';
import { usePlace } from './place.ts';
import styles from './workbench.module.css';

/** The whole page: where one is, and the way to the other places. */
export function Workbench(): ReactNode {
  const place = usePlace();
  return (
    <div className={styles.workbench}>
      <Masthead place={place} />
      <main className={styles.place} id="place" tabIndex={-1}>
        <h1 className="spoken">{place.kind}</h1>
      </main>
    </div>
  );
}
