import type { Point, SpotId } from '../../engine/index.ts';
import type { PlayEntry } from '../schema.ts';
import { freshBeatId } from './edit-beats.ts';
import { editedPlay, type PlayEdit, type Refused, refused } from './edit-result.ts';
import { restartRefusal, roundPlace } from './place-rules.ts';
import { type PlayGround, setSpots } from './play-ground.ts';

/** Who has the ball when the set is up. A play that ran again from the man before runs again from him. */
export function setStartBall(play: PlayEntry, ground: PlayGround, ball: SpotId): PlayEdit {
  const refusal = spotRefusal(play, ground, ball);
  if (refusal !== undefined) return refusal;
  if (play.start.ball === ball) return editedPlay(play);
  const follows = play.reset.then === 'again' && play.reset.ball === play.start.ball;
  const moved: PlayEntry = { ...play, start: { ...play.start, ball } };
  return follows
    ? editedPlay({ ...moved, reset: { ...play.reset, ball } }, [`The reset brings the ball to ${ball} too.`])
    : editedPlay(moved);
}

/** Where the ball is put in play after the whistle, yards: outside the box. */
export function setRestart(play: PlayEntry, ground: PlayGround, to: Point): PlayEdit {
  const at = roundPlace(to, ground.field);
  const refusal = restartRefusal(at, ground.field);
  if (refusal !== undefined) return refusal;
  const [x, y] = play.start.restart;
  if (x === at.x && y === at.y) return editedPlay(play);
  return editedPlay({ ...play, start: { ...play.start, restart: [at.x, at.y] } });
}

/** What the unit does when the script cannot go on. */
export function setReset(play: PlayEntry, ground: PlayGround, reset: PlayEntry['reset']): PlayEdit {
  const refusal = spotRefusal(play, ground, reset.ball);
  if (refusal !== undefined) return refusal;
  const same = reset.ball === play.reset.ball && reset.then === play.reset.then;
  return editedPlay(same ? play : { ...play, reset: { ball: reset.ball, then: reset.then } });
}

/** Give the last ten seconds a script of their own: one empty beat that starts at once. */
export function addLastTen(play: PlayEntry): PlayEdit {
  if (play.lastTen !== undefined) return refused('The last ten seconds have a script already.');
  const id = freshBeatId(play, 'last');
  return editedPlay({ ...play, lastTen: { beats: [{ id, on: 'start', do: [] }] } }, [], { beat: id, action: 0 });
}

/** Let the play go on unchanged in the last ten seconds. */
export function removeLastTen(play: PlayEntry): PlayEdit {
  if (play.lastTen === undefined) return editedPlay(play);
  const { lastTen: _, ...rest } = play;
  return editedPlay(rest);
}

function spotRefusal(play: PlayEntry, ground: PlayGround, spot: SpotId): Refused | undefined {
  return setSpots(play, ground).some((each) => each.id === spot) ? undefined : refused(`The play has no spot ${spot}.`);
}
