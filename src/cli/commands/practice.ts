import { engineVersion, inputHash } from '../../engine/index.ts';
import { isDay, limits } from '../../playbook/index.ts';
import { papers } from '../../render/index.ts';
import {
  dayWords,
  type MadePractice,
  makePractice,
  type PracticeQuestion,
  practicePages,
  usualFoes,
  usualPracticeEffort,
} from '../../teach/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chosenPlays, type Foes, weighedFoes, weightOf } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions, shown, wholeNumber } from '../conditions.ts';
import { badUse } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { practiceText } from '../practice-text.ts';
import { startProgress } from '../progress.ts';
import { writeNew } from '../write-file.ts';
import { readPaper, readPracticeFormat, written } from './sheet-format.ts';

interface RawPractice extends RawConditions {
  readonly play?: string;
  readonly minutes: string;
  readonly players?: string;
  readonly keeper: boolean;
  readonly keeperWarmUp?: true;
  readonly session: string;
  readonly reads: boolean;
  readonly skill?: true;
  readonly against: string;
  readonly day?: string;
  readonly paper: string;
  readonly out?: string;
  readonly json?: true;
}

/** `sliderule practice FILE`: what to do with the minutes that there are, by what is worth most. */
export const addPractice: AddCommand = (program, io) => {
  const command = program
    .command('practice')
    .description('plan a practice: blocks, reps and parts of the play, by what is worth most')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <ids>', 'the plays with commas between them, the one that matters most first (default: the first)')
    .option('--minutes <number>', 'how long there is, 5 to 240', '20')
    .option('--players <number>', 'how many come, the goalkeeper not counted (default: all who are not absent)')
    .option('--no-keeper', 'no goalkeeper comes: the goal is empty or covered')
    .option('--keeper-warm-up', 'the goalkeeper warms up in this time (default: before it, or beside the field)')
    .option('--session <1|2>', 'of two in a week: 1 teaches the play, 2 goes live and into situations', '1')
    .option(
      '--against <ids>',
      "schemes with commas between them, each with how often it is met if you like (box-zone:3,jump:1), an opponent's id, or all with one man down",
      'all',
    )
    .option('--no-reads', 'without what the reads are worth, which takes most of the time to find')
    .option('--skill', 'also which skill of all six is worth most to the first play, which takes a minute or more')
    .option('--day <date>', 'the day of the practice, YYYY-MM-DD')
    .option('--out <file>', 'write its pages: .pdf for all of them, .svg or .png for the plan alone')
    .option('--paper <letter|a4>', 'the paper', 'letter');
  addConditions(command)
    .option('--trials <number>', `man-ups against each scheme (default: ${usualPracticeEffort.trials})`)
    .option('--threads <number>', 'worker threads (default: one a core)')
    .option('--json', 'print the plan and what it rests on as JSON')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule practice playbook.json --play lantern',
        'sliderule practice playbook.json --minutes 30 --players 14 --out plan.pdf',
        'sliderule practice playbook.json --play lantern,ferry --no-reads',
      ]),
    )
    .action((file: string, raw: RawPractice) => runPractice(io, file, raw));
};

