import type { Action, Beat, Play, Point, SpotId, Trace, TraceEvent } from '../engine/index.ts';
import { distance } from './arrow.ts';
import type { BallLeg, PlayTempo, TempoAction, TempoBeat } from './tempo-chart.ts';
import { frameAt, traceEnd } from './trace-frame.ts';

/** A man is there when he is this near to the end of his way, yd: runs are cut short where the next order comes. */
const arrived = 0.8;
/** A man has set off when he is this far from where he stood, yd. */
const setOff = 0.3;

/**
 * When everything of a play really happened in one trial: the first run of its script, from its first beat until it starts anew, is given up,
 * or a shot or a loss ends it. Nothing but the empty tempo when it never began.
 */
export function tempoOfTrace(play: Play, trace: Trace): PlayTempo {
  const first = trace.events.find((event) => event.kind === 'beat' && !event.lastTen);
  if (first === undefined) return { beats: [], ball: [] };
  const run: Run = { play, trace, from: first.time, until: endOfRun(trace, first.time) };
  const started = startedBeats(run);
  return {
    beats: started.map((one) => timedBeat(one, started, run)),
    ball: ballLegs(run),
  };
}

/** One run of the script, s after the whistle. */
interface Run {
  readonly play: Play;
  readonly trace: Trace;
  readonly from: number;
  readonly until: number;
}

interface StartedBeat {
  readonly beat: Beat;
  /** Seconds after the whistle. */
  readonly time: number;
}

/** What a run of the script does not outlive, beside its own end: after a shot the ball is somebody's by chance. */
const endings: ReadonlySet<TraceEvent['kind']> = new Set<TraceEvent['kind']>([
  'reset',
  'end',
  'turnover',
  'goal',
  'save',
  'pipe',
  'wide',
  'blocked',
]);

function endOfRun(trace: Trace, from: number): number {
  const seen = new Set<string>();
  for (const event of trace.events) {
    if (event.time < from) continue;
    if (endings.has(event.kind)) return event.time;
    if (event.kind !== 'beat') continue;
    if (event.lastTen || seen.has(event.beat)) return event.time;
    seen.add(event.beat);
  }
  return traceEnd(trace);
}

function startedBeats({ play, trace, from, until }: Run): readonly StartedBeat[] {
  return trace.events.flatMap((event) => {
    if (event.kind !== 'beat' || event.lastTen || event.time < from || event.time >= until) return [];
    const beat = play.beats.find(({ id }) => id === event.beat);
    return beat === undefined ? [] : [{ beat, time: event.time }];
  });
}

function timedBeat({ beat, time }: StartedBeat, started: readonly StartedBeat[], run: Run): TempoBeat {
  return {
    id: beat.id,
    starts: time - run.from,
    actions: beat.actions.map((action) => {
      const done = timeOfAction(action, time, untilNextOrder(action.by, time, started, run), run);
      return done === null ? null : { start: done.start - run.from, end: done.end - run.from };
    }),
  };
}

/** When the man is told to move again, or the run is over. */
function untilNextOrder(by: SpotId, time: number, started: readonly StartedBeat[], run: Run): number {
  const next = started.find(
    (one) => one.time > time && one.beat.actions.some((action) => action.by === by && isRun(action)),
  );
  return next?.time ?? run.until;
}

function isRun({ kind }: Action): boolean {
  return kind === 'run' || kind === 'carry' || kind === 'stepIn' || kind === 'pick';
}

function timeOfAction(action: Action, told: number, until: number, run: Run): TempoAction | null {
  const by = spotIndex(run.play, action.by);
  switch (action.kind) {
    case 'run':
      return runTime(by, action.path.at(-1), told, until, run);
    case 'carry':
      return runTime(by, action.path.at(-1), told, Math.min(until, throwAfter(by, told, run)), run);
    case 'stepIn':
      return runTime(by, action.to, told, until, run);
    case 'pick':
      return runTime(by, action.at, told, until, run);
    case 'seal':
      return { start: told, end: until };
    case 'hold':
      return { start: told, end: Math.min(told + action.seconds, run.until) };
    case 'fake':
      return eventTime(run, told, (event) => event.kind === 'fake' && event.who === by);
    case 'shot':
      return eventTime(run, told, (event) => event.kind === 'shot' && event.who === by);
    case 'pass': {
      const to = spotIndex(run.play, action.to);
      return eventTime(run, told, (event) => event.kind === 'pass' && event.from === by && event.to === to);
    }
    default:
      return exhaustive(action);
  }
}

