import type { Playbook, Player } from '../../playbook/index.ts';
import type { CellPlace } from './grid-step.ts';
import { nextByLetter } from './next-by-letter.ts';
import type { ChoiceColumn, RosterColumn } from './roster-columns.ts';
import { editPlayer } from './roster-edits.ts';

/** What a pasted cell would do, or why it does nothing. */
export interface PastedCell {
  readonly text: string;
  readonly problem?: string;
}

/** Pasted cells laid over the roster from one cell on. */
export interface PastedBlock {
  /** The men whose rows are pasted over, and the columns: as far as the roster goes. */
  readonly men: readonly Player[];
  readonly columns: readonly RosterColumn[];
  /** Row by row; cells beyond the roster or the table are left out. */
  readonly cells: readonly (readonly PastedCell[])[];
  /** Rows that lie below the last man. */
  readonly rowsBeyond: number;
  readonly columnsBeyond: number;
  /** Cells that can be taken. */
  readonly count: number;
  readonly playbook: Playbook;
}

/** Lays cells over the roster as a spreadsheet does. What cannot be read is told and left as it stands; the rest is taken. */
export function pasteBlock(
  playbook: Playbook,
  at: CellPlace,
  texts: readonly (readonly string[])[],
  columns: readonly RosterColumn[],
): PastedBlock {
  const { roster } = playbook.team;
  const width = Math.max(0, ...texts.map((row) => row.length));
  const men = roster.slice(at.row, at.row + texts.length);
  const under = columns.slice(at.column, at.column + width);
  let next = playbook;
  let count = 0;
  const cells = men.map((_, i) =>
    under.map((column, j): PastedCell => {
      const text = (texts[i]?.[j] ?? '').trim();
      const change = changeBy(column, text);
      if (typeof change === 'string') return { text, problem: change };
      next = editPlayer(next, at.row + i, change);
      count++;
      return { text };
    }),
  );
  return {
    men,
    columns: under,
    cells,
    rowsBeyond: texts.length - men.length,
    columnsBeyond: width - under.length,
    count,
    playbook: next,
  };
}

/**
 * Whether pasted cells are men, one a row, rather than values for the cells from here on: they begin in the empty row, or they begin at the
 * number and hold more than numbers.
 */
export function areMen(at: CellPlace, men: number, hasHeader: boolean, width: number): boolean {
  return hasHeader || at.row >= men || (at.column === 0 && width > 1);
}

/** What a text does to a man in a column; a sentence when it says nothing there. */
function changeBy(column: RosterColumn, text: string): ((player: Player) => Player) | string {
  switch (column.kind) {
    case 'text': {
      const read = column.read(text);
      return read.kind === 'read' ? read.value : read.text;
    }
    case 'choice': {
      const value = optionOf(column, text);
      const words = column.options.map((option) => option.text).join(', ');
      return value === undefined ? `“${text}” is none of ${words}.` : (player) => column.put(player, value);
    }
    case 'check': {
      const isOn = /^(x|y|yes|true|1|absent|out)$/i.test(text);
      if (!isOn && !/^(|-|n|no|false|0|present|in)$/i.test(text)) return `“${text}” is neither yes nor no.`;
      return (player) => column.put(player, isOn);
    }
    default:
      return exhaustive(column);
  }
}

function optionOf({ options }: ChoiceColumn, text: string): string | undefined {
  const plain = text.toLowerCase();
  const found = options.find(
    ({ value, text: words }) => value.toLowerCase() === plain || words.toLowerCase() === plain,
  );
  return found?.value ?? nextByLetter(options, '', text);
}

function exhaustive(column: never): never {
  throw new TypeError(`unknown column: ${JSON.stringify(column)}`);
}
