import { EllipsisVertical } from 'lucide-react';
import type { ReactNode } from 'react';
import {
  addDefender,
  copyScheme,
  forgetUnknownMen,
  removeScheme,
  renameScheme,
  type SchemeEntry,
  setExtends,
} from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Menu } from '../controls/menu.tsx';
import { NumberField } from '../controls/number-field.tsx';
import { RenameField } from '../play/rename-field.tsx';
import { usePlaybook } from '../shell/desk.tsx';
import { addressOf, goTo } from '../shell/place.ts';
import styles from './scheme-head.module.css';
import { spareDefender } from './spare-defender.ts';
import { andThen, useApply } from './use-apply.ts';
import { useDelete } from './use-delete.ts';

/** How far out the ball is met when a scheme does not say, yd: as the engine has it. */
const usualExtends = 12;

/** Name of an own scheme, who plays it, how far out it goes, and what can be done with the whole of it. */
export function SchemeHead({ scheme }: { readonly scheme: SchemeEntry }): ReactNode {
  const playbook = usePlaybook();
  const apply = useApply();
  const remove = useDelete();
  const { id, name } = scheme;
  const players = (playbook.opponents ?? []).filter((one) => Object.hasOwn(one.schemes ?? {}, id));
  const spare = spareDefender(scheme.men);
  return (
    <header className={styles.head}>
      <h2 className="spoken">{name}</h2>
      <div className={styles.name}>
        <RenameField
          label="Scheme"
          value={name}
          onRename={(next) => apply('rename the scheme', (book) => renameScheme(book, id, next))}
        />
        <Menu
          trigger={
            <Button tone="plain" aria-label={`More for ${name}`} icon={<EllipsisVertical aria-hidden="true" />} />
          }
          items={[
            {
              text: 'Add a defender',
              disabled: spare === undefined,
              onChoose: () => {
                if (spare !== undefined)
                  apply(`add ${spare.name}`, (book) => addDefender(book, id, spare.name, spare.at));
              },
            },
            {
              text: 'Copy it',
              onChoose: () => {
                const made = apply(`copy ${name}`, (book) => copyScheme(book, id));
                if (made?.id !== undefined) goTo({ kind: 'opponents', opponent: made.id });
              },
            },
            {
              text: 'Delete this scheme',
              tone: 'risky',
              apart: true,
              onChoose: () => remove(name, (book) => andThen(removeScheme(book, id), forgetUnknownMen)),
            },
          ]}
        />
      </div>
      <span className={styles.extends}>
        <NumberField
          label="How far from the goal the ball is met, yards"
          unit="Meets the ball at"
          value={scheme.extends ?? usualExtends}
          step={1}
          onNumber={(yards) => apply('how far out they go', (book) => setExtends(book, id, yards))}
        />
        <span className={styles.quiet}>yd from the goal</span>
      </span>
      {players.length > 0 && (
        <p className={styles.players}>
          Played by{' '}
          {players.map((one, i) => (
            <span key={one.id}>
              {i > 0 && ', '}
              <a href={addressOf({ kind: 'opponents', opponent: one.id })}>{one.name}</a>
            </span>
          ))}
        </p>
      )}
    </header>
  );
}
