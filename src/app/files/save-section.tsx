import { Download } from 'lucide-react';
import { type ReactNode, useMemo } from 'react';
import { Button } from '../controls/button.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { idsWithNames } from './ids-with-names.ts';
import styles from './playbook-screen.module.css';
import type { Said } from './said.ts';
import { savePlaybookFile } from './save-file.ts';

/** The playbook as a file, with the players' names or without. */
export function SaveSection({ onDone }: { readonly onDone: (said: Said) => void }): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const telling = useMemo(() => idsWithNames(playbook), [playbook]);
  const save = (names: boolean): void => {
    const fileName = savePlaybookFile(store, { names });
    onDone({ text: `“${fileName}” was handed to the browser, which keeps it where it keeps your downloads.` });
  };
  return (
    <section className={styles.section} aria-labelledby="save-title">
      <h2 id="save-title">Save a file</h2>
      <div className={styles.way}>
        <Button tone="main" icon={<Download aria-hidden="true" />} onClick={() => save(true)}>
          Save with names
        </Button>
        <p>
          For your own backup, and for an assistant who works on it with you: his copy can be merged back. It holds
          every name, grade and note.
        </p>
      </div>
      <div className={styles.way}>
        <Button icon={<Download aria-hidden="true" />} onClick={() => save(false)}>
          Save without names
        </Button>
        <p>
          For sharing. Players may be minors, whose names are nobody else’s business: their jersey numbers stand in
          place of them, also in notes, and notes on players are left out.
        </p>
      </div>
      {telling.length > 0 && (
        <p className={styles.warning}>
          Also without names the file would hold {telling.map((id) => `“${id}”`).join(', ')}, which has a part of a
          player’s name: a play keeps the short name that it was made under. A copy of the play under another name gets
          another one.
        </p>
      )}
    </section>
  );
}
