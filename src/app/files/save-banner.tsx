import { type ReactNode, useEffect, useState } from 'react';
import { Button } from '../controls/button.tsx';
import type { SaveKind } from '../document/save-status.ts';
import { useDesk, useSaveStatus } from '../shell/desk.tsx';
import { downloadText } from '../shell/download-text.ts';
import { damagedFileName } from './file-name.ts';
import styles from './page-bar.module.css';
import { savePlaybookFile } from './save-file.ts';

/** Milliseconds of opening after which the coach is told what he waits for. */
const longLoading = 1500;

/** Tells when what is typed is not safe, and what to do; nothing is shown as long as it is. */
export function SaveBanner(): ReactNode {
  const { store } = useDesk();
  const status = useSaveStatus();
  const isLong = useAfter(longLoading, status.kind === 'loading');
  const [isDownloaded, setDownloaded] = useState(false);
  const downloadFound = async (): Promise<void> => {
    const found = await store.setAside();
    found.forEach(({ text }, index) => void downloadText(damagedFileName(new Date(), index + 1), text));
    setDownloaded(true);
  };
  const shown = isShown(status.kind, isLong);
  return (
    <div role="status">
      {shown && (
        <div className={status.kind === 'loading' ? styles.bar : styles.warning}>
          <p className={styles.text}>{status.sentence}</p>
          {status.kind === 'storageFull' || status.kind === 'unavailable' ? (
            <Button onClick={() => savePlaybookFile(store, { names: true })}>Save a file now</Button>
          ) : undefined}
          {status.kind === 'broken' && (
            <>
              <Button onClick={downloadFound}>{isDownloaded ? 'Download it again' : 'Download what was found'}</Button>
              <Button onClick={() => store.acknowledgeBroken()}>Go on beside it</Button>
            </>
          )}
        </div>
      )}
    </div>
  );
}

function isShown(kind: SaveKind, isLong: boolean): boolean {
  switch (kind) {
    case 'saved':
    case 'saving':
      return false;
    case 'loading':
      return isLong;
    case 'storageFull':
    case 'unavailable':
    case 'broken':
      return true;
    default:
      return exhaustive(kind);
  }
}

/** Whether something has held for so long, in milliseconds. */
function useAfter(wait: number, holds: boolean): boolean {
  const [isAfter, setAfter] = useState(false);
  useEffect(() => {
    if (!holds) return;
    const timer = setTimeout(() => setAfter(true), wait);
    return () => {
      clearTimeout(timer);
      setAfter(false);
    };
  }, [wait, holds]);
  return holds && isAfter;
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown save status: ${JSON.stringify(kind)}`);
}
