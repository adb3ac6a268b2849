import { X } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { Button } from '../controls/button.tsx';
import type { OverwrittenStep } from '../document/undo-steps.ts';
import styles from '../files/page-bar.module.css';
import { useOverwrittenStep } from './desk.tsx';

/** Says why an undo or redo moved nothing: another tab has changed the same since. */
export function OverwrittenBar(): ReactNode {
  const step = useOverwrittenStep();
  const [understood, setUnderstood] = useState<OverwrittenStep>();
  return (
    <div role="status">
      {step !== undefined && step !== understood && (
        <div className={styles.bar}>
          <p className={styles.beside}>{sentenceOf(step)}</p>
          <Button
            tone="plain"
            aria-label="Understood"
            icon={<X aria-hidden="true" />}
            onClick={() => setUnderstood(step)}
          />
        </div>
      )}
    </div>
  );
}

function sentenceOf({ move, label }: OverwrittenStep): string {
  const what = move === 'undo' ? 'taken back' : 'done again';
  return `“${label}” is not ${what}: another tab has changed the same since, and its change stays.`;
}
