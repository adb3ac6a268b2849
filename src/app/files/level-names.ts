import type { Level } from '../../engine/index.ts';

/** What a coach calls a level of play. */
export const levelNames: Readonly<Record<Level, string>> = {
  '8U': '8U',
  '10U': '10U',
  '12U': '12U',
  '14U': '14U',
  highSchool: 'High school',
  college: 'College',
  pro: 'Professional',
};
