import type { SpotId, Trigger } from '../../engine/index.ts';
import type { BeatEntry, PlayEntry } from '../schema.ts';
import { editedPlay, type PlayEdit, refused } from './edit-result.ts';
import { mapAction, mapRead, mapTrigger, type PhraseMap, spotsIn } from './map-action.ts';
import { type PlayGround, setSpots } from './play-ground.ts';
import { beatsOf, readsOf, type ScriptName, withBeats, withReads } from './play-script.ts';
import { type PlayWords, wordsOf } from './play-words.ts';

/**
 * Run the play from another set. Men whose spots have the same names there keep what they do; `as` says who takes over from whom:
 * `{ P: 'TR' }` lets TR do what P did. What nobody can do any more is lost, and told in `also`.
 */
export function changeSet(
  play: PlayEntry,
  ground: PlayGround,
  set: string,
  as: Readonly<Record<SpotId, SpotId>> = {},
): PlayEdit {
  if (set === play.set && Object.keys(as).length === 0) return editedPlay(play);
  const bare = withoutMoves({ ...play, set });
  const spots = setSpots(nameless(bare), ground);
  if (spots.length === 0) return refused(`No set is called "${set}".`);
  const here = new Set(spots.map((spot) => spot.id));
  const taken = Object.values(as).find((to, i, all) => !here.has(to) || all.indexOf(to) !== i);
  if (taken !== undefined)
    return refused(here.has(taken) ? `Two men cannot both become ${taken}.` : `The set "${set}" has no spot ${taken}.`);
  const also: string[] = [];
  if (play.spots !== undefined && play.set !== set) also.push('Everybody starts where the new set has him.');
  const manOf = (id: SpotId) => (Object.hasOwn(as, id) ? as[id]! : id);
  const move: Move = { play, ground, here, manOf, also };
  const main = moveScript(bare, move, 'main');
  const both = play.lastTen === undefined ? main : moveScript(main, move, 'lastTen');
  const handler = [...spots].sort((a, b) => b.needs.handle - a.needs.handle)[0]!.id;
  const ball = known(manOf(play.start.ball), handler, move, 'The play starts with the ball at');
  const reset = known(manOf(play.reset.ball), ball, move, 'The reset brings the ball to');
  return editedPlay({ ...both, start: { ...play.start, ball }, reset: { ...play.reset, ball: reset } }, also);
}

/** The play without anything that names a spot: names that the new set lacks would make the reader guess at another set. */
function nameless(play: PlayEntry): PlayEntry {
  const { spots: _, reads: __, lastTen: ___, ...rest } = play;
  return { ...rest, beats: [], start: { ...play.start, ball: '' }, reset: { ...play.reset, ball: '' } };
}

interface Move {
  readonly play: PlayEntry;
  readonly ground: PlayGround;
  readonly here: ReadonlySet<SpotId>;
  readonly manOf: (id: SpotId) => SpotId;
  readonly also: string[];
}

function withoutMoves(play: PlayEntry): PlayEntry {
  const { spots: _, ...rest } = play;
  return rest;
}

function known(id: SpotId, otherwise: SpotId, { here, also }: Move, words: string): SpotId {
  if (here.has(id)) return id;
  also.push(`${words} ${otherwise}, because ${id} is no spot of the set.`);
  return otherwise;
}

function moveScript(moved: PlayEntry, move: Move, script: ScriptName): PlayEntry {
  const { play, ground, here, manOf, also } = move;
  const beats = beatsOf(play, script);
  const words = wordsOf(play, ground, beats);
  const after = wordsOf(nameless(moved), ground, beats);
  const name_byHome = new Map([...words.homes].map(([id, at]) => [at, id]));
  const map: PhraseMap = {
    spot: manOf,
    place(point) {
      const name = name_byHome.get(point);
      // The home of a man who is gone is still a place.
      return (name === undefined ? undefined : after.homes.get(manOf(name))) ?? { ...point };
    },
  };
  const kept: BeatEntry[] = [];
  for (const beat of beats) {
    const phrases = beat.do.flatMap((text) => {
      const action = words.action(text);
      const changed = action && mapAction(action, map);
      if (changed !== undefined && spotsIn(changed).every((id) => here.has(id))) return after.writeAction(changed);
      also.push(`Lost from "${beat.id}": ${text}.`);
      return [];
    });
    const on = moveTrigger(beat, kept.at(-1), words, move);
    kept.push({ ...beat, on, do: phrases });
  }
  const reads = readsOf(play, script).flatMap((entry) => {
    const read = words.read(entry);
    const changed = read && mapRead(read, map);
    if (changed !== undefined && namesOf(changed).every((id) => here.has(id))) return after.writeRead(changed);
    also.push(`Lost: the read of ${entry.carrier} that ends in "${entry.then}".`);
    return [];
  });
  return withReads(withBeats(moved, script, kept), script, reads);
}

/** What starts the beat now: when it waited for a man who is gone, a second after the beat before it. */
function moveTrigger(beat: BeatEntry, before: BeatEntry | undefined, words: PlayWords, move: Move): string {
  const trigger = words.trigger(beat.on);
  const lost: string[] = [];
  const changed =
    trigger &&
    mapTrigger(trigger, (id) => {
      const to = move.manOf(id);
      if (!move.here.has(to)) lost.push(to);
      return to;
    });
  if (changed === undefined) return beat.on;
  if (lost.length === 0) return words.writeTrigger(changed);
  const next: Trigger = before === undefined ? { kind: 'start' } : { kind: 'call', beat: before.id, seconds: 1 };
  move.also.push(
    `"${beat.id}" starts on "${words.writeTrigger(next)}" now, because ${lost.join(' and ')} is no spot of the set.`,
  );
  return words.writeTrigger(next);
}

function namesOf(read: Parameters<typeof mapRead>[0]): readonly SpotId[] {
  const named: SpotId[] = [];
  mapRead(read, {
    spot(id) {
      named.push(id);
      return id;
    },
    place: (point) => point,
  });
  return named;
}
