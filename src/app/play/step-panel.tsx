import { Ellipsis } from 'lucide-react';
import { type ReactNode, useMemo } from 'react';
import type { Beat, Play } from '../../engine/index.ts';
import { removeBeat, renameBeat } from '../../playbook/index.ts';
import { playSteps } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { Menu } from '../controls/menu.tsx';
import { ActionRow } from './action-row.tsx';
import { AddAction } from './add-action.tsx';
import { ReadList } from './read-list.tsx';
import { RenameField } from './rename-field.tsx';
import { useScreen } from './screen-state.ts';
import styles from './step-panel.module.css';
import { TriggerRow } from './trigger-row.tsx';
import type { PlayEditor } from './use-play-editor.ts';

export interface StepPanelProps {
  readonly editor: PlayEditor;
  readonly play: Play;
  readonly beat: Beat;
}

/** One step in words: what starts it, what each man does, and what the man with the ball looks for. All of it can be changed by keys. */
export function StepPanel({ editor, play, beat }: StepPanelProps): ReactNode {
  const change = useScreen((state) => state.change);
  const spots = useMemo(() => play.spots.map(({ id }) => id), [play]);
  const holder = useMemo(
    () => playSteps(play).find((step) => step.beat.id === beat.id)?.before.ball ?? spots[0] ?? '',
    [play, beat.id, spots],
  );
  const remove = (how: 'keepRest' | 'withRest'): void => {
    const done = editor.apply(`take out step "${beat.id}"`, (entry, ground) => removeBeat(entry, ground, beat.id, how));
    if (done !== undefined) change({ step: 0, selected: undefined });
  };
  return (
    <section className={styles.panel} aria-label={`Step ${beat.id}`}>
      <header className={styles.head}>
        <RenameField
          label="Step"
          value={beat.id}
          onRename={(name) =>
            editor.apply(`call step "${name}"`, (entry, ground) => renameBeat(entry, ground, beat.id, name))
          }
        />
        <Menu
          trigger={<Button tone="plain" aria-label="More for this step" icon={<Ellipsis aria-hidden="true" />} />}
          items={[
            { text: 'Take this step out', onChoose: () => remove('keepRest'), tone: 'risky' },
            { text: 'Take it out with what hangs on it', onChoose: () => remove('withRest'), tone: 'risky' },
          ]}
        />
      </header>
      <TriggerRow editor={editor} play={play} beat={beat} spots={spots} />
      <h3 className={styles.title}>Then</h3>
      <ul className={styles.rows}>
        {beat.actions.map((action, index) => (
          <ActionRow
            key={`${action.by} ${action.kind}`}
            editor={editor}
            action={action}
            at={{ beat: beat.id, action: index }}
            spots={spots}
          />
        ))}
        {beat.actions.length === 0 && <li className={styles.empty}>Nobody is told anything yet.</li>}
      </ul>
      <AddAction key={`act ${beat.id}`} editor={editor} beat={beat.id} spots={spots} holder={holder} />
      <ReadList key={`read ${beat.id}`} editor={editor} play={play} beat={beat} spots={spots} holder={holder} />
    </section>
  );
}
