import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import { type CameraFit, doubtsOfCamera, type Point } from '../../engine/index.ts';
import { tenth } from '../../render/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { isOwn, marksAt } from './camera-marks.ts';
import styles from './camera-panel.module.css';
import { cameraSentence, doubtSentence } from './camera-words.ts';
import { useFilm } from './film-state.ts';
import type { FilmTool } from './film-tool.ts';
import type { KnownField } from './known-places.ts';

interface CameraProps {
  readonly camera: CameraFit;
  readonly known: KnownField;
}

/** Where the camera looks: places and lines of the field that are found in the frame, how well they agree, and what to doubt. */
export function CameraPanel({ camera, known }: CameraProps): ReactNode {
  const { hand, send } = useFilm();
  const ids = useMarkedIds();
  const { tool } = hand;
  const chosen = tool.kind === 'place' || tool.kind === 'line' ? tool.id : undefined;
  const choose = (kind: 'place' | 'line', id: string): void => {
    send({
      kind: 'choose',
      tool: id === chosen ? { kind: 'look' } : kind === 'place' ? { kind, id } : { kind, id, first: undefined },
    });
  };
  return (
    <section className={panel.panel} aria-label="Where the camera looks">
      <h3 className={panel.title}>Where the camera looks</h3>
      <div className={styles.columns}>
        <FieldPicture known={known} chosen={chosen} marked={ids} onChoose={choose} />
        <div className={styles.words}>
          <p role="status" className={styles.asked}>
            {askedWords(tool, known)}
          </p>
          <p data-camera={camera.kind}>{cameraSentence(camera, ids.length)}</p>
          {camera.kind === 'fitted' &&
            doubtsOfCamera(camera).map((doubt) => (
              <p key={doubt.kind} className={doubt.kind === 'unchecked' ? panel.quiet : styles.doubt}>
                {doubtSentence(doubt, known)}
              </p>
            ))}
          <MarkedList camera={camera} known={known} />
          <CameraTools />
        </div>
      </div>
    </section>
  );
}

/** What is to be pressed next. */
function askedWords(tool: FilmTool, known: KnownField): string {
  const asked = [...known.places, ...known.lines].find(
    ({ id }) => (tool.kind === 'place' || tool.kind === 'line') && tool.id === id,
  );
  if (asked === undefined) return 'Choose a place or a line that you can see in the film, then press it there.';
  return tool.kind === 'line'
    ? `${asked.words}: press two places on it in the film, far apart${tool.first === undefined ? '' : '; one is set'}.`
    : `${asked.words}: press it in the film.`;
}

/** What is marked in the frame that is seen. */
function useMarkedIds(): readonly string[] {
  const { hand, filmTime } = useFilm();
  const marks = marksAt(hand.views, filmTime);
  return [...(marks?.places ?? []), ...(marks?.lines ?? [])].map(({ id }) => id);
}

function MarkedList({ camera, known }: CameraProps): ReactNode {
  const { filmTime, send } = useFilm();
  return (
    <ul className={styles.list} aria-label="What is marked">
      {useMarkedIds().map((id) => {
        const words = [...known.places, ...known.lines].find((one) => one.id === id)?.words ?? id;
        return (
          <li key={id}>
            <span>{words}</span>
            <span className={styles.error}>{errorWords(camera, id)}</span>
            <Button
              tone="plain"
              aria-label={`Take out: ${words}`}
              icon={<X aria-hidden="true" />}
              onClick={() => send({ kind: 'drop', id, time: filmTime })}
            />
          </li>
        );
      })}
    </ul>
  );
}

/** How far a mark is from where the others have it; nothing where nothing checks it. */
function errorWords(camera: CameraFit, id: string): string {
  if (camera.kind === 'none' || !camera.isChecked) return '';
  const error = camera.errors.find((one) => one.id === id);
  if (error === undefined) return '';
  return error.yards < 0.05 ? 'off by under 0.1 yd' : `off by ${tenth(error.yards)} yd`;
}

function CameraTools(): ReactNode {
  const { hand, filmTime, send } = useFilm();
  const marks = marksAt(hand.views, filmTime);
  return (
    <>
      <div className={panel.tools}>
        <Button disabled={hand.before.length === 0} onClick={() => send({ kind: 'back' })}>
          Take back the last mark
        </Button>
        {marks !== undefined && !isOwn(hand.views, filmTime) && (
          <Button onClick={() => send({ kind: 'own', time: filmTime })}>The camera has moved here</Button>
        )}
      </div>
      {marks !== undefined && (
        <p className={panel.quiet}>
          {hand.views.length > 1
            ? `These marks hold from ${tenth(marks.time)} s of the film on; the camera was marked ${hand.views.length} times.`
            : 'These marks hold for the whole film. Where the camera has moved, say so: the marks are then dragged to where the places are, for that moment and those after it.'}{' '}
          They are kept in this browser for when this film is opened again.
        </p>
      )}
    </>
  );
}

/** Scale of the small picture: a yard is one unit of its box. */
function FieldPicture({
  known,
  chosen,
  marked,
  onChoose,
}: {
  readonly known: KnownField;
  readonly chosen: string | undefined;
  readonly marked: readonly string[];
  readonly onChoose: (kind: 'place' | 'line', id: string) => void;
}): ReactNode {
  const xs = known.lines.flatMap(({ ends }) => ends.map(({ x }) => x));
  const ys = known.lines.flatMap(({ ends }) => ends.map(({ y }) => y));
  const [half, top, bottom] = [Math.max(...xs) + 4, Math.min(...ys) - 4, Math.max(...ys) + 4];
  const state = (id: string): string => (id === chosen ? 'chosen' : marked.includes(id) ? 'marked' : 'free');
  return (
    <svg className={styles.field} viewBox={`${-half} ${top} ${2 * half} ${bottom - top}`}>
      <title>Places and lines of the field to choose from</title>
      {known.lines.map(({ id, ends: [from, to], words }) => (
        <Choice key={id} words={words} state={state(id)} onChoose={() => onChoose('line', id)}>
          <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} className={styles.lineTouch} />
          <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} className={styles.line} />
        </Choice>
      ))}
      <circle r="3" className={styles.crease} />
      {known.places.map(({ id, at, words }) => (
        <Choice key={id} words={words} state={state(id)} onChoose={() => onChoose('place', id)}>
          <circle cx={spread(at).x} cy={spread(at).y} r="1.7" className={styles.place} />
        </Choice>
      ))}
    </svg>
  );
}

/** Near the goal places lie closer than a finger: there the picture is drawn twice as large. Yards from the middle of the goal line. */
const near = 3.2;

function spread({ x, y }: Point): Point {
  return Math.hypot(x, y) <= near ? { x: 2.6 * x, y: 2.6 * y } : { x, y };
}

function Choice({
  words,
  state,
  onChoose,
  children,
}: {
  readonly words: string;
  readonly state: string;
  readonly onChoose: () => void;
  readonly children: ReactNode;
}): ReactNode {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a <button> cannot stand inside a drawing
    <g
      role="button"
      tabIndex={0}
      className={styles.choice}
      data-state={state}
      aria-label={words}
      aria-pressed={state === 'chosen'}
      onClick={onChoose}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onChoose();
      }}
    >
      <title>{words}</title>
      {children}
    </g>
  );
}
