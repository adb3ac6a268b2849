import type { Track } from '../render/index.ts';

/** Samples a second of a clip, and steps of a track in a yard: those of `trackOf`, which wrote it. */
export const samplesPerSecond = 10;
const stepsPerYard = 10;

/** The places that a track holds, yd, one a sample. */
export function decodeTrack(track: Track): readonly number[] {
  let steps = 0;
  return track.map((change) => {
    steps += change;
    return steps / stepsPerYard;
  });
}

/** The place at `time` (s), on the straight line between two samples; outside the track its first or last. */
export function placeAt(places: readonly number[], time: number): number {
  const last = places.length - 1;
  const exact = Math.min(Math.max(time * samplesPerSecond, 0), last);
  const early = Math.min(Math.floor(exact), last);
  const from = places[early] ?? 0;
  const to = places[Math.min(early + 1, last)] ?? from;
  return from + (to - from) * (exact - early);
}
