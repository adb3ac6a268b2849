import type { Read, Trace } from '../engine/index.ts';
import { cueMarks } from './cue-marks.ts';
import { stampSizes } from './people-marks.ts';
import { circle, type Primitive, type SceneLayer, type View } from './scene.ts';
import { frameAt } from './trace-frame.ts';
import { clampInto } from './trace-marks.ts';
import type { TraceNames } from './trace-names.ts';
import { smallWatchOptions, type WatchOptions, watchScene } from './watch-scene.ts';

/** He acts on what he saw his reaction ago, and on what he expects of it: the picture itself may show it so much earlier or later. Seconds. */
const sightSpread = 0.4;

/**
 * The instant nearest to `time` (seconds after the restart) at which most of the cues of a read can be marked in the trace: where its picture
 * should stand still. `time` itself when nothing can be marked anywhere near.
 */
export function cueInstant(trace: Trace, time: number, names: TraceNames, cues: Read['cues']): number {
  const steps = Math.round(sightSpread / trace.step);
  const away = Array.from({ length: 2 * steps + 1 }, (_, at) => (at % 2 === 1 ? -1 : 1) * Math.ceil(at / 2));
  const instants = away.map((step) => time + step * trace.step);
  const marked = instants.map((at) => cues.filter((cue) => cueMarks(trace, at, cue, names).length > 0).length);
  return instants[marked.indexOf(Math.max(...marked))]!;
}

/** Radius of the ring round the man who reads, in radii of his circle. */
const readerRing = 1.3;

/**
 * One moment of a trace on a small field, for one read: everybody and the ball, under them a ring of dashes round the man who reads. With
 * `marked` the marks of all cues of the read as well (see `cueMarks`), above everybody, and not where the ball came from: its line would be
 * taken for one of them.
 */
export function cueScene(
  trace: Trace,
  time: number,
  names: TraceNames,
  read: Pick<Read, 'carrier' | 'cues'> & { readonly marked: boolean },
  options: Partial<Pick<WatchOptions, 'view' | 'pxPerYard'>> = {},
): SceneLayer {
  const chosen = { ...smallWatchOptions, reads: false, ...(read.marked && { ballSeconds: 0 }), ...options };
  const { view, items } = watchScene(trace, time, names, chosen);
  const marks = read.marked ? read.cues.flatMap((cue) => cueMarks(trace, time, cue, names, stampSizes)) : [];
  return { view, items: [...readerMark(trace, time, names, read.carrier, view), ...items, ...marks] };
}

function readerMark(trace: Trace, time: number, names: TraceNames, carrier: string, view: View): readonly Primitive[] {
  const at = frameAt(trace, time).offense[names.offense.indexOf(carrier)];
  return at === undefined ? [] : [circle('readRing', clampInto(view, at), stampSizes.attacker * readerRing)];
}
