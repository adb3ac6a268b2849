import type { Action, Point } from '../engine/index.ts';
import { distance } from './arrow.ts';
import { circle, line, type Primitive, polygon, polyline, rectangle, type StyleName, text } from './scene.ts';
import type { BallLeg, ChartAction, ChartRead, OpenWindow, TempoChart } from './tempo-chart.ts';
import { actionShare, ballShare, rowTop, type TempoLayout, timeToX, wordShare } from './tempo-layout.ts';

/** A mark shorter than this cannot be seen, and is drawn as long. */
const shortestMark = 0.55;
const headLength = 0.5;
const headHalf = 0.24;
/** One wave of a carry, and its height to either side. */
const wave = 0.5;
const waveHeight = 0.22;
/** Half the length of a pick's bar and of the ends of a hold. */
const barHalf = 0.34;

/** Height of the ball's line in a spot's row. */
export function ballLineY(layout: TempoLayout, chart: TempoChart, spot: string): number | undefined {
  const top = rowTop(layout, chart, spot);
  return top === undefined ? undefined : top + layout.sizes.row * ballShare;
}

/** A window: the more it is worth, the stronger the tint and the denser the hatching; its worth is written where there is room. */
export function windowMarks(window: OpenWindow, chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const top = rowTop(layout, chart, window.spot);
  if (top === undefined) return [];
  const left = timeToX(layout, Math.max(0, window.opens));
  const right = Math.min(layout.right, Math.max(timeToX(layout, window.closes), left + 0.25));
  const bottom = top + layout.sizes.row;
  const level = worthLevel(window.worth);
  const hatch = hatchLines(left, top, right, bottom, hatchGaps[level - 1]!);
  return [
    rectangle(`openTint${level}`, left, top, right, bottom),
    ...(hatch.length === 0 ? [] : [{ kind: 'path', style: 'openHatch', steps: hatch } as const]),
  ];
}

export function windowWorth(window: OpenWindow, chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const top = rowTop(layout, chart, window.spot);
  if (top === undefined) return [];
  const right = Math.min(layout.right, timeToX(layout, window.closes));
  const at = { x: right - 0.12, y: top + layout.sizes.row * worthShare };
  return [text('openWorth', at, window.worth.toFixed(2).replace(/^0/, ''), 'end')];
}

/** Height in its row at which a window's worth is written: between the ball's line and what its man does. */
const worthShare = 0.43;

/** From these goals on a window is drawn a step stronger. */
export const worthLevels = [0.15, 0.25, 0.35] as const;

export function worthLevel(worth: number): 1 | 2 | 3 | 4 {
  if (worth >= worthLevels[2]) return 4;
  if (worth >= worthLevels[1]) return 3;
  return worth >= worthLevels[0] ? 2 : 1;
}

/** From one line of the hatching to the next, by level. */
const hatchGaps = [1.3, 0.85, 0.5, 0.3] as const;

type Step = { readonly kind: 'move' | 'line'; readonly to: Point };

// Lines that rise to the right at half a right angle, cut off at the rectangle's edge.
function hatchLines(left: number, top: number, right: number, bottom: number, gap: number): readonly Step[] {
  const steps: Step[] = [];
  const height = bottom - top;
  for (let foot = left - height + gap; foot < right; foot += gap) {
    const from = Math.max(foot, left);
    const to = Math.min(foot + height, right);
    if (to - from < 0.05) continue;
    steps.push({ kind: 'move', to: { x: from, y: bottom - (from - foot) } });
    steps.push({ kind: 'line', to: { x: to, y: bottom - (to - foot) } });
  }
  return steps;
}

const hopStyles = { adjacent: 'hopAdjacent', skip: 'hopSkip', feed: 'hopFeed' } as const;

/** The ball's line: thick while a man has it, a slanted hop for a pass, a double line to the goal for a shot. */
export function ballMarks(leg: BallLeg, chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  switch (leg.kind) {
    case 'held': {
      const y = ballLineY(layout, chart, leg.spot);
      if (y === undefined) return [];
      const ends = [
        { x: timeToX(layout, leg.from), y },
        { x: timeToX(layout, leg.to), y },
      ] as const;
      return [line('ballCase', ...ends), line('ballHeld', ...ends)];
    }
    case 'pass':
      return hopMarks(leg, chart, layout);
    case 'shot':
      return shotMarks(leg, chart, layout);
    default:
      return exhaustive(leg);
  }
}

