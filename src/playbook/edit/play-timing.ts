import { flightTime, type Level, levelMean, type Point, type SpotId } from '../../engine/index.ts';
import { readPlay } from '../play/read-play.ts';
import { ScriptWalk, type Way } from '../play/script-walk.ts';
import { type ScriptMan, usualClock, usualMan } from '../play/usual-clock.ts';
import { createReport } from '../report.ts';
import type { PlayEntry } from '../schema.ts';
import type { ActionAddress } from './edit-result.ts';
import type { PlayGround } from './play-ground.ts';
import { beatsOf, type ScriptName } from './play-script.ts';

/** A script as it is written, over time, when nobody hinders it: seconds after its first beat. Plain data. */
export interface PlayTiming {
  /** Beats in the order in which they start; those that nothing starts are left out. */
  readonly beats: readonly TimedBeat[];
  readonly ways: readonly TimedWay[];
  readonly throws: readonly TimedThrow[];
  readonly shots: readonly TimedShot[];
  /** Who has the ball when; between two of them it is in the air. */
  readonly holds: readonly TimedHold[];
  /** When the last of it is over. */
  readonly ends: number;
}

export interface TimedBeat {
  readonly beat: string;
  readonly at: number;
  /** Who has the ball then, or is about to catch it. */
  readonly holder?: SpotId;
}

/** A man on a way that an action sends him. */
export interface TimedWay {
  readonly at: ActionAddress;
  readonly who: SpotId;
  readonly starts: number;
  readonly ends: number;
  /** He comes to its end; else he is sent elsewhere, or stops for the ball, before. */
  readonly whole: boolean;
  readonly carries: boolean;
  /** Where he is at `starts`, and every `frameSeconds` from then to `ends`. */
  readonly places: readonly Point[];
}

export interface TimedThrow {
  readonly at: ActionAddress;
  readonly from: SpotId;
  readonly to: SpotId;
  readonly leaves: number;
  readonly arrives: number;
  readonly fromPlace: Point;
  readonly toPlace: Point;
}

export interface TimedShot {
  readonly at: ActionAddress;
  readonly who: SpotId;
  readonly leaves: number;
}

export interface TimedHold {
  readonly who: SpotId;
  readonly from: number;
  readonly until: number;
}

/** Time between two places of a way, s. */
export const frameSeconds = 0.1;

export interface TimingOptions {
  readonly script: ScriptName;
  /** Who stands at each spot; a usual man of the level where there is nobody. */
  readonly men: ReadonlyMap<SpotId, ScriptMan>;
  /** Who has the ball at the start; by default the man who starts the play, and nobody in the last ten seconds. */
  readonly ball: SpotId | undefined;
}

/**
 * The play as written over time, with the usual men of its level. An empty timing for a play whose set is not known; what cannot be read of it
 * is left out. Nothing is waited for: every pass is thrown and every run that waits until it is open goes at once
 * (docs/models/play-timing.md holds it against chances).
 */
export function playTiming(play: PlayEntry, ground: PlayGround, options: Partial<TimingOptions> = {}): PlayTiming {
  const { script = 'main', men, ball } = options;
  const { draft } = readPlay(play, [], ground.sets, ground.field, createReport());
  const read = script === 'main' ? draft?.play : draft?.play.lastTen;
  if (draft === undefined || read === undefined) return nothing;
  const usual = usualMan(ground.level);
  const ids = beatsOf(play, script).map((beat) => beat.id);
  const starter = ball ?? (script === 'main' ? draft.play.start.ball : undefined);
  const clock = usualClock((who) => men?.get(who) ?? usual);
  return record((watcher) => new ScriptWalk(draft.play, read.beats, starter, clock, watcher), ids, starter);
}

const nothing: PlayTiming = { beats: [], ways: [], throws: [], shots: [], holds: [], ends: 0 };

type Watcher = ConstructorParameters<typeof ScriptWalk>[4];

function record(
  create: (watcher: Watcher) => ScriptWalk,
  ids: readonly string[],
  starter: SpotId | undefined,
): PlayTiming {
  const beats: TimedBeat[] = [];
  const ways: TimedWay[] = [];
  const throws: TimedThrow[] = [];
  const shots: TimedShot[] = [];
  const holds: TimedHold[] = [];
  let held = starter === undefined ? undefined : { who: starter, from: 0 };
  const letGo = (until: number) => {
    if (held !== undefined) holds.push({ ...held, until });
    held = undefined;
  };
  const address = ({ beat, action }: { readonly beat: number; readonly action: number }) => ({
    beat: ids[beat]!,
    action,
  });
  const walk = create({
    started(beat, at, holder) {
      beats.push({ beat: ids[beat]!, at, ...(holder !== undefined && { holder }) });
    },
    ended(way, at) {
      ways.push(timedWay(way, at, address(way.order)));
    },
    released(order, from, to, leaves, arrives) {
      letGo(leaves);
      const [fromPlace, toPlace] = [placeOf(walk, from, leaves), placeOf(walk, to, arrives)];
      throws.push({ at: address(order), from, to, leaves, arrives, fromPlace, toPlace });
    },
    caught(who, at) {
      held = { who, from: at };
    },
    shot(order, who, leaves) {
      letGo(leaves);
      shots.push({ at: address(order), who, leaves });
    },
  });
  walk.run();
  const ends = Math.max(
    0,
    ...[...ways.map((way) => way.ends), ...throws.map((one) => one.arrives), ...shots.map((one) => one.leaves)],
    ...beats.map((beat) => beat.at),
  );
  letGo(ends);
  return { beats, ways, throws, shots, holds, ends };
}

function placeOf(walk: ScriptWalk, who: SpotId, at: number): Point {
  const { x, y } = walk.placeOf(who, at);
  return { x, y };
}

function timedWay({ who, since, until, carries, motion }: Way, ends: number, at: ActionAddress): TimedWay {
  const places: Point[] = [];
  for (let i = 0; i * frameSeconds < ends - since; i++) {
    const { x, y } = motion.at(i * frameSeconds);
    places.push({ x, y });
  }
  const last = motion.at(ends - since);
  places.push({ x: last.x, y: last.y });
  return { at, who, starts: since, ends, whole: ends >= until, carries, places };
}

/** Yards from one place to another, and the seconds that a pass of a usual man of the level takes for it once it has left the stick. */
export function passTime(from: Point, to: Point, level: Level): { readonly yards: number; readonly seconds: number } {
  const yards = Math.hypot(from.x - to.x, from.y - to.y);
  return { yards, seconds: flightTime(yards, levelMean(level, 'passSpeed')) };
}
