import type { ReactNode } from 'react';
import panel from '../opponents/panel.module.css';
import { useIsNarrow } from '../play/use-is-narrow.ts';
import styles from './folding-panel.module.css';

export interface FoldingPanelProps {
  /** What the panel is called, and what its heading says when that is more. */
  readonly label: string;
  readonly title?: string;
  /** What comes out of it, in one sentence: what is to be seen of it while it is folded. */
  readonly result: string;
  readonly children: ReactNode;
}

/** A panel of the place: open where there is room; on a phone, where all of them would be ten thousand points high, folded behind its heading and its result. */
export function FoldingPanel({ label, title = label, result, children }: FoldingPanelProps): ReactNode {
  const isNarrow = useIsNarrow();
  const heading = <h2 className={panel.title}>{title}</h2>;
  return (
    <section className={panel.panel} aria-label={label}>
      {isNarrow ? (
        <details className={styles.folding}>
          <summary>
            {heading}
            <span className={styles.result}>{result}</span>
          </summary>
          <div className={styles.content}>{children}</div>
        </details>
      ) : (
        <>
          {heading}
          {children}
        </>
      )}
    </section>
  );
}
