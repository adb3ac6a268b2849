import { mirrorPoint, mirrorSpot, mirrorSpotId, type Point, type Spot, type SpotId } from '../../engine/index.ts';
import { pointOf } from '../play/read-set.ts';
import type { PlayEntry } from '../schema.ts';
import { editedPlay, type PlayEdit, refused } from './edit-result.ts';
import { mapAction, mapRead, mapTrigger, type PhraseMap } from './map-action.ts';
import { type PlayGround, playSpots, setSpots } from './play-ground.ts';
import { beatsOf, readsOf, type ScriptName, withBeats, withReads } from './play-script.ts';
import { wordsOf } from './play-words.ts';

/**
 * The play written from the other side: `toEnginePlay` of it is the mirror image of what it was, but for the order of the spots.
 * Twice gives the play back. Refused when the set has no left and right to exchange, or a phrase cannot be read.
 */
export function mirrorEntry(play: PlayEntry, ground: PlayGround): PlayEdit {
  const spots = setSpots(play, ground);
  if (spots.length === 0) return refused(`No set is called "${play.set}".`);
  const lopsided = spots.find((spot) => !hasTwin(spot, spots));
  if (lopsided !== undefined)
    return refused(
      `The set "${play.set}" has no other side: ${mirrorSpotId(lopsided.id)} would have to be what ${lopsided.id} is, mirrored.`,
    );
  const moved = mirrorMoves(play, ground, spots);
  const turned: PlayEntry = {
    ...moved,
    start: {
      ball: mirrorSpotId(play.start.ball),
      restart: pairOf(mirrorPoint(pointOf(play.start.restart))),
    },
    reset: { ...play.reset, ball: mirrorSpotId(play.reset.ball) },
  };
  const unread = unreadIn(play, ground);
  if (unread !== undefined) return refused(`"${unread}" cannot be read, so it cannot be mirrored. Fix it first.`);
  const main = mirrorScript(turned, play, ground, 'main');
  return editedPlay(play.lastTen === undefined ? main : mirrorScript(main, play, ground, 'lastTen'));
}

/** Whether the set has a spot that asks for the mirror image of what this one does, wherever it stands. */
function hasTwin(spot: Spot, spots: readonly Spot[]): boolean {
  const { id, hand, needs, safety } = mirrorSpot(spot);
  return spots.some(
    (other) =>
      other.id === id &&
      other.hand === hand &&
      other.safety === safety &&
      other.needs.feed === needs.feed &&
      other.needs.shoot === needs.shoot &&
      other.needs.inside === needs.inside &&
      other.needs.handle === needs.handle,
  );
}

/** The spots where the mirror image has them: those that the set does not have there are written as moves, in the set's order. */
function mirrorMoves(play: PlayEntry, ground: PlayGround, spots: readonly Spot[]): PlayEntry {
  const images = new Map(playSpots(play, ground).map((spot) => [mirrorSpotId(spot.id), mirrorPoint(spot.at)]));
  const moves: Record<SpotId, [number, number]> = {};
  // A set's own order of names, but those that were written come as they were: twice is the same text.
  const written = Object.keys(play.spots ?? {}).map(mirrorSpotId);
  for (const id of new Set([...written, ...spots.map((spot) => spot.id)])) {
    const home = spots.find((spot) => spot.id === id);
    const image = images.get(id);
    if (home === undefined || image === undefined) continue;
    if (image.x !== home.at.x || image.y !== home.at.y) moves[id] = pairOf(image);
  }
  const { spots: _, ...rest } = play;
  return Object.keys(moves).length === 0 ? rest : inOrder({ ...rest, spots: moves }, play);
}

/** The fields of a play in the order in which they were. */
function inOrder(play: PlayEntry, like: PlayEntry): PlayEntry {
  return { ...like, ...play };
}

function mirrorScript(turned: PlayEntry, play: PlayEntry, ground: PlayGround, script: ScriptName): PlayEntry {
  const beats = beatsOf(play, script);
  const words = wordsOf(play, ground, beats);
  const image = wordsOf(turned, ground, beats);
  const twin_byHome = new Map<Point, Point>();
  for (const [id, at] of words.homes) {
    const twin = image.homes.get(mirrorSpotId(id));
    if (twin !== undefined) twin_byHome.set(at, twin);
  }
  const map: PhraseMap = { spot: mirrorSpotId, place: (point) => twin_byHome.get(point) ?? mirrorPoint(point) };
  const mirroredBeats = beats.map((beat) => ({
    ...beat,
    on: image.writeTrigger(mapTrigger(words.trigger(beat.on)!, map.spot)),
    do: beat.do.map((text) => image.writeAction(mapAction(words.action(text)!, map))),
  }));
  const mirroredReads = readsOf(play, script).map((read) => image.writeRead(mapRead(words.read(read)!, map)));
  return withReads(withBeats(turned, script, mirroredBeats), script, mirroredReads);
}

/** A phrase of the play that cannot be read, if there is one. */
function unreadIn(play: PlayEntry, ground: PlayGround): string | undefined {
  for (const script of ['main', 'lastTen'] as const) {
    const beats = beatsOf(play, script);
    const words = wordsOf(play, ground, beats);
    for (const { on, do: phrases } of beats) {
      if (words.trigger(on) === undefined) return on;
      const unread = phrases.find((text) => words.action(text) === undefined);
      if (unread !== undefined) return unread;
    }
    const read = readsOf(play, script).find((each) => words.read(each) === undefined);
    if (read !== undefined) return read.then;
  }
  return undefined;
}

function pairOf({ x, y }: Point): [number, number] {
  return [x, y];
}
