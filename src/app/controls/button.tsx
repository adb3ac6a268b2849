import type { ButtonHTMLAttributes, ReactNode } from 'react';
import styles from './button.module.css';

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** `main` is the one thing to do next; `plain` has no edge until it is pointed at; `risky` takes something away. */
  readonly tone?: 'usual' | 'main' | 'plain' | 'risky';
  /** Stays pressed in: for a choice that is on or off. */
  readonly pressed?: boolean;
  readonly icon?: ReactNode;
}

/** A button in the workbench's look. Without text it needs an `aria-label`. */
export function Button({ tone = 'usual', pressed, icon, children, className, type, ...rest }: ButtonProps): ReactNode {
  const classes = [styles.button, styles[tone], children === undefined ? styles.iconOnly : '', className ?? ''];
  return (
    <button
      type={type ?? 'button'}
      className={classes.join(' ')}
      {...(pressed !== undefined && { 'aria-pressed': pressed })}
      {...rest}
    >
      {icon}
      {children}
    </button>
  );
}
