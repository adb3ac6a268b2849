import { engineVersion, inputHash } from '../../engine/index.ts';
import {
  leastPracticeTrials,
  type PracticeChoices,
  type PracticeEffort,
  penaltyOf,
  practiceChoices,
  practiceEffort,
  practiceEffortOver,
  requestsOfSkillWorths,
  type SkillWorths,
  studySkillWorths,
  type WeighedSetup,
} from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import type { Foes } from '../choose-matchups.ts';
import type { Conditions } from '../conditions.ts';
import { badUse } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import type { OpenPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';
import { shellCommand } from '../repeat-command.ts';
import { reportNames } from '../report-names.ts';
import { skillsJson } from '../skills-json.ts';
import { skillsText } from '../skills-text.ts';
import { weighedSetups } from '../weighed-setups.ts';

/** What `sliderule reads --skills` was asked. */
export interface AskedSkills {
  /** The file and what stood after --against, as typed: the command that repeats the run names them. */
  readonly file: string;
  readonly against: string;
  readonly json: boolean;
  readonly opened: OpenPlaybook;
  readonly play: string;
  readonly foes: Foes;
  readonly conditions: Conditions;
}

/** Fresh man-ups over all schemes that what leads is measured in when nobody names a number. */
const usualManUps = 7200;

/** `sliderule reads FILE --skills`: what is best to practise, and what it is worth to the play. */
export async function runSkills(io: Io, asked: AskedSkills): Promise<void> {
  const { json, opened, play, foes, conditions } = asked;
  const { playbook } = opened;
  const { side, level, seed } = conditions;
  const { trials } = conditions;
  if (trials !== null && trials < leastPracticeTrials) {
    throw badUse(`invalid --trials: ${trials} (expected ${leastPracticeTrials} or more with --skills).`);
  }
  const choices = practiceChoices(playbook, { play, side, level });
  if (choices.kind === 'refused') throw badUse(`${choices.reason}.`);
  io.err(levelNote(playbook, level));
  const effort = trials === null ? practiceEffortOver(foes.schemes.length, usualManUps) : practiceEffort(trials);
  const worths = await study(io, weighedSetups(opened, play, foes, conditions), choices, effort, conditions);
  const played = level ?? playbook.team.level;
  const penalty = conditions.penalty ?? penaltyOf(playbook);
  const hash = inputHash({
    playbook,
    play,
    schemes: foes.schemes,
    ...(foes.opponent && { opponent: foes.opponent.id }),
    ...(foes.weights && { weights: foes.weights }),
    side,
    penalty,
    level: played,
    effort: { ...effort },
  });
  if (json) {
    io.out(skillsJson(worths, play, choices.men, effort, { seed, hash, penalty, level: played }));
    return;
  }
  io.out(`${skillsText(worths, choices.men, reportNames(playbook, play))}\n\n`);
  io.out(`Same numbers again: ${io.program} ${repeated(asked, effort.last, penalty)}\n`);
  io.out(`Engine ${engineVersion}, seed ${seed}, input ${hash}.\n`);
}

function repeated({ file, against, play, conditions }: AskedSkills, trials: number, penalty: number): string {
  const { side, seed, level } = conditions;
  const words = ['reads', file, '--play', play, '--skills', '--against', against, '--side', side];
  const size = ['--seed', String(seed), '--penalty', String(penalty), '--trials', String(trials)];
  return shellCommand([...words, ...size, ...(level === null ? [] : ['--level', level])]);
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
