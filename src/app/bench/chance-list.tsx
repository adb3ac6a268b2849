import type { ReactNode } from 'react';
import { chanceResultWords, type Playbook } from '../../playbook/index.ts';
import { shortSchemeName, tappedLookWords } from '../../teach/index.ts';
import styles from './bench.module.css';
import { leftText } from './time-text.ts';
import { callName, type GameNow } from './use-game.ts';

/** The chances of the game so far, the newest first. */
export function ChanceList({ playbook, now }: { readonly playbook: Playbook; readonly now: GameNow }): ReactNode {
  const { state, game } = now;
  if (state.chances.length === 0) return null;
  return (
    <section className={styles.chances} aria-label="Chances so far">
      <h2 className={styles.head}>{tallyWords(now)}</h2>
      <ol>
        {[...state.chances].reverse().map((chance) => (
          <li key={`${chance.from} ${chance.period} ${chance.left}`}>
            <span>
              {chance.period}, {leftText(chance.left)}
            </span>{' '}
            <strong>
              {chance.side === 'us' ? '' : 'theirs: '}
              {chanceResultWords[chance.result ?? 'expired']}
            </strong>{' '}
            {[
              chance.call === null ? '' : callName(playbook, chance.call, game.settings.sides),
              chance.look === null ? '' : tappedLookWords(chance.look),
              chance.seen === null ? '' : `v ${shortSchemeName(playbook, chance.seen)}`,
            ]
              .filter((part) => part !== '')
              .join(', ')}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Each time that a side had the ball with more men counts: one penalty may hold several. */
function tallyWords({ state: { chances } }: GameNow): string {
  const of = (side: 'us' | 'them'): string => {
    const all = chances.filter((chance) => chance.side === side);
    return `${all.filter(({ result }) => result === 'goal').length} of ${all.length}`;
  };
  return `Goals of chances so far: ours ${of('us')}, theirs ${of('them')}`;
}
