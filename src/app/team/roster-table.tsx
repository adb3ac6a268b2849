import { Ellipsis } from 'lucide-react';
import {
  type ClipboardEvent,
  type FocusEvent,
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useRef,
  useState,
} from 'react';
import { limits } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { useDesk } from '../shell/desk.tsx';
import { type CellPlace, gridStep } from './grid-step.ts';
import { nextByLetter } from './next-by-letter.ts';
import type { ChoiceColumn, RosterColumn } from './roster-columns.ts';
import { nameOf } from './roster-problems.ts';
import styles from './roster-table.module.css';
import { draftKey, useTeam } from './team-state.ts';
import { TextCell } from './text-cell.tsx';
import type { RosterEditor } from './use-roster.ts';

/** How long a hand rests, ms, before what it types is found fault with. */
const restBeforeProblem = 800;

export interface RosterTableProps {
  readonly editor: RosterEditor;
  /** Cells that were pasted from a spreadsheet, as text. */
  readonly onPasteTable: (text: string, at: CellPlace) => void;
}

/** The roster as a table that is typed in like a spreadsheet. The last row is empty: who types in it adds a man. */
export function RosterTable({ editor, onPasteTable }: RosterTableProps): ReactNode {
  const { roster, keys, columns } = editor;
  const { store } = useDesk();
  const open = useTeam((state) => state.open);
  const change = useTeam((state) => state.change);
  const table = useRef<HTMLTableElement>(null);
  const anchor = useRef(0);
  const [at, setAt] = useState<string>();
  const [typing, setTyping] = useState<string>();
  useEffect(() => {
    if (typing === undefined) return undefined;
    const timer = setTimeout(() => setTyping(undefined), restBeforeProblem);
    return () => clearTimeout(timer);
  });
  const rows = roster.length < limits.players ? keys : keys.slice(0, -1);

  const onFocus = (event: FocusEvent<HTMLElement>): void => {
    const place = placeOf(event.target);
    const key = place && keys[place.row];
    setAt(key);
    // Beside a panel that is open, the panel goes with the row.
    if (open !== undefined && key !== undefined && place!.row < roster.length && open !== key) change({ open: key });
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    const place = placeOf(event.target);
    if (place === undefined) return;
    const column = columns[place.column];
    const row = keys[place.row];
    const command = event.ctrlKey || event.metaKey;
    if (event.key === 'Escape' && column?.kind === 'text' && row !== undefined) {
      event.preventDefault();
      editor.forget(row, column);
      return;
    }
    if (command && !event.altKey && ['z', 'y'].includes(event.key.toLowerCase())) {
      event.preventDefault();
      event.stopPropagation();
      if (column?.kind === 'text' && row !== undefined) editor.leave(row, column);
      if (event.key.toLowerCase() === 'y' || event.shiftKey) store.redo();
      else store.undo();
      return;
    }
    if (event.key === 'Tab') return;
    const caret = caretOf(event.target);
    const size = { rows: rows.length, columns: columns.length + 1 };
    const next = gridStep(place, { key: event.key, shift: event.shiftKey, command, ...caret }, anchor.current, size);
    if (event.altKey || next === undefined || (event.target instanceof HTMLButtonElement && event.key === 'Enter'))
      return;
    event.preventDefault();
    anchor.current = next.column;
    focusCell(table.current, next);
  };
  const onPaste = (event: ClipboardEvent<HTMLElement>): void => {
    const text = event.clipboardData.getData('text/plain');
    if (!/[\t\n]/.test(text.trim())) return;
    const place = placeOf(event.target);
    if (place === undefined) return;
    event.preventDefault();
    onPasteTable(text, place);
  };
  return (
    <div className={styles.frame}>
      <table
        className={styles.table}
        ref={table}
        onFocus={onFocus}
        onBlur={() => setAt(undefined)}
        onKeyDown={onKeyDown}
        onPaste={onPaste}
      >
        <caption className="spoken">
          The roster. Tab and the arrow keys go from cell to cell, Enter goes down, a letter chooses from a list, Escape
          takes back what was typed in a cell. Type in the last row to add a man.
        </caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th
                key={column.id}
                scope="col"
                className={column.id.startsWith('grade ') ? styles.middle : undefined}
                title={column.name}
                style={{ minWidth: `${column.width}rem` }}
              >
                <span className={column.long === undefined ? undefined : styles.short}>{column.head}</span>
                {column.long !== undefined && <span className={styles.long}>{column.long}</span>}
              </th>
            ))}
            <th scope="col">
              <span className="spoken">More</span>
            </th>
          </tr>
        </thead>
        {/* A body of its own for each man: his row, and under it what is wrong with it. */}
        {rows.map((key, row) => (
          <RosterRow
            key={key}
            editor={editor}
            row={row}
            rowKey={key}
            isAt={at === key}
            isOpen={open === key}
            typing={typing}
            onTyping={setTyping}
            onAnchor={(column) => {
              anchor.current = column;
            }}
          />
        ))}
      </table>
    </div>
  );
}

