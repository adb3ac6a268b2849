import type { Level } from '../people/athlete.ts';

/**
 * Reads that a carrier of a level can hold in mind: three up to 12U, four above. An assumption of the trade (common practice, no source), of the
 * order of what people can keep of new things at once: Cowan 2001 (Behav Brain Sci 24:87) finds about four in grown-ups (from memory).
 */
export function mostReadsAt(level: Level): number {
  return level === '8U' || level === '10U' || level === '12U' ? 3 : 4;
}
