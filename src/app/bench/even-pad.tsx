import { type ReactNode, useState } from 'react';
import type { TeamSide } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { allowSound } from './alerts.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import { FoulSheet } from './foul-sheet.tsx';
import type { GameNow } from './use-game.ts';
import { whistle } from './whistle.ts';

/** While no chance is on: flags, fouls, goals; and the ball that is back while a side is still short. */
export function EvenPad({ now, playbook }: { readonly now: GameNow; readonly playbook: Playbook }): ReactNode {
  const [foulOn, setFoulOn] = useState<TeamSide>();
  const { state, situation } = now;
  const isShort = situation.kind === 'manUp' || situation.kind === 'manDown';
  const give = (side: TeamSide): void => {
    allowSound();
    whistle(now);
    setFoulOn(side);
  };
  return (
    <>
      {isShort && (
        <button type="button" className={styles.key} data-tone="main" onClick={() => tap({ kind: 'begun' })}>
          {situation.kind === 'manUp' ? 'The ball is ours again: another chance' : 'The ball is theirs again'}
        </button>
      )}
      <div className={styles.pad} data-columns="2">
        <button type="button" className={styles.key} data-side="them" onClick={() => tap({ kind: 'flag', on: 'them' })}>
          Flag on them
        </button>
        <button type="button" className={styles.key} onClick={() => tap({ kind: 'flag', on: 'us' })}>
          Flag on us
        </button>
        <button type="button" className={styles.key} data-side="them" onClick={() => give('them')}>
          Foul on them
        </button>
        <button type="button" className={styles.key} onClick={() => give('us')}>
          Foul on us
        </button>
        <button type="button" className={styles.key} onClick={() => tap({ kind: 'goal', by: 'us' })}>
          Goal for us
        </button>
        <button type="button" className={styles.key} onClick={() => tap({ kind: 'goal', by: 'them' })}>
          Goal for them
        </button>
      </div>
      <FoulSheet
        open={foulOn !== undefined}
        side={foulOn ?? 'them'}
        onClose={() => setFoulOn(undefined)}
        now={now}
        playbook={playbook}
      />
      {state.chances.length === 0 && (
        <p className={styles.note}>
          A flag or a foul begins a man-up. Every tap is kept at once; the arrow below takes the last one back.
        </p>
      )}
    </>
  );
}