interface RosterRowProps {
  readonly editor: RosterEditor;
  readonly row: number;
  readonly rowKey: string;
  readonly isAt: boolean;
  readonly isOpen: boolean;
  /** Cell that is being typed in right now: it is not found fault with before the hand rests. */
  readonly typing: string | undefined;
  readonly onTyping: (cell: string | undefined) => void;
  readonly onAnchor: (column: number) => void;
}

function RosterRow({ editor, row, rowKey, isAt, isOpen, typing, onTyping, onAnchor }: RosterRowProps): ReactNode {
  const { columns } = editor;
  const change = useTeam((state) => state.change);
  const player = editor.roster[row];
  const who = player === undefined ? 'new man' : nameOf(player);
  const problems = problemsIn(editor, row, rowKey).filter(
    ({ column }) =>
      draftKey(rowKey, column.id) !== typing && !(isAt && column.id === 'name') && !(isAt && player === undefined),
  );
  const sentences = problems.length > 0 ? `${rowKey}-problems` : undefined;
  return (
    <tbody className={styles.man} data-absent={player?.absent === true} data-open={isOpen}>
      <tr>
        {columns.map((column, index) => (
          <td key={column.id} onPointerDown={() => onAnchor(index)} data-column={column.id}>
            <RosterCell
              editor={editor}
              row={row}
              rowKey={rowKey}
              column={column}
              place={`${row}:${index}`}
              label={`${column.name} of ${who}`}
              hasProblem={problems.some((problem) => problem.column === column)}
              describedBy={problems.some((problem) => problem.column === column) ? sentences : undefined}
              onTyping={onTyping}
            />
          </td>
        ))}
        <td>
          {player !== undefined && (
            <Button
              tone="plain"
              data-cell={`${row}:${columns.length}`}
              aria-label={`All of ${who}`}
              icon={<Ellipsis aria-hidden="true" />}
              onClick={() => change({ open: rowKey })}
            />
          )}
        </td>
      </tr>
      {sentences !== undefined && (
        <tr>
          <td colSpan={columns.length + 1} className={styles.problems} id={sentences}>
            <ul>
              {problems.map(({ column, text }) => (
                <li key={column.id}>
                  <b>{column.head}</b> {text}
                </li>
              ))}
            </ul>
          </td>
        </tr>
      )}
    </tbody>
  );
}

interface RosterCellProps {
  readonly editor: RosterEditor;
  readonly row: number;
  readonly rowKey: string;
  readonly column: RosterColumn;
  readonly place: string;
  readonly label: string;
  readonly hasProblem: boolean;
  readonly describedBy: string | undefined;
  readonly onTyping: (cell: string | undefined) => void;
}

