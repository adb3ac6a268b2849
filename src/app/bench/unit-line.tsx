import { type ReactNode, useMemo } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { benchUnit, type CallAdvice, changesWords, unitChanges } from '../../teach/index.ts';
import styles from './bench.module.css';
import { type GameNow, playOfCall } from './use-game.ts';
import { useMenOut } from './use-men-out.ts';

/** Who goes on, who comes off, and where. */
export function UnitLine({
  playbook,
  now: { state },
  advice,
}: {
  readonly playbook: Playbook;
  readonly now: GameNow;
  readonly advice: CallAdvice;
}): ReactNode {
  const call = state.open?.call ?? advice.calls[0];
  const out = useMenOut(state);
  const [play, fromSide] = [call?.play, call?.fromSide];
  const unit = useMemo(() => {
    if (play === undefined || fromSide === undefined) return undefined;
    const one = { play, fromSide };
    if (playOfCall(playbook, one) === undefined) return undefined;
    const now = benchUnit(playbook, one, out);
    return { now, changes: unitChanges(benchUnit(playbook, one, []), now) };
  }, [playbook, play, fromSide, out]);
  if (unit === undefined) return null;
  return (
    <section className={styles.unit} aria-label="Who is on">
      {unit.now.length === 0 ? (
        <p className={styles.changes}>Too few are there for six: send who you have.</p>
      ) : (
        <>
          <p className={styles.six}>
            {unit.now.map(({ number, spot }) => (
              <span key={spot} className={styles.man}>
                {number} <small>{spot}</small>
              </span>
            ))}
          </p>
          {out.length > 0 && <p className={styles.changes}>{changesWords(unit.changes)}</p>}
        </>
      )}
    </section>
  );
}
