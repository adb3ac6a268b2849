/** A cell by its row and column, both counted from 0. */
export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
}

export interface GridKey {
  readonly key: string;
  readonly shift: boolean;
  readonly command: boolean;
  /** Where the caret of the cell's text stands: an arrow leaves a cell only where it can go no further in it. A choice has both ends. */
  readonly caretAtStart: boolean;
  readonly caretAtEnd: boolean;
}

/**
 * The cell that a key leads to; undefined where the key belongs to the cell itself or nothing lies there.
 *
 * `anchor` is the column in which the typing of this row began: Enter goes on below it, so that a row is typed with Tab and the next begins with
 * Enter, as in any spreadsheet.
 */
export function gridStep(from: CellPlace, pressed: GridKey, anchor: number, size: GridSize): CellPlace | undefined {
  const { row, column } = from;
  const go = (to: CellPlace): CellPlace | undefined =>
    to.row >= 0 && to.row < size.rows && to.column >= 0 && to.column < size.columns ? to : undefined;
  switch (pressed.key) {
    case 'Enter':
      if (pressed.command) return undefined;
      return go(pressed.shift ? { row: row - 1, column } : { row: row + 1, column: anchor });
    case 'ArrowUp':
      return go({ row: pressed.command ? 0 : row - 1, column });
    case 'ArrowDown':
      return go({ row: pressed.command ? size.rows - 1 : row + 1, column });
    case 'ArrowLeft':
      return pressed.caretAtStart && !pressed.shift ? go({ row, column: column - 1 }) : undefined;
    case 'ArrowRight':
      return pressed.caretAtEnd && !pressed.shift ? go({ row, column: column + 1 }) : undefined;
    case 'Home':
      return pressed.command ? go({ row: 0, column: 0 }) : undefined;
    case 'End':
      return pressed.command ? go({ row: size.rows - 1, column: size.columns - 1 }) : undefined;
    default:
      return undefined;
  }
}
