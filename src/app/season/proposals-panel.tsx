import { type ReactNode, useMemo } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import { type Proposal, proposeGrades, proposeSchemes } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { useDesk } from '../shell/desk.tsx';
import styles from './season.module.css';
import { useSeason } from './season-state.ts';

/** What all chances suggest to change in the playbook; nothing changes until the coach accepts it. */
export function ProposalsPanel({ playbook }: { readonly playbook: Playbook }): ReactNode {
  const proposals = useMemo(() => [...proposeSchemes(playbook), ...proposeGrades(playbook)], [playbook]);
  return (
    <section className={panel.panel} aria-label="What may be changed">
      <h2 className={panel.title}>What may be changed</h2>
      <p className={panel.quiet}>
        What the chances of the whole season suggest for opponents and grades. Nothing changes until you accept it, and
        Undo takes it back.
      </p>
      {proposals.length === 0 ? (
        <p>Nothing yet: write down what opponents played, and who took the last shot, goal or not.</p>
      ) : (
        <ul className={styles.proposals}>
          {proposals.map((proposal) => (
            <Offer key={proposal.id} proposal={proposal} />
          ))}
        </ul>
      )}
    </section>
  );
}

function Offer({ proposal: { title, says, changes, edit } }: { readonly proposal: Proposal }): ReactNode {
  const { store } = useDesk();
  const change = useSeason((state) => state.change);
  const accept = (): void => {
    const result = edit?.(store.playbook);
    if (result === undefined) return;
    if (result.kind === 'edited') store.edit(`accepting what the season says of ${title}`, () => result.playbook);
    const said = result.kind === 'refused' ? result.reason : `Accepted: ${title}. Undo takes it back.`;
    change({ said, saidOf: store.playbook });
  };
  return (
    <li className={styles.proposal}>
      <h3>{title}</h3>
      <p>{says}</p>
      {changes.length > 0 && (
        <ul>
          {changes.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      {edit !== undefined && (
        <div className={panel.tools}>
          <Button aria-label={`Accept: ${title}`} onClick={accept}>
            Accept
          </Button>
        </div>
      )}
    </li>
  );
}
