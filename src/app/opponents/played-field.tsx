import { type ReactNode, useEffect, useMemo } from 'react';
import { type FieldMarkings, type PaletteName, traceNames, watchField, watchScene } from '../../render/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import { PlayControls } from '../playback/play-controls.tsx';
import type { Playhead } from '../playback/playhead.ts';
import { showSpan } from '../playback/playhead.ts';
import { SceneCanvas } from '../playback/scene-canvas.tsx';
import { eventTimes, lanesOf, openAt } from '../schemes/script-moment.ts';
import { useDesk } from '../shell/desk.tsx';
import { unitField } from './row-field.tsx';
import styles from './scheme-stage.module.css';

/** Before the first beat this much is shown, s. */
const leadIn = -0.5;

export interface PlayedFieldProps {
  readonly answer: SchemeAnswer | undefined;
  readonly field: FieldMarkings;
  readonly palette: PaletteName;
  /** Why nothing can be played. */
  readonly hindrance: string;
}

/** The play as it runs against the grid, over and over. */
export function PlayedField({ answer, field, palette, hindrance }: PlayedFieldProps): ReactNode {
  const { player } = useDesk();
  const ground = useMemo(() => watchField(field, { view: unitField, size: 'large' }), [field]);
  const { cast, script } = answer ?? { cast: null, script: null };
  const moment = useMemo(() => {
    if (cast === null || script === null) return undefined;
    const names = traceNames(cast);
    return (head: Playhead, pxPerYard: number) => {
      const time = Math.min(head.time, head.to) + script.began;
      return watchScene(script.trace, time, names, {
        view: unitField,
        pxPerYard,
        duties: true,
        lanes: lanesOf(script, time),
        open: openAt(script, time),
      });
    };
  }, [cast, script]);
  const marks = useMemo(() => (script === null ? [] : eventTimes(script)), [script]);
  const end = script === null ? 0 : (script.trace.frames - 1) * script.trace.step - script.began;
  useEffect(() => {
    if (end > 0) player.change((head) => showSpan(head, leadIn, Math.round(end * 10) / 10));
  }, [player, end]);
  // It begins to run when one comes to see it, unless one asked for less movement; it rests when one goes.
  useEffect(() => {
    const calm = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
    if (!calm) player.change((head) => ({ ...head, time: head.from, running: true, loops: true }));
    return () => player.change((head) => ({ ...head, running: false }));
  }, [player]);
  if (moment === undefined) {
    return <p className={styles.words}>{hindrance === '' ? 'Being played for the first time.' : hindrance}</p>;
  }
  return (
    <>
      <div className={styles.field}>
        <SceneCanvas
          player={player}
          ground={ground}
          moment={moment}
          palette={palette}
          words={`${cast?.play.name ?? 'The play'} as it runs against the grid`}
        />
      </div>
      <PlayControls player={player} marks={marks} />
    </>
  );
}
