import { type ReactNode, useState } from 'react';
import { schemeList } from '../../engine/index.ts';
import {
  addChance,
  type Chance,
  chanceResults,
  chanceResultWords,
  chanceStarts,
  changeChance,
  type Playbook,
  removeChances,
} from '../../playbook/index.ts';
import { chanceColumns, readChanceTable } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { Segments } from '../controls/segments.tsx';
import { TextField } from '../controls/text-field.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

/** What stands in the fields, by the heads of a table's columns: a form and a table are read alike. */
type Cells = Readonly<Record<string, string>>;

export interface ChanceFormProps {
  readonly playbook: Playbook;
  /** The man-up that is changed; a new one when undefined. */
  readonly chance: Chance | undefined;
  readonly onClose: () => void;
}

/** All of one man-up, to be written down or changed. Only how it ended is needed. */
export function ChanceForm({ playbook, chance, onClose }: ChanceFormProps): ReactNode {
  const { store } = useDesk();
  const change = useSeason((state) => state.change);
  const [cells, setCells] = useState<Cells>(() => cellsOf(playbook, chance));
  const [problems, setProblems] = useState<ReadonlyMap<string, string>>(new Map());
  const set = (head: string, text: string): void => {
    setCells((before) => ({ ...before, [head]: text }));
    // What was wrong is looked at again when it is kept.
    setProblems((before) => new Map([...before].filter(([at]) => at !== head && at !== '')));
  };
  const finish = (said: string): void => {
    change({ said });
    onClose();
  };
  const keep = (): void => {
    const heads = chanceColumns.map(({ head }) => head);
    const read = readChanceTable(playbook, [heads, heads.map((head) => cells[head] ?? '')]);
    const [written] = read.chances;
    if (written === undefined) {
      setProblems(problemsByHead(read.problems.map(({ text }) => text)));
      return;
    }
    const edit =
      chance === undefined
        ? addChance(store.playbook, written)
        : // Marks and shares of schemes are no matter of the form: they stay.
          changeChance(store.playbook, chance.id, ({ id, marks, belief }) => ({
            id,
            ...written,
            ...(marks && { marks }),
            ...(belief && { belief }),
          }));
    if (edit.kind === 'refused') {
      setProblems(new Map([['', edit.reason]]));
      return;
    }
    store.edit(chance === undefined ? 'writing down a man-up' : 'changing a man-up', () => edit.playbook);
    finish(chance === undefined ? 'Written down.' : 'Changed.');
  };
  const remove = (): void => {
    if (chance === undefined) return;
    const edit = removeChances(store.playbook, [chance.id]);
    if (edit.kind === 'edited') store.edit('deleting a man-up', () => edit.playbook);
    finish('Deleted; Undo brings it back.');
  };
  const others = [...problems].filter(([head]) => !shownHeads.has(head)).map(([, text]) => text);
  return (
    <Dialog open onClose={onClose} title={chance === undefined ? 'A man-up' : 'Change a man-up'} form="sheet">
      <form
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <div className={styles.bar}>
          <Segments
            label="Whose man-up"
            value={cells.side === 'theirs' ? 'theirs' : 'ours'}
            options={[
              { value: 'ours', text: 'Ours' },
              { value: 'theirs', text: 'Theirs' },
            ]}
            onChange={(side) => set('side', side)}
          />
        </div>
        <Fields playbook={playbook} heads={first} cells={cells} problems={problems} onText={set} />
        <details className={styles.more}>
          <summary>More of it</summary>
          <Fields playbook={playbook} heads={more} cells={cells} problems={problems} onText={set} />
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

const first = [
  'result',
  'date',
  'opponent',
  'period',
  'clock',
  'call',
  'from',
  'scheme',
  'shots',
  'first shot',
  'look',
  'scorer',
];
const more = [
  ...['game', 'penalty', 'fixed', 'men', 'start', 'unit', 'on target', 'passes', 'assist', 'clear'],
  ...['expected', 'expected low', 'expected high', 'notes'],
];
const shownHeads: ReadonlySet<string> = new Set([...first, ...more]);

interface FieldsProps {
  readonly playbook: Playbook;
  readonly heads: readonly string[];
  readonly cells: Cells;
  readonly problems: ReadonlyMap<string, string>;
  readonly onText: (head: string, text: string) => void;
}

function Fields({ playbook, heads, cells, problems, onText }: FieldsProps): ReactNode {
  return (
    <div className={styles.fields}>
      {heads.map((head) => {
        const value = cells[head] ?? '';
        const choices = choicesOf(playbook, head);
        if (choices === undefined) {
          const problem = problems.get(head);
          return (
            <TextField
              key={head}
              label={labels[head] ?? head}
              value={value}
              type={head === 'date' ? 'date' : 'text'}
              {...(problem !== undefined && { problem })}
              onText={(text) => onText(head, text)}
            />
          );
        }
        // What was written and is gone stays a choice.
        const all = choices.some((one) => one.value === value) ? choices : [...choices, { value, text: value }];
        return (
          <div key={head} className={styles.field}>
            <PickList
              label={labels[head] ?? head}
              value={value}
              options={all}
              onChange={(text) => onText(head, text)}
            />
            {problems.has(head) && <span className={styles.problem}>{problems.get(head)}</span>}
          </div>
        );
      })}
    </div>
  );
}

const labels: Readonly<Record<string, string>> = {
  result: 'Ended in',
  date: 'Day',
  opponent: 'Opponent',
  period: 'Period',
  clock: 'Clock, 7:11',
  call: 'Call',
  from: 'From the',
  scheme: 'They played',
  shots: 'Shots',
  'first shot': 'First shot after, s',
  look: 'Look, "feed X C"',
  scorer: 'Number of the shooter',
  game: 'Game, a short word',
  penalty: 'Penalty, s',
  fixed: 'Stays after a goal',
  men: 'Men who serve',
  start: 'Began',
  unit: 'Unit',
  'on target': 'Shots on goal',
  passes: 'Passes before the shot',
  assist: 'Number of the passer',
  clear: 'Cleared after the stop',
  expected: 'Expected goals',
  'expected low': 'at least',
  'expected high': 'at most',
  notes: 'Notes',
};

type Choice = { readonly value: string; readonly text: string };
const nothing: Choice = { value: '', text: 'not known' };
const yesOrNo: readonly Choice[] = [nothing, { value: 'yes', text: 'yes' }, { value: 'no', text: 'no' }];

/** What a field is chosen from; undefined where it is typed. */
function choicesOf({ plays, schemes }: Playbook, head: string): readonly Choice[] | undefined {
  switch (head) {
    case 'result':
      return [
        { value: '', text: 'choose' },
        ...chanceResults.map((value) => ({ value, text: chanceResultWords[value] })),
      ];
    case 'call':
      return [nothing, ...plays.map(({ id, name }) => ({ value: id, text: name }))];
    case 'scheme':
      return [
        nothing,
        ...(schemes ?? []).map(({ id, name }) => ({ value: id, text: name })),
        ...schemeList.map(({ id, notes }) => ({ value: id, text: notes.name })),
      ];
    case 'from':
      return [nothing, { value: 'left', text: 'left' }, { value: 'right', text: 'right' }];
    case 'start':
      return [nothing, ...chanceStarts.map((value) => ({ value, text: startWords[value] }))];
    case 'fixed':
    case 'clear':
      return yesOrNo;
    default:
      return undefined;
  }
}

const startWords = {
  restart: 'a restart after the whistle',
  flagDown: 'with the flag down',
  transition: 'on the run',
} as const;

function cellsOf({ chances }: Playbook, chance: Chance | undefined): Cells {
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
