import type { ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import type { OverallAnswer } from '../answers/answers-snapshot.ts';
import { differenceText, goalsText, setAloneText, signOf, sureness } from './goal-words.ts';
import styles from './schemes-pane.module.css';

const setAloneExplained =
  'The set alone: the same six in the same places only swing the ball and take what opens. Same luck, trial by trial.';

/** All chosen schemes together, what the last change did to them, and what the set makes without the play. */
export function OverallLine({
  overall,
  children,
}: {
  readonly overall: OverallAnswer | null;
  /** What stands at its end. */
  readonly children?: ReactNode;
}): ReactNode {
  return (
    <div className={styles.overall}>
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
          {overall.change !== null && <Change difference={overall.change.difference} coarse={overall.coarse} />}
          {overall.overSetAlone !== null && (
            <details className={styles.quiet}>
              <summary>{setAloneText(overall.goals, overall.overSetAlone.difference)}</summary>
              {setAloneExplained}
            </details>
          )}
        </>
      )}
      {children}
    </div>
  );
}

function Change({ difference, coarse }: { readonly difference: Interval; readonly coarse: boolean }): ReactNode {
  // A first guess may turn round: it gets no colour.
  const sign = coarse ? 'open' : signOf(difference);
  return (
    <span className={styles.change} data-sign={sign}>
      {differenceText(difference)} by your last change{!coarse && sign === 'open' ? ', no sure difference' : ''}
    </span>
  );
}
