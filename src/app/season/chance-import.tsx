import { type ReactNode, useMemo, useState } from 'react';
import { addChances, type Playbook } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { type ChanceTableReading, type DayOrder, newChances, readChanceTable } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { PasteField } from '../controls/paste-field.tsx';
import { Segments } from '../controls/segments.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import { ColumnList } from './column-list.tsx';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';
import { readTable } from './table-text.ts';

/** Lines that are told before the rest is only counted. */
const mostTold = 30;

/** Shows what a table of chances holds before it is taken in: all of it, or the lines that can be read. */
export function ChanceImport({
  playbook,
  text: given,
  onClose,
}: {
  readonly playbook: Playbook;
  readonly text: string;
  readonly onClose: () => void;
}): ReactNode {
  const { store } = useDesk();
  const change = useSeason((state) => state.change);
  const [text, setText] = useState(given);
  const [days, setDays] = useState<DayOrder>();
  const reading = useMemo(() => {
    const cells = readTable(text);
    return cells.length === 0 ? undefined : readChanceTable(playbook, cells, days === undefined ? {} : { days });
  }, [playbook, text, days]);
  const fresh = useMemo(() => newChances(playbook, reading?.chances ?? []), [playbook, reading]);
  const left = reading?.badLines ?? 0;
  const take = (): void => {
    const edit = addChances(store.playbook, fresh);
    if (edit.kind === 'edited') store.edit(`taking in ${counted(fresh.length, 'chance')}`, () => edit.playbook);
    const out = left === 0 ? '' : `; ${counted(left, 'line')} left out`;
    const taken = `${counted(fresh.length, 'chance')} taken in${out}. Undo takes them out again.`;
    change({ said: edit.kind === 'refused' ? edit.reason : taken, saidOf: store.playbook });
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title="Take in a table of chances" form="wide">
      <div className={styles.form}>
        <PasteField
          label="The first row names the columns, in any order; only “result” is needed."
          value={text}
          placeholder={'date,opponent,call,scheme,result\n3/17/2026,River Bend,lantern,box-zone,goal'}
          onText={setText}
        />
        <ColumnList isOpen={text === ''} />
        {reading !== undefined && (reading.asksDays || days !== undefined) && (
          <Segments
            label="Which of two a day is"
            value={days ?? ''}
            options={[
              { value: 'monthFirst', text: '3/4/2026 is March 4' },
              { value: 'dayFirst', text: '3/4/2026 is 3 April' },
            ]}
            onChange={(order) => setDays(order === 'dayFirst' ? 'dayFirst' : 'monthFirst')}
          />
        )}
        {reading !== undefined && <Findings reading={reading} fresh={fresh.length} />}
        <div className={panel.tools}>
          <Button tone={left === 0 ? 'main' : 'usual'} disabled={fresh.length === 0} onClick={take}>
            {left === 0 || fresh.length === 0
              ? `Take in ${counted(fresh.length, 'chance')}`
              : `Take the ${counted(fresh.length, 'good line')} alone`}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}

/** What was found in a table: what can be taken, what is likely a slip, and each line that cannot be read. */
function Findings({ reading, fresh }: { readonly reading: ChanceTableReading; readonly fresh: number }): ReactNode {
  const { notes, warnings, problems } = reading;
  return (
    <>
      <p role="status">{saidOf(reading, fresh)}</p>
      {warnings.length > 0 && (
        <ul className={styles.warnings} aria-label="What may be a slip">
          {warnings.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      {notes.map((note) => (
        <p key={note} className={styles.quiet}>
          {note}
        </p>
      ))}
      {problems.length > 0 && (
        <ul className={styles.problems} aria-label="What cannot be read">
          {problems.slice(0, mostTold).map(({ line, text: words }) => (
            <li key={`${line} ${words}`}>
              Line {line}: {words}
            </li>
          ))}
          {problems.length > mostTold && <li>and {problems.length - mostTold} more</li>}
        </ul>
      )}
    </>
  );
}

function saidOf({ chances, problems, lines, badLines }: ChanceTableReading, fresh: number): string {
  const known = chances.length - fresh;
  const there = known === 0 ? '' : `; ${known} more are there already and are passed over`;
  if (problems.length === 0) return `${counted(fresh, 'chance')} can be taken in${there}.`;
  if (lines === 0) return 'Nothing can be taken in:';
  return `Of ${counted(lines, 'line')} ${badLines} cannot be read${there}. Mend them here or in the file, or take the others without them; what is left out does not count, and if it is goals more than the rest, or less, the shares come out wrong.`;
}
