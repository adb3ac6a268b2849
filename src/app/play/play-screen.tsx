import { type ReactNode, useCallback, useMemo } from 'react';
import { addBeatAfter, type PlayEntry, ruleCodeOf } from '../../playbook/index.ts';
import { drawnField, playSteps } from '../../render/index.ts';
import { usePlaybook } from '../shell/desk.tsx';
import styles from './play-screen.module.css';
import { useScreen } from './screen-state.ts';
import { StepBar } from './step-bar.tsx';
import { StepPanel } from './step-panel.tsx';
import { usePlayEditor } from './use-play-editor.ts';
import { WriteField } from './write-field.tsx';

/** The place where a play is written and watched. */
export function PlayScreen({ playId }: { readonly playId: string | undefined }): ReactNode {
  const playbook = usePlaybook();
  const id = playId ?? playbook.plays.find((play) => play.archived !== true)?.id;
  const editor = usePlayEditor(id);
  const { step, change } = useScreen();
  const field = useMemo(() => drawnField(ruleCodeOf(playbook).markings), [playbook]);
  const play = editor?.reading.play;
  const beats = useMemo(() => (play === undefined ? [] : playSteps(play).map(({ beat }) => beat)), [play]);
  const onPending = useCallback((_: PlayEntry | undefined) => undefined, []);
  if (editor === undefined || play === undefined) return <p>No play.</p>;
  const beat = beats[step - 1];
  const addStep = (): void => {
    const after = beat?.id ?? beats.at(-1)?.id ?? '';
    const made = editor.apply('add a step', (entry, ground) => addBeatAfter(entry, ground, after));
    if (made !== undefined) change({ step: beats.length + 1 });
  };
  return (
    <div className={styles.screen}>
      <section className={styles.stage} aria-label={play.name}>
        <h1 className={styles.title}>{play.name}</h1>
        <div className={styles.field}>
          <WriteField editor={editor} play={play} field={field} onPending={onPending} />
        </div>
        <StepBar beats={beats.map((each) => each.id)} step={step} onStep={(next) => change({ step: next })} onAdd={addStep} />
      </section>
      <aside className={styles.panel}>
        {beat !== undefined && <StepPanel editor={editor} play={play} beat={beat} />}
      </aside>
    </div>
  );
}
