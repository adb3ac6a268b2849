import type { ReactNode } from 'react';
import { TextField } from '../controls/text-field.tsx';
import type { TextColumn } from './roster-columns.ts';
import type { RosterEditor } from './use-roster.ts';

/** A cell of the roster as a field of the panel: the same typing, the same problems. */
export function PanelField({
  editor,
  row,
  column,
  label,
}: {
  readonly editor: RosterEditor;
  readonly row: string;
  readonly column: TextColumn;
  readonly label: string;
}): ReactNode {
  const { text, problem } = editor.typed(row, column);
  const told = problem ?? editor.problems[editor.keys.indexOf(row)]?.get(column.id);
  return (
    <TextField
      label={label}
      value={text}
      inputMode={column.form === 'whole' ? 'numeric' : 'text'}
      onText={(next) => editor.type(row, column, next)}
      onBlur={() => editor.leave(row, column)}
      {...(told !== undefined && { problem: told })}
    />
  );
}
