import { type ReactNode, useMemo, useState } from 'react';
import { type Chance, chanceResultWords, clockText, type Playbook, schemeName } from '../../playbook/index.ts';
import { lookWords, opponentName, playName, schemeSeen } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { newestFirst } from './filter-chances.ts';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

/** Rows that are shown at once: more make a phone slow. */
const portion = 100;

/** Man-ups as they were written down, the newest first; each is opened to be changed. */
export function ChanceList({
  playbook,
  chances,
}: {
  readonly playbook: Playbook;
  readonly chances: readonly Chance[];
}): ReactNode {
  const change = useSeason((state) => state.change);
  const [most, setMost] = useState(portion);
  const sorted = useMemo(() => newestFirst(chances), [chances]);
  if (chances.length === 0) return <p className={styles.quiet}>No man-up is like that. Show all to see the others.</p>;
  return (
    <section className={panel.panel} aria-label="The man-ups">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className={styles.frame} tabIndex={0} aria-label="The man-ups as a table">
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Ended in</th>
              <th scope="col">Whose</th>
              <th scope="col">Opponent</th>
              <th scope="col">Call</th>
              <th scope="col">They played</th>
              <th scope="col">Look</th>
              <th scope="col">
                <span className="spoken">Change</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {sorted.slice(0, most).map((chance) => (
              <Line
                key={chance.id}
                playbook={playbook}
                chance={chance}
                onOpen={() => change({ writing: chance.id, said: '' })}
              />
            ))}
          </tbody>
        </table>
      </section>
      {sorted.length > most && (
        <div className={panel.tools}>
          <Button onClick={() => setMost(most + portion)}>Show {Math.min(portion, sorted.length - most)} more</Button>
        </div>
      )}
    </section>
  );
}

function Line({
  playbook,
  chance,
  onOpen,
}: {
  readonly playbook: Playbook;
  readonly chance: Chance;
  readonly onOpen: () => void;
}): ReactNode {
  const { side, opponent, call, look, result } = chance;
  const scheme = schemeSeen(chance);
  const when = whenWords(chance);
  return (
    <tr>
      <th scope="row" className={styles.when}>
        {when}
      </th>
      <td className={result === 'goal' ? styles.goal : undefined}>{chanceResultWords[result]}</td>
      <td>{side}</td>
      <td>{opponent === undefined ? '' : opponentName(playbook, opponent)}</td>
      <td>{call === undefined ? '' : playName(playbook, call)}</td>
      <td>{scheme === undefined ? '' : schemeName(playbook, scheme)}</td>
      <td>{look === undefined ? '' : lookWords(look)}</td>
      <td>
        <Button aria-label={`Change the man-up of ${when}`} onClick={onOpen}>
          Change
        </Button>
      </td>
    </tr>
  );
}

/** "2026-03-14, period 2, 7:11", or that no day was written. */
function whenWords({ date, period, clock }: Chance): string {
  const parts = [
    date ?? 'no day',
    period === undefined ? '' : `P${period}`,
    clock === undefined ? '' : clockText(clock),
  ];
  return parts.filter((part) => part !== '').join(' ');
}
