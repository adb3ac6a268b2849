import { ChevronLeft, ChevronRight, Pause, Play } from 'lucide-react';
import { type KeyboardEvent, type ReactNode, type RefObject, useState } from 'react';
import { Button } from '../controls/button.tsx';
import { Segments } from '../controls/segments.tsx';
import styles from './film-controls.module.css';
import { useFilm } from './film-state.ts';
import type { FilmClock } from './use-film-clock.ts';

const speeds = ['0.25', '0.5', '1', '2'] as const;

/** Play, step, speed and where the film stands. */
export function FilmControls({
  clock,
  video,
}: {
  readonly clock: FilmClock;
  readonly video: RefObject<HTMLVideoElement | null>;
}): ReactNode {
  const { film, filmTime } = useFilm();
  const [speed, setSpeed] = useState<(typeof speeds)[number]>('1');
  return (
    <div className={styles.bar}>
      <div className={styles.buttons}>
        <Button
          tone="main"
          icon={clock.isPlaying ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
          onClick={clock.playOrPause}
        >
          {clock.isPlaying ? 'Pause' : 'Play'}
        </Button>
        <Button aria-label="One frame back" icon={<ChevronLeft aria-hidden="true" />} onClick={() => clock.step(-1)} />
        <Button
          aria-label="One frame forward"
          icon={<ChevronRight aria-hidden="true" />}
          onClick={() => clock.step(1)}
        />
      </div>
      <label className={styles.where}>
        <span className="spoken">Moment of the film</span>
        <input
          type="range"
          min={0}
          max={film?.length ?? 0}
          step={0.01}
          value={filmTime}
          aria-valuetext={`${filmTime.toFixed(2)} s`}
          onChange={(event) => clock.goTo(Number(event.target.value))}
        />
      </label>
      <output className={styles.time}>{filmTime.toFixed(2)} s</output>
      <Segments
        label="Speed of the film"
        value={speed}
        options={speeds.map((value) => ({ value, text: `${value}×` }))}
        onChange={(value) => {
          setSpeed(value);
          if (video.current !== null) video.current.playbackRate = Number(value);
        }}
      />
    </div>
  );
}

/** What a key does while the film has the focus; false for one that does nothing. */
export function filmKey(event: KeyboardEvent, clock: FilmClock): boolean {
  const { send } = useFilm.getState();
  switch (event.key) {
    case ' ':
      clock.playOrPause();
      return true;
    case 'ArrowLeft':
      clock.step(event.shiftKey ? -secondInFrames : -1);
      return true;
    case 'ArrowRight':
      clock.step(event.shiftKey ? secondInFrames : 1);
      return true;
    case 'b':
      send({ kind: 'choose', tool: { kind: 'man', what: 'ball' } });
      return true;
    case 'd':
      send({ kind: 'choose', tool: { kind: 'man', what: 'defender' } });
      return true;
    case 'a':
      send({ kind: 'choose', tool: { kind: 'man', what: 'attacker' } });
      return true;
    case 'Escape':
      send({ kind: 'cancel' });
      return true;
    default:
      return false;
  }
}

/** With Shift, about a second. */
const secondInFrames = 30;
