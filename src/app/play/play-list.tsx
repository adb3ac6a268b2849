import { type ReactNode, useMemo, useState } from 'react';
import { type PlayEntry, searchPlays } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Dialog } from '../controls/dialog.tsx';
import { TextField } from '../controls/text-field.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { goTo } from '../shell/place.ts';
import styles from './play-list.module.css';
import { setName } from './set-name.ts';

export interface PlayListProps {
  readonly current: string | undefined;
  readonly onClose: () => void;
  readonly onNew: () => void;
}

/** All plays of the playbook, found by a word of their name, tags, set or notes. */
export default function PlayList({ current, onClose, onNew }: PlayListProps): ReactNode {
  const { plays, sets } = usePlaybook();
  const [query, setQuery] = useState('');
  const [withArchived, setWithArchived] = useState(false);
  const archived = plays.filter((play) => play.archived === true).length;
  const shown = useMemo(() => {
    const candidates = withArchived ? plays : plays.filter((play) => play.archived !== true);
    return query.trim() === '' ? candidates : searchPlays(candidates, sets ?? [], query).map(({ play }) => play);
  }, [plays, sets, query, withArchived]);
  const choose = (play: PlayEntry): void => {
    goTo({ kind: 'play', play: play.id });
    onClose();
  };
  return (
    <Dialog open onClose={onClose} title="Plays" form="side">
      <div className={styles.tools}>
        <TextField label="Find a play" type="search" value={query} onText={setQuery} />
        <Button tone="main" onClick={onNew}>
          New play
        </Button>
      </div>
      <ul className={styles.list}>
        {shown.map((play) => (
          <li key={play.id}>
            <button
              type="button"
              className={styles.play}
              aria-current={play.id === current ? 'true' : undefined}
              onClick={() => choose(play)}
            >
              <span className={styles.name}>{play.name}</span>
              <span className={styles.about}>
                {[setName(play.set, sets), ...(play.tags ?? []), ...(play.archived === true ? ['archived'] : [])].join(
                  ' · ',
                )}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {shown.length === 0 && (
        <p className={styles.none}>{plays.length === 0 ? 'No plays yet.' : `No play fits “${query}”.`}</p>
      )}
      {archived > 0 && (
        <label className={styles.archived}>
          <input type="checkbox" checked={withArchived} onChange={(event) => setWithArchived(event.target.checked)} />
          Show the {archived} that {archived === 1 ? 'is' : 'are'} archived
        </label>
      )}
    </Dialog>
  );
}
