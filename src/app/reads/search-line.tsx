import type { ReactNode } from 'react';
import styles from './search-line.module.css';

export interface SearchLineProps {
  /** What is looked for, as it follows "How far the search for ... is". */
  readonly what: string;
  /** Requests that are answered, of all that are planned; undefined when nothing is being found. */
  readonly progress: { readonly answered: number; readonly planned: number } | undefined;
  /** Told once for each state. */
  readonly said: string;
}

/** How far a search is, and what is to be said of it. */
export function SearchLine({ what, progress, said }: SearchLineProps): ReactNode {
  return (
    <div className={styles.search}>
      {progress !== undefined && (
        <progress
          className={styles.progress}
          value={progress.answered}
          max={progress.planned}
          aria-label={`How far the search for ${what} is`}
        />
      )}
      <p role="status" className={styles.quiet}>
        {said}
      </p>
    </div>
  );
}
