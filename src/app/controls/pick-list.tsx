import type { ReactNode } from 'react';
import styles from './field.module.css';

export interface PickListProps {
  readonly label: string;
  /** The label is only spoken: what stands around it says the same to the eye. */
  readonly quietLabel?: boolean;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly onChange: (value: string) => void;
  readonly disabled?: boolean;
}

/** One of many choices: the device's own list, which every hand, thumb and reader knows. */
export function PickList({ label, quietLabel = false, value, options, onChange, disabled }: PickListProps): ReactNode {
  return (
    <label className={styles.field}>
      <span className={quietLabel ? 'spoken' : styles.label}>{label}</span>
      <select
        className={styles.input}
        value={value}
        disabled={disabled === true}
        onChange={(event) => onChange(event.target.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </label>
  );
}
