import { type PointerEvent, type ReactNode, type RefObject, useMemo, useRef } from 'react';
import { type CameraFit, type FittedCamera, type Point, pixelOf, segmentOnFilm } from '../../engine/index.ts';
import type { ChanceMark } from '../../playbook/index.ts';
import { pixelsPerYard, placeAt } from '../field/field-plane.ts';
import { marksAt } from './camera-marks.ts';
import { useFilm } from './film-state.ts';
import type { Handle, Hold } from './film-tool.ts';
import styles from './film-view.module.css';
import type { drawnLines, KnownField } from './known-places.ts';

export interface FilmViewProps {
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly camera: CameraFit;
  readonly known: KnownField;
  readonly lines: ReturnType<typeof drawnLines>;
  /** The moment that is looked at, if one was marked here. */
  readonly moment: ChanceMark | undefined;
  /** Number of the defender who is pointed at. */
  readonly lit: number | undefined;
  /** A mark was set or moved at a pixel. */
  readonly onOrder: (order: NonNullable<ReturnType<ReturnType<typeof useFilm.getState>['send']>>) => void;
}

/** How far from a mark a pointer still takes hold of it, CSS pixels: a mouse, a thumb. */
const reachPx = { mouse: 12, touch: 26 } as const;

/** The film, and over it the lines of the field as the marks have them, the marks, and whoever is marked at this moment. */
export function FilmView({ video, camera, known, lines, moment, lit, onOrder }: FilmViewProps): ReactNode {
  const { film, hand, send, change } = useFilm();
  const plane = useRef<SVGSVGElement>(null);
  const handles = useHandles(camera, moment);
  if (film === undefined) return null;
  const { width, height } = film;
  const unit = width / 1000;
  const whole = { left: 0, top: 0, width, height };
  const pixel = (event: PointerEvent): Point | undefined => {
    const box = plane.current?.getBoundingClientRect();
    // The film lies in the middle of its frame, as large as it fits.
    return box === undefined || box.width === 0 ? undefined : placeAt(event.clientX, event.clientY, box, whole);
  };
  const now = (): number => video.current?.currentTime ?? 0;
  const down = (event: PointerEvent): void => {
    const at = pixel(event);
    if (event.button !== 0 || at === undefined) return;
    plane.current?.setPointerCapture(event.pointerId);
    // A mark belongs to the picture that is seen.
    video.current?.pause();
    const box = plane.current?.getBoundingClientRect() ?? whole;
    const reach = (event.pointerType === 'mouse' ? reachPx.mouse : reachPx.touch) / pixelsPerYard(box, whole);
    const order = send({ kind: 'down', at, reach, time: now(), handles });
    if (order !== undefined) onOrder(order);
  };
  const up = (event: PointerEvent): void => {
    const at = pixel(event);
    const order = at === undefined ? undefined : send({ kind: 'up', at, time: now() });
    if (order !== undefined) onOrder(order);
  };
  return (
    <div className={styles.frame} style={{ aspectRatio: width > 0 ? `${width} / ${height}` : '16 / 9' }}>
      <video
        ref={video}
        className={styles.video}
        src={film.url}
        muted
        playsInline
        preload="auto"
        onLoadedMetadata={({ currentTarget }) => {
          const { videoWidth, videoHeight, duration } = currentTarget;
          // Who comes back from another place finds the film where he left it.
          currentTarget.currentTime = useFilm.getState().filmTime;
          const length = Number.isFinite(duration) ? duration : 0;
          change({ film: { ...film, width: videoWidth, height: videoHeight, length } });
        }}
      />
      {width > 0 && (
        <svg
          ref={plane}
          className={styles.plane}
          data-tool={hand.tool.kind}
          viewBox={`0 0 ${width} ${height}`}
          onPointerDown={down}
          onPointerMove={(event) => {
            const at = pixel(event);
            if (at !== undefined && hand.hold.kind !== 'nothing') send({ kind: 'move', at });
          }}
          onPointerUp={up}
          onPointerCancel={() => send({ kind: 'cancel' })}
        >
          <title>Frame of the film with its marks</title>
          {camera.kind === 'fitted' && <FieldLines camera={camera} lines={lines} unit={unit} />}
          <CameraMarksDrawn known={known} unit={unit} />
          {camera.kind === 'fitted' &&
            handles
              .filter(({ what }) => what === 'man')
              .map((handle) => (
                <ManOnFilm
                  key={handleKey(handle)}
                  handle={handle}
                  at={heldAt(hand.hold, handle) ?? handle.at}
                  unit={unit}
                  isLit={handle.who?.kind === 'defender' && handle.who.at === lit}
                />
              ))}
        </svg>
      )}
    </div>
  );
}

/** What can be taken hold of over the film. */
function useHandles(camera: CameraFit, moment: ChanceMark | undefined): readonly Handle[] {
  const views = useFilm((state) => state.hand.views);
  const filmTime = useFilm((state) => state.filmTime);
  return useMemo(() => {
    const places = (marksAt(views, filmTime)?.places ?? []).map(
      ({ id, seen }): Handle => ({ what: 'place', id, at: seen }),
    );
    if (camera.kind === 'none' || moment === undefined) return places;
    const men = menOfMoment(moment).flatMap(({ who, at }): readonly Handle[] => {
      const seen = pixelOf(camera, at);
      return seen === undefined ? [] : [{ what: 'man', who, at: seen }];
    });
    return [...men, ...places];
  }, [camera, moment, views, filmTime]);
}

