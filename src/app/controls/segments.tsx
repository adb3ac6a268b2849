import { ToggleGroup } from 'radix-ui';
import type { ReactNode } from 'react';
import styles from './segments.module.css';

export interface SegmentsProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly text: ReactNode; readonly title?: string }[];
  readonly onChange: (value: Value) => void;
}

/** One of a few choices that are all in sight. Arrow keys move between them. */
export function Segments<Value extends string>({ label, value, options, onChange }: SegmentsProps<Value>): ReactNode {
  return (
    <ToggleGroup.Root
      type="single"
      className={styles.segments}
      aria-label={label}
      value={value}
      onValueChange={(next) => {
        const found = options.find((option) => option.value === next);
        if (found !== undefined) onChange(found.value);
      }}
    >
      {options.map((option) => (
        <ToggleGroup.Item key={option.value} value={option.value} className={styles.segment} title={option.title}>
          {option.text}
        </ToggleGroup.Item>
      ))}
    </ToggleGroup.Root>
  );
}
