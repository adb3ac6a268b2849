import type { ReactNode } from 'react';
import { usualSchemeWeight } from '../../engine/index.ts';
import { type Opponent, type Playbook, setSchemesBefore } from '../../playbook/index.ts';
import { percent } from '../../render/index.ts';
import type { ScoutQuestion } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import panel from '../opponents/panel.module.css';
import { schemeInfo } from '../opponents/scheme-info.ts';
import { useApply } from '../opponents/use-apply.ts';
import styles from './belief-panel.module.css';

/** How likely each scheme was before anything was marked: by the opponent's entry or by the level, and as the coach changes it. */
export function PriorEditor({
  playbook,
  opponent,
  question,
}: {
  readonly playbook: Playbook;
  readonly opponent: Opponent;
  readonly question: ScoutQuestion;
}): ReactNode {
  const apply = useApply();
  const all = question.schemes.reduce((sum, { weight }) => sum + weight, 0);
  const isWritten = Object.keys(opponent.schemes ?? {}).length > 0;
  const keep = (label: string, weights: Readonly<Record<string, number>> | undefined, joins?: string): void => {
    apply(label, (book) => setSchemesBefore(book, opponent.id, weights), joins);
  };
  const now = Object.fromEntries(question.schemes.map(({ id, weight }) => [id, weight]));
  const usual = Object.fromEntries(question.schemes.map(({ id }) => [id, usualSchemeWeight(playbook.team.level, id)]));
  const isTaken = (playbook.chances ?? []).some(
    (chance) => chance.opponent === opponent.id && chance.byMarks !== undefined,
  );
  return (
    <details className={styles.prior}>
      <summary>What was believed before</summary>
      <p className={panel.quiet}>
        {isWritten
          ? 'By what was written down of them, with a little left for everything else.'
          : 'By how often each scheme is met at your level (common practice, no source).'}{' '}
        A number is a weight beside the others; 0 rules a scheme out. Marks do not move these: they are what all marks
        are weighed against. What you change is kept with {opponent.name}.
      </p>
      <ul className={styles.weights}>
        {question.schemes.map(({ id, weight }) => {
          const name = schemeInfo(playbook, id)?.name ?? id;
          return (
            <li key={id}>
              <span>{name}</span>
              <NumberField
                label={`Weight of ${name} before`}
                unit=""
                step={0.5}
                value={weight}
                onNumber={(value) =>
                  keep('what was believed before', { ...now, [id]: value }, `before:opponents/${opponent.id}/${id}`)
                }
              />
              <span className={styles.quiet}>{percent(weight / all)}</span>
            </li>
          );
        })}
      </ul>
      <div className={panel.tools}>
        {!isTaken && (
          <Button disabled={opponent.before === undefined} onClick={() => keep('as the entry says', undefined)}>
            {isWritten ? 'As their page says' : 'As it was'}
          </Button>
        )}
        <Button onClick={() => keep('as is usual at our level', usual)}>As is usual at our level</Button>
      </div>
    </details>
  );
}
