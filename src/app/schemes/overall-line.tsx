import type { ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import type { OverallAnswer } from '../answers/answers-snapshot.ts';
import { Button } from '../controls/button.tsx';
import { differenceText, goalsText, signOf, sureness } from './goal-words.ts';
import styles from './schemes-pane.module.css';

/** All chosen schemes together, and what the last change did to them. */
export function OverallLine({
  overall,
  count,
  onPick,
}: {
  readonly overall: OverallAnswer | null;
  readonly count: number;
  readonly onPick: () => void;
}): ReactNode {
  return (
    <div className={styles.overall}>
      <h2 className="spoken">Against the schemes</h2>
      {overall === null ? (
        <span className={styles.number} data-coarse="true">
          …
        </span>
      ) : (
        <>
          <span className={styles.number} data-coarse={overall.coarse}>
            {goalsText(overall.goals.mean)}
          </span>
          <span className={styles.quiet}>
            goals a chance ({sureness(overall.goals)}){overall.coarse ? ', a first guess' : ''}
          </span>
          {overall.change !== null && <Change difference={overall.change.difference} />}
        </>
      )}
      <span className={styles.pick}>
        <Button tone="plain" onClick={onPick}>
          {count} {count === 1 ? 'scheme' : 'schemes'}
        </Button>
      </span>
    </div>
  );
}

function Change({ difference }: { readonly difference: Interval }): ReactNode {
  return (
    <span className={styles.change} data-sign={signOf(difference)}>
      {differenceText(difference)} by your last change
    </span>
  );
}
