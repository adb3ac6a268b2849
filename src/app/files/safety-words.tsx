import type { ReactNode } from 'react';
import type { SaveKind } from '../document/save-status.ts';
import { useOfflineState } from '../offline/offline.ts';
import { useSaveStatus } from '../shell/desk.tsx';
import styles from './playbook-screen.module.css';

/** Where the data is, and who can see it. */
export function SafetyWords(): ReactNode {
  const status = useSaveStatus();
  const { keeping } = useOfflineState();
  return (
    <div className={styles.safety}>
      <p>
        All of it stays on this device, in this browser. Nothing is sent anywhere: names, grades and notes leave it only
        in a file that you save and hand on yourself.
      </p>
      <p className={styles.quiet}>
        {isToldAbove.has(status.kind) ? '' : status.sentence}
        {keeping === 'kept' && ' The workbench opens here without a network too.'}
      </p>
    </div>
  );
}

// What the bar under the masthead says is not said twice.
const isToldAbove: ReadonlySet<SaveKind> = new Set(['storageFull', 'unavailable', 'broken']);
