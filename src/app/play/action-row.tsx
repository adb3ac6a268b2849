import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Action, Point, SpotId } from '../../engine/index.ts';
import {
  type ActionAddress,
  changeAction,
  changeTarget,
  movePathPoint,
  removeAction,
  setWhenOpen,
} from '../../playbook/index.ts';
import { actionWords } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { PickList } from '../controls/pick-list.tsx';
import styles from './step-panel.module.css';
import type { PlayEditor } from './use-play-editor.ts';

export interface ActionRowProps {
  readonly editor: PlayEditor;
  readonly action: Action;
  readonly at: ActionAddress;
  readonly spots: readonly SpotId[];
}

/** What one man does in a step, and what of it can be set by keys: whom it is for, where it ends, how long, whether he waits. */
export function ActionRow({ editor, action, at, spots }: ActionRowProps): ReactNode {
  const words = actionWords(action);
  const target = targetOf(action);
  const end = endOf(action);
  return (
    <li className={styles.row}>
      <span className={styles.words}>{words}</span>
      <Button
        tone="plain"
        aria-label={`Take out: ${words}`}
        icon={<X aria-hidden="true" />}
        onClick={() => editor.apply(`take out ${words}`, (entry) => removeAction(entry, at))}
      />
      <span className={styles.fields}>
        {target !== undefined && (
          <PickList
            label={`${words}: whom`}
            quietLabel
            value={target}
            options={spots.filter((spot) => spot !== action.by).map((spot) => ({ value: spot, text: spot }))}
            onChange={(spot) =>
              editor.apply(`change ${words}`, (entry, ground) => changeTarget(entry, ground, at, spot))
            }
          />
        )}
        {end !== undefined && <PlaceFields editor={editor} words={words} at={at} end={end} />}
        {action.kind === 'hold' && (
          <NumberField
            label={`${words}: seconds`}
            value={action.seconds}
            step={0.1}
            unit="s"
            onNumber={(seconds) =>
              editor.apply(`change ${words}`, (entry, ground) =>
                changeAction(entry, ground, at, { ...action, seconds }),
              )
            }
          />
        )}
        {action.kind === 'run' && (
          <label className={styles.check}>
            <input
              type="checkbox"
              checked={action.go === 'whenOpen'}
              onChange={(event) =>
                editor.apply(`change ${words}`, (entry, ground) => setWhenOpen(entry, ground, at, event.target.checked))
              }
            />
            when open
          </label>
        )}
      </span>
    </li>
  );
}

function PlaceFields({
  editor,
  words,
  at,
  end,
}: {
  readonly editor: PlayEditor;
  readonly words: string;
  readonly at: ActionAddress;
  readonly end: { readonly point: number; readonly place: Point };
}): ReactNode {
  const move = (to: Point): void => {
    editor.apply(`move ${words}`, (entry, ground) => movePathPoint(entry, ground, at, end.point, to));
  };
  const { x, y } = end.place;
  return (
    <>
      <NumberField
        label={`${words}: yards right`}
        value={x}
        step={0.5}
        unit="x"
        onNumber={(next) => move({ x: next, y })}
      />
      <NumberField
        label={`${words}: yards up`}
        value={y}
        step={0.5}
        unit="y"
        onNumber={(next) => move({ x, y: next })}
      />
    </>
  );
}

function targetOf(action: Action): SpotId | undefined {
  switch (action.kind) {
    case 'pass':
      return action.to;
    case 'fake':
      return action.toward;
    case 'pick':
    case 'seal':
      return action.on;
    default:
      return undefined;
  }
}

function endOf(action: Action): { readonly point: number; readonly place: Point } | undefined {
  switch (action.kind) {
    case 'carry':
    case 'run':
      return { point: action.path.length - 1, place: action.path.at(-1)! };
    case 'pick':
      return { point: 0, place: action.at };
    case 'stepIn':
      return { point: 0, place: action.to };
    default:
      return undefined;
  }
}
