import type { ReactNode } from 'react';
import type { Player } from '../../playbook/index.ts';
import { measuredInstead } from './measured-instead.ts';
import type { TextColumn } from './roster-columns.ts';
import styles from './roster-table.module.css';
import type { Skill } from './team-words.ts';

export interface TextCellProps {
  readonly column: TextColumn;
  readonly player: Player | undefined;
  /** "4:2", by which the table finds it. */
  readonly place: string;
  readonly text: string;
  readonly label: string;
  readonly hasProblem: boolean;
  /** Id of the sentences of the row. */
  readonly describedBy: string | undefined;
  readonly onText: (text: string) => void;
  readonly onLeave: () => void;
}

/** A cell that is typed in: all of it is marked on coming, so that typing replaces it. */
export function TextCell({
  column,
  player,
  place,
  text,
  label,
  hasProblem,
  describedBy,
  onText,
  onLeave,
}: TextCellProps): ReactNode {
  const instead =
    player === undefined || !column.id.startsWith('grade ')
      ? undefined
      : measuredInstead(player, column.id.slice(6) as Skill);
  // A grade also stands as a bar under its figure.
  const grade = column.id.startsWith('grade ') && text !== '' ? Number(text) : Number.NaN;
  return (
    <input
      className={[styles.text, styles[formOf(column)]].join(' ')}
      data-cell={place}
      data-instead={instead?.extent}
      style={grade >= 1 && grade <= 5 ? { backgroundSize: `calc((100% - 8px) * ${grade / 5}) 3px` } : undefined}
      type="text"
      inputMode={column.form === 'whole' ? 'numeric' : column.form === 'decimal' ? 'decimal' : 'text'}
      autoComplete="off"
      autoCapitalize={column.id === 'name' ? 'words' : 'off'}
      spellCheck={column.id === 'notes'}
      value={text}
      placeholder={player === undefined ? undefined : column.empty}
      title={instead?.sentence}
      aria-label={instead === undefined ? label : `${label}. ${instead.sentence}`}
      aria-invalid={hasProblem}
      aria-describedby={describedBy}
      onFocus={(event) => event.currentTarget.select()}
      onChange={(event) => onText(event.target.value)}
      onBlur={onLeave}
    />
  );
}

function formOf({ id, form }: TextColumn): 'grade' | 'figure' | 'words' {
  if (id.startsWith('grade ')) return 'grade';
  return form === 'words' ? 'words' : 'figure';
}