function hopMarks(
  leg: Extract<BallLeg, { kind: 'pass' }>,
  chart: TempoChart,
  layout: TempoLayout,
): readonly Primitive[] {
  const [fromY, toY] = [ballLineY(layout, chart, leg.from), ballLineY(layout, chart, leg.to)];
  if (fromY === undefined || toY === undefined) return [];
  const from = { x: timeToX(layout, leg.leaves), y: fromY };
  const to = { x: timeToX(layout, leg.arrives), y: toY };
  const words = [leg.style === 'adjacent' ? '' : leg.style, leg.lost ?? ''].filter((word) => word !== '').join(', ');
  return [
    line(hopStyles[leg.style], from, shortOf(to, from, headLength * 0.8)),
    ...head('hopHead', from, to),
    ...(leg.lost === undefined ? [] : crossedOut(to)),
    ...(words === '' ? [] : [text('hopWord', wordPlace(from, to, layout), words, 'start')]),
  ];
}

/** How far below the edge of a row a hop's word stands: the words of what men do end above it, the ball's line runs below. */
const belowEdge = 0.2;

/** Beside the hop, where it crosses the edge between two rows that is nearest to its middle. */
function wordPlace(from: Point, to: Point, { top, sizes }: TempoLayout): Point {
  const middle = (from.y + to.y) / 2;
  const y = top + Math.round((middle - top) / sizes.row) * sizes.row + belowEdge;
  const share = from.y === to.y ? 0.5 : (y - from.y) / (to.y - from.y);
  return { x: from.x + (to.x - from.x) * share + 0.25, y };
}

function shotMarks(
  leg: Extract<BallLeg, { kind: 'shot' }>,
  chart: TempoChart,
  layout: TempoLayout,
): readonly Primitive[] {
  const fromY = ballLineY(layout, chart, leg.by);
  if (fromY === undefined) return [];
  const from = { x: timeToX(layout, leg.leaves), y: fromY };
  const goal = { x: timeToX(layout, leg.arrives), y: layout.goalY + 0.35 };
  const gap = 0.11;
  const end = shortOf(goal, from, headLength * 0.8);
  const rail = (side: number): Primitive =>
    line('hopShot', { x: from.x + side * gap, y: from.y }, { x: end.x + side * gap, y: end.y });
  return [
    rail(-1),
    rail(1),
    ...head('hopHead', from, goal),
    polygon('goalNet', [
      { x: goal.x - 0.55, y: goal.y - 0.1 },
      { x: goal.x + 0.55, y: goal.y - 0.1 },
      { x: goal.x, y: goal.y - 0.95 },
    ]),
    line('goalLine', { x: goal.x - 0.55, y: goal.y - 0.1 }, { x: goal.x + 0.55, y: goal.y - 0.1 }),
    text('hopWord', { x: goal.x + 0.8, y: goal.y - 0.25 }, leg.result ?? 'shot', 'start'),
  ];
}

function crossedOut({ x, y }: Point): readonly Primitive[] {
  const h = 0.3;
  return [
    line('hopSkip', { x: x - h, y: y - h }, { x: x + h, y: y + h }),
    line('hopSkip', { x: x - h, y: y + h }, { x: x + h, y: y - h }),
  ];
}

/** What a man does, in the trade's line: zigzag a carry, solid a run, a bar a pick. Throws are the ball's line, and have no mark here. */
export function actionMarks(one: ChartAction, chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const top = rowTop(layout, chart, one.action.by);
  if (top === undefined) return [];
  const y = top + layout.sizes.row * actionShare;
  const from = { x: timeToX(layout, one.start), y };
  const to = { x: Math.max(timeToX(layout, one.end), from.x + shortestMark), y };
  switch (one.action.kind) {
    case 'pass':
    case 'shot':
      return [];
    case 'run':
    case 'stepIn':
      return [line('doing', from, shortOf(to, from, headLength * 0.8)), ...head('doingHead', from, to)];
    case 'carry':
      return [...polyline('doing', zigzag(from, shortOf(to, from, headLength))), ...head('doingHead', from, to)];
    case 'pick':
      return [line('doing', from, to), upright(to)];
    case 'hold':
      return [upright(from), line('doing', from, to), upright(to)];
    case 'fake':
      return [line('doingWait', from, to)];
    case 'seal':
      return polyline('doing', [
        { x: from.x, y: y + barHalf / 2 },
        { x: from.x, y: y - barHalf },
        { x: to.x, y: y - barHalf },
        { x: to.x, y: y + barHalf / 2 },
      ]);
    default:
      return exhaustive(one.action);
  }
}

/** What is written below an action: "sneak when open", "pick CR". Empty for a throw, whose line says it. */
export function actionWord(action: Action): string {
  switch (action.kind) {
    case 'pass':
    case 'shot':
      return '';
    case 'run':
      return `${runWord[action.run]}${action.go === 'whenOpen' ? ' when open' : ''}`;
    case 'stepIn':
      return 'step in';
    case 'pick':
    case 'seal':
      return `${action.kind} ${action.on}`;
    case 'fake':
      return `fake ${action.toward}`;
    case 'carry':
    case 'hold':
      return action.kind;
    default:
      return exhaustive(action);
  }
}

