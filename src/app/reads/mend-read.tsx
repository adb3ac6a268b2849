import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Play, Read } from '../../engine/index.ts';
import { type Playbook, type PlayEdit, type PlayEntry, sameValue } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import styles from './reads-screen.module.css';
import { replaceRead } from './replace-read.ts';
import { takeOutRead } from './take-out-read.ts';

export interface MendReadProps {
  /** The play as it is kept now, what it stands on, and its reads as the engine knows them. */
  readonly entry: PlayEntry;
  readonly standing: Playbook;
  readonly taught: Play['reads'];
  /** The read that was graded. */
  readonly read: Read;
  /** The one that is surely better, if one was found. */
  readonly better: Read | null;
  /** Where it comes it surely costs goals. */
  readonly costs: boolean;
}

/** Writes a better read into the play in place of one, or takes that one out, as one step of undo; says why, when it is refused. */
export function MendRead({ entry, standing, taught, read, better, costs }: MendReadProps): ReactNode {
  const { store } = useDesk();
  const [done, setDone] = useState('');
  const [refusal, setRefusal] = useState('');
  const said = useRef<HTMLParagraphElement>(null);
  const hasPressed = useRef(false);
  const isThere = taught.some((each) => sameValue(each, read));
  const isMended = done !== '' && !isThere;
  // The button that was pressed is gone: whoever goes by keys stays where he was.
  useEffect(() => {
    if (isMended && hasPressed.current) said.current?.focus();
    hasPressed.current = false;
  }, [isMended]);
  const write = (label: string, words: string, edit: PlayEdit): void => {
    setRefusal(edit.kind === 'refused' ? edit.reason : '');
    if (edit.kind === 'refused') return;
    setDone([words, ...edit.also, 'Undo takes it back.'].join(' '));
    hasPressed.current = true;
    store.edit(label, (current) => ({
      ...current,
      plays: current.plays.map((play) => (play.id === entry.id ? edit.play : play)),
    }));
  };
  const { carrier } = read;
  return (
    <div className={styles.teach}>
      {isThere && better !== null && (
        <Button
          onClick={() =>
            write(
              `teach ${carrier} a better read`,
              'The play teaches the better one in its place now.',
              replaceRead(entry, standing, taught, { before: read, after: better }),
            )
          }
        >
          Teach this instead
        </Button>
      )}
      {isThere && costs && (
        <Button
          onClick={() =>
            write(
              `take a read of ${carrier} out`,
              'The play does not teach this read any more.',
              takeOutRead(entry, standing, taught, read),
            )
          }
        >
          Take this read out
        </Button>
      )}
      <p role="status" tabIndex={-1} ref={said} className={panel.quiet}>
        {isThere ? refusal : done || 'The play does not teach this read any more.'}
      </p>
    </div>
  );
}
