import type { ReactNode } from 'react';
import { addressOf } from '../shell/place.ts';
import styles from './problem-list.module.css';

/** Says that some of the unit are not the coach's own men, and where his are put in; nothing when all are. */
export function StandInLine({ standIns }: { readonly standIns: number }): ReactNode {
  if (standIns === 0) return null;
  const who =
    standIns === 6
      ? 'Your roster is empty or away: six usual men of your level play.'
      : `Your roster is ${standIns} short of six: ${standIns === 1 ? 'a usual man of your level plays' : `${standIns} usual men of your level play`} with them.`;
  return (
    <p className={styles.standIns}>
      {who} <a href={addressOf({ kind: 'team' })}>Put yours in at Team</a>
    </p>
  );
}
