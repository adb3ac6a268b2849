import { type ReactNode, useMemo, useState } from 'react';
import type { Opponent, Playbook } from '../../playbook/index.ts';
import { usualScoutSchemes } from '../../teach/index.ts';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { readPlayOf } from '../play/play-reading.ts';
import { usePlaybook } from '../shell/desk.tsx';
import styles from './find-out.module.css';
import { ManDownPanel } from './man-down-panel.tsx';
import { ProbePanel } from './probe-panel.tsx';

/** How to find out what an opponent plays, and what to play against his own man-up. */
export default function FindOut({ opponent }: { readonly opponent: Opponent }): ReactNode {
  const playbook = usePlaybook();
  const plays = useMemo(() => wholePlays(playbook), [playbook]);
  const schemes = useMemo(() => usualScoutSchemes(playbook, opponent), [playbook, opponent]);
  const [chosen, setChosen] = useState<string>();
  const play = plays.find(({ id }) => id === chosen) ?? plays[0];
  if (play === undefined) {
    return (
      <section className={panel.panel} aria-label="Nothing to try">
        <p className={panel.quiet}>
          This is worked out from the plays of the playbook, and none of them can be played yet. Write one in the Play
          place, or mend what it says there.
        </p>
      </section>
    );
  }
  return (
    <div className={styles.page}>
      <PickList
        label="Set on the field: that of"
        value={play.id}
        options={plays.map(({ id, name, set }) => ({ value: id, text: `${name}, ${set}` }))}
        onChange={setChosen}
      />
      <ProbePanel
        playbook={playbook}
        question={{ play: play.id, side: 'right', level: null, schemes }}
        plays={plays}
        opponent={opponent}
      />
      <ManDownPanel playbook={playbook} play={play} opponent={opponent} schemes={schemes.map(({ id }) => id)} />
    </div>
  );
}

function wholePlays({ plays, ...standing }: Playbook): Playbook['plays'] {
  return plays.filter((play) => play.archived !== true && readPlayOf({ ...standing, plays: [] }, play).isWhole);
}
