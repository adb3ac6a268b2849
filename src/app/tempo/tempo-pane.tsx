import { type PointerEvent, type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import {
  layOutTempo,
  type PaletteName,
  pxPerYard,
  secondToFit,
  type TempoChart,
  type TempoHitArea,
  tempoChartScene,
  tempoChartWords,
  tempoHitAreas,
  tempoIdText,
  timeToX,
} from '../../render/index.ts';
import { placeAt, viewBoxOf } from '../field/field-plane.ts';
import { SceneMarks } from '../field/scene-marks.tsx';
import type { Player } from '../playback/player.ts';
import styles from './tempo-pane.module.css';
import {
  chosen,
  idleTempoTool,
  nextTempoTool,
  type TempoEvent,
  type TempoOrder,
  type TempoTool,
} from './tempo-tool.ts';

export interface TempoPaneProps {
  readonly chart: TempoChart;
  readonly player: Player;
  readonly palette: PaletteName;
  readonly onOrder: (order: TempoOrder) => void;
}

/** Pixels that a row takes on the screen. */
const rowPx = 30;
/** One press of an arrow key on a call's mark, s. */
const nudgeSeconds = 0.1;

/** The play over time: choose a step, draw the ball to another row to throw, drag a call to another moment, drag elsewhere to scrub. */
export function TempoPane({ chart, player, palette, onOrder }: TempoPaneProps): ReactNode {
  const frame = useRef<HTMLDivElement>(null);
  const plane = useRef<SVGSVGElement>(null);
  const width = useWidth(frame);
  const [tool, setTool] = useState<TempoTool>(idleTempoTool);
  // One unit of the chart's plane on the screen, so that its letters are as large as the page's.
  const unitPx = rowPx / rowUnits;
  const sizes = useMemo(() => ({ row: rowUnits, second: secondToFit(chart, width / unitPx) }), [chart, width, unitPx]);
  const layout = useMemo(() => layOutTempo(chart, sizes), [chart, sizes]);
  const scene = useMemo(() => tempoChartScene(chart, sizes), [chart, sizes]);
  const areas = useMemo(() => tempoHitAreas(chart, sizes), [chart, sizes]);
  const words = useMemo(() => tempoChartWords(chart), [chart]);
  const ground = { chart, layout, areas };

  const send = (event: TempoEvent): void => {
    const answer = nextTempoTool(tool, event, ground);
    setTool(answer.tool);
    for (const order of answer.orders) onOrder(order);
  };
  const isBusy = tool.kind !== 'idle';
  useEffect(() => {
    if (!isBusy) return undefined;
    const giveUp = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') setTool(idleTempoTool);
    };
    window.addEventListener('keydown', giveUp);
    return () => window.removeEventListener('keydown', giveUp);
  }, [isBusy]);
  const point = (kind: 'down' | 'move' | 'up', event: PointerEvent): void => {
    const box = plane.current?.getBoundingClientRect();
    if (box === undefined) return;
    if (kind === 'down') plane.current?.setPointerCapture(event.pointerId);
    send({ kind, at: placeAt(event.clientX, event.clientY, box, layout.view) });
  };
  return (
    <figure className={styles.pane} aria-label="The play over time">
      <div ref={frame} className={styles.frame}>
        <svg
          ref={plane}
          className={styles.plane}
          viewBox={viewBoxOf(layout.view)}
          width={layout.view.width * unitPx}
          height={layout.view.height * unitPx}
          onPointerDown={(event) => (event.button === 0 ? point('down', event) : undefined)}
          onPointerMove={(event) => (tool.kind === 'idle' ? undefined : point('move', event))}
          onPointerUp={(event) => point('up', event)}
          onPointerCancel={() => send({ kind: 'cancel' })}
        >
          <title>{scene.title}</title>
          <g aria-hidden="true">
            <SceneMarks items={scene.items} view={layout.view} palette={palette} />
          </g>
          {areas.map((area) => (
            <AreaMark key={tempoIdText(area.id)} area={area} chart={chart} onOrder={onOrder} />
          ))}
          <ToolMark tool={tool} ground={ground} />
          <Playhead player={player} ground={ground} />
        </svg>
      </div>
      <figcaption className="spoken">{words.join(' ')}</figcaption>
    </figure>
  );
}

