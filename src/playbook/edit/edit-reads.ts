import type { Read } from '../../engine/index.ts';
import { limits } from '../limits.ts';
import type { PlayEntry } from '../schema.ts';
import { editedPlay, type PlayEdit, type Refused, refused } from './edit-result.ts';
import { mapRead } from './map-action.ts';
import { placeRefusal, roundPlace } from './place-rules.ts';
import type { PlayGround } from './play-ground.ts';
import { beatsOf, type ReadEntry, readsOf, type ScriptName, withReads } from './play-script.ts';
import { type PlayWords, placesIn, wordsOf } from './play-words.ts';

/** Add a read, at the end when no place in the order is given. */
export function addRead(
  play: PlayEntry,
  ground: PlayGround,
  script: ScriptName,
  read: Read,
  index: number = readsOf(play, script).length,
): PlayEdit {
  const reads = readsOf(play, script);
  if (reads.length >= limits.reads) return refused(`A play holds at most ${limits.reads} reads.`);
  const written = writeRead(play, ground, script, read);
  if (written.kind === 'refused') return written;
  return editedPlay(withReads(play, script, [...reads.slice(0, index), written.entry, ...reads.slice(index)]));
}

/** Put another read in the place of one. */
export function changeRead(
  play: PlayEntry,
  ground: PlayGround,
  script: ScriptName,
  index: number,
  read: Read,
): PlayEdit {
  const reads = readsOf(play, script);
  const before = reads[index];
  if (before === undefined) return noRead;
  const written = writeRead(play, ground, script, read);
  if (written.kind === 'refused') return written;
  if (sameRead(before, written.entry)) return editedPlay(play);
  return editedPlay(
    withReads(
      play,
      script,
      reads.map((each, i) => (i === index ? written.entry : each)),
    ),
  );
}

export function removeRead(play: PlayEntry, script: ScriptName, index: number): PlayEdit {
  const reads = readsOf(play, script);
  if (reads[index] === undefined) return noRead;
  return editedPlay(
    withReads(
      play,
      script,
      reads.filter((_, i) => i !== index),
    ),
  );
}

/** Move a read to another place in the order in which the reads are tried. */
export function moveRead(play: PlayEntry, script: ScriptName, from: number, to: number): PlayEdit {
  const reads = readsOf(play, script);
  const moved = reads[from];
  if (moved === undefined || reads[to] === undefined) return noRead;
  const others = reads.filter((_, i) => i !== from);
  return editedPlay(withReads(play, script, [...others.slice(0, to), moved, ...others.slice(to)]));
}

const noRead = refused('The play has no such read any more.');

function writeRead(
  play: PlayEntry,
  ground: PlayGround,
  script: ScriptName,
  read: Read,
): { readonly kind: 'written'; readonly entry: ReadEntry } | Refused {
  const beats = beatsOf(play, script);
  const words = wordsOf(play, ground, beats);
  const homes = new Set(words.homes.values());
  const rounded = mapRead(read, {
    spot: (id) => id,
    place: (point) => (homes.has(point) ? point : roundPlace(point, ground.field)),
  });
  if (read.during !== undefined && !beats.some((beat) => beat.id === read.during))
    return refused(`There is no step "${read.during}" here.`);
  const refusal = readRefusal(rounded, words, ground);
  return refusal ?? { kind: 'written', entry: words.writeRead(rounded) };
}

function readRefusal(read: Read, { homes }: PlayWords, ground: PlayGround): Refused | undefined {
  if (read.cues.length > limits.cues) return refused(`A read has at most ${limits.cues} cues.`);
  const named: string[] = [];
  mapRead(read, {
    spot(id) {
      named.push(id);
      return id;
    },
    place: (point) => point,
  });
  const stranger = named.find((spot) => !homes.has(spot));
  if (stranger !== undefined) return refused(`The play has no spot ${stranger}.`);
  const { carrier, then } = read;
  if (then.by !== carrier) return refused(`A read of ${carrier} says what ${carrier} does.`);
  if (then.kind === 'pass' && then.to === carrier) return refused(`${carrier} cannot throw to himself.`);
  if (then.kind === 'fake' && then.toward === carrier) return refused(`${carrier} cannot fake to himself.`);
  if (read.cues.some((cue) => 'who' in cue && cue.who === carrier))
    return refused(`${carrier} cannot look for himself: say "free" or "pressed".`);
  for (const place of placesIn(then)) {
    const refusal = placeRefusal(place, ground.field);
    if (refusal !== undefined) return refusal;
  }
  return undefined;
}

function sameRead(one: ReadEntry, other: ReadEntry): boolean {
  return (
    one.carrier === other.carrier &&
    one.during === other.during &&
    one.then === other.then &&
    one.if.length === other.if.length &&
    one.if.every((cue, i) => cue === other.if[i])
  );
}
