import { type ReactNode, useMemo, useState } from 'react';
import { type RosterReading, readRosterTable, takeInPlayers } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { PasteField } from '../controls/paste-field.tsx';
import { Segments } from '../controls/segments.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import styles from './table-import.module.css';
import { readTableText } from './table-text.ts';
import { tableColumnWords } from './table-words.ts';

export interface TableImportProps {
  /** What was pasted or read from a file; empty to paste here. */
  readonly text: string;
  readonly onClose: () => void;
}

/** Shows what of a table will come into the roster, cell by cell, before it is taken. */
export function TableImport({ text: given, onClose }: TableImportProps): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const [text, setText] = useState(given);
  const [how, setHow] = useState<'add' | 'replace'>('add');
  const cells = useMemo(() => readTableText(text), [text]);
  const reading = useMemo(() => (cells.length === 0 ? undefined : readRosterTable(cells)), [cells]);
  const players = reading?.players ?? [];
  const taken = useMemo(() => takeInPlayers(playbook, players, how), [playbook, players, how]);
  const known = players.filter(({ number }) => playbook.team.roster.some((player) => player.number === number)).length;
  const take = (): void => {
    if (taken.kind === 'refused') return;
    store.edit(`take in ${menText(players.length)}`, (current) => {
      const edit = takeInPlayers(current, players, how);
      return edit.kind === 'refused' ? current : edit.playbook;
    });
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title="Take in a table" form="wide">
      <div className={styles.import}>
        <PasteField
          label="Copy the cells in your spreadsheet, with or without their header, and paste them here."
          value={text}
          placeholder={'No\tName\tHand\tShoot\n7\tNoel Arden\tleft\t5'}
          onText={setText}
        />
        {reading !== undefined && (
          <>
            <Preview cells={cells} reading={reading} />
            <div className={styles.take}>
              {playbook.team.roster.length > 0 && (
                <Segments
                  label="How"
                  value={how}
                  options={[
                    { value: 'add', text: 'Add to the roster' },
                    { value: 'replace', text: 'Replace the roster' },
                  ]}
                  onChange={setHow}
                />
              )}
              <Button tone="main" disabled={players.length === 0 || taken.kind === 'refused'} onClick={take}>
                Take in {menText(players.length)}
              </Button>
            </div>
            <p className={styles.says} role="status">
              {taken.kind === 'refused' ? taken.reason : outcomeText(players.length, known, how)}
            </p>
          </>
        )}
      </div>
    </Dialog>
  );
}

function Preview({
  cells,
  reading,
}: {
  readonly cells: readonly (readonly string[])[];
  readonly reading: RosterReading;
}): ReactNode {
  const { columns, problems, hasHeader } = reading;
  const width = Math.max(columns.length, ...cells.map((row) => row.length));
  const places = Array.from({ length: width }, (_, i) => i);
  const notes = problems.filter(({ severity }) => severity === 'note');
  return (
    <>
      <p className={styles.says}>
        {hasHeader
          ? 'The first row names the columns.'
          : 'There is no header: the columns were told apart by what stands in them.'}{' '}
        {notes.length > 0 && hasHeader && notes.map(({ message }) => message).join(' ')}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className={styles.frame} tabIndex={0} aria-label="What will come in">
        <table className={styles.table}>
          <thead>
            <tr>
              {places.map((place) => (
                <th key={place} scope="col" data-left-out={columns[place] === undefined}>
                  {tableColumnWords(columns[place])}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {cells.map((row, index) => {
              if (hasHeader && index === firstRow(cells)) return null;
              const here = problems.filter((problem) => problem.row === index && problem.severity !== 'note');
              const isOut = here.some(({ column, severity }) => column === undefined && severity === 'error');
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: a pasted row has no name but its place
                <TableRow key={index} row={row} places={places} problems={here} isOut={isOut} />
              );
            })}
          </tbody>
        </table>
      </section>
    </>
  );
}

interface TableRowProps {
  readonly row: readonly string[];
  readonly places: readonly number[];
  readonly problems: RosterReading['problems'];
  readonly isOut: boolean;
}

function TableRow({ row, places, problems, isOut }: TableRowProps): ReactNode {
  return (
    <>
      <tr data-out={isOut}>
        {places.map((place) => (
          <td key={place} data-severity={problems.find(({ column }) => column === place)?.severity}>
            {row[place] ?? ''}
          </td>
        ))}
      </tr>
      {problems.length > 0 && (
        <tr>
          <td colSpan={places.length} className={styles.problems}>
            {problems.map(({ message }) => message).join(' ')}
          </td>
        </tr>
      )}
    </>
  );
}

function firstRow(cells: readonly (readonly string[])[]): number {
  return cells.findIndex((row) => row.some((cell) => cell.trim() !== ''));
}

function menText(count: number): string {
  return count === 1 ? 'one man' : `${count} men`;
}

function outcomeText(count: number, known: number, how: 'add' | 'replace'): string {
  if (count === 0) return 'Nobody can be taken in from this: every man needs a number and a name.';
  if (how === 'replace') return `The roster will be these ${menText(count)}. Undo brings the old one back.`;
  if (known === 0) return `${menText(count)} will be added.`;
  return `${menText(count - known)} will be added; ${menText(known)} whose number is there already will take what the table says and keep the rest.`;
}
