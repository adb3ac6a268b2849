import type { ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import table from '../look/table.module.css';
import { differenceText, goalsText, sureness } from '../schemes/goal-words.ts';

/** One way to decide: its goals a chance, and how much more that is than by the play, which has none. */
export interface GoalsRow {
  readonly name: string;
  readonly goals: Interval;
  readonly gain?: Interval;
  /** It is the card that is shown above. */
  readonly isShown?: boolean;
}

export interface GoalsTableProps {
  /** What the rows are, and from when on goals are counted. */
  readonly titles: readonly [string, string];
  readonly rows: readonly GoalsRow[];
}

/** What some ways to decide are worth, each with what it gains over leaving it to the play. */
export function GoalsTable({ titles, rows }: GoalsTableProps): ReactNode {
  return (
    <table className={table.table}>
      <thead>
        <tr>
          {[...titles, 'More than the play'].map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, goals, gain, isShown = false }) => (
          <tr key={name} data-shown={isShown}>
            <th scope="row">
              {name}
              {isShown && <span className={table.mark}> (the card above)</span>}
            </th>
            <td>
              <strong>{goalsText(goals.mean)}</strong> ({sureness(goals)})
            </td>
            <td>{gain !== undefined && differenceText(gain)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
