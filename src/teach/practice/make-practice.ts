import { limits, type Playbook, type Practice, schemeName, toEnginePlay } from '../../playbook/index.ts';
import type { MeasureOptions, TrialPool } from '../../worker/index.ts';
import {
  findPractice,
  type LookStand,
  type PlayFindings,
  type PracticeFindEffort,
  type PracticeQuestion,
} from './find-practice.ts';
import { findSkill } from './find-skill.ts';
import { type PracticeWishes, planPractice } from './plan-practice.ts';

/** A plan as it was made, with what it was made of. */
export interface MadePractice {
  readonly practice: Omit<Practice, 'id'>;
  readonly findings: readonly PlayFindings[];
  readonly stands: readonly LookStand[];
}

/** A practice plan of some plays, found on the pool's threads. Rejects as `findPractice`. */
export async function makePractice(
  pool: TrialPool,
  playbook: Playbook,
  question: PracticeQuestion,
  wishes: Omit<PracticeWishes, 'scheme' | 'level'>,
  effort: PracticeFindEffort & { readonly withSkill?: boolean },
  options: MeasureOptions = {},
): Promise<MadePractice> {
  const findings = await findPractice(pool, playbook, question, effort, options);
  const skill = effort.withSkill === true ? await findSkill(pool, playbook, question, options) : undefined;
  return {
    practice: withSkill(plannedFrom(playbook, question, wishes, findings), skill),
    findings,
    stands: findings.flatMap(({ stands }) => stands),
  };
}

/** The plan with a sentence on the skill that is worth most, where it was asked for. */
export function withSkill(plan: Omit<Practice, 'id'>, skill: string | undefined): Omit<Practice, 'id'> {
  if (skill === undefined) return plan;
  return { ...plan, notes: `${plan.notes ?? ''} ${skill}`.trim().slice(0, limits.note) };
}

/** The plan that follows from what was found, for other minutes or another turnout: nothing is simulated for it. */
export function plannedFrom(
  playbook: Playbook,
  { side, level }: Pick<PracticeQuestion, 'side' | 'level'>,
  wishes: Omit<PracticeWishes, 'scheme' | 'level'>,
  findings: readonly PlayFindings[],
): Omit<Practice, 'id'> {
  const plays = findings.map((one) => ({ play: toEnginePlay(playbook, one.play, side), findings: one }));
  const scheme = (id: string): string => schemeName(playbook, id);
  return planPractice(plays, { ...wishes, level: level ?? playbook.team.level, scheme });
}
