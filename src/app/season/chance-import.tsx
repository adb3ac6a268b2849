import { type ReactNode, useMemo, useState } from 'react';
import { addChances, type Playbook } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { chanceColumns, newChances, readChanceTable } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';
import { readTable } from './table-text.ts';

/** Lines that are told before the rest is only counted. */
const mostTold = 30;

/** Shows what a table of man-ups holds before it is taken in: all of it or nothing. */
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
  const reading = useMemo(() => {
    const cells = readTable(text);
    return cells.length === 0 ? undefined : readChanceTable(playbook, cells);
  }, [playbook, text]);
  const fresh = useMemo(() => newChances(playbook, reading?.chances ?? []), [playbook, reading]);
  const isWhole = reading !== undefined && reading.problems.length === 0;
  const take = (): void => {
    const edit = addChances(store.playbook, fresh);
    if (edit.kind === 'edited') store.edit(`taking in ${counted(fresh.length, 'man-up')}`, () => edit.playbook);
    change({
      said:
        edit.kind === 'refused'
          ? edit.reason
          : `${counted(fresh.length, 'man-up')} taken in; Undo takes them out again.`,
    });
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title="Take in a table of man-ups" form="wide">
      <div className={styles.form}>
        <label className={styles.source}>
          <span>
            The first row names the columns, in any order; only “result” is needed. All names:{' '}
            {chanceColumns.map(({ head }) => head).join(', ')}.
          </span>
          <textarea
            className={styles.text}
            rows={text === '' ? 8 : 4}
            spellCheck={false}
            value={text}
            placeholder={'date,opponent,call,scheme,result\n2026-03-14,River Bend,lantern,box-zone,goal'}
            onChange={(event) => setText(event.target.value)}
          />
        </label>
        {reading !== undefined && (
          <>
            <p role="status">{saidOf(reading.chances.length, fresh.length, reading.problems.length)}</p>
            {reading.notes.map((note) => (
              <p key={note} className={styles.quiet}>
                {note}
              </p>
            ))}
            {!isWhole && (
              <ul className={styles.problems} aria-label="What cannot be read">
                {reading.problems.slice(0, mostTold).map(({ line, text: words }) => (
                  <li key={`${line} ${words}`}>
                    Line {line}: {words}
                  </li>
                ))}
                {reading.problems.length > mostTold && <li>and {reading.problems.length - mostTold} more</li>}
              </ul>
            )}
          </>
        )}
        <div className={panel.tools}>
          <Button tone="main" disabled={!isWhole || fresh.length === 0} onClick={take}>
            Take in {counted(isWhole ? fresh.length : 0, 'man-up')}
          </Button>
        </div>
      </div>
    </Dialog>
  );
}

function saidOf(read: number, fresh: number, problems: number): string {
  if (problems > 0) return 'Nothing is taken in while a line cannot be read. Mend these lines here or in the file:';
  const known = read - fresh;
  return `${counted(fresh, 'man-up')} can be taken in${known === 0 ? '' : `; ${known} more are there already and are passed over`}.`;
}
