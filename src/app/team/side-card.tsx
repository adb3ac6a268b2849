import { Pin } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Spot } from '../../engine/index.ts';
import { type Absence, type Playbook, type SideLineUp, type SpotMan, setDepth } from '../../playbook/index.ts';
import type { SideAnswer } from '../answers/side-answers.ts';
import { Button } from '../controls/button.tsx';
import { useDesk } from '../shell/desk.tsx';
import { AbsenceCost } from './absence-cost.tsx';
import { absenceId } from './absence-questions.ts';
import styles from './line-up.module.css';
import { LineUpField } from './line-up-field.tsx';
import { absenceSentence, lossText, manText, pointsText, reasonsText } from './line-up-words.ts';
import { orderWith } from './roster-edits.ts';

export interface SideCardProps {
  readonly playbook: Playbook;
  readonly lineUp: SideLineUp;
  readonly spots: readonly Spot[];
  /** What absences cost in goals, by `absenceId`, as far as it is known. */
  readonly costs: ReadonlyMap<string, SideAnswer>;
}

/** The best six for one side of a play: where they stand, why, and what is lost without each. */
export function SideCard({ playbook, lineUp, spots, costs }: SideCardProps): ReactNode {
  const title = lineUp.side === 'right' ? 'As it is written' : 'From the other side';
  return (
    <section className={styles.side} aria-label={`Best six, ${title.toLowerCase()}`}>
      <header className={styles.sideHead}>
        <h2>{title}</h2>
        {lineUp.kind === 'lineUp' && <span className={styles.worth}>{pointsText(lineUp.worth)} together</span>}
      </header>
      {lineUp.kind === 'unread' && (
        <p>This play cannot be read as it stands. Fix it in the Play place, then its spots can be filled.</p>
      )}
      {lineUp.kind === 'short' && (
        <p>
          {lineUp.missing === 1 ? 'One more field player is' : `${lineUp.missing} more field players are`} needed for
          six: add them to the roster, or have somebody back who is absent.
        </p>
      )}
      {lineUp.kind === 'lineUp' && (
        <>
          <LineUpField playbook={playbook} spots={spots} men={lineUp.men} />
          <ul className={styles.men}>
            {lineUp.men.map((man, i) => (
              <SpotRow
                key={man.spot}
                playbook={playbook}
                man={man}
                absence={lineUp.absences[i]}
                cost={costs.get(absenceId(lineUp.side, man.number))}
              />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

interface SpotRowProps {
  readonly playbook: Playbook;
  readonly man: SpotMan;
  readonly absence: Absence | undefined;
  readonly cost: SideAnswer | undefined;
}

function SpotRow({ playbook, man, absence, cost }: SpotRowProps): ReactNode {
  const { store } = useDesk();
  const { roster, depth } = playbook.team;
  const name = manText(man.number, roster);
  const fix = (): void => {
    const order = orderWith(depth?.[man.spot] ?? [], man.number, man.pinned ? undefined : 0);
    store.edit(man.pinned ? `let ${name} go from ${man.spot}` : `fix ${name} at ${man.spot}`, (current) => {
      const edit = setDepth(current, man.spot, order);
      return edit.kind === 'refused' ? current : edit.playbook;
    });
  };
  return (
    <li className={styles.man}>
      <span className={styles.spot}>{man.spot}</span>
      <div className={styles.who}>
        <p>
          <b>
            {man.number} {name}
          </b>{' '}
          <span className={styles.quiet}>{reasonsText(man)}</span>
        </p>
        {absence !== undefined && (
          <p className={styles.quiet}>
            Without him: {absenceSentence(absence, roster)} <b className={styles.loss}>{lossText(absence.loss)}</b>{' '}
            <AbsenceCost answer={cost} />
          </p>
        )}
      </div>
      <span className={styles.points}>{pointsText(man.worth)}</span>
      <Button
        tone="plain"
        pressed={man.pinned}
        aria-label={man.pinned ? `${name} is fixed at ${man.spot}` : `Fix ${name} at ${man.spot}`}
        title={
          man.pinned ? 'Fixed here: press to let the best six decide' : 'Fix him here, in every play with this spot'
        }
        icon={<Pin aria-hidden="true" />}
        onClick={fix}
      />
    </li>
  );
}
