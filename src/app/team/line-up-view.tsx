import type { ReactNode } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { useDesk, usePlaybook } from '../shell/desk.tsx';
import { addressOf } from '../shell/place.ts';
import { DepthSpots } from './depth-spots.tsx';
import styles from './line-up.module.css';
import { fieldMen, manText } from './line-up-words.ts';
import { absentColumn } from './roster-columns.ts';
import { editPlayer } from './roster-edits.ts';
import { SideCard } from './side-card.tsx';
import { useTeam } from './team-state.ts';
import { useAbsenceCosts } from './use-absence-costs.ts';
import { useLineUps } from './use-line-ups.ts';

/** Who stands where in a play, from both sides: the coach's order, the best six, and what each absence costs. */
export function LineUpView(): ReactNode {
  const playbook = usePlaybook();
  const change = useTeam((state) => state.change);
  const chosen = useLineUps(playbook);
  const costs = useAbsenceCosts(chosen);
  if (chosen === undefined) {
    return (
      <p className={styles.empty}>
        There is no play yet whose spots could be filled.{' '}
        <a href={addressOf({ kind: 'play', play: undefined })}>Write one</a>, then come back.
      </p>
    );
  }
  const { play, sides, spotsOf, twice } = chosen;
  return (
    <section className={styles.view} aria-label="Spots and absences">
      <div className={styles.tools}>
        <PickList
          label="Play"
          value={play.id}
          options={playbook.plays.map(({ id, name, archived }) => ({
            value: id,
            text: archived === true ? `${name} (archived)` : name,
          }))}
          onChange={(id) => change({ play: id })}
        />
        <Absences playbook={playbook} />
      </div>
      {twice.map((number) => (
        <p key={number} className={styles.warning}>
          Two men wear {number}: only the first of them is placed until one has another number.
        </p>
      ))}
      <div className={styles.sides}>
        {sides.map((lineUp) => (
          <SideCard key={lineUp.side} playbook={playbook} lineUp={lineUp} spots={spotsOf(lineUp.side)} costs={costs} />
        ))}
      </div>
      <p className={styles.unit}>
        <b>Points</b> are grades: how far a man stands above the usual 3, times what the spot asks for, 0 to 3, in
        feeding, shooting, finishing inside and handling. The wrong hand costs 1.5 points for each that the spot asks in
        shooting and feeding, a pole 1.5 of each skill. They rank men for a spot, and are not goals:{' '}
        <b>goals a chance</b> are those of the six without him less those of the six with him, played against the usual
        schemes with the same luck. Readings do not count in them: for the best six a man’s grades say what he can do.
      </p>
      <DepthSpots playbook={playbook} spots={spotsOf('right')} mirrored={spotsOf('left')} />
    </section>
  );
}

/** Who is here today: one press, and the six change at once. */
function Absences({ playbook }: { readonly playbook: Playbook }): ReactNode {
  const { store } = useDesk();
  const { roster } = playbook.team;
  return (
    <fieldset className={styles.absences}>
      <legend>Absent today: press whoever is missing</legend>
      {fieldMen(roster).map((player) => {
        const name = manText(player.number, roster);
        return (
          <Button
            key={player.number}
            className={styles.chip ?? ''}
            pressed={player.absent === true}
            aria-label={`${name} is absent today`}
            onClick={() =>
              store.edit(`${player.absent === true ? 'note the return' : 'note the absence'} of ${name}`, (current) =>
                editPlayer(current, current.team.roster.indexOf(player), (man) =>
                  absentColumn.put(man, man.absent !== true),
                ),
              )
            }
          >
            <b>{player.number}</b> {name}
          </Button>
        );
      })}
    </fieldset>
  );
}
