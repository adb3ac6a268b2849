import type { ReactNode } from 'react';
import { chanceResultWords, type Playbook } from '../../playbook/index.ts';
import { shortSchemeName, tappedLookWords } from '../../teach/index.ts';
import styles from './bench.module.css';
import { leftText } from './time-text.ts';
import { callName, type GameNow } from './use-game.ts';

/** The man-ups of the game so far, the newest first. */
export function ChanceList({ playbook, now }: { readonly playbook: Playbook; readonly now: GameNow }): ReactNode {
  const { state, game } = now;
  if (state.chances.length === 0) return null;
  return (
    <section className={styles.chances} aria-label="Man-ups so far">
      <h2 className={styles.head}>Man-ups so far: {tallyWords(now)}</h2>
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

function tallyWords({ state: { chances } }: GameNow): string {
  const of = (side: 'us' | 'them'): string => {
    const all = chances.filter((chance) => chance.side === side);
    return `${all.filter(({ result }) => result === 'goal').length} of ${all.length}`;
  };
  return `ours ${of('us')}, theirs ${of('them')}`;
}
