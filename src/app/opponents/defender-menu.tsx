import { Popover } from 'radix-ui';
import { type ReactNode, useState } from 'react';
import {
  forgetUnknownMen,
  removeDefender,
  renameDefender,
  type SchemeEntry,
  setShortStick,
} from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import { Segments } from '../controls/segments.tsx';
import { RenameField } from '../play/rename-field.tsx';
import styles from './defender-menu.module.css';
import { defenderWords } from './defender-words.ts';
import { andThen, useApply } from './use-apply.ts';

/** The head of a column: a defender's name, and what can be said of him. */
export function DefenderMenu({ scheme, man }: { readonly scheme: SchemeEntry; readonly man: string }): ReactNode {
  const apply = useApply();
  const [open, setOpen] = useState(false);
  const { id, shortSticks = [], men } = scheme;
  const isShort = shortSticks.includes(man);
  const words = defenderWords(men[man] ?? [0, 0]);
  return (
    <Popover.Root open={open} onOpenChange={setOpen}>
      <Popover.Trigger asChild>
        <Button
          tone="plain"
          className={styles.man}
          aria-label={`Defender ${man}, ${words}, ${isShort ? 'short stick' : 'pole'}`}
        >
          {man}
          <small className={styles.stick}>{isShort ? 'short' : 'pole'}</small>
        </Button>
      </Popover.Trigger>
      <Popover.Portal>
        <Popover.Content className={styles.card} sideOffset={4} collisionPadding={8} aria-label={`Defender ${man}`}>
          <RenameField
            label="Called"
            value={man}
            onRename={(name) => {
              const done = apply(`call ${man} otherwise`, (book) =>
                andThen(renameDefender(book, id, man, name), forgetUnknownMen),
              );
              if (done !== undefined) setOpen(false);
            }}
          />
          <Segments
            label="What he carries"
            value={isShort ? 'short' : 'pole'}
            options={[
              { value: 'short', text: 'Short stick' },
              { value: 'pole', text: 'Pole' },
            ]}
            onChange={(stick) => apply(`stick of ${man}`, (book) => setShortStick(book, id, man, stick === 'short'))}
          />
          <p className={styles.about}>At home {words}. Drag him on the field under Homes.</p>
          <Button
            tone="risky"
            onClick={() => {
              setOpen(false);
              apply(`take out ${man}`, (book) => andThen(removeDefender(book, id, man), forgetUnknownMen));
            }}
          >
            Take {man} out
          </Button>
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
