import type { Action, BeatId, LookReport, LookWindow, Play, Read, SpotId, Trigger } from '../engine/index.ts';
import { printCue } from '../playbook/index.ts';

/** When one action is done, seconds after the play's first beat. */
export interface TempoAction {
  readonly start: number;
  readonly end: number;
}

/** A beat with the times of its actions in their order; `null` for one that never came about. */
export interface TempoBeat {
  readonly id: BeatId;
  readonly starts: number;
  readonly actions: readonly (TempoAction | null)[];
}

/** The ball's way: in a man's stick, on the way to another, or at the goal. Seconds after the play's first beat. */
export type BallLeg =
  | { readonly kind: 'held'; readonly spot: SpotId; readonly from: number; readonly to: number }
  | {
      readonly kind: 'pass';
      readonly from: SpotId;
      readonly to: SpotId;
      readonly leaves: number;
      readonly arrives: number;
      readonly style: 'adjacent' | 'skip' | 'feed';
      /** How it was lost: "dropped"; absent for a pass that is caught. */
      readonly lost?: string;
    }
  | {
      readonly kind: 'shot';
      readonly by: SpotId;
      readonly leaves: number;
      readonly arrives: number;
      /** What became of it: "goal", "saved"; absent as it is written. */
      readonly result?: string;
    };

/** When everything of a play happens: as it is written, or as it went in one trial. Beats in any order; those that never began are absent. */
export interface PlayTempo {
  readonly beats: readonly TempoBeat[];
  readonly ball: readonly BallLeg[];
}

/** A stretch of time in which a man is open and what taking it is worth. */
export interface OpenWindow {
  readonly spot: SpotId;
  readonly opens: number;
  readonly closes: number;
  /** Goals, 0 to 1. */
  readonly worth: number;
}

export interface ChartAction {
  /** Its place among the actions of its beat. */
  readonly index: number;
  readonly action: Action;
  readonly start: number;
  readonly end: number;
}

export interface ChartBeat {
  readonly id: BeatId;
  readonly trigger: Trigger;
  readonly starts: number;
  /** When the next one starts, or the chart's end. */
  readonly ends: number;
  readonly actions: readonly ChartAction[];
}

/** A taught read at the first moment at which its carrier can take it. */
export interface ChartRead {
  /** Its place among the play's reads. */
  readonly index: number;
  readonly read: Read;
  readonly at: number;
  /** What has to be seen: "open WR, left WR"; "always" when nothing has. */
  readonly cues: string;
}

/** A play over time: a row for each spot, seconds after the first beat to the right. */
export interface TempoChart {
  readonly name: string;
  /** From the top. */
  readonly rows: readonly SpotId[];
  /** Seconds shown. */
  readonly end: number;
  /** In the order in which they start. */
  readonly beats: readonly ChartBeat[];
  readonly ball: readonly BallLeg[];
  readonly reads: readonly ChartRead[];
  readonly windows: readonly OpenWindow[];
}

/** Shown after the last thing that happens, s. */
const afterLast = 0.6;
/** Even a play with nothing in it shows this much time, s. */
const shortestChart = 4;
/** From one read to the next of those that can be taken in one moment, s. */
const readStep = 0.4;
/** From the catch to the first read, s: nobody reads before he has the ball. */
const readAfter = 0.15;

/**
 * The chart of a play's own script. `windows` are those of one scheme (`windowsOfLooks`) or of one trial (`windowsOfTrial`). Beats without a time are left out;
 * what the script of the last ten seconds does is another chart. Throws a RangeError for a time that is no number.
 */
