import type { Action, Beat, Play, Point } from '../../engine/index.ts';
import type { JsonPath } from '../json/json-node.ts';
import { unknownName } from '../language/phrase.ts';
import type { Report } from '../report.ts';

/** Men whose runs end nearer to each other than this stand in each other's way, yd. */
const sameEnd = 1;

/** Everything in a beat starts at once: says who is told to be in two places, or to do two things with one ball. */
export function checkBeats(play: Play, path: JsonPath, report: Report): void {
  for (const [i, beat] of play.beats.entries()) checkBeat(beat, [...path, 'beats', i], report);
  for (const [i, beat] of (play.lastTen?.beats ?? []).entries())
    checkBeat(beat, [...path, 'lastTen', 'beats', i], report);
}

function checkBeat(beat: Beat, path: JsonPath, report: Report): void {
  const seen = new Map<string, Action>();
  for (const [i, action] of beat.actions.entries()) {
    if (action.by === unknownName) continue;
    const slot = slotOf(action);
    const key = `${action.by} ${slot}`;
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, action);
      continue;
    }
    if (slot === 'move') {
      report.add(
        'two-places',
        [...path, 'do', i],
        `${action.by} is told to go two ways at once in the step "${beat.id}". Join them into one way with "via", or give the second a step of its own.`,
      );
    } else {
      report.add(
        'two-ball-actions',
        [...path, 'do', i],
        `${action.by} is told to ${slotWords[slot]} twice in the step "${beat.id}". Give the second a step of its own.`,
      );
    }
  }
  checkEnds(beat, path, report);
}

/** What a man can be told once in a beat: one way to go, one throw or shot, one fake, one hold. */
export type Slot = 'move' | 'release' | 'fake' | 'hold';

export const slotWords: Readonly<Record<Exclude<Slot, 'move'>, string>> = {
  release: 'throw or shoot',
  fake: 'fake',
  hold: 'hold the ball',
};

/** A man has one order of each slot at a time. */
export function slotOf(action: Action): Slot {
  switch (action.kind) {
    case 'carry':
    case 'run':
    case 'pick':
    case 'seal':
    case 'stepIn':
      return 'move';
    case 'pass':
    case 'shot':
      return 'release';
    case 'fake':
    case 'hold':
      return action.kind;
    default:
      return exhaustive(action);
  }
}

function checkEnds(beat: Beat, path: JsonPath, report: Report): void {
  const ends = beat.actions.flatMap((action, i) => {
    const at = endOf(action);
    return at === undefined || !Number.isFinite(at.x) ? [] : [{ i, by: action.by, at }];
  });
  for (const [k, one] of ends.entries()) {
    for (const other of ends.slice(k + 1)) {
      if (one.by === other.by || Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y) >= sameEnd) continue;
      report.add(
        'moves-meet',
        [...path, 'do', other.i],
        `${one.by} and ${other.by} end in the same place, ${other.at.x},${other.at.y}. Let one of them stop elsewhere.`,
      );
    }
  }
}

/** Where an action sends the man, if anywhere. */
export function endOf(action: Action): Point | undefined {
  switch (action.kind) {
    case 'carry':
    case 'run':
      return action.path.at(-1);
    case 'pick':
      return action.at;
    case 'stepIn':
      return action.to;
    default:
      return undefined;
  }
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(value)}`);
}
