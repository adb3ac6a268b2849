import type { ReactNode } from 'react';
import { Segments } from '../controls/segments.tsx';
import { RosterTable } from './roster-table.tsx';
import styles from './roster-view.module.css';
import { useTeam } from './team-state.ts';
import { useRoster } from './use-roster.ts';

/** The roster: as a table, on a phone as cards, and all of one man in a panel. */
export function RosterView(): ReactNode {
  const editor = useRoster();
  const columns = useTeam((state) => state.columns);
  const change = useTeam((state) => state.change);
  return (
    <section className={styles.view} aria-label="Roster">
      <div className={styles.tools}>
        <Segments
          label="What of each man"
          value={columns}
          options={[
            { value: 'grades', text: 'Grades' },
            { value: 'measured', text: 'Readings' },
          ]}
          onChange={(next) => change({ columns: next })}
        />
      </div>
      <RosterTable editor={editor} onPasteTable={() => undefined} />
    </section>
  );
}
