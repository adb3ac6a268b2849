import type { Action, Cue, Order, Point, Read, SpotId, Trigger } from '../../engine/index.ts';
import { parseAction, parseCarrierAction } from '../language/parse-action.ts';
import { parseCue } from '../language/parse-cue.ts';
import { parseTrigger } from '../language/parse-trigger.ts';
import type { PlayNames } from '../language/play-names.ts';
import { type PlaceNamer, printAction, printCarrierAction, printCue, printTrigger } from '../language/print-phrase.ts';
import type { BeatEntry, PlayEntry } from '../schema.ts';
import { type PlayGround, playSpots } from './play-ground.ts';
import type { ReadEntry } from './play-script.ts';

/**
 * Reads and writes the phrases of one play. A phrase that cannot be read is `undefined`, and its edits are refused.
 *
 * A place that was written by a spot's name is that spot's own point in `homes`, the same object: so it is told from x,y, and is
 * written by the name again.
 */
export interface PlayWords {
  readonly homes: ReadonlyMap<SpotId, Point>;
  action(text: string): Action | undefined;
  trigger(text: string): Trigger | undefined;
  read(entry: ReadEntry): Read | undefined;
  writeAction(action: Action): string;
  writeTrigger(trigger: Trigger): string;
  writeRead(read: Read): ReadEntry;
}

/** The words of a play whose beats are these (those of the last ten seconds have names of their own). */
export function wordsOf(play: PlayEntry, ground: PlayGround, beats: readonly BeatEntry[] = play.beats): PlayWords {
  const homes = new Map(playSpots(play, ground).map((spot) => [spot.id, spot.at]));
  const names: PlayNames = {
    spots: homes,
    beats: new Set(beats.map((beat) => beat.id)),
    // A spot that is not there, a place that is not allowed: an edit may be what mends them.
    anySpot: true,
    placeFault: () => undefined,
  };
  const name_byHome = new Map([...homes].map(([id, at]) => [at, id]));
  const nameOf: PlaceNamer = (place) => name_byHome.get(place);
  /** A place by the name of a spot that is not there is no place that could be written again. */
  const known: Known = (action) =>
    action !== undefined && placesIn(action).every((place) => Number.isFinite(place.x)) ? action : undefined;
  return {
    homes,
    action: (text) => known(parseAction(text, names).value),
    trigger: (text) => parseTrigger(text, names).value,
    read: (entry) => readRead(entry, names, known),
    writeAction: (action) => printAction(action, nameOf),
    writeTrigger: printTrigger,
    writeRead: ({ carrier, during, cues, then }) => ({
      carrier,
      ...(during !== undefined && { during }),
      if: cues.map(printCue),
      then: printCarrierAction(then, nameOf),
    }),
  };
}

/** An order itself when its places are, `undefined` otherwise. */
type Known = <A extends Order>(action: A | undefined) => A | undefined;

function readRead(entry: ReadEntry, names: PlayNames, known: Known): Read | undefined {
  const cues = entry.if.map((text) => parseCue(text, entry.carrier, names).value);
  const then = known(parseCarrierAction(entry.then, entry.carrier, names).value);
  if (then === undefined || cues.includes(undefined)) return undefined;
  const { carrier, during } = entry;
  return { carrier, ...(during !== undefined && { during }), cues: cues as Cue[], then };
}

/** The places that an action names, on its way and at its end. */
export function placesIn(action: Order): readonly Point[] {
  switch (action.kind) {
    case 'carry':
    case 'run':
      return action.path;
    case 'stepIn':
      return [action.to];
    case 'pick':
      return [action.at];
    default:
      return [];
  }
}
