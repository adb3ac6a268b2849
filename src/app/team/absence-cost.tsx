import type { ReactNode } from 'react';
import type { SideAnswer } from '../answers/side-answers.ts';
import { differenceText, signOf } from '../schemes/goal-words.ts';
import styles from './line-up.module.css';

/** What a play makes less without a man: goals a chance with their interval, or that they are on their way. */
export function AbsenceCost({ answer }: { readonly answer: SideAnswer | undefined }): ReactNode {
  if (answer === undefined || answer.refused !== null) return null;
  const { change } = answer;
  if (change === null) return <span className={styles.quiet}>Goals a chance: being played.</span>;
  const sign = signOf(change.difference);
  return (
    <span className={styles.cost} data-sign={sign}>
      {differenceText(change.difference)} goals a chance{sign === 'open' ? ', no sure difference' : ''}
      {answer.done ? '' : ' …'}
    </span>
  );
}
