import { Pause, Play } from 'lucide-react';
import type { ReactNode } from 'react';
import { Button } from '../controls/button.tsx';
import { allowSound } from './alerts.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import { leftText } from './time-text.ts';
import type { GameNow } from './use-game.ts';

/** The clock of the game and the score; one large button starts and stops it. */
export function ClockBar({ now: { state, game } }: { readonly now: GameNow }): ReactNode {
  const { clock, score } = state;
  const isOver = clock.left <= 0;
  return (
    <div className={styles.clockBar}>
      <p className={styles.period}>
        <span className="spoken">Period </span>
        {periodName(clock.period, game.settings.periods)}
      </p>
      {/* A timer is not read out each second; who wants to know goes to it. */}
      <p className={styles.clock} role="timer" aria-live="off" aria-label="Left in the period">
        {leftText(clock.left)}
      </p>
      <p className={styles.score}>
        <span className={styles.scoreWord}>Us </span>
        {score.us}
        <span aria-hidden="true"> : </span>
        {score.them}
        <span className={styles.scoreWord}> Them</span>
      </p>
      {isOver ? (
        <Button
          tone="main"
          className={styles.clockButton ?? ''}
          onClick={() => tap({ kind: 'period', period: clock.period + 1 })}
        >
          Next period
        </Button>
      ) : (
        <Button
          tone={clock.running ? 'usual' : 'main'}
          className={styles.clockButton ?? ''}
          icon={clock.running ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
          onClick={() => {
            allowSound();
            tap({ kind: 'clock', does: clock.running ? 'stop' : 'start' });
          }}
        >
          {clock.running ? 'Stop' : 'Start'}
        </Button>
      )}
    </div>
  );
}

/** "2", and "OT", "OT 2" after the last period. */
function periodName(period: number, periods: number): string {
  if (period <= periods) return String(period);
  return period === periods + 1 ? 'OT' : `OT ${period - periods}`;
}
