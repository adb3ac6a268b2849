import { useMemo } from 'react';
import type { Playbook, Player } from '../../playbook/index.ts';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import type { RosterColumn, TextColumn } from './roster-columns.ts';
import { rosterColumns } from './roster-columns.ts';
import { editPlayer, renumbered } from './roster-edits.ts';
import { nameOf, type RowProblems, rosterProblems } from './roster-problems.ts';
import { draftKey, rosterKeys, useTeam } from './team-state.ts';

/** The roster under the coach's hands. */
export interface RosterEditor {
  readonly roster: readonly Player[];
  /** The name of each row, and at the end that of the empty one. */
  readonly keys: readonly string[];
  readonly columns: readonly RosterColumn[];
  readonly problems: readonly RowProblems[];
  /** Types into a cell: saved at once where it can be read, kept as it stands where not. */
  readonly type: (row: string, column: TextColumn, text: string) => void;
  /** What stands in a cell, and what is wrong with it when it cannot be read. */
  readonly typed: (row: string, column: TextColumn) => { readonly text: string; readonly problem: string | undefined };
  /** Leaves a cell: what could be read is shown as it is kept. */
  readonly leave: (row: string, column: TextColumn) => void;
  /** Takes back what was typed since the cell was entered. */
  readonly forget: (row: string, column: TextColumn) => void;
  /** Changes a man as one step of undo. */
  readonly edit: (row: string, what: string, change: (player: Player) => Player) => void;
}

export function useRoster(): RosterEditor {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const shown = useTeam((state) => state.columns);
  const units = useTeam((state) => state.units);
  const drafts = useTeam((state) => state.drafts);
  const draft = useTeam((state) => state.draft);
  const { roster } = playbook.team;
  const columns = useMemo(() => rosterColumns(shown, units), [shown, units]);
  const keys = useMemo(() => [...rosterKeys.keysOf(roster), rosterKeys.next()], [roster]);
  const problems = useMemo(() => rosterProblems(playbook, columns), [playbook, columns]);
  return useMemo((): RosterEditor => {
    const indexOf = (row: string): number => keys.indexOf(row);
    const who = (row: string): string => {
      const player = roster[indexOf(row)];
      return player === undefined ? 'a new man' : nameOf(player);
    };
    return {
      roster,
      keys,
      columns,
      problems,
      type: (row, column, text) => {
        const index = indexOf(row);
        const read = column.read(text);
        draft(draftKey(row, column.id), text);
        if (read.kind === 'problem') return;
        // Somebody new has the lowest free number until he is given his own; the empty cell says that one is wanted.
        if (index === roster.length && column.id !== 'number') draft(draftKey(row, 'number'), '');
        const change =
          column.id === 'number'
            ? changeNumber(playbook, index, row, read.value)
            : (current: Playbook) => editPlayer(current, index, read.value);
        store.edit(`type ${wordOf(column)} of ${who(row)}`, change, { joins: joinsOf(row, column) });
      },
      typed: (row, column) => {
        const player = roster[indexOf(row)];
        const kept = drafts[draftKey(row, column.id)];
        const text = kept ?? (player === undefined ? '' : column.print(player));
        const read = kept === undefined ? undefined : column.read(kept);
        return { text, problem: read?.kind === 'problem' ? read.text : undefined };
      },
      leave: (row, column) => {
        store.settle();
        startOfNumber.delete(row);
        const kept = useTeam.getState().drafts[draftKey(row, column.id)];
        if (kept === undefined) return;
        const isEmptyRow = indexOf(row) === roster.length && kept.trim() === '';
        if (isEmptyRow || column.read(kept).kind === 'read') draft(draftKey(row, column.id), undefined);
      },
      forget: (row, column) => {
        store.abandon(joinsOf(row, column));
        startOfNumber.delete(row);
        draft(draftKey(row, column.id), undefined);
      },
      edit: (row, what, change) => {
        const index = indexOf(row);
        store.edit(`${what} of ${who(row)}`, (current) => editPlayer(current, index, change));
      },
    };
  }, [store, playbook, roster, keys, columns, problems, drafts, draft]);
}

function wordOf({ head, name }: TextColumn): string {
  return head.length > 4 || name.length > 12 ? head.toLowerCase() : name.toLowerCase();
}

function joinsOf(row: string, column: TextColumn): string {
  return `typing:roster/${row}/${column.id}`;
}

/** The team as it was when the typing of a man's number began. */
const startOfNumber = new Map<string, Playbook>();

function changeNumber(
  playbook: Playbook,
  index: number,
  row: string,
  change: (player: Player) => Player,
): (playbook: Playbook) => Playbook {
  const start = startOfNumber.get(row) ?? playbook;
  startOfNumber.set(row, start);
  const before = start.team.roster[index];
  return (current) => {
    const next = editPlayer(current, index, change);
    const after = next.team.roster[index];
    if (next === current || before === undefined || after === undefined) return next;
    const others = start.team.roster.filter((player) => player !== before);
    const depth = renumbered(start.team.depth, others, before.number, after.number);
    return depth === undefined ? next : { ...next, team: { ...next.team, depth } };
  };
}
