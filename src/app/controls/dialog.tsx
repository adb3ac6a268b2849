import { X } from 'lucide-react';
import { Dialog as Parts } from 'radix-ui';
import type { ReactNode } from 'react';
import { Button } from './button.tsx';
import styles from './dialog.module.css';

export interface DialogProps {
  readonly open: boolean;
  readonly onClose: () => void;
  readonly title: string;
  /** What it is about, in a sentence under the title. */
  readonly about?: string;
  /**
   * `side` comes in from the left edge over the whole height: for lists. `sheet` from the right, the whole screen of a phone: for all of one thing.
   * `wide` in the middle, for tables.
   */
  readonly form?: 'middle' | 'side' | 'sheet' | 'wide';
  readonly children: ReactNode;
}

/** A window over the page. Escape and the cross close it; focus stays inside and goes back where it was. */
export function Dialog({ open, onClose, title, about, form = 'middle', children }: DialogProps): ReactNode {
  return (
    <Parts.Root open={open} onOpenChange={(isOpen) => (isOpen ? undefined : onClose())}>
      <Parts.Portal>
        <Parts.Overlay className={styles.shade} />
        <Parts.Content className={styles[form]} {...(about === undefined && { 'aria-describedby': undefined })}>
          <header className={styles.head}>
            <Parts.Title className={styles.title}>{title}</Parts.Title>
            <Parts.Close asChild>
              <Button tone="plain" icon={<X aria-hidden="true" />} aria-label="Close" />
            </Parts.Close>
          </header>
          {about !== undefined && <Parts.Description className={styles.about}>{about}</Parts.Description>}
          <div className={styles.body}>{children}</div>
        </Parts.Content>
      </Parts.Portal>
    </Parts.Root>
  );
}
