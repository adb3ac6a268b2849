import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { ShotHeat, Trace } from '../../engine/index.ts';
import type { LaneOdds, OpenMan } from '../../render/index.ts';
import {
  type FieldMarkings,
  type PaletteName,
  type Primitive,
  type TraceNames,
  unitView,
  watchField,
  watchScene,
  watchWords,
} from '../../render/index.ts';
import type { LayerName } from '../play/screen-state.ts';
import type { Player } from '../playback/player.ts';
import type { Playhead } from '../playback/playhead.ts';
import { SceneCanvas } from '../playback/scene-canvas.tsx';
import styles from './watch-field.module.css';

/** One trial as it is shown: its trace, where the play's own clock begins in it, and what goes with it. */
export interface ShownTrial {
  readonly trace: Trace;
  /** The first beat, seconds of the trace. */
  readonly began: number;
  readonly names: TraceNames;
  /** Radius of each defender's stick, yards. */
  readonly reach: readonly number[];
  readonly lanesAt: (time: number) => readonly LaneOdds[];
  readonly openAt: (time: number) => readonly OpenMan[];
}

export interface WatchFieldProps {
  readonly shown: ShownTrial | undefined;
  readonly player: Player;
  readonly field: FieldMarkings;
  readonly palette: PaletteName;
  readonly layers: ReadonlySet<LayerName>;
  readonly heat: ShotHeat | null;
}

/** The large field while it is watched: everybody, what each defender is asked to do, the lanes, and what a shot is worth. */
export function WatchField({ shown, player, field, palette, layers, heat }: WatchFieldProps): ReactNode {
  const ground = useMemo(
    () => watchField(field, { view: unitView, size: 'large', heat: layers.has('heat') ? heat : null }),
    [field, heat, layers],
  );
  const moment = useMemo(
    () => (shown === undefined ? undefined : momentOf(shown, layers, ground.items)),
    [shown, layers, ground],
  );
  return (
    <div className={styles.pane}>
      <div className={styles.field}>
        <SceneCanvas
          player={player}
          ground={ground}
          moment={moment}
          palette={palette}
          words={shown === undefined ? 'Being played' : `${shown.names.play} against ${shown.names.scheme}`}
        />
      </div>
      {shown !== undefined && <MomentWords shown={shown} player={player} />}
    </div>
  );
}

/** A lane with worse odds is no lane that anybody thinks of: drawn, it only hides the others. */
const leastLane = 0.25;

function momentOf(shown: ShownTrial, layers: ReadonlySet<LayerName>, ground: readonly Primitive[]) {
  return (head: Playhead, pxPerYard: number) => {
    const time = traceTime(shown, head);
    return watchScene(shown.trace, time, shown.names, {
      view: unitView,
      ground,
      pxPerYard,
      size: 'large',
      duties: layers.has('duties'),
      reach: layers.has('reach') ? shown.reach : [],
      lanes: layers.has('lanes') ? shown.lanesAt(time).filter(({ completion }) => completion >= leastLane) : [],
      open: shown.openAt(time),
    });
  };
}

function traceTime(shown: ShownTrial, head: Playhead): number {
  return Math.min(head.time, head.to) + shown.began;
}

// What can be seen at this moment, in sentences: below the picture for everybody, and spoken when the playing stops.
function MomentWords({ shown, player }: { readonly shown: ShownTrial; readonly player: Player }): ReactNode {
  const [words, setWords] = useState('');
  useEffect(() => {
    const say = (): void => {
      const head = player.head();
      if (head.running) {
        setWords('');
        return;
      }
      const time = traceTime(shown, head);
      setWords(
        watchWords(shown.trace, time, shown.names, { lanes: shown.lanesAt(time), open: shown.openAt(time) })
          .description,
      );
    };
    say();
    return player.onChange(say);
  }, [shown, player]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
    <p className={styles.words} aria-live="polite" tabIndex={0}>
      {words}
    </p>
  );
}
