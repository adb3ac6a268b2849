import type { Action, Trigger } from '../../engine/index.ts';
import { longestCall } from '../language/parse-trigger.ts';
import { beatIdPattern } from '../language/patterns.ts';
import { limits } from '../limits.ts';
import type { BeatEntry, PlayEntry } from '../schema.ts';
import { noBeat } from './edit-actions.ts';
import { editedPlay, type PlayEdit, type Refused, refused } from './edit-result.ts';
import { mapTrigger } from './map-action.ts';
import type { PlayGround } from './play-ground.ts';
import {
  beatsOf,
  type FoundBeat,
  findBeat,
  readsOf,
  type ScriptName,
  withBeat,
  withBeats,
  withReads,
} from './play-script.ts';
import { type PlayWords, wordsOf } from './play-words.ts';

/** How long after a beat a call comes when nothing in the beat can be waited for, s (ours, no source). */
const usualCall = 1;

/**
 * Add an empty beat after one. It starts on what follows from that one: after a pass the catch, after a carry, a step or a run its end; else, or
 * when another beat waits for that already, a second after it.
 */
export function addBeatAfter(play: PlayEntry, ground: PlayGround, after: string, id?: string): PlayEdit {
  const found = findBeat(play, after);
  if (found === undefined) return noBeat(after);
  return addBeat(play, ground, found.script, nextTrigger(play, ground, found), found.index + 1, id);
}

/** Add a beat that starts on this, at a place in the script's list. */
export function addBeat(
  play: PlayEntry,
  ground: PlayGround,
  script: ScriptName,
  trigger: Trigger,
  index: number = beatsOf(play, script).length,
  id: string = freshBeatId(play),
): PlayEdit {
  const beats = beatsOf(play, script);
  if (beats.length >= limits.beats) return refused(`A play holds at most ${limits.beats} steps.`);
  const refusal = idRefusal(play, id) ?? triggerRefusal(trigger, id, beats, wordsOf(play, ground, beats));
  if (refusal !== undefined) return refusal;
  const beat: BeatEntry = { id, on: wordsOf(play, ground, beats).writeTrigger(trigger), do: [] };
  const all = [...beats.slice(0, index), beat, ...beats.slice(index)];
  return editedPlay(withBeats(play, script, all), [], { beat: id, action: 0 });
}

/** What a beat after this one naturally starts on. */
export function nextTrigger(play: PlayEntry, ground: PlayGround, { script, beat }: FoundBeat): Trigger {
  const beats = beatsOf(play, script);
  const words = wordsOf(play, ground, beats);
  const actions = beat.do.flatMap((text) => words.action(text) ?? []);
  const natural = naturalTrigger(actions);
  const taken = natural !== undefined && beats.some((each) => each.on.trim() === words.writeTrigger(natural));
  return natural === undefined || taken ? { kind: 'call', beat: beat.id, seconds: usualCall } : natural;
}

function naturalTrigger(actions: readonly Action[]): Trigger | undefined {
  const latest = [...actions].reverse();
  const throws = latest.filter((action) => action.kind === 'pass');
  // In a relay the last catch is the one of the man who does not throw on.
  const last = throws.find((one) => !throws.some((other) => other.by === one.to)) ?? throws[0];
  if (last !== undefined) return { kind: 'catch', by: last.to };
  // The ball's way first; of runs one that goes at once, because nobody knows when one that waits will end.
  const way =
    latest.find(({ kind }) => kind === 'carry') ??
    latest.find(({ kind }) => kind === 'stepIn') ??
    latest.find((action) => action.kind === 'run' && action.go === 'now') ??
    latest.find(({ kind }) => kind === 'run');
  return way === undefined ? undefined : { kind: 'arrival', who: way.by };
}

/** Give a beat another name; calls and reads that name it follow. */
export function renameBeat(play: PlayEntry, ground: PlayGround, id: string, to: string): PlayEdit {
  const found = findBeat(play, id);
  if (found === undefined) return noBeat(id);
  if (to === id) return editedPlay(play);
  const refusal = idRefusal(play, to);
  if (refusal !== undefined) return refusal;
  const { script } = found;
  const words = wordsOf(play, ground, beatsOf(play, script));
  const beats = beatsOf(play, script).map((beat) => {
    const trigger = words.trigger(beat.on);
    const follows = trigger?.kind === 'call' && trigger.beat === id;
    const on = follows ? words.writeTrigger({ ...trigger, beat: to }) : beat.on;
    return beat.id === id || follows ? { ...beat, id: beat.id === id ? to : beat.id, on } : beat;
  });
  const reads = readsOf(play, script).map((read) => (read.during === id ? { ...read, during: to } : read));
  return editedPlay(withReads(withBeats(play, script, beats), script, reads));
}

/** Change what starts a beat. */
export function changeTrigger(play: PlayEntry, ground: PlayGround, id: string, trigger: Trigger): PlayEdit {
  const found = findBeat(play, id);
  if (found === undefined) return noBeat(id);
  const beats = beatsOf(play, found.script);
  const words = wordsOf(play, ground, beats);
  const refusal = triggerRefusal(trigger, id, beats, words);
  if (refusal !== undefined) return refusal;
  const on = words.writeTrigger(trigger);
  return editedPlay(on === found.beat.on ? play : withBeat(play, found, { ...found.beat, on }));
}

/** A name that no beat of the play has yet. */
export function freshBeatId(play: PlayEntry, stem = 'step'): string {
  for (let number = play.beats.length + 1; ; number++) {
    const id = `${stem}-${number}`;
    if (findBeat(play, id) === undefined) return id;
  }
}

function idRefusal(play: PlayEntry, id: string): Refused | undefined {
  if (!beatIdPattern.test(id) || id.length > limits.id)
    return refused('The name of a step is small letters, digits and dashes, a letter first: "swing", "look-2".');
  return findBeat(play, id) === undefined ? undefined : refused(`Another step is called "${id}" already.`);
}

function triggerRefusal(
  trigger: Trigger,
  id: string,
  beats: readonly BeatEntry[],
  { homes }: PlayWords,
): Refused | undefined {
  const named: string[] = [];
  mapTrigger(trigger, (spot) => {
    named.push(spot);
    return spot;
  });
  const stranger = named.find((spot) => !homes.has(spot));
  if (stranger !== undefined) return refused(`The play has no spot ${stranger}.`);
  if (trigger.kind === 'pass' && trigger.from === trigger.to)
    return refused(`${trigger.from} cannot throw to himself.`);
  if (trigger.kind !== 'call') return undefined;
  if (trigger.beat === id) return refused('A step cannot wait for itself.');
  if (!beats.some((beat) => beat.id === trigger.beat)) return refused(`There is no step "${trigger.beat}" here.`);
  return trigger.seconds >= 0 && trigger.seconds <= longestCall
    ? undefined
    : refused(`A call comes 0 to ${longestCall} seconds after its step.`);
}
