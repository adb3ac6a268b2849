import type { ReactElement } from 'react';

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
