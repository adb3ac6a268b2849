import { type KeyboardEvent, type PointerEvent, type ReactNode, useMemo, useRef } from 'react';
import type { Point } from '../../engine/index.ts';
import {
  type FieldMarkings,
  fieldScene,
  type PaletteName,
  type Primitive,
  placeWords,
  pxPerYard,
  type View,
} from '../../render/index.ts';
import { AimGrip } from './aim-grip.tsx';
import { arrowStep } from './arrow-step.ts';
import styles from './field-editor.module.css';
import { pixelsPerYard, placeAt, toBox, viewBoxOf } from './field-plane.ts';
import { type Grip, gripKey } from './grips.ts';
import { SceneMarks } from './scene-marks.tsx';
import type { AimMark, ToolEvent } from './tool.ts';

export interface FieldEditorProps {
  /** What the drawing is, for who cannot see it. */
  readonly title: string;
  readonly description: string;
  readonly marks: readonly Primitive[];
  readonly grips: readonly Grip[];
  readonly field: FieldMarkings;
  readonly view: View;
  readonly palette: PaletteName;
  /** The spot that is chosen. */
  readonly selected: string | undefined;
  /** A place and the words beside it: distances and times of what is being dragged, or why it may not be. */
  readonly readout: { readonly at: Point; readonly lines: readonly string[]; readonly refused: boolean } | undefined;
  /** The pointer looks for a place or a man. */
  readonly aiming: boolean;
  /** What arrow keys move while a place is looked for. */
  readonly aim: AimMark | undefined;
  readonly onTool: (event: ToolEvent) => void;
  /** A grip moved by keys. */
  readonly onNudge: (grip: Grip, to: Point) => void;
  readonly onSelect: (spot: string) => void;
}

/** Half the width of what a thumb can hit, CSS pixels; and of what a mouse can. */
const touchReachPx = 26;
const mouseReachPx = 16;

/** The field on which a play is written: pointer, pen and thumb drag what is on it, arrow keys move what has the focus. */
export function FieldEditor(props: FieldEditorProps): ReactNode {
  const { view, palette, field, onTool } = props;
  const plane = useRef<SVGSVGElement>(null);
  const pointer = useRef<number>(undefined);
  const ground = useMemo(() => fieldScene(field, view), [field, view]);

  const send = (kind: 'down' | 'move' | 'up', event: PointerEvent): void => {
    const box = plane.current?.getBoundingClientRect();
    if (box === undefined) return;
    const at = placeAt(event.clientX, event.clientY, box, view);
    const reachPx = event.pointerType === 'mouse' ? mouseReachPx : touchReachPx;
    onTool({ kind, at, reach: Math.max(1.15, reachPx / pixelsPerYard(box, view)) });
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    // A second finger ends what the first began: it may be the start of a pinch.
    if (pointer.current !== undefined && pointer.current !== event.pointerId) {
      onTool({ kind: 'cancel' });
      return;
    }
    pointer.current = event.pointerId;
    plane.current?.setPointerCapture(event.pointerId);
    send('down', event);
  };
  const move = (event: PointerEvent): void => {
    if (pointer.current === event.pointerId || (pointer.current === undefined && props.aiming)) send('move', event);
  };
  const up = (event: PointerEvent): void => {
    if (pointer.current !== event.pointerId) return;
    pointer.current = undefined;
    send('up', event);
  };
  const lost = (event: PointerEvent): void => {
    if (pointer.current !== event.pointerId) return;
    pointer.current = undefined;
    onTool({ kind: 'cancel' });
  };

  return (
    <svg
      ref={plane}
      className={[styles.plane, props.aiming ? styles.aiming : ''].join(' ')}
      viewBox={viewBoxOf(view)}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={lost}
      onLostPointerCapture={lost}
    >
      <title>{props.title}</title>
      <desc>{props.description}</desc>
      <g aria-hidden="true">
        <SceneMarks items={ground} view={view} palette={palette} />
        <SceneMarks items={props.marks} view={view} palette={palette} />
      </g>
      {props.grips.map((grip) => (
        <GripMark key={gripKey(grip)} grip={grip} {...props} />
      ))}
      {props.aim !== undefined && (
        <AimGrip
          key={`${props.aim.by} ${props.aim.verb}`}
          mark={props.aim}
          view={view}
          onTool={onTool}
          onDone={() => plane.current?.querySelector<SVGGElement>(`[data-grip="man ${props.aim?.by}"]`)?.focus()}
        />
      )}
      {props.readout !== undefined && <Readout {...props.readout} view={view} />}
    </svg>
  );
}

function GripMark({ grip, view, selected, onNudge, onSelect }: FieldEditorProps & { readonly grip: Grip }): ReactNode {
  const { x, y } = toBox(grip.at, view);
  const isSelected = grip.kind === 'man' && grip.spot === selected;
  const keyDown = (event: KeyboardEvent): void => {
    const step = arrowStep(event);
    if (step !== undefined) {
      event.preventDefault();
      onNudge(grip, { x: grip.at.x + step.x, y: grip.at.y + step.y });
      return;
    }
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    if (grip.kind === 'man') onSelect(grip.spot);
    if (grip.kind === 'point') onSelect(grip.by);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a <button> cannot stand inside a drawing
    <g
      role="button"
      tabIndex={0}
      data-grip={gripKey(grip)}
      aria-label={gripWords(grip)}
      aria-pressed={grip.kind === 'man' ? isSelected : undefined}
      className={styles.grip}
      onKeyDown={keyDown}
    >
      <circle cx={x} cy={y} r={pxPerYard * (grip.kind === 'point' ? 0.62 : 1.42)} className={styles[grip.kind]} />
      {isSelected && <circle cx={x} cy={y} r={pxPerYard * 1.5} className={styles.selected} />}
    </g>
  );
}

function gripWords(grip: Grip): string {
  switch (grip.kind) {
    case 'man':
      return `${grip.spot}, ${placeWords(grip.at)}`;
    case 'restart':
      return `Restart, ${placeWords(grip.at)}`;
    case 'point':
      return `${grip.isEnd ? 'End' : 'Bend'} of the way of ${grip.by}, ${placeWords(grip.at)}`;
    default:
      return exhaustive(grip);
  }
}

function Readout({
  at,
  lines,
  refused,
  view,
}: NonNullable<FieldEditorProps['readout']> & { readonly view: View }): ReactNode {
  const { x, y } = toBox(at, view);
  const longest = Math.max(...lines.map((line) => line.length));
  const [width, height] = [longest * 9.4 + 18, lines.length * 22 + 10];
  // Beside the finger and inside the picture.
  const left = Math.min(Math.max(4, x - width / 2), view.width * pxPerYard - width - 4);
  const above = y - height - 34;
  const top = above < 4 ? y + 40 : above;
  return (
    <g className={refused ? styles.refused : styles.readout} aria-hidden="true" transform={`translate(${left} ${top})`}>
      <rect width={width} height={height} rx="4" />
      {lines.map((line, index) => (
        <text key={line} x={width / 2} y={21 + index * 22}>
          {line}
        </text>
      ))}
    </g>
  );
}

function exhaustive(grip: never): never {
  throw new TypeError(`unknown grip: ${JSON.stringify(grip)}`);
}
