import { type ReactNode, useCallback } from 'react';
import { goTo } from '../shell/place.ts';
import { useDroppedFile } from './dropped-file.ts';
import styles from './file-drop.module.css';
import { useFileDrop } from './use-file-drop.ts';

/** Takes a file that is dropped anywhere in the workbench to the Playbook place, which looks at it and asks before anything changes. */
export function FileDrop(): ReactNode {
  const put = useDroppedFile((state) => state.put);
  const take = useCallback(
    (file: File): void => {
      put(file);
      goTo({ kind: 'playbook' });
    },
    [put],
  );
  const isOver = useFileDrop(take);
  if (!isOver) return undefined;
  return (
    <p className={styles.drop} aria-hidden="true">
      Let go to open it. Nothing changes before you say so.
    </p>
  );
}
