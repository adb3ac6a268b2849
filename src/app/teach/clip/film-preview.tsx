import { Pause, Play } from 'lucide-react';
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { createFilm, drawFilmFrame, type Film, type FilmScript } from '../../../render/index.ts';
import { Button } from '../../controls/button.tsx';
import { createPlayer, type Player } from '../../playback/player.ts';
import { seek } from '../../playback/playhead.ts';
import { usePlaying } from '../../playback/use-playing.ts';
import styles from './film-preview.module.css';

/** A film as it will be, played on the page. */
export function FilmPreview({ script, words }: { readonly script: FilmScript; readonly words: string }): ReactNode {
  const film = useMemo(() => createFilm(script), [script]);
  const player = useFilmPlayer(film);
  return (
    <div className={styles.preview} data-form={film.options.form}>
      <FilmCanvas film={film} player={player} words={words} />
      <FilmControls film={film} player={player} />
    </div>
  );
}

/** A clock of the film's own, in seconds of the film. It rests at the title. */
function useFilmPlayer(film: Film): Player {
  const [player] = useState(() => createPlayer((callback) => requestAnimationFrame(callback)));
  useEffect(() => {
    player.change((head) => ({ ...head, from: 0, to: film.seconds, time: 0, speed: 1, loops: false, running: false }));
    return () => player.change((head) => ({ ...head, running: false }));
  }, [player, film]);
  return player;
}

function FilmCanvas({
  film,
  player,
  words,
}: {
  readonly film: Film;
  readonly player: Player;
  readonly words: string;
}): ReactNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const element = canvas.current;
    const pen = element?.getContext('2d');
    if (element === null || pen === null || pen === undefined) return undefined;
    const draw = (): void => {
      const scale = element.width / film.layout.width;
      if (scale > 0) drawFilmFrame(pen, film, Math.floor(player.head().time * film.options.rate), { scale });
    };
    const resize = (): void => {
      element.width = Math.round(element.clientWidth * window.devicePixelRatio);
      element.height = Math.round((element.width * film.layout.height) / film.layout.width);
      draw();
    };
    const watched = new ResizeObserver(resize);
    watched.observe(element);
    // Letters that come after the first picture are in it too.
    void document.fonts.ready.then(draw);
    const stop = player.onFrame(draw);
    return () => {
      watched.disconnect();
      stop();
    };
  }, [film, player]);
  const { width, height } = film.layout;
  return (
    <canvas
      ref={canvas}
      className={styles.canvas}
      style={{ aspectRatio: `${width} / ${height}` }}
      role="img"
      aria-label={words}
    />
  );
}

function FilmControls({ film, player }: { readonly film: Film; readonly player: Player }): ReactNode {
  const { running } = usePlaying(player);
  return (
    <fieldset className={styles.controls} aria-label="Preview">
      <Button
        aria-label={running ? 'Pause the preview' : 'Play the preview'}
        icon={running ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
        onClick={() =>
          player.change((head) => ({ ...head, time: head.time >= head.to ? 0 : head.time, running: !head.running }))
        }
      />
      <FilmSlider film={film} player={player} />
    </fieldset>
  );
}

// Its value follows the clock without React.
function FilmSlider({ film, player }: { readonly film: Film; readonly player: Player }): ReactNode {
  const slider = useRef<HTMLInputElement>(null);
  const clock = useRef<HTMLOutputElement>(null);
  useEffect(() => {
    const show = (): void => {
      const text = `${minutes(player.head().time)} of ${minutes(film.seconds)}`;
      if (slider.current !== null) {
        slider.current.value = String(player.head().time);
        slider.current.setAttribute('aria-valuetext', text);
      }
      if (clock.current !== null) clock.current.textContent = text;
    };
    show();
    return player.onFrame(show);
  }, [film, player]);
  return (
    <>
      <input
        ref={slider}
        className={styles.slider}
        type="range"
        min={0}
        max={film.seconds}
        step="0.1"
        defaultValue={0}
        aria-label="Moment of the film"
        onChange={(event) => player.change((head) => ({ ...seek(head, Number(event.target.value)), running: false }))}
      />
      <output ref={clock} className={styles.clock} aria-hidden="true" />
    </>
  );
}

/** "1:05" */
function minutes(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
