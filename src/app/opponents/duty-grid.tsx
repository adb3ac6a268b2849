import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react';
import type { OwnDuty } from '../../engine/index.ts';
import { type DutyGrid as Grid, type SchemeEntry, setDuty } from '../../playbook/index.ts';
import { DefenderMenu } from './defender-menu.tsx';
import { defenderWords } from './defender-words.ts';
import { DutyChooser } from './duty-chooser.tsx';
import styles from './duty-grid.module.css';
import { cellWords, spokenDuty } from './duty-words.ts';
import { type GridPlace, gridMove } from './grid-move.ts';
import type { RowProblem } from './scheme-problems.ts';
import { useApply } from './use-apply.ts';

export interface DutyGridProps {
  readonly scheme: SchemeEntry;
  readonly grid: Grid;
  readonly problems: ReadonlyMap<string, readonly RowProblem[]>;
  /** The row that is chosen: the place of its ball. */
  readonly row: string;
  /** The spots that are offered when a duty is chosen. */
  readonly spots: readonly string[];
  readonly onRow: (ball: string) => void;
}

/** The cell whose duty is being chosen, and what was typed to open it. */
interface Choosing extends GridPlace {
  readonly typed: string;
}

/**
 * Who does what for each place of the ball. One cell has the focus: arrow keys move it, Enter opens it, a letter opens it with that letter typed,
 * Delete sends the man home.
 */
export function DutyGrid({ scheme, grid, problems, row, spots, onRow }: DutyGridProps): ReactNode {
  const apply = useApply();
  const table = useRef<HTMLTableElement>(null);
  const [focus, setFocus] = useState<GridPlace>({ row: 0, column: 0 });
  const [choosing, setChoosing] = useState<Choosing>();
  const { defenders, rows } = grid;
  const size = { rows: rows.length, columns: defenders.length };
  const stop: GridPlace = { row: Math.min(focus.row, size.rows - 1), column: Math.min(focus.column, size.columns - 1) };
  const give = (place: GridPlace, own: OwnDuty): void => {
    const [ball, man] = [rows[place.row]!.ball, defenders[place.column]!];
    apply(`${man} with the ball at ${ball}`, (book) => setDuty(book, scheme.id, ball, man, own));
  };
  const keyDown = (event: KeyboardEvent): void => {
    const at = placeOf(event.target);
    if (at === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const next = gridMove(at, event.key, size);
    if (next !== undefined) {
      event.preventDefault();
      cellAt(table.current, next)?.focus();
      return;
    }
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      const home = scheme.men[defenders[at.column]!];
      if (home !== undefined) give(at, { duty: 'place', at: home });
      return;
    }
    if (/^[a-z]$/i.test(event.key)) {
      event.preventDefault();
      setChoosing({ ...at, typed: event.key.toLowerCase() });
    }
  };
  const chosen = choosing === undefined ? undefined : rows[choosing.row];
  const man = choosing === undefined ? undefined : defenders[choosing.column];
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the cells inside are the controls; arrow keys move between them */}
      <div className={styles.frame} onKeyDown={keyDown}>
        <table
          ref={table}
          className={styles.table}
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are moved between by keys is a grid
          role="grid"
          aria-label="What each defender does, by where the ball is"
        >
          <thead>
            <tr>
              <th scope="col" className={styles.corner}>
                Ball at
              </th>
              {defenders.map((name) => (
                <th key={name} scope="col">
                  <DefenderMenu scheme={scheme} man={name} />
                  <span className={styles.who}>{defenderWords(scheme.men[name] ?? [0, 0])}</span>
                </th>
              ))}
            </tr>
          </thead>
          {rows.map(({ ball, duties }, index) => {
            const faults = problems.get(ball) ?? [];
            const faultsId = faults.length > 0 ? `faults-${ball}` : undefined;
            return (
              <tbody key={ball} data-chosen={ball === row}>
                <tr>
                  <th scope="row">
                    <button
                      type="button"
                      className={styles.ball}
                      aria-pressed={ball === row}
                      onClick={() => onRow(ball)}
                    >
                      <span className="spoken">Show the ball at </span>
                      {ball}
                    </button>
                  </th>
                  {duties.map((own, column) => (
                    <td key={defenders[column]}>
                      <DutyCell
                        place={{ row: index, column }}
                        man={defenders[column]!}
                        ball={ball}
                        own={own}
                        home={scheme.men[defenders[column]!]}
                        isStop={index === stop.row && column === stop.column}
                        isFaulty={own === undefined || faults.some((fault) => fault.man === defenders[column])}
                        describedBy={faultsId}
                        isOpen={choosing?.row === index && choosing.column === column}
                        onFocus={() => {
                          setFocus({ row: index, column });
                          onRow(ball);
                        }}
                        onOpen={() => setChoosing({ row: index, column, typed: '' })}
                      />
                    </td>
                  ))}
                </tr>
                {faultsId !== undefined && (
                  <tr>
                    <td colSpan={defenders.length + 1} className={styles.faults} id={faultsId}>
                      {faults.map(({ man: who, text }) => (
                        <p key={text}>
                          {who !== undefined && <b>{who} </b>}
                          {text}
                        </p>
                      ))}
                    </td>
                  </tr>
                )}
              </tbody>
            );
          })}
        </table>
      </div>
      {choosing !== undefined && chosen !== undefined && man !== undefined && (
        <DutyChooser
          key={`${chosen.ball} ${man}`}
          man={man}
          ball={chosen.ball}
          own={chosen.duties[choosing.column]}
          home={scheme.men[man] ?? [0, 5]}
          spots={spots}
          typed={choosing.typed}
          anchor={cellAt(table.current, choosing)}
          onTake={(own) => give(choosing, own)}
          onClose={() => {
            const cell = cellAt(table.current, choosing);
            setChoosing(undefined);
            cell?.focus();
          }}
        />
      )}
    </>
  );
}

