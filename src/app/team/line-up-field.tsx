import { type ReactNode, useMemo } from 'react';
import type { Spot } from '../../engine/index.ts';
import { type Playbook, ruleCodeOf, type SpotMan } from '../../playbook/index.ts';
import { circle, drawnField, fieldScene, text, viewAround } from '../../render/index.ts';
import { viewBoxOf } from '../field/field-plane.ts';
import { SceneMarks } from '../field/scene-marks.tsx';
import { useLook } from '../look/look.ts';
import styles from './line-up.module.css';

export interface LineUpFieldProps {
  readonly playbook: Playbook;
  readonly spots: readonly Spot[];
  /** Who stands at each spot, in their order. */
  readonly men: readonly SpotMan[];
}

/** Where the six stand, by number and name. The list beside it says the same in words. */
export function LineUpField({ playbook, spots, men }: LineUpFieldProps): ReactNode {
  const palette = useLook((state) => state.shown);
  const { settings, team } = playbook;
  const field = useMemo(
    () => drawnField(ruleCodeOf({ team, ...(settings && { settings }) }).markings),
    [team, settings],
  );
  const view = useMemo(
    () =>
      viewAround(
        spots.map(({ at }) => ({ x: at.x, y: at.y + nameBelow })),
        leastView,
      ),
    [spots],
  );
  const items = useMemo(
    () => [
      ...fieldScene(field, view),
      ...spots.map(({ at }) => circle('attacker', at, discRadius)),
      ...spots.flatMap(({ at }, i) => {
        const man = men[i];
        return man === undefined
          ? []
          : [
              text('attackerText', at, String(man.number)),
              text('stepText', { x: at.x, y: at.y + nameBelow }, lastName(man.name)),
            ];
      }),
    ],
    [field, view, spots, men],
  );
  return (
    <svg className={styles.field} viewBox={viewBoxOf(view)} aria-hidden="true">
      <SceneMarks items={items} view={view} palette={palette} />
    </svg>
  );
}

/** No more than where spots stand: the names are small enough. */
const leastView = { left: -13, top: -8.5, width: 26, height: 25 };
/** Room for three figures, yd. */
const discRadius = 1.3;
/** From the middle of a disc to the middle of the name under it, yd. */
const nameBelow = 1.9;

function lastName(name: string): string {
  return name.trim().split(/\s+/).at(-1) ?? '';
}
