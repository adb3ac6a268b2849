import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { ballVerbs, runVerbs, type Verb } from '../field/field-order.ts';
import styles from './verb-bar.module.css';

export interface VerbBarProps {
  /** The man who is chosen. */
  readonly by: string;
  readonly hasBall: boolean;
  /** The verb that waits for its aim. */
  readonly aiming: Verb | undefined;
  readonly onVerb: (verb: Verb) => void;
}

/** What the chosen man can be told: with the ball first what one does with it. */
export function VerbBar({ by, hasBall, aiming, onVerb }: VerbBarProps): ReactNode {
  const verbs: readonly Verb[] = hasBall ? ballVerbs : runVerbs;
  return (
    <fieldset className={styles.bar} aria-label={`Tell ${by} to`}>
      <span className={styles.who}>{by}</span>
      {verbs.map((verb) => (
        <Button key={verb} pressed={aiming === verb} onClick={() => onVerb(verb)}>
          {verb}
        </Button>
      ))}
    </fieldset>
  );
}