function spotIndex({ spots }: Play, id: SpotId): number {
  return spots.findIndex((spot) => spot.id === id);
}

function eventTime({ trace, until }: Run, told: number, isIt: (event: TraceEvent) => boolean): TempoAction | null {
  const event = trace.events.find((one) => one.time >= told && one.time <= until && isIt(one));
  return event === undefined ? null : { start: told, end: event.time };
}

/** Whoever has thrown the ball carries it no more. */
function throwAfter(by: number, told: number, { trace, until }: Run): number {
  const thrown = trace.events.find(
    (event) =>
      event.time > told &&
      ((event.kind === 'pass' && event.from === by) || (event.kind === 'shot' && event.who === by)),
  );
  return Math.min(until, thrown?.time ?? until);
}

// From when he leaves his place until he is where he was sent; a man who is stopped on the way runs until his next order.
function runTime(
  by: number,
  target: Point | undefined,
  told: number,
  until: number,
  { trace }: Run,
): TempoAction | null {
  if (target === undefined || by < 0) return null;
  const stood = placeAt(trace, told, by);
  let start: number | undefined;
  for (let time = told; time <= until + 1e-9; time += trace.step) {
    const at = placeAt(trace, time, by);
    if (start === undefined && distance(stood, at) >= setOff) start = Math.max(told, time - trace.step);
    if (distance(at, target) <= arrived) return { start: start ?? told, end: time };
  }
  return start === undefined ? null : { start, end: until };
}

function placeAt(trace: Trace, time: number, agent: number): Point {
  return frameAt(trace, time).offense[agent]!;
}

/** What ends a pass that is not caught, in a word. */
const lostWords: Partial<Record<TraceEvent['kind'], string>> = {
  dropped: 'dropped',
  intercepted: 'picked off',
  deflected: 'knocked down',
  badPass: 'astray',
};

const shotWords: Partial<Record<TraceEvent['kind'], string>> = {
  goal: 'goal',
  save: 'saved',
  pipe: 'pipe',
  wide: 'wide',
  blocked: 'blocked',
};

function ballLegs(run: Run): readonly BallLeg[] {
  const { trace, from, until, play } = run;
  const name = (index: number): SpotId => play.spots[index]?.id ?? '';
  const legs: BallLeg[] = [];
  const { holder } = frameAt(trace, from);
  let held: { readonly who: number; readonly since: number } | undefined =
    holder.kind === 'attacker' ? { who: holder.index, since: from } : undefined;
  const letGo = (time: number): void => {
    if (held !== undefined && time > held.since)
      legs.push({ kind: 'held', spot: name(held.who), from: held.since - from, to: time - from });
    held = undefined;
  };
  for (const [index, event] of trace.events.entries()) {
    if (event.time < from || event.time > until) continue;
    switch (event.kind) {
      case 'catch':
        held = { who: event.who, since: event.time };
        break;
      case 'restart':
        held = { who: event.who, since: event.time };
        break;
      case 'groundBall':
        if (event.won === 'offense') held = { who: event.who, since: event.time };
        break;
      case 'pass': {
        letGo(event.time);
        const { end, word } = landing(trace.events, index, until, lostWords);
        const { from: by, to, style } = event;
        const leg = { kind: 'pass', from: name(by), to: name(to), style } as const;
        const times = { leaves: event.time - from, arrives: end - from };
        legs.push({ ...leg, ...times, ...(word === undefined ? {} : { lost: word }) });
        break;
      }
      case 'shot': {
        letGo(event.time);
        const { end, word } = landing(trace.events, index, until, shotWords);
        const times = { leaves: event.time - from, arrives: end - from };
        legs.push({ kind: 'shot', by: name(event.who), ...times, ...(word === undefined ? {} : { result: word }) });
        break;
      }
      case 'stripped':
        letGo(event.time);
        break;
      default:
        break;
    }
  }
  letGo(until);
  return legs;
}

/** When a flight is over and, if it did not end in a stick, how. */
function landing(
  events: readonly TraceEvent[],
  index: number,
  until: number,
  words: Partial<Record<TraceEvent['kind'], string>>,
): { readonly end: number; readonly word: string | undefined } {
  for (const event of events.slice(index + 1)) {
    if (event.kind === 'catch') return { end: event.time, word: undefined };
    const word = words[event.kind];
    if (word !== undefined) return { end: event.time, word };
  }
  return { end: until, word: undefined };
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(value)}`);
}
