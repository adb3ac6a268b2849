import { DropdownMenu } from 'radix-ui';
import type { ReactNode } from 'react';
import styles from './menu.module.css';

export interface MenuItem {
  readonly text: string;
  readonly onChoose: () => void;
  readonly disabled?: boolean;
  readonly tone?: 'risky';
  /** A line above it: what follows is of another kind. */
  readonly apart?: boolean;
}

/** A button that opens a list of things to do. `trigger` is the button. */
export function Menu({
  trigger,
  items,
}: {
  readonly trigger: ReactNode;
  readonly items: readonly MenuItem[];
}): ReactNode {
  return (
    <DropdownMenu.Root modal={false}>
      <DropdownMenu.Trigger asChild>{trigger}</DropdownMenu.Trigger>
      <DropdownMenu.Portal>
        <DropdownMenu.Content className={styles.list} align="end" sideOffset={4} collisionPadding={8}>
          {items.map((item) => (
            <DropdownMenu.Item
              key={item.text}
              className={[
                styles.item,
                item.apart === true ? styles.apart : '',
                item.tone === 'risky' ? styles.risky : '',
              ].join(' ')}
              disabled={item.disabled === true}
              onSelect={item.onChoose}
            >
              {item.text}
            </DropdownMenu.Item>
          ))}
        </DropdownMenu.Content>
      </DropdownMenu.Portal>
    </DropdownMenu.Root>
  );
}
