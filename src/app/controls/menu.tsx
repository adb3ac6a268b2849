import { cloneElement, lazy, type ReactElement, type ReactNode, Suspense, useState } from 'react';

export interface MenuItem {
  readonly text: string;
  readonly onChoose: () => void;
  readonly disabled?: boolean;
  readonly tone?: 'risky';
  /** A line above it: what follows is of another kind. */
  readonly apart?: boolean;
}

export interface MenuProps {
  /** The button that opens it. */
  readonly trigger: ReactElement<TriggerProps>;
  readonly items: readonly MenuItem[];
}

interface TriggerProps {
  readonly onClick?: () => void;
  readonly onPointerEnter?: () => void;
  readonly onFocus?: () => void;
  readonly 'aria-haspopup'?: 'menu';
  readonly 'aria-expanded'?: boolean;
}

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