const runWord = {
  cut: 'cut',
  pop: 'pop',
  sneak: 'sneak',
  flash: 'flash',
  replace: 'replace',
  backUp: 'back up',
  getBack: 'get back',
} as const;

/** Width of a letter of these words, and the gap between two of them. */
const letter = 0.36;
const wordGap = 0.3;

/** The words of all actions, each below its own, moved to the right as far as the one before it in the row needs. */
export function actionWords(
  actions: readonly ChartAction[],
  chart: TempoChart,
  layout: TempoLayout,
): readonly Primitive[] {
  const ends = new Map<string, number>();
  return [...actions]
    .sort((a, b) => a.start - b.start)
    .flatMap(({ action, start }) => {
      const top = rowTop(layout, chart, action.by);
      const word = actionWord(action);
      if (top === undefined || word === '') return [];
      const x = Math.max(timeToX(layout, start), ends.get(action.by) ?? 0);
      ends.set(action.by, x + word.length * letter + wordGap);
      return [text('doingWord', { x, y: top + layout.sizes.row * wordShare }, word, 'start')];
    });
}

/** How far to the right of where it leaves the ball's line a read ends. */
const stubWidth = 1.1;
/** How far below the line a read ends that sends the ball to nobody: clear of it, and of what the man does. */
const stubDrop = 0.45;

/** Where a read ends: on the row of the man it sends the ball to, or just below its own line. */
export function readEnd(
  one: ChartRead,
  chart: TempoChart,
  layout: TempoLayout,
): { readonly from: Point; readonly to: Point } | undefined {
  const { then } = one.read;
  const y = ballLineY(layout, chart, one.read.carrier);
  if (y === undefined) return undefined;
  const from = { x: timeToX(layout, one.at), y };
  const target = then.kind === 'pass' ? ballLineY(layout, chart, then.to) : undefined;
  return { from, to: { x: from.x + stubWidth, y: target ?? y + stubDrop } };
}

/** A taught read: a thin branch off the ball's line, with what has to be seen at its end. */
export function readMarks(one: ChartRead, chart: TempoChart, layout: TempoLayout): readonly Primitive[] {
  const ends = readEnd(one, chart, layout);
  if (ends === undefined) return [];
  const { from, to } = ends;
  const then = one.read.then.kind;
  const what = then === 'pass' ? '' : `: ${then === 'stepIn' ? 'step in' : then}`;
  const words = `${one.cues === 'always' ? '' : 'if '}${one.cues}${what}`;
  // To the left where it would run out of the chart.
  const isRight = to.x + cueGap + words.length * letter < layout.view.left + layout.view.width;
  const at = { x: to.x + (isRight ? cueGap : -cueGap), y: to.y };
  return [
    line('readStub', from, to),
    circle('readEnd', to, 0.17),
    text('readCue', at, words, isRight ? 'start' : 'end'),
  ];
}

/** From the end of a read to its words. */
const cueGap = 0.35;

export function head(style: StyleName, from: Point, tip: Point): readonly Primitive[] {
  const length = distance(from, tip);
  if (length === 0) return [];
  const [dx, dy] = [(tip.x - from.x) / length, (tip.y - from.y) / length];
  const foot = { x: tip.x - dx * headLength, y: tip.y - dy * headLength };
  return [
    polygon(style, [
      tip,
      { x: foot.x - dy * headHalf, y: foot.y + dx * headHalf },
      { x: foot.x + dy * headHalf, y: foot.y - dx * headHalf },
    ]),
  ];
}

function upright({ x, y }: Point): Primitive {
  return line('doing', { x, y: y - barHalf }, { x, y: y + barHalf });
}

function zigzag(from: Point, to: Point): readonly Point[] {
  const waves = Math.max(1, Math.floor((to.x - from.x) / wave));
  const half = (to.x - from.x) / waves / 2;
  const turns = Array.from({ length: waves * 2 }, (_, turn) => ({
    x: from.x + (turn + 0.5) * half,
    y: from.y + (turn % 2 === 0 ? -waveHeight : waveHeight),
  }));
  return [from, ...turns, to];
}

function shortOf(end: Point, from: Point, gap: number): Point {
  const length = distance(from, end);
  if (length <= gap) return from;
  const share = (length - gap) / length;
  return { x: from.x + (end.x - from.x) * share, y: from.y + (end.y - from.y) * share };
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
