import type { ReactNode } from 'react';
import { Segments } from '../controls/segments.tsx';
import { LineUpView } from './line-up-view.tsx';
import { RosterView } from './roster-view.tsx';
import { TeamHead } from './team-head.tsx';
import styles from './team-screen.module.css';
import { useTeam } from './team-state.ts';

/** The place of the team: who plays, what each can do, and where he stands in a play. */
export default function TeamScreen(): ReactNode {
  const view = useTeam((state) => state.view);
  const change = useTeam((state) => state.change);
  return (
    <div className={styles.screen}>
      <TeamHead />
      <div>
        <Segments
          label="What of the team"
          value={view}
          options={[
            { value: 'roster', text: 'Roster' },
            { value: 'lineUp', text: 'Spots and absences' },
          ]}
          onChange={(next) => change({ view: next })}
        />
      </div>
      {view === 'roster' ? <RosterView /> : <LineUpView />}
    </div>
  );
}
