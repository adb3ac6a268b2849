import { type ReactNode, useState } from 'react';
import type { Point } from '../../engine/index.ts';
import { moveHome, type SchemeEntry } from '../../playbook/index.ts';
import { type FieldMarkings, type PaletteName, type Primitive, placeWords, text } from '../../render/index.ts';
import { FieldEditor } from '../field/field-editor.tsx';
import { type Grip, gripAt } from '../field/grips.ts';
import type { ToolEvent } from '../field/tool.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { unitField } from './row-field.tsx';
import styles from './scheme-stage.module.css';
import { useApply } from './use-apply.ts';

export interface HomesFieldProps {
  readonly scheme: SchemeEntry;
  readonly field: FieldMarkings;
  readonly palette: PaletteName;
}

/** Where each defender is at home: dragged, or moved by arrow keys. A drag is one step of undo. */
export function HomesField({ scheme, field, palette }: HomesFieldProps): ReactNode {
  const playbook = usePlaybook();
  const apply = useApply();
  const [held, setHeld] = useState<{ readonly man: string; readonly at: Point }>();
  const [chosen, setChosen] = useState<string>();
  const homes = Object.entries(scheme.men).map(([man, [x, y]]) => ({
    man,
    at: held?.man === man ? held.at : { x, y },
  }));
  const grips: readonly Grip[] = homes.map(({ man, at }) => ({ kind: 'man', spot: man, at }));
  const refusal = held === undefined ? undefined : refusalOf(moveHome(playbook, scheme.id, held.man, held.at));
  const put = (man: string, at: Point): void => {
    apply(`move ${man}`, (book) => moveHome(book, scheme.id, man, at));
  };
  const onTool = (event: ToolEvent): void => {
    switch (event.kind) {
      case 'down': {
        const grip = gripAt(grips, event.at, event.reach);
        if (grip?.kind !== 'man') return;
        setChosen(grip.spot);
        setHeld({ man: grip.spot, at: grip.at });
        return;
      }
      case 'move':
        if (held !== undefined) setHeld({ man: held.man, at: half(event.at) });
        return;
      case 'up':
        if (held !== undefined && refusal === undefined) put(held.man, held.at);
        setHeld(undefined);
        return;
      default:
        setHeld(undefined);
    }
  };
  return (
    <>
      <div className={styles.field}>
        <FieldEditor
          title={`Where the men of ${scheme.name} are at home`}
          description={homes.map(({ man, at }) => `${man}: ${placeWords(at)}.`).join(' ')}
          marks={homes.flatMap(({ man, at }) => homeMarks(man, at))}
          grips={grips}
          field={field}
          view={unitField}
          palette={palette}
          selected={held?.man ?? chosen}
          readout={
            held === undefined
              ? undefined
              : {
                  at: held.at,
                  lines: [refusal ?? `${held.man}: ${placeWords(held.at)}`],
                  refused: refusal !== undefined,
                }
          }
          aiming={false}
          aim={undefined}
          onTool={onTool}
          onNudge={(grip, to) => {
            if (grip.kind === 'man') put(grip.spot, to);
          }}
          onSelect={setChosen}
        />
      </div>
      <p className={styles.words}>
        Drag a man to where he stands when nothing else is asked of him, or move him with the arrow keys. Duties that
        say “home” go with him.
      </p>
    </>
  );
}

function homeMarks(man: string, at: Point): readonly Primitive[] {
  const half = 0.62;
  const stroke = (dy: number): Primitive => ({
    kind: 'line',
    style: 'defender',
    from: { x: at.x - half, y: at.y - dy },
    to: { x: at.x + half, y: at.y + dy },
  });
  return [stroke(half), stroke(-half), text('defenderText', { x: at.x, y: at.y - 1.35 }, man)];
}

/** Whole half-yards: as exact as a home is. */
function half({ x, y }: Point): Point {
  return { x: Math.round(2 * x) / 2, y: Math.round(2 * y) / 2 };
}

function refusalOf(edit: ReturnType<typeof moveHome>): string | undefined {
  return edit.kind === 'refused' ? edit.reason : undefined;
}
