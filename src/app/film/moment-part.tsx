import type { ReactNode } from 'react';
import type { Point } from '../../engine/index.ts';
import type { Chance, ChanceMark } from '../../playbook/index.ts';
import { useLook } from '../look/look.ts';
import panel from '../opponents/panel.module.css';
import { usePlaybook } from '../shell/desk.tsx';
import styles from './film-screen.module.css';
import { type LitMark, useFilm } from './film-state.ts';
import { MomentNotes, MomentTools } from './moment-bar.tsx';
import { momentAt, momentsOf } from './moment-edits.ts';
import { MomentField } from './moment-field.tsx';
import type { Marking } from './use-marking.ts';

/** The moment that is looked at, on the field: its tools above it, and what is said of it below, where it may grow. */
export function MomentPart({
  marking,
  chance,
  set,
  onGo,
}: {
  readonly marking: Marking;
  readonly chance: Chance;
  /** Where the men of the set stand. */
  readonly set: readonly { readonly id: string; readonly at: Point }[];
  readonly onGo: (chance: string, seconds: number) => void;
}): ReactNode {
  const playbook = usePlaybook();
  const palette = useLook((state) => state.shown);
  const { film, begins, lit } = useFilm();
  const { time, edit, order } = marking;
  const moment = shownMoment(marking);
  const bar = {
    ...{ chance, time, moment, edit },
    canMark: film === undefined || begins[chance.id] !== undefined,
    onGo: (seconds: number) => onGo(chance.id, seconds),
  };
  return (
    <section className={panel.panel} aria-label="The moment">
      <h3 className={panel.title}>The moment on the field</h3>
      <MomentTools {...bar} />
      <div className={styles.field}>
        <MomentField
          playbook={playbook}
          palette={palette}
          moment={moment}
          set={moment?.offense === undefined ? set : []}
          lit={litAt(lit, chance, moment)}
          onOrder={(what) => order(what, film === undefined ? 'field' : 'film')}
        />
      </div>
      <MomentNotes {...bar} />
    </section>
  );
}

/** The moment that places were marked at, at the time that is looked at. */
export function shownMoment({ chance, time }: Pick<Marking, 'chance' | 'time'>): ChanceMark | undefined {
  const moment = chance === undefined ? undefined : momentsOf(chance)[momentAt(chance, time)];
  return moment?.by === 'tick' ? undefined : moment;
}

/** Times of marks are told apart by no less than this, s. */
const sameMoment = 0.02;

/** Number of the defender who is pointed at, if he is of this moment. */
export function litAt(
  lit: LitMark | undefined,
  chance: Chance | undefined,
  moment: ChanceMark | undefined,
): number | undefined {
  const isHere =
    lit !== undefined && lit.chance === chance?.id && Math.abs(lit.time - (moment?.time ?? -1)) < sameMoment;
  return isHere ? lit.defender : undefined;
}
