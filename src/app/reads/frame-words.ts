import type { Read, ReadExample, Trace, TraceEvent } from '../../engine/index.ts';
import { actionWords, cueWords, eventWords, seconds, type TraceNames, traceEnd } from '../../render/index.ts';
import { type FramePhase, frameSpan } from './frame-moment.ts';

/** What stands below a frame while it is at a phase: "Now: WR is open." */
export function phaseWords(phase: FramePhase, read: Read): string {
  switch (phase) {
    case 'before':
      return 'Just before';
    case 'cue':
      return `Now: ${cuesWords(read)}.`;
    case 'after':
      return `${actionWords(read.then)}.`;
    default:
      return exhaustive(phase);
  }
}

/** Where a frame comes from: "Against Box zone: 4.2 s in, WR is open; X feeds WR." */
export function exampleWords(scheme: string, { sinceStart }: Pick<ReadExample, 'sinceStart'>, read: Read): string {
  return `Against ${scheme}: ${seconds(sinceStart)} into the play, ${cuesWords(read)}; ${actionWords(read.then)}.`;
}

/** What comes of it within the frame, by that which ends it or else by the last thing that happens: "Then: GOAL by WR, from X."; empty when nothing does. */
export function outcomeWords(trace: Trace, { time }: Pick<ReadExample, 'time'>, names: TraceNames): string {
  const { to } = frameSpan(time, traceEnd(trace));
  const seen = trace.events.filter((event) => event.time > time && event.time <= to && toldKinds.has(event.kind));
  const told = seen.find(({ kind }) => endKinds.has(kind)) ?? seen.at(-1);
  return told === undefined ? '' : `Then: ${eventWords(told, trace, names)}.`;
}

const endKinds: ReadonlySet<TraceEvent['kind']> = new Set<TraceEvent['kind']>([
  'goal',
  'save',
  'pipe',
  'wide',
  'blocked',
  'intercepted',
  'deflected',
  'dropped',
  'stripped',
  'badPass',
]);
const toldKinds: ReadonlySet<TraceEvent['kind']> = new Set<TraceEvent['kind']>([
  ...endKinds,
  'pass',
  'catch',
  'fake',
  'bite',
  'shot',
]);

/** Which of how many chances a frame shows. */
export function chosenOfWords({ of }: Pick<ReadExample, 'of'>): string {
  return of === 1
    ? 'The only such chance that was measured.'
    : `One of ${of} such chances, the middle one by what it brings.`;
}

/** All cues of a read as a clause: "WR is open and X is pressed"; "nothing to wait for" for none. */
function cuesWords({ carrier, cues }: Read): string {
  return cues.length === 0 ? 'nothing to wait for' : cues.map((cue) => cueWords(cue, carrier)).join(' and ');
}

function exhaustive(phase: never): never {
  throw new TypeError(`unknown phase: ${JSON.stringify(phase)}`);
}
