import { type ReactNode, useMemo } from 'react';
import type { Point } from '../../engine/index.ts';
import { type ChanceMark, type Playbook, ruleCodeOf } from '../../playbook/index.ts';
import {
  circle,
  drawnField,
  type PaletteName,
  type Primitive,
  placeWords,
  text,
  type View,
  viewAround,
} from '../../render/index.ts';
import { FieldEditor } from '../field/field-editor.tsx';
import type { Grip } from '../field/grips.ts';
import type { ToolEvent } from '../field/tool.ts';
import { useFilm } from './film-state.ts';
import type { FilmEvent, Handle, MarkOrder } from './film-tool.ts';
import { menOfMoment } from './film-view.tsx';
import { markedName, markedOfName } from './use-marking.ts';

export interface MomentFieldProps {
  readonly playbook: Playbook;
  readonly palette: PaletteName;
  readonly moment: ChanceMark | undefined;
  /** Where the men of the set stand, faint: to begin with, and to see who is who. */
  readonly set: readonly { readonly id: string; readonly at: Point }[];
  /** Number of the defender who is pointed at. */
  readonly lit: number | undefined;
  readonly onOrder: (order: MarkOrder) => void;
}

/** What a man-up needs, without the far corners. */
const closeView: View = { left: -17, top: -10, width: 34, height: 32 };

/** The field beside the film: everybody of the moment where he stands, to be dragged, or set here when there is no film. */
export function MomentField({ playbook, palette, moment, set, lit, onOrder }: MomentFieldProps): ReactNode {
  const { hand, selected, change, send } = useFilm();
  const field = useMemo(() => drawnField(ruleCodeOf(playbook).markings), [playbook]);
  const men = moment === undefined ? [] : menOfMoment(moment);
  const view = useMemo(
    () => viewAround(moment === undefined ? [] : menOfMoment(moment).map(({ at }) => at), closeView),
    [moment],
  );
  const handles = men.map(({ who, at }): Handle => ({ what: 'man', who, at }));
  const grips = men.map(({ who, at }): Grip => ({ kind: 'man', spot: markedName(who), at }));
  const held = hand.hold.kind === 'man' && hand.hold.isMoved ? hand.hold : undefined;
  const shown = men.map(({ who, at }) => ({
    who,
    at: held !== undefined && markedName(held.who) === markedName(who) ? held.at : at,
  }));
  const onTool = (event: ToolEvent): void => {
    const told = eventOnField(event, handles);
    if (told === undefined) return;
    // Places of the camera are pressed in the film alone.
    const { tool } = useFilm.getState().hand;
    if (told.kind === 'down' && (tool.kind === 'place' || tool.kind === 'line'))
      send({ kind: 'choose', tool: { kind: 'look' } });
    const order = send(told);
    const { hold } = useFilm.getState().hand;
    if (told.kind === 'down') change({ selected: hold.kind === 'man' ? markedName(hold.who) : undefined });
    if (order !== undefined) onOrder(order);
  };
  return (
    <FieldEditor
      title="The moment on the field"
      description={
        men.length === 0
          ? 'Nobody is marked at this moment yet.'
          : men.map(({ who, at }) => `${markedName(who)} ${placeWords(at)}.`).join(' ')
      }
      marks={[
        ...set.flatMap(({ id, at }) => [circle('guide', at, 0.9), text('yardText', at, id)]),
        ...shown.flatMap(({ who, at }) => manMarks(who.kind, at)),
        ...(lit === undefined ? [] : shown.filter(({ who }) => who.kind === 'defender' && who.at === lit)).map(
          ({ at }) => circle('readRing', at, 1.4),
        ),
      ]}
      grips={grips}
      field={field}
      view={view}
      palette={palette}
      selected={selected}
      readout={held === undefined ? undefined : { at: held.at, lines: [placeWords(held.at)], refused: false }}
      aiming={hand.tool.kind === 'man'}
      aim={undefined}
      onTool={onTool}
      onNudge={(grip, at) => {
        const who = grip.kind === 'man' ? markedOfName(grip.spot) : undefined;
        if (who !== undefined) onOrder({ kind: 'move', who, at });
      }}
      onSelect={(spot) => change({ selected: spot })}
    />
  );
}

function eventOnField(event: ToolEvent, handles: readonly Handle[]): FilmEvent | undefined {
  switch (event.kind) {
    case 'down':
      return { kind: 'down', at: event.at, reach: event.reach, time: 0, handles };
    case 'move':
      return { kind: 'move', at: event.at };
    case 'up':
      return { kind: 'up', at: event.at, time: 0 };
    case 'cancel':
      return undefined;
    default:
      return undefined;
  }
}

function manMarks(kind: 'ball' | 'defender' | 'attacker', at: Point): readonly Primitive[] {
  const half = 0.62;
  switch (kind) {
    case 'defender':
      return [half, -half].map(
        (dy): Primitive => ({
          kind: 'line',
          style: 'defender',
          from: { x: at.x - half, y: at.y - dy },
          to: { x: at.x + half, y: at.y + dy },
        }),
      );
    case 'attacker':
      return [circle('attacker', at, 1.05)];
    case 'ball':
      return [circle('ball', at, 0.42)];
    default:
      return exhaustive(kind);
  }
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown mark: ${JSON.stringify(kind)}`);
}
