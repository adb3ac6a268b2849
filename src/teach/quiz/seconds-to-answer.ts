import type { Level } from '../../engine/index.ts';

/**
 * Seconds to answer a question of the quiz at a level, when the coach sets none. On the field a carrier has one or two; he first has to find the men on a drawing, and
 * the young take longer. Common practice, no source.
 */
export const secondsToAnswer: Readonly<Record<Level, number>> = {
  '8U': 12,
  '10U': 10,
  '12U': 8,
  '14U': 7,
  highSchool: 6,
  college: 5,
  pro: 5,
};
