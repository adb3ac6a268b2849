import type { ReactNode } from 'react';
import { chanceColumns } from '../../teach/index.ts';
import table from '../look/table.module.css';
import styles from './season.module.css';

/** The columns of a table of chances, and what may stand in each; `isOpen` until the coach says otherwise, or it changes. */
export function ColumnList({ isOpen }: { readonly isOpen: boolean }): ReactNode {
  return (
    <details className={styles.more} open={isOpen}>
      <summary>What may stand in each column</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className={styles.columns} tabIndex={0} aria-label="The columns">
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Column</th>
              <th scope="col">What may stand in it</th>
            </tr>
          </thead>
          <tbody>
            {chanceColumns.map(({ head, also, may }) => (
              <tr key={head}>
                <th scope="row">
                  {head}
                  {also.length > 0 && <span className={table.mark}> or {also.join(', ')}</span>}
                </th>
                <td>{may}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p className={styles.quiet}>
        A cell that is empty says nothing. A table holds no marks on the field and no schemes that were expected: for
        those, save the playbook file.
      </p>
    </details>
  );
}
