import type { ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import table from '../look/table.module.css';
import { differenceText } from '../schemes/goal-words.ts';
import { type BarScale, IntervalBar } from '../schemes/interval-bar.tsx';

export interface GainsTableProps {
  /** What the rows are, and what the gain is called. */
  readonly titles: readonly [string, string];
  readonly rows: readonly { readonly name: string; readonly gain: Interval }[];
  readonly scale: BarScale;
}

/** Gains with their intervals, in goals a chance, and as bars on one scale. */
export function GainsTable({ titles, rows, scale }: GainsTableProps): ReactNode {
  return (
    <table className={`${table.table} ${table.whole}`}>
      <thead>
        <tr>
          {titles.map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
          <th scope="col" className={table.bar}>
            <span className="spoken">The gain on one scale</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, gain }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{differenceText(gain)}</td>
            <td className={table.bar}>
              <IntervalBar goals={gain} scale={scale} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
