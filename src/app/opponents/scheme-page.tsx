import { type ReactNode, useState } from 'react';
import { dutyGrid, noteScheme, type SchemeEntry } from '../../playbook/index.ts';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { DutyGrid } from './duty-grid.tsx';
import { NoteField } from './note-field.tsx';
import { useOpponents } from './opponents-state.ts';
import panel from './panel.module.css';
import { RowTools } from './row-tools.tsx';
import { SchemeHead } from './scheme-head.tsx';
import styles from './scheme-page.module.css';
import { SchemeStage } from './scheme-stage.tsx';
import { useApply } from './use-apply.ts';
import { useSchemeAsk } from './use-scheme-ask.ts';
import { useSchemeReading } from './use-scheme-reading.ts';

/** An own scheme under the coach's hands: its grid, and beside it what the grid does on the field and to a play. */
export function SchemePage({ scheme }: { readonly scheme: SchemeEntry }): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const apply = useApply();
  const chosenPlay = useOpponents((state) => state.play);
  const reading = useSchemeReading(scheme, chosenPlay);
  const answer = useSchemeAsk(reading);
  const [at, setAt] = useState('');
  const grid = dutyGrid(playbook, scheme);
  const spots = reading.play?.spots.map(({ id }) => id) ?? grid.rows.map(({ ball }) => ball);
  const row =
    grid.rows.find(({ ball }) => ball === at) ?? grid.rows.find(({ ball }) => spots.includes(ball)) ?? grid.rows[0];
  return (
    <article className={styles.page} aria-label={scheme.name}>
      <SchemeHead scheme={scheme} />
      <div className={styles.halves}>
        <div className={styles.column}>
          <section className={panel.panel} aria-label="The grid">
            {reading.problems.whole.length > 0 && (
              <ul className={styles.problems}>
                {reading.problems.whole.map((text) => (
                  <li key={text}>{text}</li>
                ))}
              </ul>
            )}
            <DutyGrid
              scheme={scheme}
              grid={grid}
              problems={reading.problems.byRow}
              row={row?.ball ?? ''}
              spots={spots}
              onRow={setAt}
            />
            <RowTools scheme={scheme} ball={row?.ball} onRow={setAt} />
          </section>
          <NoteField
            label="What it is, and where you saw it"
            value={scheme.notes ?? ''}
            onText={(text) =>
              apply('note', (book) => noteScheme(book, scheme.id, text), `typing:schemes/${scheme.id}/notes`)
            }
            onLeave={() => store.settle()}
          />
        </div>
        <SchemeStage scheme={scheme} reading={reading} answer={answer} ball={row?.ball ?? ''} onRow={setAt} />
      </div>
    </article>
  );
}
