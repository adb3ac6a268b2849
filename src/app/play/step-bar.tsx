import { Plus } from 'lucide-react';
import type { ReactNode } from 'react';
import type { ScriptName } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import styles from './step-bar.module.css';

export interface StepBarProps {
  /** Names of the beats in the order in which they start. */
  readonly beats: readonly string[];
  readonly step: number;
  readonly onStep: (step: number) => void;
  readonly onAdd: () => void;
  readonly script: ScriptName;
  readonly hasLastTen: boolean;
  readonly onScript: (script: ScriptName) => void;
}

/** The steps of the play: the set, then each beat. */
export function StepBar({ beats, step, onStep, onAdd, script, hasLastTen, onScript }: StepBarProps): ReactNode {
  return (
    <fieldset className={styles.bar} aria-label="Steps of the play">
      <ol className={styles.steps}>
        <li>
          <Step current={step === 0} number="0" name="set" onChoose={() => onStep(0)} />
        </li>
        {beats.map((name, index) => (
          <li key={name}>
            <Step
              current={step === index + 1}
              number={String(index + 1)}
              name={name}
              onChoose={() => onStep(index + 1)}
            />
          </li>
        ))}
      </ol>
      <Button tone="plain" icon={<Plus aria-hidden="true" />} onClick={onAdd}>
        Step
      </Button>
      <Button
        tone="plain"
        pressed={script === 'lastTen'}
        title={hasLastTen ? 'What changes with ten seconds left' : 'Say what changes with ten seconds left'}
        onClick={() => onScript(script === 'lastTen' ? 'main' : 'lastTen')}
      >
        Last 10 s
      </Button>
    </fieldset>
  );
}

function Step({
  current,
  number,
  name,
  onChoose,
}: {
  readonly current: boolean;
  readonly number: string;
  readonly name: string;
  readonly onChoose: () => void;
}): ReactNode {
  return (
    <button type="button" className={styles.step} aria-current={current ? 'step' : undefined} onClick={onChoose}>
      <span className={styles.number}>{number}</span> {name}
    </button>
  );
}