export function tempoChart(play: Play, tempo: PlayTempo, windows: readonly OpenWindow[] = []): TempoChart {
  const beats = beatsOf(play, tempo);
  const ball = [...tempo.ball].sort((a, b) => legStart(a) - legStart(b));
  const times = [...beats.flatMap(beatTimes), ...ball.map(legEnd)];
  const bad = times.find((time) => !Number.isFinite(time));
  if (bad !== undefined) throw new RangeError(`invalid time: ${bad} (expected seconds)`);
  const end = Math.max(shortestChart, Math.max(0, ...times) + afterLast);
  const ended = beats.map((beat, index) => ({ ...beat, ends: beats[index + 1]?.starts ?? end }));
  return {
    name: play.name,
    rows: play.spots.map(({ id }) => id),
    end,
    beats: ended,
    ball,
    reads: readsOf(play, ended, ball, end),
    windows: windows.filter(({ opens }) => opens < end),
  };
}

/** The looks of a scheme's report as windows: the median of when each is open, and what it is worth. */
export function windowsOfLooks(looks: readonly LookReport[]): readonly OpenWindow[] {
  return looks.map(({ to, opens, closes, value }) => ({ spot: to, opens, closes, worth: value }));
}

/** The windows of one trial: worth the odds that the ball arrives times those of the shot. One that closed before anybody could see it is left out. */
export function windowsOfTrial(
  windows: readonly LookWindow[],
  trial: number,
  spots: readonly SpotId[],
): readonly OpenWindow[] {
  return windows
    .filter((one) => one.trial === trial && one.completion > 0)
    .flatMap(({ to, opens, closes, completion, shotOdds }) => {
      const spot = spots[to];
      return spot === undefined ? [] : [{ spot, opens, closes, worth: completion * shotOdds }];
    });
}

export function legStart(leg: BallLeg): number {
  return leg.kind === 'held' ? leg.from : leg.leaves;
}

export function legEnd(leg: BallLeg): number {
  return leg.kind === 'held' ? leg.to : leg.arrives;
}

function beatsOf(play: Play, tempo: PlayTempo): readonly ChartBeat[] {
  return play.beats
    .flatMap(({ id, when, actions }) => {
      const timed = tempo.beats.find((one) => one.id === id);
      if (timed === undefined) return [];
      const { starts } = timed;
      const done = actions.flatMap((action, index) => {
        const time = timed.actions[index];
        return time === undefined || time === null ? [] : [{ index, action, start: time.start, end: time.end }];
      });
      return [{ id, trigger: when, starts, ends: starts, actions: done }];
    })
    .sort((a, b) => a.starts - b.starts);
}

function beatTimes({ starts, actions }: ChartBeat): readonly number[] {
  return [starts, ...actions.flatMap(({ start, end }) => [start, end])];
}

// Reads of one carrier in one beat are tried in their order: so they follow each other, all while he has the ball.
function readsOf(play: Play, beats: readonly ChartBeat[], ball: readonly BallLeg[], end: number): readonly ChartRead[] {
  const placed = play.reads.flatMap((read, index) => {
    const held = firstHeld(read, beats, ball, end);
    return held === undefined ? [] : [{ read, index, held, key: `${read.carrier} ${held.from}` }];
  });
  return placed.map(({ read, index, held, key }) => {
    const together = placed.filter((one) => one.key === key);
    const before = together.findIndex((one) => one.index === index);
    const step = Math.max(0, Math.min(readStep, (held.to - held.from - readAfter) / together.length));
    const cues = read.cues.length === 0 ? 'always' : read.cues.map((cue) => printCue(cue)).join(', ');
    return { index, read, at: held.from + readAfter + before * step, cues };
  });
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** While the carrier first has the ball and his read counts; its whole beat if the script never gives it to him then. */
function firstHeld(
  { carrier, during }: Read,
  beats: readonly ChartBeat[],
  ball: readonly BallLeg[],
  end: number,
): Span | undefined {
  const beat = beats.find(({ id }) => id === during);
  if (during !== undefined && beat === undefined) return undefined;
  const [from, to] = beat === undefined ? [0, end] : [beat.starts, beat.ends];
  for (const leg of ball) {
    if (leg.kind !== 'held' || leg.spot !== carrier || leg.to <= from || leg.from >= to) continue;
    return { from: Math.max(leg.from, from), to: Math.min(leg.to, to) };
  }
  return beat === undefined ? undefined : { from, to };
}
