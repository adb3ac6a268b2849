import { type ReactNode, useState } from 'react';
import { addOpponent } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { TextField } from '../controls/text-field.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { addressOf, goTo } from '../shell/place.ts';
import { NewScheme } from './new-scheme.tsx';
import styles from './opponent-list.module.css';
import { schemeInfo } from './scheme-info.ts';
import { sharesOf, shareText } from './shares.ts';
import { useApply } from './use-apply.ts';

/** All opponents and all own schemes, and the way to new ones. */
export function OpponentList({ current }: { readonly current: string | undefined }): ReactNode {
  const playbook = usePlaybook();
  const apply = useApply();
  const [name, setName] = useState('');
  const [making, setMaking] = useState(false);
  const { opponents = [], schemes = [] } = playbook;
  const add = (): void => {
    const made = apply(`add the opponent ${name.trim()}`, (book) => addOpponent(book, name));
    if (made?.id === undefined) return;
    setName('');
    goTo({ kind: 'opponents', opponent: made.id });
  };
  const mixOf = (weights: Readonly<Record<string, number>> | undefined): string => {
    const parts = sharesOf(weights ?? {});
    if (parts.length === 0) return 'nothing known yet';
    return parts
      .map(({ scheme, share }) => `${schemeInfo(playbook, scheme)?.name ?? scheme} ${shareText(share)}`)
      .join(', ');
  };
  return (
    <nav className={styles.lists} aria-label="Opponents and own schemes">
      <h1 className={styles.title}>Opponents</h1>
      <form
        className={styles.add}
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <TextField label="Whom you play next" value={name} maxLength={80} onText={setName} />
        <Button type="submit" tone="main" disabled={name.trim() === ''}>
          Add
        </Button>
      </form>
      {opponents.length === 0 && (
        <p className={styles.none}>
          No opponent yet. Add one, say what you believe they play, and your plays are tried against it.
        </p>
      )}
      <ul className={styles.list}>
        {opponents.map((one) => (
          <Entry key={one.id} id={one.id} current={current} name={one.name} about={mixOf(one.schemes)} />
        ))}
      </ul>
      <h2 className={styles.title}>Schemes of your own</h2>
      {schemes.length === 0 && (
        <p className={styles.none}>
          None yet. When they do something that no scheme below does, write it down as a grid.
        </p>
      )}
      <ul className={styles.list}>
        {schemes.map((one) => (
          <Entry
            key={one.id}
            id={one.id}
            current={current}
            name={one.name}
            about={`${Object.keys(one.men).length} men, ball at ${one.rows.map(({ ball }) => ball).join(', ')}`}
          />
        ))}
      </ul>
      <Button onClick={() => setMaking(true)}>Write a scheme</Button>
      <NewScheme open={making} onClose={() => setMaking(false)} />
    </nav>
  );
}

function Entry({
  id,
  current,
  name,
  about,
}: {
  readonly id: string;
  readonly current: string | undefined;
  readonly name: string;
  readonly about: string;
}): ReactNode {
  return (
    <li>
      <a
        className={styles.entry}
        href={addressOf({ kind: 'opponents', opponent: id })}
        aria-current={id === current ? 'page' : undefined}
      >
        <span className={styles.name}>{name}</span>
        <span className={styles.about}>{about}</span>
      </a>
    </li>
  );
}
