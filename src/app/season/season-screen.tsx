import { type ReactNode, useMemo } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { Segments } from '../controls/segments.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { ChanceForm } from './chance-form.tsx';
import { ChanceImport } from './chance-import.tsx';
import { ChanceList } from './chance-list.tsx';
import { EmptySeason } from './empty-season.tsx';
import { FilterBar } from './filter-bar.tsx';
import { filterChances } from './filter-chances.ts';
import { ProposalsPanel } from './proposals-panel.tsx';
import styles from './season.module.css';
import { SeasonPaper } from './season-paper.tsx';
import { newOne, useSeason } from './season-state.ts';
import { SeasonTables } from './season-tables.tsx';
import { SeasonTools } from './season-tools.tsx';

/** The place of what was played: does it work, or was it luck? */
export default function SeasonScreen(): ReactNode {
  const playbook = usePlaybook();
  const { writing, table, said, saidOf, change } = useSeason();
  const chances = playbook.chances ?? [];
  const written = chances.find(({ id }) => id === writing);
  return (
    <div className={styles.screen}>
      <div className={styles.head}>
        <h1 className={styles.title}>Season</h1>
        <p className={styles.quiet}>
          Man-ups that were played and the chances in them, ours and theirs: does it work, or was it luck?
        </p>
      </div>
      <SeasonTools playbook={playbook} />
      <p role="status" className={styles.said}>
        {saidOf === undefined || saidOf === playbook ? said : ''}
      </p>
      {chances.length === 0 ? <EmptySeason /> : <Played playbook={playbook} />}
      {(written !== undefined || writing === newOne) && (
        <ChanceForm key={writing} playbook={playbook} chance={written} onClose={() => change({ writing: undefined })} />
      )}
      {table !== undefined && (
        <ChanceImport playbook={playbook} text={table} onClose={() => change({ table: undefined })} />
      )}
    </div>
  );
}

function Played({ playbook }: { readonly playbook: Playbook }): ReactNode {
  const { view, filter, change } = useSeason();
  const shown = useMemo((): Playbook => {
    const all = playbook.chances ?? [];
    const chances = filterChances(all, filter);
    return chances === all ? playbook : { ...playbook, chances: [...chances] };
  }, [playbook, filter]);
  return (
    <>
      <div className={styles.bar}>
        <Segments
          label="What is shown"
          value={view}
          options={[
            { value: 'says', text: 'What it says' },
            { value: 'list', text: 'The chances' },
            { value: 'paper', text: 'On paper' },
          ]}
          onChange={(next) => change({ view: next })}
        />
      </div>
      <FilterBar playbook={playbook} shown={shown.chances?.length ?? 0} />
      {view !== 'list' && filter.side === 'others' && (
        <p>Man-ups of other teams are in no figures here. They are listed under “The chances”.</p>
      )}
      {view === 'says' && (
        <>
          {filter.side !== 'others' && <SeasonTables playbook={shown} />}
          <ProposalsPanel playbook={playbook} />
        </>
      )}
      {view === 'list' && <ChanceList playbook={playbook} chances={shown.chances ?? []} />}
      {view === 'paper' && filter.side !== 'others' && <SeasonPaper playbook={shown} filter={filter} />}
    </>
  );
}
