import { type ReactNode, useState } from 'react';
import { readRosterTable } from '../../playbook/index.ts';
import { Dialog } from '../controls/dialog.tsx';
import { Segments } from '../controls/segments.tsx';
import { useMedia } from '../look/use-media.ts';
import { useDesk } from '../shell/desk.tsx';
import { BlockImport } from './block-import.tsx';
import type { CellPlace } from './grid-step.ts';
import { areMen } from './paste-block.ts';
import { PlayerPanel } from './player-panel.tsx';
import { RosterCards } from './roster-cards.tsx';
import { editPlayer } from './roster-edits.ts';
import { nameOf } from './roster-problems.ts';
import { RosterTable } from './roster-table.tsx';
import { RosterTools } from './roster-tools.tsx';
import styles from './roster-view.module.css';
import { TableImport } from './table-import.tsx';
import { readPastedCells } from './table-text.ts';
import { draftKey, useTeam } from './team-state.ts';
import { UnitPicks } from './unit-picks.tsx';
import { useRoster } from './use-roster.ts';

/** Cells from a spreadsheet; `at` where they are values for the cells from there on, and not men. */
interface Pasted {
  readonly text: string;
  readonly at: CellPlace | undefined;
}

/** The roster: as a table, on a phone as cards, and all of one man in a panel. */
export function RosterView(): ReactNode {
  const { store } = useDesk();
  const editor = useRoster();
  const { columns, open, change, draft } = useTeam();
  const [pasted, setPasted] = useState<Pasted>();
  const openTable = (text: string): void => setPasted({ text, at: undefined });
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
  const paste = (text: string, at: CellPlace): void => {
    const cells = readPastedCells(text);
    const width = Math.max(...cells.map((row) => row.length));
    const isMen = areMen(at, roster.length, readRosterTable(cells).hasHeader, width);
    setPasted({ text, at: isMen ? undefined : at });
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
        <RosterTools isPhone={isPhone} onAdd={add} onTable={openTable} />
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
        {isPhone ? <RosterCards editor={editor} /> : <RosterTable editor={editor} onPasteTable={paste} />}
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
      {pasted !== undefined && pasted.at === undefined && (
        <TableImport text={pasted.text} onClose={() => setPasted(undefined)} />
      )}
      {pasted?.at !== undefined && (
        <BlockImport
          text={pasted.text}
          at={pasted.at}
          columns={editor.columns}
          onAsMen={() => openTable(pasted.text)}
          onClose={() => setPasted(undefined)}
        />
      )}
    </section>
  );
}
