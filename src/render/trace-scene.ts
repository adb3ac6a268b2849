import type { Point, Trace, TraceEvent } from '../engine/index.ts';
import { along, distance } from './arrow.ts';
import { type FieldMarkings, fieldScene, unitView } from './field-scene.ts';
import { layOutPage } from './page-layout.ts';
import {
  attackerDisc,
  attackerLetters,
  attackerRadius,
  ballInHands,
  ballMark,
  crossHalf,
  defenderMark,
  keeperMark,
  placeLabels,
} from './people-marks.ts';
import { viewpointNote } from './play-scene.ts';
import { seconds } from './play-words.ts';
import { circle, line, type Primitive, polygon, polyline, type Scene, text, type View } from './scene.ts';
import { agentPath, ballPath, type DutyFrame, frameAt, type TraceFrame } from './trace-frame.ts';
import { attackerName, defenderName, type TraceNames } from './trace-names.ts';
import { dutyClause, eventWords, isMainEvent } from './words.ts';

/** What is drawn besides the people and the ball. */
export interface TraceSceneOptions {
  /** Seconds of run behind each man. */
  readonly trailSeconds: number;
  /** Seconds of ball movement behind the ball. */
  readonly ballSeconds: number;
  readonly duties: boolean;
  /** Radius of each defender's stick, in the trace's order, yd; nothing is drawn for a man who is missing. */
  readonly reach: readonly number[];
  readonly view: View;
}

export const defaultTraceSceneOptions: TraceSceneOptions = {
  trailSeconds: 1,
  ballSeconds: 3,
  duties: true,
  reach: [],
  view: unitView,
};

/**
 * One instant of one trial: who stands where, who has the ball, where it came from, and what every defender is asked to do.
 * `time` outside the trace gives its first or last picture.
 */
export function traceScene(
  trace: Trace,
  time: number,
  names: TraceNames,
  field: FieldMarkings,
  options: Partial<TraceSceneOptions> = {},
): Scene {
  const chosen = { ...defaultTraceSceneOptions, ...options };
  const frame = withoutAbsent(frameAt(trace, time), trace, names);
  const title = `${names.play} against ${names.scheme}`;
  const happened = sentenceAt(trace, frame.time, names);
  const duties = dutySentence(frame, names);
  return layOutPage(
    {
      title: `${title}, ${seconds(frame.time)}`,
      description: `${happened} ${duties} ${viewpointNote}`,
      field: chosen.view,
      clock: seconds(frame.time),
      above: [
        { style: 'heading', text: title },
        { style: 'sentence', text: happened, lines: 2 },
      ],
      below: [
        { style: 'small', text: unbrokenClauses(duties), lines: 2 },
        { style: 'small', text: `${legend(frame, names, chosen.view)} ${viewpointNote}`, lines: 2 },
      ],
    },
    [
      ...fieldScene(field, chosen.view),
      ...frame.defense.flatMap((at, index) => reachMark(at, chosen.reach[index])),
      ...trails(trace, frame.time, chosen.trailSeconds),
      ...ballMarks(trace, frame.time, chosen.ballSeconds),
      ...(chosen.duties ? frame.duties.flatMap((duty, index) => dutyMarks(duty, index, frame)) : []),
      ...people(frame, names, chosen.view),
    ],
  );
}

/** What the marks are. The one for a man beyond the picture's edge is explained when there is one. */
function legend(frame: TraceFrame, names: TraceNames, view: View): string {
  const out = frame.offense.flatMap((at, index) =>
    distance(clampInto(view, at), at) < 1e-9 ? [] : [attackerName(names, index)],
  );
  const beyond =
    out.length === 0 ? '' : ` Triangle: ${out.join(' and ')} ${out.length === 1 ? 'is' : 'are'} farther out.`;
  return `Circles are the offense, crosses the defense, G the keeper.${beyond}`;
}

/** The sentence for the last thing that happened up to `time` (included). */
export function sentenceAt(trace: Trace, time: number, names: TraceNames): string {
  const event = lastEvent(trace, time);
  return event === undefined ? 'Before the whistle.' : `${eventWords(event, trace, names)}.`;
}

// The penalized man waits at the scorer's table until he is released: he is no part of the picture before.
function withoutAbsent(frame: TraceFrame, trace: Trace, names: TraceNames): TraceFrame {
  const released = trace.events.some((event) => event.kind === 'released' && event.time <= frame.time);
  if (released) return frame;
  const present = names.defense.length;
  return { ...frame, defense: frame.defense.slice(0, present), duties: frame.duties.slice(0, present) };
}

// A beat that starts, or a chance that ends, says less than the pass or the goal it came with.
function lastEvent(trace: Trace, time: number): TraceEvent | undefined {
  const past = trace.events.filter((event) => event.time <= time + 1e-6 && isMainEvent(event));
  return past.filter((event) => event.kind !== 'beat' && event.kind !== 'end').at(-1) ?? past.at(-1);
}

function dutySentence(frame: TraceFrame, names: TraceNames): string {
  const man = (index: number): string | undefined => (index >= 0 ? attackerName(names, index) : undefined);
  const clauses = frame.duties.map((one, index) =>
    index >= names.defense.length
      ? 'the released man runs to his place'
      : dutyClause(defenderName(names, index), one.duty, man(one.a), man(one.b)),
  );
  return `${clauses.join('; ')}.`;
}

function unbrokenClauses(sentence: string): string {
  return sentence
    .split('; ')
    .map((clause) => clause.replaceAll(' ', '\u00a0'))
    .join('; ');
}

