import type { ReactNode } from 'react';
import { usualSchemeWeight } from '../../engine/index.ts';
import type { Opponent, Playbook } from '../../playbook/index.ts';
import { percent } from '../../render/index.ts';
import type { ScoutQuestion } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import panel from '../opponents/panel.module.css';
import { schemeInfo } from '../opponents/scheme-info.ts';
import styles from './belief-panel.module.css';
import { useFilm } from './film-state.ts';

/** The most that a scheme can weigh beside the others. */
const mostWeight = 1000;

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
  const { priors, change } = useFilm();
  const own = priors[opponent.id] ?? {};
  const all = question.schemes.reduce((sum, { weight }) => sum + weight, 0);
  const isWritten = Object.keys(opponent.schemes ?? {}).length > 0;
  const set = (scheme: string, weight: number): void => {
    const next = { ...own, [scheme]: Math.min(mostWeight, Math.max(0, weight)) };
    // Something must be possible.
    if (question.schemes.every(({ id, weight: now }) => (next[id] ?? now) === 0)) return;
    change({ priors: { ...priors, [opponent.id]: next } });
  };
  return (
    <details className={styles.prior}>
      <summary>What was believed before</summary>
      <p className={panel.quiet}>
        {isWritten
          ? 'By what is written down of them, with a little left for everything else.'
          : 'By how often each scheme is met at your level (common practice, no source).'}{' '}
        A number is a weight beside the others; 0 rules a scheme out. What you change here holds until the page is left.
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
                onNumber={(value) => set(id, value)}
              />
              <span className={styles.quiet}>{percent(weight / all)}</span>
            </li>
          );
        })}
      </ul>
      <div className={panel.tools}>
        <Button
          disabled={Object.keys(own).length === 0}
          onClick={() => change({ priors: { ...priors, [opponent.id]: {} } })}
        >
          As it was
        </Button>
        {isWritten && (
          <Button
            onClick={() => {
              const usual = question.schemes.map(({ id }) => [id, usualSchemeWeight(playbook.team.level, id)] as const);
              change({ priors: { ...priors, [opponent.id]: Object.fromEntries(usual) } });
            }}
          >
            As is usual at our level
          </Button>
        )}
      </div>
    </details>
  );
}
