import type { Play } from '../engine/index.ts';
import type { FieldMarkings } from './field-scene.ts';
import { playScene, type Written } from './play-scene.ts';
import { playSteps } from './play-steps.ts';
import type { Scene } from './scene.ts';

/** One picture of a play as it is written. */
export interface PlayFrame {
  /** The beat that it shows: "freeze"; "set" for the first one. */
  readonly beat: string;
  readonly lastTen: boolean;
  readonly scene: Scene;
}

/**
 * A play as it is written, to be held against the file: the set, then one picture for each beat in the order in which they start, then
 * those of the last ten seconds, which begin in the set because nobody knows where they will find everyone.
 */
export function playFrames(play: Play, field: FieldMarkings): readonly PlayFrame[] {
  const set = { beat: 'set', lastTen: false, scene: playScene(play, 0, field) };
  const beats = framesOf(play, field, 'play');
  if (play.lastTen === undefined) return [set, ...beats];
  const lastTen: Play = {
    ...play,
    name: `${play.name}, last ten seconds`,
    // Whoever has the ball then.
    start: { ...play.start, ball: '' },
    ...play.lastTen,
  };
  return [set, ...beats, ...framesOf(lastTen, field, 'lastTen')];
}

function framesOf(play: Play, field: FieldMarkings, written: Written): readonly PlayFrame[] {
  return playSteps(play).map(({ beat }, i) => ({
    beat: beat.id,
    lastTen: written === 'lastTen',
    scene: playScene(play, i + 1, field, written),
  }));
}
