import { EllipsisVertical, Printer } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import { noteOpponent, type Opponent, removeOpponent, renameOpponent } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Menu } from '../controls/menu.tsx';
import { RenameField } from '../play/rename-field.tsx';
import { useDesk } from '../shell/desk.tsx';
import { goTo } from '../shell/place.ts';
import { useSheets } from '../teach/sheets-state.ts';
import { DisciplinePanel } from './discipline-panel.tsx';
import { KeeperPanel } from './keeper-panel.tsx';
import { NewScheme } from './new-scheme.tsx';
import { NoteField } from './note-field.tsx';
import styles from './opponent-page.module.css';
import { PlayWorths } from './play-worths.tsx';
import { SchemeMix } from './scheme-mix.tsx';
import { SchemesSeen } from './schemes-seen.tsx';
import { useApply } from './use-apply.ts';
import { useDelete } from './use-delete.ts';

/** All that is known of one opponent, and what our plays are worth against him. */
export function OpponentPage({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const { store } = useDesk();
  const apply = useApply();
  const remove = useDelete();
  const [writing, setWriting] = useState(false);
  const { id, name } = opponent;
  return (
    <article className={styles.page} aria-label={name}>
      <header className={styles.head}>
        <h2 className="spoken">{name}</h2>
        <RenameField
          label="Opponent"
          value={name}
          onRename={(next) => apply('rename the opponent', (book) => renameOpponent(book, id, next))}
        />
        <Button icon={<Printer aria-hidden="true" />} onClick={() => printPageOf(id)}>
          One page to print
        </Button>
        <Menu
          trigger={
            <Button tone="plain" aria-label={`More for ${name}`} icon={<EllipsisVertical aria-hidden="true" />} />
          }
          items={[
            { text: 'Write a scheme of theirs', onChoose: () => setWriting(true) },
            {
              text: 'Delete this opponent',
              tone: 'risky',
              apart: true,
              onChoose: () => remove(name, (book) => removeOpponent(book, id)),
            },
          ]}
        />
      </header>
      <div className={styles.columns}>
        <div className={styles.column}>
          <SchemeMix opponent={opponent} onWrite={() => setWriting(true)} />
          <PlayWorths opponent={opponent} />
          <SchemesSeen opponent={opponent} />
        </div>
        <div className={styles.column}>
          <DisciplinePanel opponent={opponent} />
          <KeeperPanel opponent={opponent} />
          <NoteField
            label="What you want to remember of them"
            value={opponent.notes ?? ''}
            onText={(text) => apply('note', (book) => noteOpponent(book, id, text), `typing:opponents/${id}/notes`)}
            onLeave={() => store.settle()}
          />
        </div>
      </div>
      <NewScheme open={writing} onClose={() => setWriting(false)} opponent={opponent} />
    </article>
  );
}

/** To the sheets, with this opponent's page chosen. */
function printPageOf(opponent: string): void {
  useSheets.getState().change({ kind: 'opponent', opponent });
  goTo({ kind: 'teach', part: 'sheets', play: undefined });
}
