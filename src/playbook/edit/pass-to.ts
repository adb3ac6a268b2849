import { type Action, type Point, passStyleOf, type Spot, type SpotId } from '../../engine/index.ts';
import type { PlayEntry } from '../schema.ts';
import { addAction, noBeat } from './edit-actions.ts';
import { addBeat } from './edit-beats.ts';
import { type PlayEdit, refused } from './edit-result.ts';
import { type PlayGround, playSpots } from './play-ground.ts';
import { beatsOf, type FoundBeat, findBeat } from './play-script.ts';
import { playTiming } from './play-timing.ts';
import { type PlayWords, placesIn, wordsOf } from './play-words.ts';
import { endOfRelay } from './remove-beat.ts';

/**
 * Point at the man who is to get the ball: who has it at the end of this beat throws it to him.
 *
 * It is a feed, a skip or a pass by where the men stand then. When the beat holds a throw already, this one is thrown on its catch: in the
 * beat that waits for it, or in a new one. `at` says where it was written.
 */
export function passTo(play: PlayEntry, ground: PlayGround, beat: string, to: SpotId): PlayEdit {
  const found = findBeat(play, beat);
  if (found === undefined) return noBeat(beat);
  const spots = playSpots(play, ground);
  if (!spots.some((spot) => spot.id === to)) return refused(`The play has no spot ${to}.`);
  const words = wordsOf(play, ground, beatsOf(play, found.script));
  const first = holderAtStart(play, ground, found);
  if (first === undefined) return refused(`Nobody has the ball in the step "${beat}" as the play is written.`);
  const actions = actionsOf(found, words);
  const holder = endOfRelay(first, actions);
  if (holder === to) return refused(`${to} has the ball already.`);
  const shoots = actions.some((action) => action.kind === 'shot' && action.by === holder);
  if (shoots) return refused(`${holder} shoots in the step "${beat}". Take the shot out first.`);
  const places = placesAfter(play, ground, found, words, spots);
  const action = throwBetween(spots, places, holder, to);
  if (holder === first && !throwsIn(actions)) return addAction(play, ground, beat, action);
  return throwOnCatch(play, ground, found, words, action);
}

/** The pass between two spots when everybody stands at these places: its style is what the trade calls it. */
export function throwBetween(
  spots: readonly Spot[],
  places: ReadonlyMap<SpotId, Point>,
  by: SpotId,
  to: SpotId,
): Extract<Action, { kind: 'pass' }> {
  const at = spots.map((spot) => places.get(spot.id) ?? spot.at);
  const indexOf = (id: SpotId) => spots.findIndex((spot) => spot.id === id);
  return { kind: 'pass', by, to, style: passStyleOf(at, indexOf(by), indexOf(to)) };
}

/** Who has the ball, or is about to catch it, when a beat starts, as the play is written; undefined when nobody does. */
export function holderAtStart(play: PlayEntry, ground: PlayGround, found: FoundBeat): SpotId | undefined {
  const words = wordsOf(play, ground, beatsOf(play, found.script));
  const trigger = words.trigger(found.beat.on);
  if (trigger?.kind === 'catch') return trigger.by;
  if (trigger?.kind === 'pass' && trigger.to !== undefined) return trigger.to;
  // In the last ten seconds anybody may have the ball.
  if (found.script === 'lastTen') return undefined;
  if (trigger?.kind === 'start') return play.start.ball;
  return playTiming(play, ground).beats.find((each) => each.beat === found.beat.id)?.holder;
}

function actionsOf({ beat }: FoundBeat, words: PlayWords): readonly Action[] {
  return beat.do.flatMap((text) => words.action(text) ?? []);
}

function throwsIn(actions: readonly Action[]): boolean {
  return actions.some((action) => action.kind === 'pass' || action.kind === 'shot');
}

/** Where everybody is once he has done what the script up to this beat tells him, in the order in which the beats start. */
function placesAfter(
  play: PlayEntry,
  ground: PlayGround,
  found: FoundBeat,
  words: PlayWords,
  spots: readonly Spot[],
): ReadonlyMap<SpotId, Point> {
  const places = new Map(spots.map((spot) => [spot.id, spot.at]));
  const order = playTiming(play, ground, { script: found.script }).beats.map((each) => each.beat);
  const until = order.indexOf(found.beat.id);
  for (const id of [...order.slice(0, Math.max(0, until)), found.beat.id]) {
    const beat = beatsOf(play, found.script).find((each) => each.id === id);
    for (const text of beat?.do ?? []) {
      const action = words.action(text);
      const end = action === undefined ? undefined : placesIn(action).at(-1);
      if (action !== undefined && end !== undefined) places.set(action.by, end);
    }
  }
  return places;
}

function throwOnCatch(
  play: PlayEntry,
  ground: PlayGround,
  found: FoundBeat,
  words: PlayWords,
  action: Extract<Action, { kind: 'pass' }>,
): PlayEdit {
  const beats = beatsOf(play, found.script);
  const next = beats.find((each) => {
    const trigger = words.trigger(each.on);
    return trigger?.kind === 'catch' && trigger.by === action.by;
  });
  if (next !== undefined) return addAction(play, ground, next.id, action);
  const added = addBeat(play, ground, found.script, { kind: 'catch', by: action.by }, found.index + 1);
  if (added.kind === 'refused' || added.at === undefined) return added;
  return addAction(added.play, ground, added.at.beat, action);
}
