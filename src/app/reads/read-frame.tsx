import { Pause, Play } from 'lucide-react';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { Read, ReadExample } from '../../engine/index.ts';
import {
  cueInstant,
  cueScene,
  type FieldMarkings,
  type SceneLayer,
  traceEnd,
  type View,
  watchField,
} from '../../render/index.ts';
import type { TrialSetup } from '../../worker/index.ts';
import { Button } from '../controls/button.tsx';
import { useLook } from '../look/look.ts';
import { useMedia } from '../look/use-media.ts';
import type { Player } from '../playback/player.ts';
import type { Playhead } from '../playback/playhead.ts';
import { SceneCanvas } from '../playback/scene-canvas.tsx';
import { usePlaying } from '../playback/use-playing.ts';
import type { ExampleTrace } from './example-traces.ts';
import { type FramePhase, type FrameSpan, frameMoment, frameSpan } from './frame-moment.ts';
import { chosenOfWords, exampleWords, outcomeWords, phaseWords } from './frame-words.ts';
import styles from './read-frame.module.css';
import { type AskedTrace, useExampleTrace } from './use-example-trace.ts';
import { useFramePlayer } from './use-frame-player.ts';

/** The unit, as close as it can be seen with the man who starts far out. */
const frameView: View = { left: -15, top: -8.5, width: 30, height: 28 };

/** A read, and the chance that shows it. */
export interface ShownRead {
  readonly read: Read;
  /** Its number on the card, from 1. */
  readonly number: number;
  readonly example: ReadExample;
  readonly setup: TrialSetup;
  /** What its scheme is called. */
  readonly scheme: string;
}

export interface ReadFrameProps {
  readonly shown: ShownRead;
  /** The read in words. */
  readonly words: string;
  readonly field: FieldMarkings;
}

/** A read, and beside it the moment of a real chance at which its cue shows, which can be played: from before the cue into what he does. */
export function ReadFrame({ shown, words, field }: ReadFrameProps): ReactNode {
  const { example, setup } = shown;
  const { asked, retry } = useExampleTrace(setup, example);
  const ground = useMemo(() => watchField(field, { view: frameView, size: 'small' }), [field]);
  return (
    <figure className={styles.frame}>
      <p className={styles.read}>{words}</p>
      {asked.kind === 'there' ? (
        <PlayedFrame shown={shown} played={asked.shown} ground={ground} />
      ) : (
        <AwaitedFrame number={shown.number} asked={asked} onRetry={retry} />
      )}
      <figcaption className={styles.caption}>{captionOf(shown, asked)}</figcaption>
    </figure>
  );
}

function captionOf({ read, example, scheme }: ShownRead, asked: AskedTrace): string {
  const outcome = asked.kind === 'there' ? outcomeWords(asked.shown.trace, example, asked.shown.names) : '';
  return [exampleWords(scheme, example, read), outcome, chosenOfWords(example)].filter((one) => one !== '').join(' ');
}

function AwaitedFrame({
  number,
  asked,
  onRetry,
}: {
  readonly number: number;
  readonly asked: Exclude<AskedTrace, { kind: 'there' }>;
  readonly onRetry: () => void;
}): ReactNode {
  return (
    <div className={`${styles.field} ${styles.awaited}`} data-failed={asked.kind === 'failed'}>
      {asked.kind === 'failed' ? (
        <>
          <p role="alert">This chance could not be played: {asked.reason}.</p>
          <Button onClick={onRetry} aria-label={`Try again, read ${number}`}>
            Try again
          </Button>
        </>
      ) : (
        <p>Being played…</p>
      )}
    </div>
  );
}

interface PlayedFrameProps {
  readonly shown: ShownRead;
  readonly played: ExampleTrace;
  readonly ground: SceneLayer;
}

function PlayedFrame({ shown: { read, number, example }, played, ground }: PlayedFrameProps): ReactNode {
  const { trace, names } = played;
  const palette = useLook((state) => state.shown);
  const isCalm = useMedia('(prefers-reduced-motion: reduce)');
  const span = useMemo(
    () => frameSpan(cueInstant(trace, example.time, names, read.cues), traceEnd(trace)),
    [trace, names, example, read],
  );
  const player = useFramePlayer(span, !isCalm);
  const moment = useMemo(
    () =>
      (head: Playhead, pxPerYard: number): SceneLayer => {
        const { time, phase } = frameMoment(span, head.time);
        return cueScene(trace, time, names, { ...read, marked: phase === 'cue' }, { view: frameView, pxPerYard });
      },
    [trace, names, span, read],
  );
  return (
    <div className={styles.played}>
      <div className={styles.field}>
        <SceneCanvas
          player={player}
          ground={ground}
          moment={moment}
          palette={palette}
          words={`The half field at the moment of read ${number}, ${read.carrier} with the ball`}
        />
      </div>
      <div className={styles.bar}>
        <PlayButton player={player} number={number} />
        <Now player={player} span={span} read={read} />
      </div>
    </div>
  );
}

function PlayButton({ player, number }: { readonly player: Player; readonly number: number }): ReactNode {
  const { running } = usePlaying(player);
  const word = running ? 'Pause' : 'Play';
  return (
    <Button
      aria-label={`${word} read ${number}`}
      icon={running ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
      // At rest it stands at the cue: whoever plays it wants to see what leads there.
      onClick={() => player.change((head) => ({ ...head, ...(!running && { time: head.from }), running: !running }))}
    >
      {word}
    </Button>
  );
}

// For the eye alone, while it moves: the caption says the same to who listens.
function Now({
  player,
  span,
  read,
}: {
  readonly player: Player;
  readonly span: FrameSpan;
  readonly read: Read;
}): ReactNode {
  const [phase, setPhase] = useState<FramePhase>('cue');
  useEffect(() => player.onFrame(({ time }) => setPhase(frameMoment(span, time).phase)), [player, span]);
  return (
    <span className={styles.now} data-phase={phase} aria-hidden="true">
      {phaseWords(phase, read)}
    </span>
  );
}
