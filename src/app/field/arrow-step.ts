import type { Point } from '../../engine/index.ts';

/** One press of an arrow key, and one with Shift. Yards. */
const plainStep = 0.5;
const fineStep = 0.1;

/** How far a key moves what it moves on the field, yards; undefined for other keys. Down the page is toward midfield. */
export function arrowStep({ key, shiftKey }: { readonly key: string; readonly shiftKey: boolean }): Point | undefined {
  const length = shiftKey ? fineStep : plainStep;
  switch (key) {
    case 'ArrowLeft':
      return { x: -length, y: 0 };
    case 'ArrowRight':
      return { x: length, y: 0 };
    case 'ArrowUp':
      return { x: 0, y: -length };
    case 'ArrowDown':
      return { x: 0, y: length };
    default:
      return undefined;
  }
}
