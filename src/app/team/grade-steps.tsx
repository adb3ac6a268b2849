import { ToggleGroup } from 'radix-ui';
import type { ReactNode } from 'react';
import styles from './player-panel.module.css';

const steps = ['1', '2', '3', '4', '5'] as const;

export interface GradeStepsProps {
  readonly label: string;
  readonly about: string;
  /** What readings do to it, when there are any. */
  readonly instead: string | undefined;
  readonly grade: number | undefined;
  readonly onGrade: (grade: number | undefined) => void;
}

/** A grade as five steps; the step that is pressed again is taken back, and the usual 3 counts. */
export function GradeSteps({ label, about, instead, grade, onGrade }: GradeStepsProps): ReactNode {
  const isBetween = grade !== undefined && !Number.isInteger(grade);
  return (
    <div className={styles.grade}>
      <span className={styles.gradeName}>
        {label}
        <small>{instead ?? about}</small>
      </span>
      <ToggleGroup.Root
        type="single"
        className={styles.steps}
        aria-label={`${label}, 1 to 5`}
        value={grade === undefined ? '' : String(grade)}
        onValueChange={(value) => onGrade(value === '' ? undefined : Number(value))}
      >
        {steps.map((step) => (
          <ToggleGroup.Item
            key={step}
            value={step}
            className={styles.step}
            data-reached={grade !== undefined && Number(step) <= grade}
            data-usual={grade === undefined && step === '3'}
          >
            {step}
          </ToggleGroup.Item>
        ))}
      </ToggleGroup.Root>
      <span className={styles.gradeValue}>{isBetween ? grade : grade === undefined ? 'usual' : ''}</span>
    </div>
  );
}