interface DutyCellProps {
  readonly place: GridPlace;
  readonly man: string;
  readonly ball: string;
  readonly own: OwnDuty | undefined;
  readonly home: readonly [number, number] | undefined;
  readonly isStop: boolean;
  readonly isFaulty: boolean;
  readonly describedBy: string | undefined;
  readonly isOpen: boolean;
  readonly onFocus: () => void;
  readonly onOpen: () => void;
}

function DutyCell({
  place,
  man,
  ball,
  own,
  home,
  isStop,
  isFaulty,
  describedBy,
  isOpen,
  onFocus,
  onOpen,
}: DutyCellProps): ReactNode {
  const [verb, about] = own === undefined ? ['', 'not said'] : cellWords(own, home);
  const spoken = own === undefined ? 'not said' : spokenDuty(own, home);
  return (
    <button
      type="button"
      className={styles.cell}
      data-cell={`${place.row}:${place.column}`}
      data-duty={own?.duty ?? 'none'}
      data-faulty={isFaulty}
      tabIndex={isStop ? 0 : -1}
      aria-haspopup="dialog"
      aria-expanded={isOpen}
      aria-label={`${man}, ball at ${ball}: ${spoken}`}
      aria-describedby={isFaulty ? describedBy : undefined}
      onFocus={onFocus}
      onClick={onOpen}
    >
      {verb !== '' && <span className={styles.verb}>{verb}</span>}
      <span className={styles.about}>{about}</span>
    </button>
  );
}

function placeOf(target: EventTarget): GridPlace | undefined {
  const text = target instanceof HTMLElement ? target.dataset.cell : undefined;
  const [row, column] = (text ?? '').split(':').map(Number);
  return row === undefined || column === undefined ? undefined : { row, column };
}

function cellAt(table: HTMLElement | null, { row, column }: GridPlace): HTMLElement | null {
  return table?.querySelector<HTMLElement>(`[data-cell="${row}:${column}"]`) ?? null;
}
