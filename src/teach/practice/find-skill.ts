import type { Playbook } from '../../playbook/index.ts';
import { bestPracticeWords } from '../../render/index.ts';
import {
  type MeasureOptions,
  practiceChoices,
  practiceEffortOver,
  requestsOfSkillWorths,
  studySkillWorths,
  type TrialPool,
} from '../../worker/index.ts';
import { type PracticeQuestion, setupOf } from './find-practice.ts';

/** Man-ups over all schemes in which the skills that lead are measured: a quick look, for one line of a plan. */
const usualManUps = 1800;

/**
 * Which skill of all six is worth most to the first play of a question, as a sentence with its numbers, or that it cannot be told. Takes a minute or more. Rejects
 * with a RangeError for a line-up that cannot be made, else as any question to the threads.
 */
export async function findSkill(
  pool: TrialPool,
  playbook: Playbook,
  question: PracticeQuestion,
  options: MeasureOptions = {},
  manUps = usualManUps,
): Promise<string> {
  const [play] = question.plays;
  if (play === undefined) throw new RangeError('no play to practise (expected one or more)');
  const choices = practiceChoices(playbook, { play, side: question.side, level: question.level });
  if (choices.kind === 'refused') throw new RangeError(choices.reason);
  // All six together: what a man should do alone he does alone.
  const unit = { ...choices, each: [] };
  const setups = question.schemes.map(({ id, weight }) => ({ setup: setupOf(playbook, play, id, question), weight }));
  const effort = practiceEffortOver(setups.length, manUps);
  options.onPlan?.(requestsOfSkillWorths(unit, setups.length, effort));
  const worths = await studySkillWorths(pool, setups, unit, effort, options);
  return bestPracticeWords(worths.unit.leaders, 'unit', choices.men);
}
