import { type ReactNode, useState } from 'react';
import { addChance, type Chance, type NewChance, type Playbook, removeChances } from '../../playbook/index.ts';
import { chanceColumns, readChanceTable } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import { type ChanceCells, ChanceFields, firstHeads, moreHeads, shownHeads } from './chance-fields.tsx';
import { keepChange } from './keep-change.ts';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

export interface ChanceFormProps {
  readonly playbook: Playbook;
  /** The chance that is changed; a new one when undefined. */
  readonly chance: Chance | undefined;
  readonly onClose: () => void;
}

/** All of one chance, to be written down or changed. Only how it ended is needed. */
export function ChanceForm({ playbook, chance, onClose }: ChanceFormProps): ReactNode {
  const { store } = useDesk();
  const change = useSeason((state) => state.change);
  const [cells, setCells] = useState<ChanceCells>(() => cellsOf(playbook, chance));
  const [problems, setProblems] = useState<ReadonlyMap<string, string>>(new Map());
  const set = (head: string, text: string): void => {
    setCells((before) => ({ ...before, [head]: text }));
    // What was wrong is looked at again when it is kept.
    setProblems((before) => new Map([...before].filter(([at]) => at !== head && at !== '')));
  };
  const finish = (said: string): void => {
    change({ said, saidOf: store.playbook });
    onClose();
  };
  const keep = (): void => {
    const { written, problems: found } = readCells(playbook, cells);
    if (written === undefined) {
      setProblems(found);
      return;
    }
    const edit =
      chance === undefined ? addChance(store.playbook, written) : keepChange(store.playbook, chance.id, written);
    if (edit.kind === 'refused') {
      setProblems(new Map([['', edit.reason]]));
      return;
    }
    store.edit(chance === undefined ? 'writing down a chance' : 'changing a chance', () => edit.playbook);
    finish(chance === undefined ? 'Written down.' : 'Changed.');
  };
  const remove = (): void => {
    if (chance === undefined) return;
    const edit = removeChances(store.playbook, [chance.id]);
    if (edit.kind === 'edited') store.edit('deleting a chance', () => edit.playbook);
    finish('Deleted; Undo brings it back.');
  };
  const others = [...problems].filter(([head]) => !shownHeads.has(head)).map(([, text]) => text);
  return (
    <Dialog open onClose={onClose} title={chance === undefined ? 'A chance' : 'Change a chance'} form="sheet">
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <div className={styles.bar}>
          <Segments
            label="Whose chance"
            value={cells.side === 'theirs' ? 'theirs' : 'ours'}
            options={[
              { value: 'ours', text: 'Ours' },
              { value: 'theirs', text: 'Theirs' },
            ]}
            onChange={(side) => set('side', side)}
          />
        </div>
        <ChanceFields playbook={playbook} heads={firstHeads} cells={cells} problems={problems} onText={set} />
        <details className={styles.more}>
          <summary>More of it</summary>
          <ChanceFields playbook={playbook} heads={moreHeads} cells={cells} problems={problems} onText={set} />
        </details>
        {(others.length > 0 || problems.size > 0) && (
          <p role="alert" className={styles.problem}>
            {others.length > 0 ? others.join(' ') : 'Something above cannot be read; it is told beside it.'}
          </p>
        )}
        <div className={panel.tools}>
          <Button tone="main" type="submit">
            {chance === undefined ? 'Write it down' : 'Keep the change'}
          </Button>
          {chance !== undefined && (
            <Button tone="risky" onClick={remove}>
              Delete it
            </Button>
          )}
        </div>
      </form>
    </Dialog>
  );
}

/** What the fields say, as a row of a table is read. */
function readCells(
  playbook: Playbook,
  cells: ChanceCells,
): { readonly written: NewChance | undefined; readonly problems: ReadonlyMap<string, string> } {
  const heads = chanceColumns.map(({ head }) => head);
  const read = readChanceTable(playbook, [heads, heads.map((head) => cells[head] ?? '')]);
  return { written: read.chances[0], problems: problemsByHead(read.problems.map(({ text }) => text)) };
}

function cellsOf({ chances }: Playbook, chance: Chance | undefined): ChanceCells {
  // A new one is most likely of the same day and opponent as the last.
  const last = chances?.at(-1);
  const shown: Chance | Pick<Chance, 'side' | 'date' | 'opponent' | 'game' | 'period'> = chance ?? {
    side: 'ours',
    ...(last?.date !== undefined && { date: last.date }),
    ...(last?.opponent !== undefined && { opponent: last.opponent }),
    ...(last?.game !== undefined && { game: last.game }),
    ...(last?.period !== undefined && { period: last.period }),
  };
  return Object.fromEntries(chanceColumns.map(({ head, print }) => [head, print(shown as Chance)]));
}

/** "shots: It is ..." by the field that it is about. */
function problemsByHead(texts: readonly string[]): ReadonlyMap<string, string> {
  return new Map(
    texts.map((text) => {
      const head = text.slice(0, Math.max(0, text.indexOf(':')));
      return shownHeads.has(head) ? ([head, text.slice(head.length + 2)] as const) : (['', text] as const);
    }),
  );
}
