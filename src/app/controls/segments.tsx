import { type ReactNode, useId } from 'react';
import styles from './segments.module.css';

export interface SegmentsProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly text: ReactNode; readonly title?: string }[];
  readonly onChange: (value: Value) => void;
}

/** One of a few choices that are all in sight: the page's own radio buttons, so arrow keys move between them. */
export function Segments<Value extends string>({ label, value, options, onChange }: SegmentsProps<Value>): ReactNode {
  const name = useId();
  return (
    <fieldset className={styles.segments} aria-label={label}>
      {options.map((option) => (
        <label key={option.value} className={styles.segment} title={option.title}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          {option.text}
        </label>
      ))}
    </fieldset>
  );
}
