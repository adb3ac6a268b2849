import type { ReactNode } from 'react';
import type { Beat, Play, SpotId, Trigger } from '../../engine/index.ts';
import { changeTrigger } from '../../playbook/index.ts';
import { NumberField } from '../controls/number-field.tsx';
import { PickList } from '../controls/pick-list.tsx';
import styles from './step-panel.module.css';
import type { PlayEditor } from './use-play-editor.ts';

const kinds: readonly { readonly value: Trigger['kind']; readonly text: string }[] = [
  { value: 'start', text: 'the set is up' },
  { value: 'catch', text: 'he catches:' },
  { value: 'pass', text: 'he throws:' },
  { value: 'arrival', text: 'he arrives:' },
  { value: 'call', text: 'a call after:' },
];

export interface TriggerRowProps {
  readonly editor: PlayEditor;
  readonly play: Play;
  readonly beat: Beat;
  readonly spots: readonly SpotId[];
}

/** What starts a step. */
export function TriggerRow({ editor, play, beat, spots }: TriggerRowProps): ReactNode {
  const { when } = beat;
  const others = play.beats.map(({ id }) => id).filter((id) => id !== beat.id);
  const set = (trigger: Trigger): void => {
    editor.apply(`start "${beat.id}" otherwise`, (entry, ground) => changeTrigger(entry, ground, beat.id, trigger));
  };
  const man = manOf(when);
  const choices = spots.map((spot) => ({ value: spot, text: spot }));
  return (
    <fieldset className={styles.form} aria-label="Starts when">
      <PickList
        label="Starts when"
        value={when.kind}
        options={kinds.filter(({ value }) => value !== 'call' || others.length > 0)}
        onChange={(kind) => set(triggerOf(kind, likelyMan(play, beat, kind) ?? man ?? spots[0] ?? '', others[0] ?? ''))}
      />
      {man !== undefined && (
        <PickList label="Who" value={man} options={choices} onChange={(spot) => set(withMan(when, spot))} />
      )}
      {when.kind === 'call' && (
        <>
          <PickList
            label="After step"
            value={when.beat}
            options={others.map((id) => ({ value: id, text: id }))}
            onChange={(id) => set({ ...when, beat: id })}
          />
          <NumberField
            label="Seconds after it"
            value={when.seconds}
            step={0.1}
            unit="s"
            onNumber={(seconds) => set({ ...when, seconds })}
          />
        </>
      )}
    </fieldset>
  );
}

// The man of whom such a thing can be waited for: the last one of the other steps who is told so.
function likelyMan(play: Play, beat: Beat, kind: string): SpotId | undefined {
  const actions = play.beats.filter(({ id }) => id !== beat.id).flatMap((other) => other.actions);
  if (kind === 'arrival')
    return actions.filter((action) => action.kind === 'run' || action.kind === 'carry').at(-1)?.by;
  const thrown = actions.filter((action) => action.kind === 'pass').at(-1);
  if (thrown === undefined) return undefined;
  return kind === 'catch' ? thrown.to : kind === 'pass' ? thrown.by : undefined;
}

function manOf(when: Trigger): SpotId | undefined {
  switch (when.kind) {
    case 'catch':
      return when.by;
    case 'pass':
      return when.from;
    case 'arrival':
      return when.who;
    case 'start':
    case 'call':
      return undefined;
    default:
      return exhaustive(when);
  }
}

function triggerOf(kind: string, spot: SpotId, beat: string): Trigger {
  switch (kind) {
    case 'catch':
      return { kind, by: spot };
    case 'pass':
      return { kind, from: spot };
    case 'arrival':
      return { kind, who: spot };
    case 'call':
      return { kind, beat, seconds: 1 };
    default:
      return { kind: 'start' };
  }
}

function withMan(when: Trigger, spot: SpotId): Trigger {
  return triggerOf(when.kind, spot, '');
}

function exhaustive(when: never): never {
  throw new TypeError(`unknown trigger: ${JSON.stringify(when)}`);
}
