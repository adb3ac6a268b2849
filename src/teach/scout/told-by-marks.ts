import type { Chance } from '../../playbook/index.ts';

/** Whether a man-up is weighed by what was marked or ticked of it: then its weight in what an opponent plays comes from there, and its name counts no second time. */
export function isWeighedByMarks({ marks = [] }: Pick<Chance, 'marks'>): boolean {
  return marks.some(({ defenders, cues = [] }) => defenders.length > 0 || cues.length > 0);
}

/** The scheme that the marks of a man-up told when they were taken: likelier by them alone than all others together. What was believed beforehand is not in it. */
export function schemeTold({ byMarks = {} }: Pick<Chance, 'byMarks'>): string | undefined {
  return Object.entries(byMarks).find(([, share]) => share > 0.5)?.[0];
}
