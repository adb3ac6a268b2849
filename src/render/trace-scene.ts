import type { Trace, TraceEvent } from '../engine/index.ts';
import { distance } from './arrow.ts';
import { type FieldMarkings, fieldScene, unitView } from './field-scene.ts';
import { placeLabels } from './label-places.ts';
import { layOutPage } from './page-layout.ts';
import { defenderLabels, roomAmongPeople } from './people-labels.ts';
import { defenderMark, keeperMark, usualSizes } from './people-marks.ts';
import { viewpointNote } from './play-scene.ts';
import { seconds } from './play-words.ts';
import type { Primitive, Scene, View } from './scene.ts';
import { pxPerYard } from './svg-styles.ts';
import { frameAt, type TraceFrame } from './trace-frame.ts';
import {
  attackerDiscs,
  attackerWords,
  ballInFlightOrHands,
  ballMarks,
  clampInto,
  dutyMarks,
  reachMark,
  trails,
  withoutAbsent,
} from './trace-marks.ts';
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

function people(frame: TraceFrame, names: TraceNames, view: View): readonly Primitive[] {
  const keeper = keeperMark(frame.keeper);
  const room = roomAmongPeople(frame, names, usualSizes, { view, pxPerYard, keeper, ground: [] });
  return [
    ...keeper,
    ...attackerDiscs(frame, view),
    ...frame.defense.flatMap((at) => defenderMark(at)),
    ...attackerWords(frame, names, view),
    ...placeLabels(defenderLabels(frame, names), room),
    ballInFlightOrHands(frame, view),
  ];
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

// A beat that starts, or a chance that ends, says less than the pass or the goal it came with.
function lastEvent(trace: Trace, time: number): TraceEvent | undefined {
  const past = trace.events.filter((event) => event.time <= time + 1e-6 && isMainEvent(event));
  return past.filter((event) => event.kind !== 'beat' && event.kind !== 'end').at(-1) ?? past.at(-1);
}

/** What every defender is asked to do: "tr on the ball; tl plays TL; ...". */
export function dutySentence(frame: TraceFrame, names: TraceNames): string {
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
