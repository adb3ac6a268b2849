import type { ReactNode } from 'react';
import styles from './note-field.module.css';

/** Some lines for people. Saved as they are typed; leaving the field ends the step of undo. */
export function NoteField({
  label,
  value,
  onText,
  onLeave,
}: {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}): ReactNode {
  return (
    <label className={styles.field}>
      <span className={styles.label}>{label}</span>
      <textarea
        className={styles.text}
        rows={3}
        maxLength={2000}
        value={value}
        onChange={(event) => onText(event.target.value)}
        onBlur={onLeave}
      />
    </label>
  );
}