function reachMark(at: Point, radius: number | undefined): readonly Primitive[] {
  return radius === undefined ? [] : [circle('reach', at, radius)];
}

function trails(trace: Trace, time: number, length: number): readonly Primitive[] {
  const runners = trace.agents - 1;
  return Array.from({ length: runners }, (_, agent) => agentPath(trace, agent, time - length, time))
    .filter((path) => path.length > 1 && distance(path[0]!, path.at(-1)!) > attackerRadius)
    .flatMap((path) => polyline('trail', path));
}

// Flights are dashed, as on paper; the newest one stronger than those before it.
function ballMarks(trace: Trace, time: number, length: number): readonly Primitive[] {
  const flights = flightsBetween(trace, time - length, time);
  return flights.flatMap(({ from, to, shot }, index) => {
    const points = ballPath(trace, from, to);
    const newest = index === flights.length - 1;
    return polyline(shot ? 'shot' : newest ? 'pass' : 'passPast', points);
  });
}

interface Flight {
  readonly from: number;
  readonly to: number;
  readonly shot: boolean;
}

function flightsBetween(trace: Trace, from: number, to: number): readonly Flight[] {
  const flights: Flight[] = [];
  for (const [index, event] of trace.events.entries()) {
    if (event.kind !== 'pass' && event.kind !== 'shot') continue;
    const landing = trace.events.slice(index + 1).find((later) => landingKinds.has(later.kind));
    const end = Math.min(landing?.time ?? to, to);
    if (end > from && event.time < to)
      flights.push({ from: Math.max(event.time, from), to: end, shot: event.kind === 'shot' });
  }
  return flights;
}

const landingKinds: ReadonlySet<TraceEvent['kind']> = new Set<TraceEvent['kind']>([
  'catch',
  'dropped',
  'intercepted',
  'deflected',
  'badPass',
  'goal',
  'save',
  'pipe',
  'wide',
  'blocked',
  'turnover',
]);

function dutyMarks(one: DutyFrame, defender: number, frame: TraceFrame): readonly Primitive[] {
  const at = frame.defense[defender]!;
  const first = frame.offense[one.a];
  const second = frame.offense[one.b];
  if (first === undefined) return [];
  if (one.duty === 'lane') return dutyLine('duty', at, middle(first, frame.ball), 0);
  const style = one.duty === 'lock' || one.duty === 'ball' ? 'dutyLock' : 'duty';
  const toFirst = dutyLine(style, at, first, attackerRadius);
  return one.duty === 'split' && second !== undefined
    ? [...toFirst, ...dutyLine('duty', at, second, attackerRadius)]
    : toFirst;
}

function dutyLine(style: 'duty' | 'dutyLock', from: Point, to: Point, gap: number): readonly Primitive[] {
  const start = crossHalf * 1.6;
  if (distance(from, to) < start + gap + 0.2) return [];
  return [line(style, along(from, to, start), along(to, from, gap))];
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function people(frame: TraceFrame, names: TraceNames, view: View): readonly Primitive[] {
  const holder = frame.holder.kind === 'attacker' ? frame.holder.index : -1;
  const obstacles = [
    ...frame.offense.map((at) => ({ at, radius: attackerRadius })),
    ...frame.defense.map((at) => ({ at, radius: crossHalf })),
    { at: frame.keeper, radius: crossHalf },
    { at: frame.ball, radius: 0.4 },
  ];
  const labels = placeLabels(frame.defense, obstacles);
  const held = holder >= 0 ? frame.offense[holder] : undefined;
  return [
    ...keeperMark(frame.keeper),
    ...frame.offense.flatMap((at, index) => discInView(at, index === holder, view)),
    ...frame.defense.flatMap((at) => defenderMark(at)),
    ...frame.offense.map((at, index) =>
      attackerLetters(clampInto(view, at), attackerName(names, index), index === holder),
    ),
    ...labels.map((at, index) => text('defenderText', at, names.defense[index] ?? 'new')),
    ballOf(frame, held, view),
  ];
}

/** How far inside the view's edge a man is drawn who stands beyond it, yd: room for his circle and the arrow beside it. */
const edgeRoom = 1.9;

// A man who restarts far out is drawn at the edge, with an arrow that says that he is farther away.
function discInView(at: Point, hasBall: boolean, view: View): readonly Primitive[] {
  const shown = clampInto(view, at);
  const disc = attackerDisc(shown, hasBall);
  if (distance(shown, at) < 1e-9) return [disc];
  const [foot, tip] = [along(shown, at, attackerRadius + 0.15), along(shown, at, attackerRadius + 0.7)];
  const side = { x: (tip.y - foot.y) * 0.8, y: (foot.x - tip.x) * 0.8 };
  const corners = [tip, { x: foot.x + side.x, y: foot.y + side.y }, { x: foot.x - side.x, y: foot.y - side.y }];
  return [disc, polygon('beyond', corners)];
}

function clampInto(view: View, at: Point): Point {
  const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
  return {
    x: clamp(at.x, view.left + edgeRoom, view.left + view.width - edgeRoom),
    y: clamp(at.y, view.top + edgeRoom, view.top + view.height - edgeRoom),
  };
}

// In hands, and while it leaves them or comes into them, the ball is drawn at the circle's edge, clear of the letters.
function ballOf(frame: TraceFrame, held: Point | undefined, view: View): Primitive {
  const near = held ?? frame.offense.find((at) => distance(at, frame.ball) < attackerRadius);
  return near === undefined ? ballMark(frame.ball) : ballInHands(clampInto(view, near));
}
