import type { Level } from '../../engine/index.ts';

/**
 * Calls that a unit of a level can run in a game when nobody says (common practice, no source: youth one set with one or two actions, high school four to six
 * calls, college six to ten).
 */
export function usualCalls(level: Level): number {
  return calls_byLevel[level];
}

const calls_byLevel: Readonly<Record<Level, number>> = {
  '8U': 1,
  '10U': 1,
  '12U': 2,
  '14U': 3,
  highSchool: 4,
  college: 6,
  pro: 8,
};
