import type { BeatEntry, PlayEntry } from '../schema.ts';

export type ReadEntry = NonNullable<PlayEntry['reads']>[number];

/** The play's own script, or that of the last ten seconds. */
export type ScriptName = 'main' | 'lastTen';

export interface FoundBeat {
  readonly script: ScriptName;
  readonly index: number;
  readonly beat: BeatEntry;
}

/** The beat of this id, and which script it stands in; undefined when there is none. */
export function findBeat(play: PlayEntry, id: string): FoundBeat | undefined {
  for (const script of ['main', 'lastTen'] as const) {
    const index = beatsOf(play, script).findIndex((beat) => beat.id === id);
    if (index >= 0) return { script, index, beat: beatsOf(play, script)[index]! };
  }
  return undefined;
}

export function beatsOf(play: PlayEntry, script: ScriptName): readonly BeatEntry[] {
  return script === 'main' ? play.beats : (play.lastTen?.beats ?? []);
}

export function readsOf(play: PlayEntry, script: ScriptName): readonly ReadEntry[] {
  return (script === 'main' ? play.reads : play.lastTen?.reads) ?? [];
}

/** The play with other beats in one script; the same play when they are the same. */
export function withBeats(play: PlayEntry, script: ScriptName, beats: readonly BeatEntry[]): PlayEntry {
  const before = beatsOf(play, script);
  if (beats === before || (beats.length === before.length && beats.every((beat, i) => beat === before[i]))) return play;
  return script === 'main'
    ? { ...play, beats: [...beats] }
    : { ...play, lastTen: { ...play.lastTen, beats: [...beats] } };
}

/** The play with other reads in one script; an empty list is taken out. */
export function withReads(play: PlayEntry, script: ScriptName, reads: readonly ReadEntry[]): PlayEntry {
  const before = readsOf(play, script);
  if (reads.length === before.length && reads.every((read, i) => read === before[i])) return play;
  if (script === 'main') return withList(play, reads);
  return { ...play, lastTen: withList(play.lastTen ?? {}, reads) };
}

function withList<T extends { reads?: ReadEntry[] | undefined }>(owner: T, reads: readonly ReadEntry[]): T {
  if (reads.length > 0) return { ...owner, reads: [...reads] };
  const { reads: _, ...rest } = owner;
  return rest as T;
}

/** The play with one beat replaced. */
export function withBeat(play: PlayEntry, { script, index }: FoundBeat, beat: BeatEntry): PlayEntry {
  return withBeats(
    play,
    script,
    beatsOf(play, script).map((each, i) => (i === index ? beat : each)),
  );
}
