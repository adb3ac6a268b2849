import { type KeyboardEvent, type ReactNode, useEffect, useRef } from 'react';
import { placeWords, pxPerYard, type View } from '../../render/index.ts';
import { arrowStep } from './arrow-step.ts';
import styles from './field-editor.module.css';
import { toBox } from './field-plane.ts';
import type { AimMark, ToolEvent } from './tool.ts';

export interface AimGripProps {
  readonly mark: AimMark;
  readonly view: View;
  readonly onTool: (event: ToolEvent) => void;
  /** The place is taken, or the aim given up: the focus goes elsewhere, because the mark will be gone. */
  readonly onDone: () => void;
}

/** Where a man is sent, for who points by keys: arrow keys move it, Enter takes its place, Escape gives it up. */
export function AimGrip({ mark, view, onTool, onDone }: AimGripProps): ReactNode {
  const grip = useRef<SVGGElement>(null);
  useEffect(() => {
    // Who chose the verb by keys goes on by keys; whoever tapped it taps the place.
    if (document.activeElement?.matches(':focus-visible')) grip.current?.focus();
  }, []);
  const keyDown = (event: KeyboardEvent): void => {
    const step = arrowStep(event);
    if (step !== undefined) {
      event.preventDefault();
      const [x, y] = [mark.at.x + step.x, mark.at.y + step.y];
      onTool({
        kind: 'aim',
        at: { x: within(x, view.left, view.left + view.width), y: within(y, view.top, view.top + view.height) },
      });
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      if (!mark.isMoved) return;
      onDone();
      onTool({ kind: 'take' });
    } else if (event.key === 'Escape') onDone();
  };
  const { x, y } = toBox(mark.at, view);
  const arm = pxPerYard * 0.9;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a <button> cannot stand inside a drawing
    <g
      ref={grip}
      role="button"
      tabIndex={0}
      aria-label={`Where ${mark.by} ${mark.verb === 'pick' ? 'picks' : `goes: ${mark.verb}`}, ${placeWords(mark.at)}`}
      className={styles.aim}
      onKeyDown={keyDown}
    >
      <circle cx={x} cy={y} r={pxPerYard * 0.8} />
      <path d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`} />
    </g>
  );
}

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
