import { type ReactNode, useMemo } from 'react';
import type { Playbook, SchemeEntry } from '../../playbook/index.ts';
import {
  dutySentence,
  type FieldMarkings,
  frameAt,
  type PaletteName,
  type View,
  watchScene,
} from '../../render/index.ts';
import { FieldEditor } from '../field/field-editor.tsx';
import { type Grip, gripAt } from '../field/grips.ts';
import { creaseMark } from './duty-typing.ts';
import { creaseMan, type PictureGround, rowPicture } from './row-picture.ts';
import styles from './scheme-stage.module.css';

/** The unit, as close as it can be seen. */
export const unitField: View = { left: -15, top: -8.5, width: 30, height: 25.5 };

export interface RowFieldProps {
  readonly alone: Playbook;
  readonly scheme: SchemeEntry;
  readonly ball: string;
  readonly ground: PictureGround;
  readonly field: FieldMarkings;
  readonly palette: PaletteName;
  readonly onRow: (ball: string) => void;
}

/** Where the chosen row puts every defender, and whom each one has. Pressing an attacker gives him the ball: it chooses his row. */
export function RowField({ alone, scheme, ball, ground, field, palette, onRow }: RowFieldProps): ReactNode {
  const picture = useMemo(() => rowPicture(alone, scheme.id, ball, ground), [alone, scheme.id, ball, ground]);
  const marks = useMemo(
    () =>
      picture === undefined
        ? []
        : watchScene(picture.trace, 0, picture.names, { view: unitField, trailSeconds: 0, ballSeconds: 0 }).items,
    [picture],
  );
  if (picture === undefined) {
    return <p className={styles.words}>No set has anybody at {ball}, so this row cannot be drawn.</p>;
  }
  const rows = new Set(scheme.rows.map((row) => row.ball));
  const rowOf = (spot: string): string | undefined =>
    rows.has(spot) ? spot : creaseMan(picture.spots) === spot && rows.has(creaseMark) ? creaseMark : undefined;
  const grips: readonly Grip[] = picture.spots.flatMap(({ id, at }) =>
    rowOf(id) === undefined ? [] : [{ kind: 'man', spot: id, at }],
  );
  const choose = (spot: string): void => {
    const next = rowOf(spot);
    if (next !== undefined) onRow(next);
  };
  const words = dutySentence(frameAt(picture.trace, 0), picture.names);
  return (
    <>
      <div className={styles.field}>
        <FieldEditor
          title={`${scheme.name} with the ball at ${ball}, over ${picture.over}`}
          description={words}
          marks={marks}
          grips={grips}
          field={field}
          view={unitField}
          palette={palette}
          selected={picture.carrier}
          readout={undefined}
          aiming={false}
          aim={undefined}
          onTool={(event) => {
            if (event.kind !== 'down') return;
            const grip = gripAt(grips, event.at, event.reach);
            if (grip?.kind === 'man') choose(grip.spot);
          }}
          onNudge={() => undefined}
          onSelect={choose}
        />
      </div>
      <p className={styles.words}>
        {picture.over === ground.name
          ? `Ball at ${ball}, over ${ground.name}. `
          : `${ground.name} has nobody at ${ball}: shown over ${picture.over}. The row counts when the ball comes near there. `}
        {words}
      </p>
    </>
  );
}
