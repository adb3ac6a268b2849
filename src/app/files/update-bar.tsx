import { type ReactNode, useState } from 'react';
import { Button } from '../controls/button.tsx';
import { offline, useOfflineState } from '../offline/offline.ts';
import { useDesk } from '../shell/desk.tsx';
import styles from './page-bar.module.css';

/** Asks whether to take a new version of the workbench, once it is at hand. */
export function UpdateBar(): ReactNode {
  const { store } = useDesk();
  const { update } = useOfflineState();
  const [putOff, setPutOff] = useState<typeof update>('none');
  const take = async (): Promise<void> => {
    // The page is loaded again: what was typed is written down first.
    store.settle();
    await store.settled();
    if (update === 'ready') offline.applyUpdate();
    else window.location.reload();
  };
  return (
    <div role="status">
      {update !== 'none' && update !== putOff && (
        <div className={styles.bar}>
          <p className={styles.text}>
            {update === 'ready'
              ? 'A new version of the workbench is ready. Your playbook stays as it is.'
              : 'Another tab has taken a new version of the workbench. This tab is the old one until it is loaded again.'}
          </p>
          <Button onClick={take}>{update === 'ready' ? 'Take it now' : 'Load it again'}</Button>
          <Button tone="plain" onClick={() => setPutOff(update)}>
            Later
          </Button>
        </div>
      )}
    </div>
  );
}
