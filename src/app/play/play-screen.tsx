import { type ReactNode, useCallback, useEffect, useMemo, useState } from 'react';
import { addBeatAfter, type PlayEntry, ruleCodeOf } from '../../playbook/index.ts';
import { drawnField, playSteps } from '../../render/index.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { EmptyPlays } from './empty-plays.tsx';
import { NoticeLine } from './notice-line.tsx';
import { PlayHead } from './play-head.tsx';
import styles from './play-screen.module.css';
import { ProblemList } from './problem-list.tsx';
import { useScreen } from './screen-state.ts';
import { SetPanel } from './set-panel.tsx';
import { StepBar } from './step-bar.tsx';
import { StepPanel } from './step-panel.tsx';
import { usePlayEditor } from './use-play-editor.ts';
import { WriteField } from './write-field.tsx';

/** The place where a play is written and watched. */
export function PlayScreen({ playId }: { readonly playId: string | undefined }): ReactNode {
  const playbook = usePlaybook();
  const first = playbook.plays.find((play) => play.archived !== true)?.id;
  const id = playbook.plays.some((play) => play.id === playId) ? playId : first;
  const editor = usePlayEditor(id);
  const { step, mode, change } = useScreen();
  const field = useMemo(() => drawnField(ruleCodeOf(playbook).markings), [playbook]);
  const play = editor?.reading.play;
  const beats = useMemo(() => (play === undefined ? [] : playSteps(play).map(({ beat }) => beat)), [play]);
  const [pending, setPending] = useState<PlayEntry>();
  const onPending = useCallback((entry: PlayEntry | undefined) => setPending(entry), []);
  useEffect(() => {
    if (step > beats.length) change({ step: beats.length });
  }, [step, beats.length, change]);

  if (editor === undefined) {
    return (
      <div className={styles.screen}>
        <PlayHead editor={undefined} />
        <EmptyPlays />
      </div>
    );
  }
  const beat = beats[step - 1];
  const addStep = (): void => {
    const after = beat?.id ?? beats.at(-1)?.id ?? '';
    const made = editor.apply('add a step', (entry, ground) => addBeatAfter(entry, ground, after));
    if (made !== undefined) change({ step: (beat === undefined ? beats.length : step) + 1, mode: 'write' });
  };
  return (
    <div className={styles.screen}>
      <PlayHead editor={editor} />
      <NoticeLine />
      <ProblemList problems={editor.reading.problems} />
      <div className={styles.desk}>
        <section className={styles.stage} aria-label="The field">
          <div className={styles.field} data-tour="field">
            {play === undefined ? (
              <p>This play cannot be drawn until what is said above is mended.</p>
            ) : (
              <WriteField editor={editor} play={play} field={field} onPending={onPending} />
            )}
          </div>
          <StepBar
            beats={beats.map((each) => each.id)}
            step={step}
            onStep={(next) => change({ step: next, mode: 'write' })}
            onAdd={addStep}
          />
        </section>
        <aside className={styles.panel} aria-label="This step in words">
          {play !== undefined && beat !== undefined && <StepPanel editor={editor} play={play} beat={beat} />}
          {play !== undefined && beat === undefined && <SetPanel editor={editor} play={play} />}
        </aside>
        <section className={styles.schemes} aria-label="Against the schemes" data-tour="schemes">
          {mode} {pending?.id}
        </section>
      </div>
    </div>
  );
}
