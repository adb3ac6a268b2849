import type { Track } from './clip.ts';

/** Samples a second of a clip: between two of them nobody turns by more than a phone shows. */
export const samplesPerSecond = 10;
/** Steps of a track in a yard: a tenth of a yard is half a pixel or less on a phone. */
export const stepsPerYard = 10;

/**
 * The values of `at` (yd) at every sample of `seconds` (from 0 to the end, or the first after it), rounded to a tenth of a yard, as a first value and
 * changes. What is rounded is the place and not the change, so that no error adds up: each sample is within .05 yd. RangeError for a value
 * that is no number.
 */
export function trackOf(seconds: number, at: (time: number) => number): Track {
  const track: number[] = [];
  let last = 0;
  for (let sample = 0; sample < sampleCount(seconds); sample += 1) {
    const here = Math.round(at(sample / samplesPerSecond) * stepsPerYard);
    if (!Number.isFinite(here)) throw new RangeError(`a clip cannot hold a place that is no number (sample ${sample})`);
    // Adding 0 turns -0 into 0.
    track.push(here - last + 0);
    last = here;
  }
  return track;
}

/** How many samples `seconds` of a clip hold, so that the last is at its end or after it; 1 at least. */
export function sampleCount(seconds: number): number {
  return Math.ceil(Math.max(0, seconds) * samplesPerSecond - 1e-6) + 1;
}
