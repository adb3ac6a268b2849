import { type ReactNode, useMemo } from 'react';
import { sets as builtInSets, type Play } from '../../engine/index.ts';
import {
  changeSet,
  lineUpFor,
  moveSpot,
  type Player,
  resetSpot,
  setReset,
  setRestart,
  setStartBall,
} from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import styles from './step-panel.module.css';
import type { PlayEditor } from './use-play-editor.ts';

/** The set before anything happens: who stands where, who has the ball, and what the unit does when the play cannot go on. */
export function SetPanel({ editor, play }: { readonly editor: PlayEditor; readonly play: Play }): ReactNode {
  const playbook = usePlaybook();
  const { entry, apply } = editor;
  const men = useMemo(() => menAt(playbook, play), [playbook, play]);
  const { restart } = play.start;
  const restartAt = (x: number, y: number): void => {
    apply('move the restart', (before, ground) => setRestart(before, ground, { x, y }));
  };
  const spots = play.spots.map(({ id }) => ({ value: id, text: id }));
  const own = playbook.sets ?? [];
  const knownSets = [
    ...own.map(({ id, name }) => ({ value: id, text: name })),
    ...Object.values(builtInSets).map(({ id, name }) => ({ value: id, text: name })),
  ];
  const setChoices = knownSets.some(({ value }) => value === entry.set)
    ? knownSets
    : [{ value: entry.set, text: entry.set }, ...knownSets];
  return (
    <section className={styles.panel} aria-label="The set">
      <PickList
        label="It starts from"
        value={entry.set}
        options={setChoices}
        onChange={(set) => apply('start from another set', (before, ground) => changeSet(before, ground, set))}
      />
      <ul className={styles.rows} aria-label="Where they stand">
        {play.spots.map((spot) => {
          const move = (x: number, y: number): void => {
            apply(`move ${spot.id}`, (before, ground) => moveSpot(before, ground, spot.id, { x, y }));
          };
          return (
            <li key={spot.id} className={styles.row}>
              <span className={styles.words}>
                <strong>{spot.id}</strong> <span className={styles.empty}>{manWords(men.get(spot.id))}</span>
              </span>
              <NumberField
                label={`${spot.id}: yards right of the goal`}
                value={spot.at.x}
                step={0.5}
                unit="x"
                onNumber={(x) => move(x, spot.at.y)}
              />
              <NumberField
                label={`${spot.id}: yards in front of the goal`}
                value={spot.at.y}
                step={0.5}
                unit="y"
                onNumber={(y) => move(spot.at.x, y)}
              />
              {entry.spots?.[spot.id] !== undefined && (
                <Button
                  tone="plain"
                  onClick={() => apply(`put ${spot.id} back`, (before) => resetSpot(before, spot.id))}
                >
                  Back
                </Button>
              )}
            </li>
          );
        })}
      </ul>
      <PickList
        label="Has the ball when the set is up"
        value={entry.start.ball}
        options={spots}
        onChange={(ball) => apply(`begin with ${ball}`, (before, ground) => setStartBall(before, ground, ball))}
      />
      <div className={styles.row}>
        <span className={styles.words}>Restart after the whistle</span>
        <NumberField
          label="Restart: yards right of the goal"
          value={restart.x}
          step={0.5}
          unit="x"
          onNumber={(x) => restartAt(x, restart.y)}
        />
        <NumberField
          label="Restart: yards in front of the goal"
          value={restart.y}
          step={0.5}
          unit="y"
          onNumber={(y) => restartAt(restart.x, y)}
        />
      </div>
      <PickList
        label="When the play cannot go on, the ball goes to"
        value={entry.reset.ball}
        options={spots}
        onChange={(ball) =>
          apply('change the reset', (before, ground) => setReset(before, ground, { ...before.reset, ball }))
        }
      />
      <PickList
        label="and then"
        value={entry.reset.then}
        options={[
          { value: 'again', text: 'run the play again' },
          { value: 'free', text: 'play what comes open' },
        ]}
        onChange={(then) =>
          apply('change the reset', (before, ground) =>
            setReset(before, ground, { ...before.reset, then: then === 'free' ? 'free' : 'again' }),
          )
        }
      />
    </section>
  );
}

/** Who stands at each spot when everybody is there; nobody when there are too few. */
function menAt(playbook: Parameters<typeof lineUpFor>[0], play: Play): ReadonlyMap<string, Player> {
  const { players } = lineUpFor(playbook, play);
  return new Map(play.spots.flatMap(({ id }, index) => (players[index] === undefined ? [] : [[id, players[index]]])));
}

function manWords(man: Player | undefined): string {
  return man === undefined ? '' : `${man.number} ${man.name}`;
}
