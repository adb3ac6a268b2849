import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import styles from './notice-line.module.css';
import { useScreen } from './screen-state.ts';

/** What the coach is told once: what was refused and why, or what else an edit changed. */
export function NoticeLine(): ReactNode {
  const { notice, change } = useScreen();
  return (
    <div role="status" className={styles.place}>
      {notice !== undefined && (
        <p className={styles[notice.tone]}>
          {notice.text}
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
