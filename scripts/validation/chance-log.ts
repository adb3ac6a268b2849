import {
  type ChanceModel,
  type ChanceState,
  type Recorder,
  runTrial,
  type TraceEvent,
  type TurnoverKind,
} from '../../src/engine/index.ts';

/** A shot as a scorekeeper sees it. Times are seconds after the restart. */
export interface ShotLog {
  readonly time: number;
  readonly distance: number;
  /** The scorer would be given an assist. */
  readonly assisted: boolean;
  readonly pressed: boolean;
  /** What the model gave it at its release. */
  readonly goalOdds: number;
  result: 'goal' | 'save' | 'wide' | 'pipe' | 'block';
}

/** What happened in one chance while the penalty ran; whatever came later is left out. */
export interface ChanceLog {
  readonly shots: ShotLog[];
  passes: number;
  caught: number;
  /** Of the passes, those that the play or one of its reads asked for. */
  playPasses: number;
  /** Beats of the play that began, counted anew after each reset; when the first did, NaN when none did. */
  beats: number;
  beganAt: number;
  /** How the ball was lost; null when it was not. */
  lost: TurnoverKind | null;
  lostAt: number;
  /** The defense picked a ball up off the ground before the unit had shot. */
  groundBallBeforeShot: boolean;
}

/** Log trials `from` (included) to `to` (excluded) of a chance, each until `seconds` of penalty are over. */
export function logTrials(
  model: ChanceModel,
  state: ChanceState,
  seconds: number,
  from: number,
  to: number,
): ChanceLog[] {
  const recorder = createLogger(seconds);
  state.recorder = recorder;
  const logs: ChanceLog[] = [];
  for (let trial = from; trial < to; trial++) {
    runTrial(model, state, trial);
    logs.push(recorder.take());
  }
  state.recorder = null;
  return logs;
}

interface Logger extends Recorder {
  /** The chance so far; the next event begins another. */
  take(): ChanceLog;
}

function createLogger(seconds: number): Logger {
  let log = emptyLog();
  return {
    event: (event) => {
      if (event.time <= seconds) addEvent(log, event);
      else settleLate(log, event);
    },
    frame: () => undefined,
    take: () => {
      const done = log;
      log = emptyLog();
      return done;
    },
  };
}

function emptyLog(): ChanceLog {
  return {
    shots: [],
    passes: 0,
    caught: 0,
    playPasses: 0,
    beats: 0,
    beganAt: Number.NaN,
    lost: null,
    lostAt: Number.NaN,
    groundBallBeforeShot: false,
  };
}

function addEvent(log: ChanceLog, event: TraceEvent): void {
  switch (event.kind) {
    case 'pass':
      log.passes++;
      if (event.why === 'script' || event.why === 'read') log.playPasses++;
      return;
    case 'beat':
      if (log.beats === 0) log.beganAt = event.time;
      log.beats++;
      return;
    case 'catch':
      log.caught++;
      return;
    case 'shot': {
      const { time, distance, pressed, goalOdds, assistedBy } = event;
      log.shots.push({ time, distance, pressed, goalOdds, assisted: assistedBy >= 0, result: 'wide' });
      return;
    }
    case 'groundBall':
      if (event.won === 'defense' && log.shots.length === 0) log.groundBallBeforeShot = true;
      return;
    case 'turnover':
      log.lost = event.how;
      log.lostAt = event.time;
      return;
    default:
      setResult(log, event);
  }
}

/** A shot that was in the air when the penalty ended is counted with its result; nothing else of what comes later is. */
function settleLate(log: ChanceLog, event: TraceEvent): void {
  const last = log.shots.at(-1);
  if (last !== undefined && event.time - last.time < longestFlight) setResult(log, event);
}

/** No shot is longer in the air than this, s. */
const longestFlight = 1;

function setResult(log: ChanceLog, event: TraceEvent): void {
  const last = log.shots.at(-1);
  if (last === undefined) return;
  if (event.kind === 'goal' || event.kind === 'save' || event.kind === 'wide' || event.kind === 'pipe')
    last.result = event.kind;
  if (event.kind === 'blocked') last.result = 'block';
}
