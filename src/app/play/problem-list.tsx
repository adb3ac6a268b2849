import type { ReactNode } from 'react';
import type { Diagnostic } from '../../playbook/index.ts';
import styles from './problem-list.module.css';

/** What is wrong or doubtful in the play, a sentence each; nothing when all is well. */
export function ProblemList({ problems }: { readonly problems: readonly Diagnostic[] }): ReactNode {
  if (problems.length === 0) return null;
  return (
    <ul className={styles.list} aria-label="To fix">
      {problems.map(({ code, path, severity, message }) => (
        <li key={`${code} ${path} ${message}`} className={styles[severity]}>
          <strong>{severity === 'error' ? 'Fix: ' : 'Check: '}</strong>
          {message}
        </li>
      ))}
    </ul>
  );
}
