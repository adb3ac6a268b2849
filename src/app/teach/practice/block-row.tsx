import { ArrowDown, ArrowUp, Trash2 } from 'lucide-react';
import type { ReactNode } from 'react';
import type { PracticeBlock } from '../../../playbook/index.ts';
import { Button } from '../../controls/button.tsx';
import { NumberField } from '../../controls/number-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import styles from './practice.module.css';

export interface BlockRowProps {
  readonly block: PracticeBlock;
  readonly title: string;
  readonly from: string;
  readonly runs: readonly string[];
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly onMinutes: (minutes: number) => void;
  readonly onReps: (reps: number) => void;
  readonly onNote: (note: string) => void;
  /** One place up (-1) or down (1). */
  readonly onMove: (by: -1 | 1) => void;
  readonly onDrop: () => void;
}

/** One block of a plan: when, what, how long, how often, why; to be changed in place. */
export function BlockRow({ block, title, from, runs, isFirst, isLast, ...on }: BlockRowProps): ReactNode {
  return (
    <li className={styles.block}>
      <div className={styles.head}>
        <span className={styles.clock}>{from}</span>
        <strong>{title}</strong>
        {block.fixed === true && <span className={styles.quiet}>set by hand</span>}
      </div>
      <div className={styles.figures}>
        <NumberField
          label={`Minutes of ${title}`}
          unit="min"
          value={block.minutes}
          step={0.5}
          onNumber={on.onMinutes}
        />
        {block.reps !== undefined && (
          <NumberField
            label={`${block.kind === 'keeper' ? 'Shots' : 'Reps'} of ${title}`}
            unit={block.kind === 'keeper' ? 'shots' : 'reps'}
            value={block.reps}
            step={1}
            onNumber={on.onReps}
          />
        )}
        <span className={styles.note}>
          <TextField
            label={`Note on ${title}`}
            quietLabel
            placeholder="Note"
            value={block.note ?? ''}
            maxLength={2000}
            onText={on.onNote}
          />
        </span>
        <span className={styles.buttons}>
          <Button
            tone="plain"
            aria-label={`Move ${title} up`}
            icon={<ArrowUp aria-hidden="true" />}
            disabled={isFirst}
            onClick={() => on.onMove(-1)}
          />
          <Button
            tone="plain"
            aria-label={`Move ${title} down`}
            icon={<ArrowDown aria-hidden="true" />}
            disabled={isLast}
            onClick={() => on.onMove(1)}
          />
          <Button
            tone="plain"
            aria-label={`Take out ${title}`}
            icon={<Trash2 aria-hidden="true" />}
            onClick={on.onDrop}
          />
        </span>
      </div>
      {runs.length > 0 && <p>{runs.join('; ')}</p>}
      {block.why !== undefined && <p className={styles.quiet}>{block.why}</p>}
    </li>
  );
}
