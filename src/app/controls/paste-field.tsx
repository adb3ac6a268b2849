import type { ReactNode } from 'react';
import styles from './paste-field.module.css';

export interface PasteFieldProps {
  readonly label: string;
  readonly value: string;
  /** Shown while it is empty. */
  readonly placeholder: string;
  readonly onText: (text: string) => void;
}

/** Rows of a field that waits for a table, and of one that holds it. */
const waiting = 8;
const holding = 4;

/** A place for the cells of a spreadsheet: pasted, typed, or read from a file and mended. */
export function PasteField({ label, value, placeholder, onText }: PasteFieldProps): ReactNode {
  return (
    <label className={styles.source}>
      <span>{label}</span>
      <textarea
        className={styles.text}
        rows={value === '' ? waiting : holding}
        spellCheck={false}
        value={value}
        placeholder={placeholder}
        onChange={(event) => onText(event.target.value)}
      />
    </label>
  );
}
