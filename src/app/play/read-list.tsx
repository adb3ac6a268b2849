import { X } from 'lucide-react';
import { type ReactNode, useState } from 'react';
import type { Beat, Cue, Play, Read, SpotId } from '../../engine/index.ts';
import { addRead, removeRead } from '../../playbook/index.ts';
import { readWords } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { useScreen } from './screen-state.ts';
import styles from './step-panel.module.css';
import type { PlayEditor } from './use-play-editor.ts';

export interface ReadListProps {
  readonly editor: PlayEditor;
  readonly play: Play;
  readonly beat: Beat;
  readonly spots: readonly SpotId[];
  /** Who has the ball when the step starts. */
  readonly holder: SpotId;
}

/** What the man with the ball has been taught to look for in this step, in the order in which he looks. */
export function ReadList({ editor, play, beat, spots, holder }: ReadListProps): ReactNode {
  const script = useScreen((state) => state.script);
  const here = play.reads
    .map((read, index) => ({ read, index }))
    .filter(({ read }) => read.during === undefined || read.during === beat.id);
  return (
    <section aria-label="Reads taught in this step">
      <h3 className={styles.title}>Reads</h3>
      <ol className={styles.rows}>
        {here.map(({ read, index }) => (
          <li key={JSON.stringify(read)} className={styles.row}>
            <span className={styles.words}>
              {readWords(read)}
              {read.during === undefined && ' (in every step)'}
            </span>
            <Button
              tone="plain"
              aria-label={`Take out the read: ${readWords(read)}`}
              icon={<X aria-hidden="true" />}
              onClick={() => editor.apply('take out a read', (entry) => removeRead(entry, script, index))}
            />
          </li>
        ))}
        {here.length === 0 && <li className={styles.empty}>None taught here.</li>}
      </ol>
      <AddRead editor={editor} beat={beat} spots={spots} holder={holder} />
    </section>
  );
}

/** In the order in which they are offered: those of a mate, who is chosen beside them, come first. */
const cueTexts: Readonly<Record<Cue['kind'], string>> = {
  open: 'open:',
  left: 'left alone:',
  laneTaken: 'a defender in the lane to:',
  iAmFree: 'he is free',
  iAmPressed: 'he is pressed',
  nextSteps: 'the next defender steps to him',
  myManLeaves: 'his man drops off him',
  creaseUp: 'the crease defender is pulled up',
  farLowLooksAway: 'the far low defender looks away',
  farLowCrosses: 'the far low defender runs across',
};
const cueChoices = (Object.keys(cueTexts) as Cue['kind'][]).map((kind) => ({ value: kind, text: cueTexts[kind] }));
const throwKinds = ['pass', 'skip', 'feed', 'shoot', 'fake', 'step in', 'reset'] as const;

function AddRead({ editor, beat, spots, holder }: Omit<ReadListProps, 'play'>): ReactNode {
  const [carrier, setCarrier] = useState(holder);
  const [cue, setCue] = useState<Cue['kind']>('open');
  const [who, setWho] = useState(spots[1] ?? '');
  const [then, setThen] = useState<(typeof throwKinds)[number]>('pass');
  const script = useScreen((state) => state.script);
  const others = spots.filter((spot) => spot !== carrier);
  const target = others.includes(who) ? who : (others[0] ?? '');
  const namesMan = 'who' in cueOf(cue, target) || then !== 'shoot';
  return (
    <form
      className={styles.form}
      aria-label="Teach a read"
      onSubmit={(event) => {
        event.preventDefault();
        const read: Read = {
          carrier,
          during: beat.id,
          cues: [cueOf(cue, target)],
          then: thenOf(then, carrier, target),
        };
        editor.apply(`teach ${carrier} a read`, (entry, ground) => addRead(entry, ground, script, read));
      }}
    >
      <PickList label="Who has it" value={carrier} options={spots.map(asChoice)} onChange={setCarrier} />
      <div className={styles.wholeRow}>
        <PickList
          label="If"
          value={cue}
          options={cueChoices}
          onChange={(kind) => setCue(cueChoices.find(({ value }) => value === kind)?.value ?? 'open')}
        />
      </div>
      {namesMan && <PickList label="Man" value={target} options={others.map(asChoice)} onChange={setWho} />}
      <PickList
        label="Then"
        value={then}
        options={throwKinds.map((kind) => ({ value: kind, text: kind }))}
        onChange={(kind) => setThen(throwKinds.find((each) => each === kind) ?? 'pass')}
      />
      <Button type="submit">Teach</Button>
    </form>
  );
}

function asChoice(spot: SpotId): { readonly value: string; readonly text: string } {
  return { value: spot, text: spot };
}

function cueOf(kind: Cue['kind'], who: SpotId): Cue {
  switch (kind) {
    case 'open':
    case 'left':
    case 'laneTaken':
      return { kind, who };
    default:
      return { kind };
  }
}

function thenOf(kind: (typeof throwKinds)[number], by: SpotId, to: SpotId): Read['then'] {
  switch (kind) {
    case 'shoot':
      return { kind: 'shot', by };
    case 'step in':
      return { kind: 'runIn', by };
    case 'reset':
      return { kind: 'reset', by };
    case 'fake':
      return { kind: 'fake', by, toward: to };
    case 'pass':
      return { kind: 'pass', by, to, style: 'adjacent' };
    case 'skip':
    case 'feed':
      return { kind: 'pass', by, to, style: kind };
    default:
      return exhaustive(kind);
  }
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
