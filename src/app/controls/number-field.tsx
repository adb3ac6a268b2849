import { type ReactNode, useState } from 'react';
import styles from './field.module.css';

export interface NumberFieldProps {
  /** Only spoken: the unit and what stands around it say it to the eye. */
  readonly label: string;
  readonly value: number;
  readonly step: number;
  /** Stands before the number: "x", "y", "s". */
  readonly unit: string;
  readonly onNumber: (value: number) => void;
  /** Something was typed that is no number, and the value stays; nothing is told of it when this is left out. */
  readonly onUnread?: (typed: string) => void;
}

/** A number that is changed as a whole: on Enter, by an arrow key, or when the field is left. */
export function NumberField({ label, value, step, unit, onNumber, onUnread }: NumberFieldProps): ReactNode {
  const [typed, setTyped] = useState<string>();
  const take = (text: string): void => {
    const number = text.trim() === '' ? Number.NaN : Number(text);
    if (!Number.isFinite(number)) onUnread?.(text);
    else if (number !== value) onNumber(number);
    setTyped(undefined);
  };
  return (
    <label className={styles.inline}>
      <span className="spoken">{label}</span>
      <span aria-hidden="true">{unit}</span>
      <input
        className={`${styles.input} ${styles.number}`}
        type="text"
        inputMode="decimal"
        value={typed ?? String(Math.round(value * 100) / 100)}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => {
          if (typed !== undefined) take(typed);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && typed !== undefined) take(typed);
          if (event.key === 'Escape') setTyped(undefined);
          const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
          if (direction === 0) return;
          event.preventDefault();
          const from = typed === undefined ? value : Number(typed);
          take(Number.isFinite(from) ? String(Math.round((from + direction * step) * 100) / 100) : (typed ?? ''));
        }}
      />
    </label>
  );
}
