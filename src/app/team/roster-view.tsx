import { type ReactNode, useState } from 'react';
import { Dialog } from '../controls/dialog.tsx';
import { Segments } from '../controls/segments.tsx';
import { useDesk } from '../shell/desk.tsx';
import { PlayerPanel } from './player-panel.tsx';
import { RosterCards } from './roster-cards.tsx';
import { editPlayer } from './roster-edits.ts';
import { nameOf } from './roster-problems.ts';
import { RosterTable } from './roster-table.tsx';
import { RosterTools } from './roster-tools.tsx';
import styles from './roster-view.module.css';
import { TableImport } from './table-import.tsx';
import { draftKey, useTeam } from './team-state.ts';
import { UnitPicks } from './unit-picks.tsx';
import { useMedia } from './use-media.ts';
import { useRoster } from './use-roster.ts';

/** The roster: as a table, on a phone as cards, and all of one man in a panel. */
export function RosterView(): ReactNode {
  const { store } = useDesk();
  const editor = useRoster();
  const { columns, open, change, draft } = useTeam();
  const [table, setTable] = useState<string>();
  const isPhone = useMedia('(max-width: 40rem)');
  const isWide = useMedia('(min-width: 105rem)');
  const { roster, keys } = editor;
  const man = open === undefined ? undefined : roster[keys.indexOf(open)];
  const close = (): void => change({ open: undefined });
  const add = (): void => {
    const row = keys.at(-1)!;
    const isAdded = store.edit('add a man', (playbook) =>
      editPlayer(playbook, playbook.team.roster.length, (player) => ({ ...player })),
    );
    if (!isAdded) return;
    draft(draftKey(row, 'number'), '');
    change({ open: row });
  };
  return (
    <section className={styles.view} aria-label="Roster">
      {roster.length === 0 && (
        <p className={styles.empty}>
          <b>Nobody is on the roster yet.</b> {isPhone ? 'Add a man' : 'Type the first man into the row below'}, paste
          the table that you have in a spreadsheet, or open a CSV file. Number, name and hand are enough to begin with;
          grades can come later.
        </p>
      )}
      <div className={styles.tools}>
        <RosterTools isPhone={isPhone} onAdd={add} onTable={setTable} />
        {!isPhone && (
          <Segments
            label="What of each man"
            value={columns}
            options={[
              { value: 'grades', text: 'Grades' },
              { value: 'measured', text: 'Readings' },
            ]}
            onChange={(next) => change({ columns: next })}
          />
        )}
        {!isPhone && columns === 'measured' && <UnitPicks />}
      </div>
      <div className={styles.halves}>
        {isPhone ? <RosterCards editor={editor} /> : <RosterTable editor={editor} onPasteTable={setTable} />}
        {isWide && man !== undefined && (
          <aside className={styles.beside} aria-label={`All of ${nameOf(man)}`}>
            <PlayerPanel key={open} editor={editor} row={open!} onClose={close} />
          </aside>
        )}
      </div>
      {!isPhone && roster.length > 0 && (
        <p className={styles.hint}>
          {columns === 'grades'
            ? 'Grades go from 1 (weakest of the level) to 5 (best); an empty one counts as 3. A grade in italics shares with a reading, one that is struck out has given way to it.'
            : 'Each reading as it was taken, with spaces between them. Few readings count little: they are drawn toward what is usual at the level.'}
        </p>
      )}
      {!isWide && man !== undefined && (
        <Dialog open onClose={close} title={nameOf(man)} form="sheet">
          <PlayerPanel key={open} editor={editor} row={open!} />
        </Dialog>
      )}
      {table !== undefined && <TableImport text={table} onClose={() => setTable(undefined)} />}
    </section>
  );
}