async function runPractice(io: Io, file: string, raw: RawPractice): Promise<void> {
  const made = new Date();
  const conditions = readConditions(raw);
  const minutes = wholeNumber('--minutes', raw.minutes, 5, limits.practiceMinutes, 'minutes');
  const paper = readPaper(raw.paper);
  const format = raw.out === undefined ? undefined : readPracticeFormat(raw.out);
  if (raw.day !== undefined && !(/^\d{4}-\d\d-\d\d$/.test(raw.day) && isDay(raw.day)))
    throw badUse(`invalid --day: ${shown(raw.day)} (expected a day of the calendar, such as 2026-03-10).`);
  const opened = await openPlaybook(file, io);
  const { playbook } = opened;
  const plays = raw.play === undefined ? chosenPlays(playbook, undefined).slice(0, 1) : chosenPlays(playbook, raw.play);
  if (plays.length > limits.practicePlays)
    throw badUse(`a practice has room for ${limits.practicePlays} plays at most: name fewer after --play.`);
  const players =
    raw.players === undefined ? turnoutOf(opened) : wholeNumber('--players', raw.players, 0, limits.players);
  const question = questionOf(opened, plays, raw.against, conditions);
  io.err(levelNote(playbook, conditions.level));
  const session = wholeNumber('--session', raw.session, 1, 2) === 1 ? 'first' : 'second';
  const names = plays.map((id) => playbook.plays.find((play) => play.id === id)!.name).join(', ');
  const wishes = {
    name: `${names}: ${minutes} minutes${session === 'second' ? ', second session' : ''}`.slice(0, limits.name),
    ...(raw.day !== undefined && { date: raw.day }),
    minutes,
    players,
    session,
    keeper: keeperOf(raw),
  } as const;
  const found = await make(io, opened, question, wishes, conditions, raw);
  if (raw.json === true) io.out(`${JSON.stringify(jsonOf(opened, question, found), null, 2)}\n`);
  else io.out(`${practiceText(playbook, found, conditions)}\n`);
  if (raw.out === undefined || format === undefined) return;
  const pages = practicePages(playbook, found.practice, found.stands, {
    side: conditions.side,
    paper,
    ...(conditions.level !== null && { level: conditions.level }),
    made: dayWords(made),
  });
  await writeNew(raw.out, await written(pages, format, made));
  const count = format !== 'pdf' || pages.pages.length === 1 ? 'one page' : `${pages.pages.length} pages`;
  // JSON goes to another program, which wants nothing else on this line.
  (raw.json === true ? io.err : io.out)(`\nWritten: ${raw.out}, ${count} of ${papers[paper].name}.\n`);
}

function keeperOf({ keeper, keeperWarmUp }: RawPractice): 'none' | 'warm' | 'cold' {
  if (!keeper && keeperWarmUp === true) throw badUse('name one thing: --no-keeper or --keeper-warm-up.');
  if (!keeper) return 'none';
  return keeperWarmUp === true ? 'cold' : 'warm';
}

function turnoutOf({ playbook }: OpenPlaybook): number {
  return playbook.team.roster.filter(({ crosse, absent }) => crosse !== 'goalkeeper' && absent !== true).length;
}

function questionOf(
  { playbook }: OpenPlaybook,
  plays: readonly string[],
  against: string,
  { side, penalty, level, seed }: Conditions,
): PracticeQuestion {
  const foes: Foes = against === 'all' ? { schemes: usualFoes(playbook) } : weighedFoes(playbook, against);
  return {
    plays,
    others: playbook.plays.filter(({ id, archived }) => archived !== true && !plays.includes(id)).map(({ id }) => id),
    schemes: foes.schemes.map((id) => ({ id, weight: weightOf(foes, id) })),
    ...(foes.opponent && { opponent: foes.opponent.id }),
    side,
    penalty,
    level,
    seed,
  };
}

async function make(
  io: Io,
  { playbook }: OpenPlaybook,
  question: PracticeQuestion,
  wishes: Parameters<typeof makePractice>[3],
  { trials, threads }: Conditions,
  { reads, skill }: Pick<RawPractice, 'reads' | 'skill'>,
): Promise<MadePractice> {
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  const effort = {
    trials: trials ?? usualPracticeEffort.trials,
    watched: Math.min(trials ?? usualPracticeEffort.watched, usualPracticeEffort.watched),
    studied: reads ? usualPracticeEffort.studied : 0,
    withSkill: skill === true,
  };
  try {
    return await makePractice(pool, playbook, question, wishes, effort, {
      signal: io.signal,
      onPlan: progress.plan,
      onAnswer: progress.step,
    });
  } finally {
    progress.stop();
    await pool.close();
  }
}

function jsonOf({ playbook }: OpenPlaybook, question: PracticeQuestion, { practice, findings }: MadePractice): object {
  const looks = findings.map(({ play, goals, looks, newRead, instead }) => ({ play, goals, looks, newRead, instead }));
  return {
    engine: engineVersion,
    seed: question.seed,
    inputHash: inputHash({ playbook, ...question }),
    practice,
    findings: looks,
  };
}