/** Height of a row in the chart's own unit. */
const rowUnits = 2.1;

function AreaMark({
  area: { id, area, label },
  chart,
  onOrder,
}: {
  readonly area: TempoHitArea;
  readonly chart: TempoChart;
  readonly onOrder: (order: TempoOrder) => void;
}): ReactNode {
  const call = id.part === 'trigger' && chart.beats.some((beat) => beat.id === id.beat && beat.trigger.kind === 'call');
  // The ends of a bar are for the pointer; who works with keys finds them in the step's words.
  const isStop = id.part === 'trigger' || id.part === 'read' || id.part === 'bar';
  return (
    // biome-ignore lint/a11y/useSemanticElements: a <button> cannot stand inside a drawing
    <g
      role="button"
      tabIndex={isStop ? 0 : -1}
      aria-label={call ? `${label}. Arrow keys move the call` : label}
      aria-hidden={isStop ? undefined : true}
      className={call ? styles.call : styles.area}
      onKeyDown={(event) => {
        const direction = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
        if (call && direction !== 0) {
          event.preventDefault();
          onOrder({ kind: 'shiftCall', beat: id.beat, by: direction * nudgeSeconds });
        } else if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          for (const order of chosen(id, chart)) onOrder(order);
        }
      }}
    >
      <rect
        x={area.left * pxPerYard}
        y={area.top * pxPerYard}
        width={area.width * pxPerYard}
        height={area.height * pxPerYard}
        rx="4"
      />
    </g>
  );
}

type Ground = Parameters<typeof nextTempoTool>[2];

/** What a drag would do if it ended now. */
function ToolMark({
  tool,
  ground: { chart, layout },
}: {
  readonly tool: TempoTool;
  readonly ground: Ground;
}): ReactNode {
  if (tool.kind === 'timing') {
    const beat = chart.beats.find(({ id }) => id === tool.beat);
    const time = (beat?.starts ?? 0) + tool.time - tool.grabbedAt;
    const x = timeToX(layout, time) * pxPerYard;
    return (
      <g className={styles.held} aria-hidden="true">
        <line x1={x} x2={x} y1={layout.top * pxPerYard} y2={layout.bottom * pxPerYard} />
        <text x={x + 6} y={(layout.bottom + 0.8) * pxPerYard}>
          {time.toFixed(1)} s
        </text>
      </g>
    );
  }
  if (tool.kind !== 'throwing' || tool.to === undefined) return null;
  const middle = (spot: string): number =>
    (layout.top + (chart.rows.indexOf(spot) + 0.5) * layout.sizes.row) * pxPerYard;
  const x = timeToX(layout, tool.time) * pxPerYard;
  return (
    <g className={styles.held} aria-hidden="true">
      <line x1={x} x2={x + 30} y1={middle(tool.from)} y2={middle(tool.to)} strokeDasharray="9 6" />
      <circle cx={x + 30} cy={middle(tool.to)} r="7" />
    </g>
  );
}

/** The cursor of the rule: it moves with the clock and not with React. */
function Playhead({
  player,
  ground: { chart, layout },
}: {
  readonly player: Player;
  readonly ground: Ground;
}): ReactNode {
  const mark = useRef<SVGGElement>(null);
  useEffect(() => {
    const show = (): void => {
      const time = Math.min(Math.max(player.head().time, 0), chart.end);
      mark.current?.setAttribute('transform', `translate(${timeToX(layout, time) * pxPerYard} 0)`);
    };
    show();
    return player.onFrame(show);
  }, [player, chart, layout]);
  const [top, bottom] = [(layout.top - 0.25) * pxPerYard, layout.bottom * pxPerYard];
  return (
    <g ref={mark} className={styles.playhead} aria-hidden="true">
      <rect x="-9" y={top} width="18" height={bottom - top} rx="3" className={styles.glass} />
      <line y1={top} y2={bottom} />
    </g>
  );
}

function useWidth(element: { readonly current: HTMLElement | null }): number {
  const [width, setWidth] = useState(640);
  useEffect(() => {
    const watched = element.current;
    if (watched === null) return undefined;
    const observer = new ResizeObserver(() => setWidth(watched.clientWidth));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