/** Everybody of a moment, the defenders first. */
export function menOfMoment({ ball, defenders, offense = [] }: ChanceMark) {
  return [
    ...defenders.map(([x, y], at) => ({ who: { kind: 'defender', at } as const, at: { x, y } })),
    ...offense.map(([x, y], at) => ({ who: { kind: 'attacker', at } as const, at: { x, y } })),
    ...(ball === undefined ? [] : [{ who: { kind: 'ball' } as const, at: { x: ball[0], y: ball[1] } }]),
  ];
}

function FieldLines({
  camera,
  lines,
  unit,
}: {
  readonly camera: FittedCamera;
  readonly lines: ReturnType<typeof drawnLines>;
  readonly unit: number;
}): ReactNode {
  const way = lines
    .flatMap(([from, to]) => {
      const seen = segmentOnFilm(camera, from, to);
      return seen === undefined ? [] : [`M${at(seen[0])}L${at(seen[1])}`];
    })
    .join('');
  return (
    <>
      <path d={way} className={styles.lineUnder} strokeWidth={4.5 * unit} />
      <path d={way} className={styles.line} strokeWidth={2 * unit} />
    </>
  );
}

function CameraMarksDrawn({ known, unit }: { readonly known: KnownField; readonly unit: number }): ReactNode {
  const { hand, filmTime } = useFilm();
  const marks = marksAt(hand.views, filmTime);
  const first = hand.tool.kind === 'line' ? hand.tool.first : undefined;
  return (
    <>
      {marks?.places.map(({ id, seen }) => {
        const place = hand.hold.kind === 'place' && hand.hold.id === id ? hand.hold.at : seen;
        return <Pin key={id} at={place} unit={unit} title={known.places.find((one) => one.id === id)?.words ?? id} />;
      })}
      {marks?.lines.flatMap(({ id, seen }) =>
        seen.map((end, index) => (
          <Pin
            // biome-ignore lint/suspicious/noArrayIndexKey: a line has two ends, in their order
            key={`${id} ${index}`}
            at={end}
            unit={unit}
            title={known.lines.find((one) => one.id === id)?.words ?? id}
          />
        )),
      )}
      {first !== undefined && <Pin at={first} unit={unit} title="First place on the line" />}
    </>
  );
}

function Pin({
  at: { x, y },
  unit,
  title,
}: {
  readonly at: Point;
  readonly unit: number;
  readonly title: string;
}): ReactNode {
  const [near, far] = [4 * unit, 13 * unit];
  const cross = `M${x - far} ${y}H${x - near}M${x + near} ${y}H${x + far}M${x} ${y - far}V${y - near}M${x} ${y + near}V${y + far}`;
  return (
    <g>
      <title>{title}</title>
      <path d={cross} className={styles.pinUnder} strokeWidth={5 * unit} />
      <path d={cross} className={styles.pin} strokeWidth={2.2 * unit} />
      <circle cx={x} cy={y} r={far} className={styles.pin} strokeWidth={1.4 * unit} />
    </g>
  );
}

function ManOnFilm({
  handle: { who },
  at: { x, y },
  unit,
  isLit,
}: {
  readonly handle: Handle;
  readonly at: Point;
  readonly unit: number;
  readonly isLit: boolean;
}): ReactNode {
  const half = 8 * unit;
  const cross = `M${x - half} ${y - half}L${x + half} ${y + half}M${x - half} ${y + half}L${x + half} ${y - half}`;
  return (
    <g>
      {isLit && <circle cx={x} cy={y} r={18 * unit} className={styles.lit} strokeWidth={4 * unit} />}
      {who?.kind === 'defender' && (
        <>
          <path d={cross} className={styles.manUnder} strokeWidth={7 * unit} />
          <path d={cross} className={styles.defender} strokeWidth={3.4 * unit} />
        </>
      )}
      {who?.kind === 'attacker' && (
        <>
          <circle cx={x} cy={y} r={9 * unit} className={styles.manUnder} strokeWidth={6 * unit} />
          <circle cx={x} cy={y} r={9 * unit} className={styles.attacker} strokeWidth={3 * unit} />
        </>
      )}
      {who?.kind === 'ball' && <circle cx={x} cy={y} r={6 * unit} className={styles.ball} strokeWidth={2 * unit} />}
    </g>
  );
}

function heldAt(hold: Hold, handle: Handle): Point | undefined {
  return hold.kind === 'man' &&
    hold.isMoved &&
    handleKey({ what: 'man', who: hold.who, at: hold.at }) === handleKey(handle)
    ? hold.at
    : undefined;
}

function handleKey({ who, id }: Handle): string {
  return who === undefined ? `place ${id}` : who.kind === 'ball' ? 'ball' : `${who.kind} ${who.at}`;
}

function at({ x, y }: Point): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
}
