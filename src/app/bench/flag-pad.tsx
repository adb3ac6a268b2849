import { type ReactNode, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import { FoulSheet } from './foul-sheet.tsx';
import type { GameNow } from './use-game.ts';
import { whistle } from './whistle.ts';

/** While a flag is down: the whistle with what is served, or without. */
export function FlagPad({ now, playbook }: { readonly now: GameNow; readonly playbook: Playbook }): ReactNode {
  const [isOpen, setOpen] = useState(false);
  const on = now.state.flag ?? 'them';
  const begin = (): void => {
    whistle(now);
    setOpen(true);
  };
  return (
    <div className={styles.pad} data-columns="2">
      <button type="button" className={styles.key} data-tone="main" onClick={begin}>
        Whistle: time to serve
      </button>
      <button type="button" className={styles.key} onClick={() => tap({ kind: 'flagOff' })}>
        No time is served
      </button>
      <FoulSheet open={isOpen} side={on} onClose={() => setOpen(false)} now={now} playbook={playbook} />
    </div>
  );
}
