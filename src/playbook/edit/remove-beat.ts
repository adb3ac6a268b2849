import { type Action, passStyleOf, type SpotId, type Trigger } from '../../engine/index.ts';
import { checkFlow } from '../play/check-flow.ts';
import { followScript } from '../play/flow.ts';
import { readPlay } from '../play/read-play.ts';
import { createReport } from '../report.ts';
import type { BeatEntry, PlayEntry } from '../schema.ts';
import { noBeat } from './edit-actions.ts';
import { editedPlay, type PlayEdit, refused } from './edit-result.ts';
import { type PlayGround, playSpots } from './play-ground.ts';
import { beatsOf, type FoundBeat, findBeat, readsOf, type ScriptName, withBeats, withReads } from './play-script.ts';
import { type PlayWords, wordsOf } from './play-words.ts';

/**
 * Take a beat out.
 *
 * What hangs on it is hung on what started it: calls by their seconds, and the ball goes straight to the man to whom the beat
 * brought it. Where that leaves a beat that nothing starts, or a man without the ball that he is told to throw, `keepRest` refuses and names
 * them, and `withRest` takes them out too. `also` tells what was changed.
 */
export function removeBeat(
  play: PlayEntry,
  ground: PlayGround,
  id: string,
  how: 'keepRest' | 'withRest' = 'keepRest',
): PlayEdit {
  const found = findBeat(play, id);
  if (found === undefined) return noBeat(id);
  if (found.script === 'main' && play.beats.length === 1)
    return refused('This is the only step of the play. Change it, or take the play out.');
  const before = countFaults(play, ground);
  const plain = takeOut(play, ground, found);
  if (countFaults(plain.play, ground) <= before) return editedPlay(dropEmptyLastTen(plain.play), plain.also);
  const bridged = bridge(plain.play, ground, found);
  if (bridged !== undefined && countFaults(bridged.play, ground) <= before)
    return editedPlay(bridged.play, [...plain.also, ...bridged.also]);
  const hanging = newlyStuck(play, plain.play, ground, found.script);
  if (how === 'withRest' && hanging.length > 0) return takeOutRest(plain, found.script, hanging);
  return refused(hangingWords(id, hanging));
}

interface Change {
  readonly play: PlayEntry;
  readonly also: readonly string[];
}

/** Without the beat and its reads, and with the calls that counted from it hung on what started it. */
function takeOut(play: PlayEntry, ground: PlayGround, { script, beat }: FoundBeat): Change {
  const words = wordsOf(play, ground, beatsOf(play, script));
  const own = words.trigger(beat.on);
  const also: string[] = [];
  const beats = beatsOf(play, script)
    .filter((each) => each !== beat)
    .map((each) => {
      const trigger = words.trigger(each.on);
      if (own === undefined || trigger?.kind !== 'call' || trigger.beat !== beat.id) return each;
      const on = words.writeTrigger(rehung(own, trigger.seconds));
      also.push(`"${each.id}" starts on "${on}" now.`);
      return { ...each, on };
    });
  return dropReads(withBeats(play, script, beats), script, [beat.id], also);
}

function rehung(own: Trigger, seconds: number): Trigger {
  // Sums of tenths are written as tenths.
  return own.kind === 'call' ? { ...own, seconds: Math.round((own.seconds + seconds) * 100) / 100 } : own;
}

function dropReads(play: PlayEntry, script: ScriptName, ids: readonly string[], also: readonly string[]): Change {
  const reads = readsOf(play, script);
  const kept = reads.filter((read) => read.during === undefined || !ids.includes(read.during));
  const lost = reads.length - kept.length;
  const told = lost === 0 ? [] : [`${lost === 1 ? 'A read' : `${lost} reads`} that belonged to it went with it.`];
  return { play: withReads(play, script, kept), also: [...also, ...told] };
}

/**
 * Throw straight to the man to whom the beat brought the ball; undefined when the beat brought it nowhere, or came by it otherwise than by
 * the start or a catch.
 */
function bridge(play: PlayEntry, ground: PlayGround, { script, beat }: FoundBeat): Change | undefined {
  const words = wordsOf(play, ground, beatsOf(play, script));
  const own = words.trigger(beat.on);
  const from =
    own?.kind === 'catch' ? own.by : own?.kind === 'start' && script === 'main' ? play.start.ball : undefined;
  const to = from === undefined ? undefined : carriedTo(from, beat, words);
  if (from === undefined || to === undefined || to === from) return undefined;
  return own?.kind === 'start'
    ? startElsewhere(play, words, from, to)
    : throwElsewhere(play, ground, script, words, from, to);
}

function carriedTo(from: SpotId, beat: BeatEntry, words: PlayWords): SpotId {
  const actions = beat.do.flatMap((text) => words.action(text) ?? []);
  return endOfRelay(from, actions);
}

