import { type ReactNode, useState } from 'react';
import type { SpotId } from '../../engine/index.ts';
import { findBeat } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { TextField } from '../controls/text-field.tsx';
import { aimOf, ballVerbs, runVerbs, type Verb } from '../field/field-order.ts';
import { tellEdit } from '../field/order-edit.ts';
import styles from './step-panel.module.css';
import type { PlayEditor } from './use-play-editor.ts';

const verbs: readonly Verb[] = [...new Set<Verb>([...ballVerbs, ...runVerbs])];

export interface AddActionProps {
  readonly editor: PlayEditor;
  readonly beat: string;
  readonly spots: readonly SpotId[];
  /** Who has the ball when the step starts: most often it is he who is told something. */
  readonly holder: SpotId;
}

/** Tell a man something by choosing words: who, what, to whom or where. */
export function AddAction({ editor, beat, spots, holder }: AddActionProps): ReactNode {
  const [by, setBy] = useState(holder);
  const [verb, setVerb] = useState<Verb>('pass');
  const [on, setOn] = useState('');
  const [place, setPlace] = useState('');
  const aim = aimOf[verb];
  const others = spots.filter((spot) => spot !== by);
  const target = others.includes(on) ? on : (others[0] ?? '');
  const at = placeOfText(place);
  const needsPlace = aim === 'place' || aim === 'placeAndMan';
  if (findBeat(editor.entry, beat) === undefined) return null;
  return (
    <form
      className={styles.form}
      aria-label="Tell a man something"
      onSubmit={(event) => {
        event.preventDefault();
        const done = editor.apply(`tell ${by} to ${verb}`, (entry, ground) =>
          tellEdit(entry, ground, beat, {
            by,
            verb,
            at: needsPlace ? at : undefined,
            on: aim === 'place' ? undefined : target,
          }),
        );
        if (done !== undefined) setPlace('');
      }}
    >
      <PickList label="Who" value={by} options={spots.map((spot) => ({ value: spot, text: spot }))} onChange={setBy} />
      <PickList
        label="Does"
        value={verb}
        options={verbs.map((each) => ({ value: each, text: each }))}
        onChange={(chosen) => setVerb(verbs.find((each) => each === chosen) ?? 'pass')}
      />
      {(aim === 'man' || aim === 'placeAndMan') && (
        <PickList
          label="Whom"
          value={target}
          options={others.map((spot) => ({ value: spot, text: spot }))}
          onChange={setOn}
        />
      )}
      {needsPlace && (
        <TextField
          label="Where: x, y in yards"
          value={place}
          placeholder="3, 8"
          onText={setPlace}
          {...(place !== '' && at === undefined && { problem: 'Two numbers: right of the goal, in front of it.' })}
        />
      )}
      <Button type="submit" disabled={needsPlace && at === undefined}>
        Add
      </Button>
    </form>
  );
}

function placeOfText(text: string): { readonly x: number; readonly y: number } | undefined {
  const parts = text.split(/[,;\s]+/).filter((part) => part !== '');
  const [x, y] = parts.map(Number);
  return parts.length === 2 && Number.isFinite(x) && Number.isFinite(y) ? { x: x!, y: y! } : undefined;
}