function RosterCell({
  editor,
  row,
  rowKey,
  column,
  place,
  label,
  hasProblem,
  describedBy,
  onTyping,
}: RosterCellProps): ReactNode {
  const player = editor.roster[row];
  const choose = (choice: ChoiceColumn, value: string): void =>
    editor.edit(rowKey, `choose ${choice.head.toLowerCase()}`, (man) => choice.put(man, value));
  switch (column.kind) {
    case 'text':
      return (
        <TextCell
          column={column}
          player={player}
          place={place}
          text={editor.typed(rowKey, column).text}
          label={label}
          hasProblem={hasProblem}
          describedBy={describedBy}
          onText={(text) => {
            onTyping(draftKey(rowKey, column.id));
            editor.type(rowKey, column, text);
          }}
          onLeave={() => {
            onTyping(undefined);
            editor.leave(rowKey, column);
          }}
        />
      );
    case 'choice':
      return (
        <select
          className={styles.choice}
          data-cell={place}
          aria-label={label}
          value={player === undefined ? '' : column.valueOf(player)}
          onChange={({ target }) => choose(column, target.value)}
          onKeyDown={(event) => {
            // Browsers differ in what a letter does to a closed list; here it chooses at once.
            const found =
              event.ctrlKey || event.metaKey || event.altKey
                ? undefined
                : nextByLetter(column.options, event.currentTarget.value, event.key);
            if (found === undefined) return;
            event.preventDefault();
            choose(column, found);
          }}
        >
          {player === undefined && !column.options.some(({ value }) => value === '') && <option value="" />}
          {column.options.map(({ value, text }) => (
            <option key={value} value={value}>
              {text}
            </option>
          ))}
        </select>
      );
    case 'check':
      return (
        <label className={styles.check}>
          <input
            type="checkbox"
            data-cell={place}
            aria-label={label}
            disabled={player === undefined}
            checked={player !== undefined && column.isOn(player)}
            onChange={({ target }) =>
              editor.edit(rowKey, target.checked ? 'note the absence' : 'note the return', (man) =>
                column.put(man, target.checked),
              )
            }
          />
        </label>
      );
    default:
      return exhaustive(column);
  }
}

interface CellProblem {
  readonly column: RosterColumn;
  readonly text: string;
}

/** What is wrong in a row: text that cannot be read first, else what is wrong with what is kept. */
function problemsIn(editor: RosterEditor, row: number, rowKey: string): readonly CellProblem[] {
  return editor.columns.flatMap((column) => {
    if (column.kind !== 'text') return [];
    const text = editor.typed(rowKey, column).problem ?? editor.problems[row]?.get(column.id);
    return text === undefined ? [] : [{ column, text }];
  });
}

function placeOf(target: EventTarget): CellPlace | undefined {
  const text = target instanceof HTMLElement ? target.dataset.cell : undefined;
  const [row, column] = (text ?? '').split(':').map(Number);
  return row === undefined || column === undefined ? undefined : { row, column };
}

function focusCell(table: HTMLElement | null, { row, column }: CellPlace): void {
  // The last row has no button for more: one goes to the cell before it.
  for (let at = column; at >= 0; at--) {
    const cell = table?.querySelector<HTMLElement>(`[data-cell="${row}:${at}"]:not(:disabled)`);
    if (cell === null || cell === undefined) continue;
    cell.focus();
    return;
  }
}

function caretOf(target: EventTarget): { readonly caretAtStart: boolean; readonly caretAtEnd: boolean } {
  if (!(target instanceof HTMLInputElement) || target.type !== 'text') return { caretAtStart: true, caretAtEnd: true };
  const { selectionStart: start, selectionEnd: end, value } = target;
  const isWhole = start === 0 && end === value.length;
  return { caretAtStart: isWhole || (start === 0 && end === 0), caretAtEnd: isWhole || start === value.length };
}

function exhaustive(column: never): never {
  throw new TypeError(`unknown column: ${JSON.stringify(column)}`);
}
