import { type ReactNode, useEffect, useState } from 'react';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { useDesk, useSaveStatus } from '../shell/desk.tsx';
import { downloadText } from '../shell/download-text.ts';
import { damagedFileName } from './file-name.ts';
import styles from './playbook-screen.module.css';

interface Damaged {
  readonly id: number;
  readonly text: string;
}

/** What was found damaged on this device, as long as it is kept there; nothing is shown when there is none. */
export function DamagedSection(): ReactNode {
  const { store } = useDesk();
  const status = useSaveStatus();
  const [kept, setKept] = useState<readonly Damaged[]>([]);
  const [asked, setAsked] = useState<Damaged>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is found while the document is being opened
  useEffect(() => {
    void store.setAside().then(setKept);
  }, [store, status]);
  if (kept.length === 0) return null;
  const drop = async (id: number): Promise<void> => {
    setAsked(undefined);
    await store.dropSetAside(id);
    setKept(await store.setAside());
  };
  return (
    <section className={styles.section} aria-labelledby="damaged-title">
      <h2 id="damaged-title">Found damaged</h2>
      <p>
        This is what the device held when it could not be read whole. It is kept beside your playbook until you take it
        out; who knows the format may repair it.
      </p>
      <ul>
        {kept.map((one, index) => (
          <li key={one.id} className={styles.buttons}>
            <Button onClick={() => downloadText(damagedFileName(new Date(), index + 1), one.text)}>
              Download number {index + 1}
            </Button>
            <Button tone="risky" onClick={() => setAsked(one)}>
              Take number {index + 1} out
            </Button>
          </li>
        ))}
      </ul>
      <Dialog
        open={asked !== undefined}
        onClose={() => setAsked(undefined)}
        title="Take it out for good?"
        about="This cannot be undone. Download it first if anything in it may still be missed."
      >
        <div className={styles.buttons}>
          <Button tone="risky" onClick={() => asked !== undefined && drop(asked.id)}>
            Take it out
          </Button>
          <Button onClick={() => setAsked(undefined)}>Keep it</Button>
        </div>
      </Dialog>
    </section>
  );
}
