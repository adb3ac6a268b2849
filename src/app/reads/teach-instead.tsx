import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Play } from '../../engine/index.ts';
import { groundOf, type Playbook, type PlayEntry, sameValue } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import styles from './reads-screen.module.css';
import { type ReadChange, replaceRead } from './replace-read.ts';

export interface TeachInsteadProps {
  /** The play as it is kept now, what it stands on, and its reads as the engine knows them. */
  readonly entry: PlayEntry;
  readonly standing: Playbook;
  readonly taught: Play['reads'];
  readonly change: ReadChange;
}

/** Writes a better read into the play in place of one, as one step of undo; says why, when it is refused. */
export function TeachInstead({ entry, standing, taught, change }: TeachInsteadProps): ReactNode {
  const { store } = useDesk();
  const [isDone, setDone] = useState(false);
  const [refusal, setRefusal] = useState('');
  const said = useRef<HTMLParagraphElement>(null);
  const hasPressed = useRef(false);
  const isTaught = taught.some((read) => sameValue(read, change.before));
  const isReplaced = isDone && !isTaught;
  // The button that was pressed is gone: whoever goes by keys stays where he was.
  useEffect(() => {
    if (isReplaced && hasPressed.current) said.current?.focus();
    hasPressed.current = false;
  }, [isReplaced]);
  const replace = (): void => {
    const result = replaceRead(entry, groundOf(standing), taught, change);
    setRefusal(result.kind === 'refused' ? result.reason : '');
    if (result.kind === 'refused') return;
    setDone(true);
    hasPressed.current = true;
    store.edit(`teach ${change.after.carrier} a better read`, (current) => ({
      ...current,
      plays: current.plays.map((play) => (play.id === entry.id ? result.play : play)),
    }));
  };
  return (
    <div className={styles.teach}>
      {isTaught && <Button onClick={replace}>Teach this instead</Button>}
      <p role="status" tabIndex={-1} ref={said} className={panel.quiet}>
        {isTaught ? refusal : saidOfGone(isReplaced)}
      </p>
    </div>
  );
}

function saidOfGone(isReplaced: boolean): string {
  if (isReplaced) return 'The play teaches the better one in its place now. Undo takes it back.';
  return 'The play does not teach this read any more.';
}
