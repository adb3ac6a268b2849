import { Pause, Play, Repeat, StepBack, StepForward } from 'lucide-react';
import { type ReactNode, useEffect, useRef } from 'react';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import { clockText } from './clock-text.ts';
import styles from './play-controls.module.css';
import type { Player } from './player.ts';
import { nearestMark, seek, speeds } from './playhead.ts';
import { usePlaying } from './use-playing.ts';

export interface PlayControlsProps {
  readonly player: Player;
  /** Instants of the events that one can step to, ascending, s. */
  readonly marks: readonly number[];
  /** Told when somebody starts it by hand. */
  readonly onStart?: () => void;
}

/** Play, pause, step by event, scrub, speed and loop: for all fields at once. */
export function PlayControls({ player, marks, onStart }: PlayControlsProps): ReactNode {
  const { running, speed, loops } = usePlaying(player);
  const step = (direction: 1 | -1): void =>
    player.change((head) => ({ ...seek(head, nearestMark(head, marks, direction)), running: false }));
  return (
    <fieldset className={styles.controls} aria-label="Playing" data-tour="play-controls">
      <Button
        tone="plain"
        aria-label="Back to the event before"
        icon={<StepBack aria-hidden="true" />}
        onClick={() => step(-1)}
      />
      <Button
        tone="main"
        aria-label={running ? 'Pause' : 'Play'}
        icon={running ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
        onClick={() => {
          if (!running) onStart?.();
          player.change((head) => ({ ...fromStartIfOver(head), running: !head.running }));
        }}
      />
      <Button
        tone="plain"
        aria-label="On to the next event"
        icon={<StepForward aria-hidden="true" />}
        onClick={() => step(1)}
      />
      <Scrubber player={player} />
      <PickList
        label="Speed"
        quietLabel
        value={String(speed)}
        options={speeds.map((each) => ({ value: String(each), text: `${each}×` }))}
        onChange={(chosen) => player.change((head) => ({ ...head, speed: Number(chosen) }))}
      />
      <Button
        tone="plain"
        aria-label="Begin again at the end"
        pressed={loops}
        icon={<Repeat aria-hidden="true" />}
        onClick={() => player.change((head) => ({ ...head, loops: !head.loops }))}
      />
    </fieldset>
  );
}

function fromStartIfOver<Head extends { readonly time: number; readonly from: number; readonly to: number }>(
  head: Head,
): Head {
  return head.time >= head.to ? { ...head, time: head.from } : head;
}

// The device's own slider: keys, thumb and reader know it. Its value follows the clock without React.
function Scrubber({ player }: { readonly player: Player }): ReactNode {
  const slider = useRef<HTMLInputElement>(null);
  const clock = useRef<HTMLOutputElement>(null);
  useEffect(() => {
    const show = (): void => {
      const { time, from, to } = player.head();
      const shown = Math.min(Math.max(time, from), to);
      if (slider.current !== null) {
        slider.current.min = String(from);
        slider.current.max = String(to);
        slider.current.value = String(shown);
        slider.current.setAttribute('aria-valuetext', `${clockText(shown)} of ${clockText(to)} seconds`);
      }
      if (clock.current !== null) clock.current.textContent = `${clockText(shown)} s`;
    };
    show();
    return player.onFrame(show);
  }, [player]);
  return (
    <>
      <input
        ref={slider}
        className={styles.scrubber}
        type="range"
        step="0.05"
        aria-label="Time in the play"
        onChange={(event) => player.change((head) => ({ ...seek(head, Number(event.target.value)), running: false }))}
      />
      <output ref={clock} className={styles.clock} aria-hidden="true" />
    </>
  );
}
