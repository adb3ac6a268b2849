import { ArrowDown01, Plus } from 'lucide-react';
import type { ReactNode } from 'react';
import { limits } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { Segments } from '../controls/segments.tsx';
import { useDesk } from '../shell/desk.tsx';
import { PlayerPanel } from './player-panel.tsx';
import { RosterCards } from './roster-cards.tsx';
import { editPlayer, sortByNumber } from './roster-edits.ts';
import { nameOf } from './roster-problems.ts';
import { RosterTable } from './roster-table.tsx';
import styles from './roster-view.module.css';
import { draftKey, useTeam } from './team-state.ts';
import { UnitPicks } from './unit-picks.tsx';
import { useMedia } from './use-media.ts';
import { useRoster } from './use-roster.ts';

/** The roster: as a table, on a phone as cards, and all of one man in a panel. */
export function RosterView(): ReactNode {
  const { store } = useDesk();
  const editor = useRoster();
  const { columns, open, change, draft } = useTeam();
  const isPhone = useMedia('(max-width: 40rem)');
  const isWide = useMedia('(min-width: 105rem)');
  const { roster, keys } = editor;
  const man = open === undefined ? undefined : roster[keys.indexOf(open)];
  const close = (): void => change({ open: undefined });
  const add = (): void => {
    const row = keys.at(-1)!;
    if (!store.edit('add a man', (playbook) => editPlayer(playbook, playbook.team.roster.length, (player) => ({ ...player })))) return;
    draft(draftKey(row, 'number'), '');
    change({ open: row });
  };
  return (
    <section className={styles.view} aria-label="Roster">
      <div className={styles.tools}>
        <Button icon={<Plus aria-hidden="true" />} disabled={roster.length >= limits.players} onClick={add}>
          Add a man
        </Button>
        <Button icon={<ArrowDown01 aria-hidden="true" />} onClick={() => store.edit('sort by number', sortByNumber)}>
          By number
        </Button>
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
        {isPhone ? <RosterCards editor={editor} /> : <RosterTable editor={editor} onPasteTable={() => undefined} />}
        {isWide && man !== undefined && (
          <aside className={styles.beside} aria-label={`All of ${nameOf(man)}`}>
            <PlayerPanel key={open} editor={editor} row={open!} onClose={close} />
          </aside>
        )}
      </div>
      {!isWide && man !== undefined && (
        <Dialog open onClose={close} title={nameOf(man)} form="sheet">
          <PlayerPanel key={open} editor={editor} row={open!} />
        </Dialog>
      )}
    </section>
  );
}
