import type { Action, Beat, Play, Point } from '../../engine/index.ts';
import type { FieldMarkings } from '../field-scene.ts';

/**
 * A play on a smaller ground: every place `share` as far from the goal, `share` above 0. Men and letters are drawn as large as ever, so that in a small
 * picture they are larger beside the field, and can be read.
 */
export function scaledPlay(play: Play, share: number): Play {
  return {
    ...play,
    spots: play.spots.map((spot) => ({ ...spot, at: nearer(spot.at, share) })),
    start: { ...play.start, restart: nearer(play.start.restart, share) },
    beats: play.beats.map((beat) => scaledBeat(beat, share)),
  };
}

/** The lines on the ground of the same. */
export function scaledField(field: FieldMarkings, share: number): FieldMarkings {
  return {
    halfWidth: field.halfWidth * share,
    behind: field.behind * share,
    restraining: field.restraining * share,
    midfield: field.midfield * share,
    boxHalfWidth: field.boxHalfWidth === null ? null : field.boxHalfWidth * share,
    creaseRadius: field.creaseRadius * share,
    goalHalfWidth: field.goalHalfWidth * share,
    goalDepth: field.goalDepth * share,
  };
}

function nearer({ x, y }: Point, share: number): Point {
  return { x: x * share, y: y * share };
}

function scaledBeat(beat: Beat, share: number): Beat {
  return { ...beat, actions: beat.actions.map((action) => scaledAction(action, share)) };
}

function scaledAction(action: Action, share: number): Action {
  switch (action.kind) {
    case 'carry':
    case 'run':
      return { ...action, path: action.path.map((at) => nearer(at, share)) };
    case 'pick':
      return { ...action, at: nearer(action.at, share) };
    case 'stepIn':
      return { ...action, to: nearer(action.to, share) };
    case 'pass':
    case 'seal':
    case 'fake':
    case 'hold':
    case 'shot':
      return action;
    default:
      return exhaustive(action);
  }
}

function exhaustive(action: never): never {
  throw new TypeError(`unknown action: ${JSON.stringify(action)}`);
}
