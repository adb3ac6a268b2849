import type { ReactNode } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { type ColumnChoice, chanceColumns } from '../../teach/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import { TextField } from '../controls/text-field.tsx';
import styles from './season.module.css';

/** What stands in the fields, by the heads of a table's columns: a form and a table are read alike. */
export type ChanceCells = Readonly<Record<string, string>>;

/** What is asked first. */
export const firstHeads = [
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
/** What is asked below, of who wants to tell more. */
export const moreHeads = [
  ...['game', 'penalty', 'fixed', 'men', 'start', 'unit', 'on target', 'passes', 'assist', 'clear'],
  ...['expected', 'expected low', 'expected high', 'notes'],
];
/** All that the form asks. */
export const shownHeads: ReadonlySet<string> = new Set([...firstHeads, ...moreHeads]);

export interface ChanceFieldsProps {
  readonly playbook: Playbook;
  readonly heads: readonly string[];
  readonly cells: ChanceCells;
  readonly problems: ReadonlyMap<string, string>;
  readonly onText: (head: string, text: string) => void;
}

/** Some of the fields of a chance, each with what is wrong with it. */
export function ChanceFields({ playbook, heads, cells, problems, onText }: ChanceFieldsProps): ReactNode {
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

const nothing: ColumnChoice = { value: '', text: 'not known' };
const notYet: ColumnChoice = { value: '', text: 'choose' };

/** What a field is chosen from, by its column; undefined where it is typed. */
function choicesOf(playbook: Playbook, head: string): readonly ColumnChoice[] | undefined {
  const choices = chanceColumns.find((column) => column.head === head)?.choices?.(playbook);
  return choices && [head === 'result' ? notYet : nothing, ...choices];
}
