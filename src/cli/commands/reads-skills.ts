import {
  leastPracticeTrials,
  type PracticeChoices,
  type PracticeEffort,
  practiceChoices,
  practiceEffort,
  practiceEffortOver,
  requestsOfSkillWorths,
  type SkillWorths,
  studySkillWorths,
  type WeighedSetup,
} from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import type { Conditions } from '../conditions.ts';
import { badUse } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { startProgress } from '../progress.ts';
import { reportNames } from '../report-names.ts';
import { skillsJson } from '../skills-json.ts';
import { skillsText } from '../skills-text.ts';
import { weighedSetups } from '../weighed-setups.ts';
import { type AskedReads, sameAgain, wholeOf } from './reads-carrier.ts';

/** Fresh man-ups over all schemes that what leads is measured in when nobody names a number. */
const usualManUps = 7200;

/** `sliderule reads FILE --skills`: what is best to practise, and what it is worth to the play. */
export async function runSkills(io: Io, asked: Omit<AskedReads, 'card'>): Promise<void> {
  const { json, against, opened, play, foes, conditions } = asked;
  const { playbook } = opened;
  const { side, level, seed, trials } = conditions;
  if (trials !== null && trials < leastPracticeTrials) {
    throw badUse(`invalid --trials: ${trials} (expected ${leastPracticeTrials} or more with --skills).`);
  }
  const choices = practiceChoices(playbook, { play, side, level });
  if (choices.kind === 'refused') throw badUse(`${choices.reason}.`);
  io.err(levelNote(playbook, level));
  const effort = trials === null ? practiceEffortOver(foes.schemes.length, usualManUps) : practiceEffort(trials);
  const worths = await study(io, weighedSetups(opened, play, foes, conditions), choices, effort, conditions);
  const whole = wholeOf(asked, { effort });
  if (json) {
    io.out(skillsJson(worths, play, choices.men, effort, { seed, ...whole }));
    return;
  }
  io.out(`${skillsText(worths, choices.men, reportNames(playbook, play))}\n\n`);
  const words = ['--skills', '--against', against];
  io.out(sameAgain(io, asked, words, { ...whole, trials: effort.last }));
}

async function study(
  io: Io,
  setups: readonly WeighedSetup[],
  choices: Extract<PracticeChoices, { kind: 'choices' }>,
  effort: PracticeEffort,
  { threads }: Conditions,
): Promise<SkillWorths> {
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  progress.plan(requestsOfSkillWorths(choices, setups.length, effort));
  try {
    return await studySkillWorths(pool, setups, choices, effort, { signal: io.signal, onAnswer: progress.step });
  } finally {
    progress.stop();
    await pool.close();
  }
}
