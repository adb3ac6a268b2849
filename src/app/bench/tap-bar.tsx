import { Undo2 } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import styles from './bench.module.css';
import { tap, undoTap } from './bench-store.ts';
import { FoulSheet } from './foul-sheet.tsx';
import { MoreSheet } from './more-sheet.tsx';
import { tapWords } from './tap-words.ts';
import type { GameNow } from './use-game.ts';
import { whistle } from './whistle.ts';

/** Always in reach: take the last tap back, another foul, a timeout, and all that is seldom needed. */
export function TapBar({ now, playbook }: { readonly now: GameNow; readonly playbook: Playbook }): ReactNode {
  const [shown, setShown] = useState<'foul' | 'more'>();
  const last = now.game.events.at(-1);
  const close = (): void => setShown(undefined);
  const foul = (): void => {
    whistle(now);
    setShown('foul');
  };
  return (
    <div className={styles.tapBar}>
      <button
        type="button"
        className={styles.key}
        disabled={last === undefined}
        onClick={undoTap}
        aria-label={last === undefined ? 'Nothing to take back' : `Take back: ${tapWords(last)}`}
      >
        <Undo2 aria-hidden="true" /> <span className={styles.undone}>{last === undefined ? '' : tapWords(last)}</span>
      </button>
      <button type="button" className={styles.key} onClick={foul}>
        Foul
      </button>
      <button type="button" className={styles.key} onClick={() => tap({ kind: 'timeout', by: 'us' })}>
        Timeout
      </button>
      <button type="button" className={styles.key} onClick={() => setShown('more')}>
        More
      </button>
      <FoulSheet
        open={shown === 'foul'}
        side={now.state.flag ?? 'them'}
        onClose={close}
        now={now}
        playbook={playbook}
      />
      <MoreSheet open={shown === 'more'} onClose={close} now={now} playbook={playbook} />
    </div>
  );
}
