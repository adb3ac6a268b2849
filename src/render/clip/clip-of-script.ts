import type { ScriptTrace, Trace } from '../../engine/index.ts';
import { frameAt, traceEnd } from '../trace-frame.ts';
import { flightsBetween } from '../trace-marks.ts';
import type { TraceNames } from '../trace-names.ts';
import type { ClipFlight, ClipOpening, ClipScheme, Track } from './clip.ts';
import { clipCaptions } from './clip-captions.ts';
import type { ReadsOfPlay } from './read-captions.ts';
import { sampleCount, samplesPerSecond, trackOf } from './track.ts';

/** What of a watched script is shown: also of a part of a trial that is shown by itself. */
export type ShownScript = Pick<ScriptTrace, 'trial' | 'trace' | 'began' | 'windows'>;

/** What a page needs of one watched script of `play` to play it. `note` says how the man-up was chosen. */
export function clipOfScript(script: ShownScript, play: ReadsOfPlay, names: TraceNames, note: string): ClipScheme {
  const { trace } = script;
  const seconds = traceEnd(trace);
  const men = Array.from({ length: trace.agents }, (_, man) => man);
  return {
    name: names.scheme,
    note,
    defenders: names.defense,
    samples: sampleCount(seconds),
    x_byMan: men.map((man) => placeTrack(trace, man, 'x')),
    y_byMan: men.map((man) => placeTrack(trace, man, 'y')),
    ballX: trackOf(seconds, (time) => frameAt(trace, time).ball.x),
    ballY: trackOf(seconds, (time) => frameAt(trace, time).ball.y),
    holders: holdersOf(trace),
    released: trace.events.find(({ kind }) => kind === 'released')?.time ?? null,
    flights: flightsOf(trace),
    open: openingsOf(script),
    captions: clipCaptions(script, play, names),
  };
}

function placeTrack(trace: Trace, man: number, axis: 'x' | 'y'): Track {
  return trackOf(traceEnd(trace), (time) => {
    const { offense, defense, keeper } = frameAt(trace, time);
    return [...offense, ...defense, keeper][man]![axis];
  });
}

/** Only where it changes: the ball is in the same hands for a second at a time. */
function holdersOf(trace: Trace): ClipScheme['holders'] {
  const holders: (readonly [number, number])[] = [];
  for (let sample = 0; sample < sampleCount(traceEnd(trace)); sample += 1) {
    const frame = Math.min(Math.round(sample / samplesPerSecond / trace.step), trace.frames - 1);
    const holder = trace.holder_byFrame[frame] ?? -1;
    if (holders.at(-1)?.[1] !== holder) holders.push([sample, holder]);
  }
  return holders;
}

function flightsOf(trace: Trace): readonly ClipFlight[] {
  return flightsBetween(trace, 0, traceEnd(trace)).map(({ from, to, shot }) => [
    hundredth(from),
    hundredth(to),
    shot ? 'shot' : 'pass',
  ]);
}

/** The windows of this trial, on the clip's clock. */
function openingsOf({ windows, trial, began }: ShownScript): readonly ClipOpening[] {
  return windows
    .filter((window) => window.trial === trial)
    .map(({ to, opens, closes, kind }) => [
      to,
      hundredth(began + opens),
      hundredth(began + closes),
      kind === 'shot' ? 'free' : 'open',
    ]);
}

function hundredth(time: number): number {
  return Math.round(time * 100) / 100;
}
