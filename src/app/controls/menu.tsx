import { cloneElement, lazy, type ReactNode, Suspense, useState } from 'react';
import type { MenuProps } from './menu-item.ts';

const loadList = () => import('./menu-list.tsx');
const MenuList = lazy(loadList);

/** A button that opens a list of things to do. What it takes to draw the list is loaded as the button is reached for, not with the page. */
export function Menu({ trigger, items }: MenuProps): ReactNode {
  const [isWanted, setWanted] = useState(false);
  const reach = (): void => void loadList();
  const closed = cloneElement(trigger, {
    'aria-haspopup': 'menu',
    'aria-expanded': false,
    onClick: () => setWanted(true),
    onPointerEnter: reach,
    onFocus: reach,
  });
  if (!isWanted) return closed;
  return (
    <Suspense fallback={closed}>
      <MenuList trigger={trigger} items={items} />
    </Suspense>
  );
}
