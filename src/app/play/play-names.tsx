import type { ReactNode } from 'react';
import {
  notePlay,
  type Playbook,
  type PlaybookEdit,
  type PlayEntry,
  renamePlay,
  tagPlay,
} from '../../playbook/index.ts';
import { Dialog } from '../controls/dialog.tsx';
import { useDesk } from '../shell/desk.tsx';
import styles from './new-play.module.css';
import { RenameField } from './rename-field.tsx';
import { useScreen } from './screen-state.ts';

export interface PlayNamesProps {
  readonly onClose: () => void;
  readonly entry: PlayEntry;
}

/** What a play is called, how it is found, and what is to be remembered of it. */
export default function PlayNames({ onClose, entry }: PlayNamesProps): ReactNode {
  const { store } = useDesk();
  const change = useScreen((state) => state.change);
  const apply = (label: string, edit: (playbook: Playbook) => PlaybookEdit, joins?: string): void => {
    const done = edit(store.playbook);
    if (done.kind === 'refused') change({ notice: { text: done.reason, tone: 'refused' } });
    else store.edit(label, () => done.playbook, joins === undefined ? {} : { joins });
  };
  return (
    <Dialog open onClose={onClose} title={entry.name}>
      <div className={styles.form}>
        <RenameField
          label="What you call it"
          value={entry.name}
          onRename={(name) => apply(`call it ${name}`, (book) => renamePlay(book, entry.id, name))}
        />
        <RenameField
          label="Tags, with commas between them"
          value={(entry.tags ?? []).join(', ')}
          onRename={(text) => apply(`tag ${entry.name}`, (book) => tagPlay(book, entry.id, text.split(',')))}
        />
        <label className={styles.notes}>
          <span className={styles.legend}>Notes</span>
          <textarea
            rows={5}
            value={entry.notes ?? ''}
            onChange={(event) =>
              apply(
                `notes of ${entry.name}`,
                (book) => notePlay(book, entry.id, event.target.value),
                `typing:plays/${entry.id}/notes`,
              )
            }
            onBlur={store.settle}
          />
        </label>
      </div>
    </Dialog>
  );
}
