import { DropdownMenu } from 'radix-ui';
import type { ReactNode } from 'react';
import styles from './menu.module.css';
import type { MenuProps } from './menu-item.ts';

/** The list of a menu, open from the start: it is loaded when somebody first wants it. */
export default function MenuList({ trigger, items }: MenuProps): ReactNode {
  return (
    <DropdownMenu.Root modal={false} defaultOpen>
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
