import type { InputHTMLAttributes, ReactNode } from 'react';
import styles from './field.module.css';

export interface TextFieldProps extends Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange'> {
  readonly label: string;
  readonly quietLabel?: boolean;
  readonly onText: (text: string) => void;
  /** What is wrong with it, as a sentence. */
  readonly problem?: string;
}

/** A line of text with its name, and under it what is wrong with it. */
export function TextField({ label, quietLabel = false, onText, problem, ...rest }: TextFieldProps): ReactNode {
  return (
    <label className={styles.field}>
      <span className={quietLabel ? 'spoken' : styles.label}>{label}</span>
      <input
        className={styles.input}
        autoComplete="off"
        {...rest}
        aria-invalid={problem !== undefined}
        onChange={(event) => onText(event.target.value)}
      />
      {problem !== undefined && (
        <span className={styles.problem} role="alert">
          {problem}
        </span>
      )}
    </label>
  );
}
