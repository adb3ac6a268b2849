import { Fragment, type ReactNode, useMemo } from 'react';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import type { CellPlace } from './grid-step.ts';
import { pasteBlock } from './paste-block.ts';
import type { RosterColumn } from './roster-columns.ts';
import { nameOf } from './roster-problems.ts';
import styles from './table-import.module.css';
import { readPastedCells } from './table-text.ts';

export interface BlockImportProps {
  readonly text: string;
  /** The cell that is pasted into. */
  readonly at: CellPlace;
  readonly columns: readonly RosterColumn[];
  /** The cells are men after all. */
  readonly onAsMen: () => void;
  readonly onClose: () => void;
}

/** Shows which cells of the roster pasted ones will go over, before they do. */
export function BlockImport({ text, at, columns, onAsMen, onClose }: BlockImportProps): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const texts = useMemo(() => readPastedCells(text), [text]);
  const block = useMemo(() => pasteBlock(playbook, at, texts, columns), [playbook, at, texts, columns]);
  const take = (): void => {
    store.edit('paste cells', (current) => pasteBlock(current, at, texts, columns).playbook);
    onClose();
  };
  const beyond = [
    ...(block.rowsBeyond > 0 ? [`${block.rowsBeyond} rows lie below the last man`] : []),
    ...(block.columnsBeyond > 0 ? [`${block.columnsBeyond} columns lie beyond the last one`] : []),
  ];
  return (
    <Dialog open onClose={onClose} title="Paste into the roster" form="wide">
      <div className={styles.import}>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
        <section className={styles.frame} tabIndex={0} aria-label="What will be pasted">
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">Man</th>
                {block.columns.map((column) => (
                  <th key={column.id} scope="col">
                    {column.long ?? column.head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {block.men.map((player, i) => {
                const cells = block.cells[i] ?? [];
                const problems = cells.flatMap(({ problem }) => (problem === undefined ? [] : [problem]));
                return (
                  // biome-ignore lint/suspicious/noArrayIndexKey: two men may wear the same number while it is typed
                  <Fragment key={i}>
                    <tr>
                      <th scope="row">{nameOf(player)}</th>
                      {cells.map(({ text: cell, problem }, j) => (
                        <td key={block.columns[j]!.id} data-severity={problem === undefined ? undefined : 'error'}>
                          {cell}
                        </td>
                      ))}
                    </tr>
                    {problems.length > 0 && (
                      <tr>
                        <td colSpan={cells.length + 1} className={styles.problems}>
                          {problems.join(' ')} It stays as it is.
                        </td>
                      </tr>
                    )}
                  </Fragment>
                );
              })}
            </tbody>
          </table>
        </section>
        {beyond.length > 0 && <p className={styles.says}>{beyond.join(', and ')}: they are left out.</p>}
        <div className={styles.take}>
          <Button tone="main" disabled={block.count === 0} onClick={take}>
            Paste {block.count === 1 ? 'one cell' : `${block.count} cells`}
          </Button>
          <Button onClick={onAsMen}>These are men, one a row</Button>
        </div>
      </div>
    </Dialog>
  );
}
