import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { useOpponents } from './opponents-state.ts';
import styles from './said-line.module.css';

/** What the coach is told once: what was refused and why, or what else an edit changed. */
export function SaidLine({
  page,
  floats = false,
}: {
  readonly page: string | undefined;
  /** Over the foot of the page, for a page on which nothing may move under the pointer. */
  readonly floats?: boolean;
}): ReactNode {
  const { notice, change } = useOpponents();
  return (
    <div role="status" className={floats ? styles.floats : styles.place}>
      {notice !== undefined && notice.page === page && (
        <p className={styles[notice.tone]}>
          <span>{notice.text}</span>
          <Button
            tone="plain"
            aria-label="Understood"
            icon={<X aria-hidden="true" />}
            onClick={() => change({ notice: undefined })}
          />
        </p>
      )}
    </div>
  );
}
