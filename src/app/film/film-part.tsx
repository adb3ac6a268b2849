import { type ReactNode, type RefObject, useMemo } from 'react';
import { type CameraFit, placeOnField } from '../../engine/index.ts';
import { type Opponent, ruleCodeOf } from '../../playbook/index.ts';
import panel from '../opponents/panel.module.css';
import { usePlaybook } from '../shell/desk.tsx';
import { cameraAt } from './camera-marks.ts';
import { CameraPanel } from './camera-panel.tsx';
import { placeDoubt } from './camera-words.ts';
import { FilmControls, filmKey } from './film-controls.tsx';
import styles from './film-screen.module.css';
import { useFilm } from './film-state.ts';
import type { MarkOrder } from './film-tool.ts';
import { FilmView } from './film-view.tsx';
import { drawnLines, knownField } from './known-places.ts';
import { litAt, shownMoment } from './moment-part.tsx';
import { OpenFilm } from './open-film.tsx';
import type { FilmClock } from './use-film-clock.ts';
import type { Marking } from './use-marking.ts';

export interface FilmPartProps {
  readonly opponent: Opponent;
  readonly clock: FilmClock;
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly marking: Marking;
}

/** The film with its controls, and where its camera looks; a place to open one before that. */
export function FilmPart(props: FilmPartProps): ReactNode {
  const { opponent, clock, video } = props;
  const film = useFilm((state) => state.film);
  const field = useFieldOfFilm();
  if (film === undefined)
    return (
      <section className={`${panel.panel} ${styles.wide}`} aria-label="The film">
        <OpenFilm small={false} opponent={opponent.id} />
      </section>
    );
  return (
    <>
      <section className={`${panel.panel} ${styles.wide}`} aria-label="The film">
        <FilmPlane {...props} field={field} />
        <FilmControls clock={clock} video={video} />
        <OpenFilm small opponent={opponent.id} />
      </section>
      {film.width > 0 && (
        <div className={styles.wide}>
          <CameraPanel camera={field.camera} known={field.known} />
        </div>
      )}
    </>
  );
}

function FilmPlane({
  clock,
  video,
  marking,
  field: { camera, known, lines },
}: FilmPartProps & { readonly field: ReturnType<typeof useFieldOfFilm> }): ReactNode {
  const lit = useFilm((state) => state.lit);
  const moment = shownMoment(marking);
  const mark = useMarkOnFilm(camera, marking);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields
    <div
      className={styles.film}
      role="group"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it has the keys of the film
      tabIndex={0}
      aria-label="The film: space plays and pauses, arrow keys step by a frame, B, D and A choose ball, defender and attacker, Escape lets go"
      onKeyDown={(event) => {
        if (filmKey(event, clock)) event.preventDefault();
      }}
    >
      <FilmView
        video={video}
        camera={camera}
        known={known}
        lines={lines}
        moment={moment}
        lit={litAt(lit, marking.chance, moment)}
        onOrder={mark}
      />
    </div>
  );
}

/** What the rule code paints, and the camera of the frame that is seen. */
function useFieldOfFilm() {
  const playbook = usePlaybook();
  const { hand, filmTime } = useFilm();
  const { markings } = useMemo(() => ruleCodeOf(playbook), [playbook]);
  const known = useMemo(() => knownField(markings), [markings]);
  const lines = useMemo(() => drawnLines(markings), [markings]);
  const camera = useMemo(() => cameraAt(hand.views, filmTime, known), [hand.views, filmTime, known]);
  return { camera, known, lines };
}

/** A mark that was set or moved in the film is brought to the field, or it is said why it cannot be. */
function useMarkOnFilm(camera: CameraFit, { order }: Marking): (what: MarkOrder) => void {
  const change = useFilm((state) => state.change);
  return (what) => {
    if (camera.kind === 'none') {
      change({ notice: 'First say where the camera looks: four places of the field, pressed in the film.' });
      return;
    }
    const seen = placeOnField(camera, what.at);
    if (seen === undefined) {
      change({ notice: 'This is above the ground. Press where his feet are.' });
      return;
    }
    change({ notice: placeDoubt(seen) ?? '' });
    order({ ...what, at: seen.at }, 'film');
  };
}
