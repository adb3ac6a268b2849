import type { ReactNode } from 'react';
import type { Opponent } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { dayWords, schemesSeenOf } from '../../teach/index.ts';
import table from '../look/table.module.css';
import { usePlaybook } from '../shell/desk.tsx';
import { addressOf } from '../shell/place.ts';
import panel from './panel.module.css';

/** What was seen of them in man-ups that were written down or marked: how often, and when. */
export function SchemesSeen({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const playbook = usePlaybook();
  const seen = schemesSeenOf(playbook, opponent.id);
  return (
    <section className={panel.panel} aria-label="What was seen of them">
      <h3 className={panel.title}>What was seen of them</h3>
      {seen.length === 0 ? (
        <p className={panel.quiet}>No man-up with a scheme is written down yet.</p>
      ) : (
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Scheme</th>
              <th scope="col">Seen</th>
              <th scope="col">Days</th>
            </tr>
          </thead>
          <tbody>
            {seen.map(({ scheme, name, times, days }) => (
              <tr key={scheme}>
                <th scope="row">{name}</th>
                <td>{counted(times, 'time')}</td>
                <td>{days.length === 0 ? 'not written down' : days.slice(0, 3).map(writtenDay).join(', ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className={panel.quiet}>
        <a href={addressOf({ kind: 'opponents', opponent: opponent.id, part: 'film' })}>Mark man-ups on film</a> or by
        hand: ball and defenders at a few moments say which scheme it is.
      </p>
    </section>
  );
}

function writtenDay(day: string): string {
  // At noon it is the same day in every place.
  return dayWords(new Date(`${day}T12:00:00`));
}
