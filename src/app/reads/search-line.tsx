import type { ReactNode } from 'react';
import styles from './search-line.module.css';

export interface SearchLineProps {
  /** What the bar is called: "How far the search is". */
  readonly label: string;
  /** How far it is in words, for the eye: read out at every step they would be too much. */
  readonly words?: string | undefined;
  /** Requests that are answered, of all that are planned; undefined when nothing is being found. */
  readonly progress: { readonly answered: number; readonly planned: number } | undefined;
  /** Told once for each state. */
  readonly said: string;
}

/** How far a search is, and what is to be said of it. */
export function SearchLine({ label, words, progress, said }: SearchLineProps): ReactNode {
  return (
    <div className={styles.search}>
      {words !== undefined && <p>{words}</p>}
      {progress !== undefined && (
        <progress className={styles.progress} value={progress.answered} max={progress.planned} aria-label={label} />
      )}
      <p role="status" className={styles.quiet}>
        {said}
      </p>
    </div>
  );
}
