import { type ReactNode, useEffect } from 'react';
import { usePlaybook } from '../shell/desk.tsx';
import { AwayLine } from '../team/away-line.tsx';
import { EmptyPlays } from './empty-plays.tsx';
import { NoticeLine } from './notice-line.tsx';
import { PlayDesk } from './play-desk.tsx';
import { PlayHead } from './play-head.tsx';
import styles from './play-screen.module.css';
import { ProblemList } from './problem-list.tsx';
import { useScreen } from './screen-state.ts';
import { StandInLine } from './stand-in-line.tsx';
import { usePlayEditor } from './use-play-editor.ts';
import { useShownPlay } from './use-shown-play.ts';

/** The place where a play is written and watched. */
export function PlayScreen({ playId }: { readonly playId: string | undefined }): ReactNode {
  const playbook = usePlaybook();
  const { step, script, side, change } = useScreen();
  const editor = usePlayEditor(useShownPlay(playId));
  const play = editor?.reading.play;
  const last = (script === 'main' ? play?.beats : (play?.lastTen?.beats ?? []))?.length ?? 0;
  useEffect(() => {
    // What is written on may be gone: another play, or a step taken back.
    if (script === 'lastTen' && play !== undefined && play.lastTen === undefined) change({ script: 'main', step: 0 });
    else if (step > last) change({ step: last });
  }, [script, play, step, last, change]);
  return (
    <div className={styles.screen}>
      <PlayHead editor={editor} />
      <NoticeLine />
      {editor !== undefined && <StandInLine standIns={editor.standIns} />}
      {editor !== undefined && play !== undefined && (
        <AwayLine playbook={playbook} entry={editor.written} play={play} side={side} isWhole={editor.reading.isWhole} />
      )}
      {editor !== undefined && <ProblemList problems={editor.reading.problems} />}
      {editor === undefined && <EmptyPlays />}
      {editor !== undefined && play !== undefined && <PlayDesk playbook={playbook} editor={editor} play={play} />}
      {editor !== undefined && play === undefined && (
        <p className={styles.undrawn}>This play cannot be drawn until what is said above is fixed.</p>
      )}
    </div>
  );
}