/** Who has the ball when everybody of a beat has thrown it on who is told to. */
export function endOfRelay(from: SpotId, actions: readonly Action[]): SpotId {
  let holder = from;
  for (const _ of actions) {
    const thrown = actions.find((action) => action.kind === 'pass' && action.by === holder);
    if (thrown?.kind !== 'pass') break;
    holder = thrown.to;
  }
  return holder;
}

function startElsewhere(play: PlayEntry, words: PlayWords, from: SpotId, to: SpotId): Change {
  const beats = play.beats.map((beat) => {
    const trigger = words.trigger(beat.on);
    return trigger?.kind === 'catch' && trigger.by === to ? { ...beat, on: 'start' } : beat;
  });
  const reset = play.reset.ball === from ? { ...play.reset, ball: to } : play.reset;
  return {
    play: { ...withBeats(play, 'main', beats), start: { ...play.start, ball: to }, reset },
    also: [`The play starts with the ball at ${to} now.`],
  };
}

function throwElsewhere(
  play: PlayEntry,
  ground: PlayGround,
  script: ScriptName,
  words: PlayWords,
  from: SpotId,
  to: SpotId,
): Change {
  const spots = playSpots(play, ground);
  const indexOf = (id: SpotId) => spots.findIndex((spot) => spot.id === id);
  const places = spots.map((spot) => spot.at);
  const also: string[] = [];
  const beats = beatsOf(play, script).map((beat) => {
    const phrases = beat.do.map((text) => {
      const action = words.action(text);
      if (action?.kind !== 'pass' || action.to !== from || action.by === to) return text;
      also.push(`${action.by} throws to ${to} now.`);
      const style = passStyleOf(places, indexOf(action.by), indexOf(to));
      return words.writeAction({ ...action, to, style });
    });
    return phrases.every((text, i) => text === beat.do[i]) ? beat : { ...beat, do: phrases };
  });
  return { play: withBeats(play, script, beats), also };
}

function takeOutRest(plain: Change, script: ScriptName, hanging: readonly string[]): PlayEdit {
  const beats = beatsOf(plain.play, script).filter((beat) => !hanging.includes(beat.id));
  if (script === 'main' && beats.length === 0)
    return refused('Every step of the play hangs on this one. Change it, or take the play out.');
  const { play, also } = dropReads(withBeats(plain.play, script, beats), script, hanging, plain.also);
  return editedPlay(dropEmptyLastTen(play), [`With it went ${listOf(hanging)}.`, ...also]);
}

function dropEmptyLastTen(play: PlayEntry): PlayEntry {
  if (play.lastTen === undefined || beatsOf(play, 'lastTen').length + readsOf(play, 'lastTen').length > 0) return play;
  const { lastTen: _, ...rest } = play;
  return rest;
}

/** What of the flow of the play is wrong: beats that cannot start, men told to use a ball that they cannot have. */
function countFaults(play: PlayEntry, ground: PlayGround): number {
  const { draft } = readPlay(play, [], ground.sets, ground.field, createReport());
  if (draft === undefined) return 0;
  const report = createReport();
  checkFlow(draft, [], report);
  return report.finish().filter(({ severity }) => severity === 'error').length;
}

/** Beats that could start before and cannot now. */
function newlyStuck(before: PlayEntry, after: PlayEntry, ground: PlayGround, script: ScriptName): readonly string[] {
  const could = reachableIn(before, ground, script);
  const can = reachableIn(after, ground, script);
  return beatsOf(after, script)
    .map((beat) => beat.id)
    .filter((id) => could.has(id) && !can.has(id));
}

function reachableIn(play: PlayEntry, ground: PlayGround, script: ScriptName): ReadonlySet<string> {
  const { draft } = readPlay(play, [], ground.sets, ground.field, createReport());
  const read = script === 'main' ? draft?.play : draft?.play.lastTen;
  if (draft === undefined || read === undefined) return new Set();
  const everyone = new Set(draft.play.spots.map((spot) => spot.id));
  const first = script === 'main' ? new Set([draft.play.start.ball]) : everyone;
  return followScript(read, first, everyone).reachable;
}

function hangingWords(id: string, hanging: readonly string[]): string {
  if (hanging.length === 0) return `Without "${id}" the ball does not come to a man who is told to use it.`;
  const hang = hanging.length === 1 ? 'hangs' : 'hang';
  return `${listOf(hanging)} ${hang} on "${id}": nothing else in the play starts ${hanging.length === 1 ? 'it' : 'them'}.`;
}

function listOf(ids: readonly string[]): string {
  const quoted = ids.map((id) => `"${id}"`);
  return quoted.length < 2 ? quoted.join('') : `${quoted.slice(0, -1).join(', ')} and ${quoted.at(-1)}`;
}
