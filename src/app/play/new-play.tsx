import { type ReactNode, useEffect, useRef, useState } from 'react';
import { sets as builtInSets, type Point } from '../../engine/index.ts';
import { newPlay, spotsOfSet } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { TextField } from '../controls/text-field.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { goTo } from '../shell/place.ts';
import styles from './new-play.module.css';
import { useScreen } from './screen-state.ts';

/** A name and a set to start from: nothing else is needed to begin. */
export default function NewPlay({ onClose }: { readonly onClose: () => void }): ReactNode {
  const { store } = useDesk();
  const playbook = usePlaybook();
  const change = useScreen((state) => state.change);
  const [name, setName] = useState('');
  const [set, setSet] = useState('2-3-1');
  const [problem, setProblem] = useState<string>();
  const choices = [
    ...(playbook.sets ?? []).map(({ id, name: own, notes }) => ({ id, name: own, about: notes ?? 'your own set' })),
    ...Object.values(builtInSets).map(({ id, name: title, summary }) => ({ id, name: title, about: summary })),
  ];
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.focus(), []);
  const make = (): void => {
    const made = newPlay(playbook, name, set);
    if (made.kind === 'refused') {
      setProblem(made.reason);
      return;
    }
    store.edit(`new play ${name.trim()}`, () => made.playbook);
    change({ play: made.id, step: 1, script: 'main', selected: undefined, mode: 'write', notice: undefined });
    if (made.id !== undefined) goTo({ kind: 'play', play: made.id });
    setName('');
    setProblem(undefined);
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title="New play">
      <form
        ref={form}
        className={styles.form}
        onSubmit={(event) => {
          event.preventDefault();
          make();
        }}
      >
        <div className={styles.top}>
          <TextField
            label="What you call it"
            value={name}
            maxLength={60}
            onText={(text) => {
              setName(text);
              setProblem(undefined);
            }}
            {...(problem !== undefined && { problem })}
          />
          <Button type="submit" tone="main">
            Make the play
          </Button>
        </div>
        <fieldset className={styles.sets}>
          <legend className={styles.legend}>It starts from</legend>
          {choices.map((choice) => (
            <label key={choice.id} className={styles.set}>
              <input
                type="radio"
                name="set"
                value={choice.id}
                checked={choice.id === set}
                onChange={() => setSet(choice.id)}
              />
              <SetPicture places={(spotsOfSet(playbook, choice.id) ?? []).map(({ at }) => at)} />
              <span>
                <span className={styles.name}>{choice.name}</span>
                <span className={styles.about}>{choice.about}</span>
              </span>
            </label>
          ))}
        </fieldset>
      </form>
    </Dialog>
  );
}

/** Where the six of a set stand, as small as a stamp. */
function SetPicture({ places }: { readonly places: readonly Point[] }): ReactNode {
  return (
    <svg className={styles.picture} viewBox="-14 -9 28 27" aria-hidden="true">
      <circle r="3" className={styles.crease} />
      <path d="M-1 0H1" className={styles.goal} />
      {places.map(({ x, y }) => (
        <circle key={`${x},${y}`} cx={x} cy={y} r="1.5" className={styles.man} />
      ))}
    </svg>
  );
}
