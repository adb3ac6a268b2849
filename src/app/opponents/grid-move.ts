/** A cell by its row and column, both counted from 0. */
export interface GridPlace {
  readonly row: number;
  readonly column: number;
}

/** The cell that a key leads to from another; undefined where the key is no way, or nothing lies there. */
export function gridMove(
  { row, column }: GridPlace,
  key: string,
  size: { readonly rows: number; readonly columns: number },
): GridPlace | undefined {
  const go = (to: GridPlace): GridPlace | undefined =>
    to.row >= 0 && to.row < size.rows && to.column >= 0 && to.column < size.columns ? to : undefined;
  switch (key) {
    case 'ArrowUp':
      return go({ row: row - 1, column });
    case 'ArrowDown':
      return go({ row: row + 1, column });
    case 'ArrowLeft':
      return go({ row, column: column - 1 });
    case 'ArrowRight':
      return go({ row, column: column + 1 });
    case 'Home':
      return go({ row, column: 0 });
    case 'End':
      return go({ row, column: size.columns - 1 });
    case 'PageUp':
      return go({ row: 0, column });
    case 'PageDown':
      return go({ row: size.rows - 1, column });
    default:
      return undefined;
  }
}
