import { keepQuiz, limits, type Playbook, type PlaybookEdit, toEnginePlay } from '../../playbook/index.ts';
import { count } from '../../render/index.ts';
import { loadResult, type MadeQuiz, makeQuiz, mostQuestions, quizPage, usualFoes } from '../../teach/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chosenFoes, chosenPlays, type Foes } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type RawConditions, readConditions, shown, wholeNumber } from '../conditions.ts';
import { badUse, exitCodes, Failure, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { hashOf, pageProgram } from '../page-program.ts';
import { startProgress } from '../progress.ts';
import { quizQuestionsText, quizResultsText } from '../quiz-text.ts';
import { readText } from '../read-file.ts';
import { replacePlaybook } from '../replace-playbook.ts';
import { checkNew, writeNew } from '../write-file.ts';

interface RawQuiz extends RawConditions {
  readonly play?: string;
  readonly for?: string;
  readonly against: string;
  readonly questions: string;
  readonly seconds?: string;
  readonly out?: string;
  readonly load?: readonly string[];
  readonly keep?: true;
}

/** Questions of a quiz when nobody says how many: some three minutes. */
const usualQuestions = 10;

/** `sliderule quiz FILE`: a play's reads as a quiz for phones, and what comes back of it. */
export const addQuiz: AddCommand = (program, io) => {
  const command = program
    .command('quiz')
    .description("ask a play's reads on one web page that works on a phone without a network, and load what comes back")
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed to make a quiz')
    .option('--for <spot>', 'ask the reads of this man alone, such as WL (default: the whole unit)')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all with one man down", 'all')
    .option('--questions <number>', `how many, 1 to ${mostQuestions}`, String(usualQuestions))
    .option('--seconds <number>', 'time to answer, 2 to 60 (default: by the level)')
    .option('--out <file>', 'where to write the page (default: ID-quiz.html)')
    .option('--load <codes...>', 'codes or files that came back, in place of making a quiz: prints who knows what')
    .option('--keep', 'write the quiz, or what came back, into the playbook');
  addConditions(command)
    .option('--threads <number>', 'worker threads (default: one a core)')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule quiz playbook.json --play lantern --keep',
        'sliderule quiz playbook.json --play lantern --for WL --against jump',
        'sliderule quiz playbook.json --load Q814-40G0-8666-6227-24RZ --keep',
        'sliderule quiz playbook.json --load quiz-8144-16-1.json',
      ]),
    )
    .action(async (file: string, raw: RawQuiz) => {
      if (raw.load === undefined) await writeQuiz(io, file, raw);
      else if (raw.play !== undefined)
        throw badUse('name one thing to do: --play makes a quiz, --load reads what came back.');
      else await loadResults(io, file, raw.load, raw.keep === true);
    });
};

async function writeQuiz(io: Io, file: string, raw: RawQuiz): Promise<void> {
  const opened = await openPlaybook(file, io);
  const play = onePlay(opened, raw.play);
  const out = raw.out ?? `${play}-quiz.html`;
  if (!/\.html?$/i.test(out)) throw badUse(`invalid --out: ${shown(out)} (expected a name that ends in .html).`);
  checkNew(out);
  const { quiz, entry } = await madeQuiz(io, opened, play, raw);
  const script = pageProgram(io, 'quiz-page.js');
  const html = await quizPage(opened.playbook, quiz, { script, hashOf });
  await writeNew(out, html);
  io.out(`${quizQuestionsText(quiz)}\n`);
  io.out(
    `Written: ${out}, ${count(Math.ceil(Buffer.byteLength(html) / 1000))} kB, quiz ${quiz.id}, ${quiz.seconds} s a question.\n`,
  );
  if (raw.keep !== true) {
    io.out('Its codes can be read where the quiz is kept: add --keep, or ask for files in place of codes.\n');
    return;
  }
  await replacePlaybook(file, opened, edited(keepQuiz(opened.playbook, entry)));
  io.out(`Kept in ${file}.\n`);
}

async function madeQuiz(
  io: Io,
  { playbook }: OpenPlaybook,
  play: string,
  raw: RawQuiz,
): Promise<Extract<MadeQuiz, { kind: 'made' }>> {
  const { side, penalty, level, seed, threads } = readConditions(raw);
  const { schemes, opponent }: Foes =
    raw.against === 'all' ? { schemes: usualFoes(playbook) } : chosenFoes(playbook, raw.against);
  const spot = raw.for === undefined ? undefined : spotOf(playbook, play, side, raw.for);
  const questions = wholeNumber('--questions', raw.questions, 1, mostQuestions);
  const seconds = raw.seconds === undefined ? undefined : wholeNumber('--seconds', raw.seconds, 2, 60, 'seconds');
  io.err(levelNote(playbook, level));
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Playing on');
  let planned = 0;
  const onPlan = (requests: number): void => {
    progress.plan(requests - planned);
    planned = requests;
  };
  try {
    const made = await makeQuiz(
      pool,
      playbook,
      {
        ...{ play, side, penalty, level, seed, schemes, questions },
        ...(opponent && { opponent: opponent.id }),
        ...(spot !== undefined && { spot }),
        ...(seconds !== undefined && { seconds }),
      },
      { signal: io.signal, onAnswer: progress.step, onPlan },
    );
    if (made.kind === 'made') return made;
    throw new Failure(made.reason, exitCodes.no);
  } finally {
    progress.stop();
    await pool.close();
  }
}

async function loadResults(io: Io, file: string, codes: readonly string[], keep: boolean): Promise<void> {
  const opened = await openPlaybook(file, io);
  let { playbook } = opened;
  const loaded = new Set<string>();
  for (const code of codes) {
    const text = /\.json$/i.test(code) ? await readText(code, limits.bytes) : code;
    const read = loadResult(playbook, text);
    if (read.kind === 'wrong') throw new Failure(`${shown(code)}: ${read.reason}`, exitCodes.no);
    for (const sentence of read.also) io.err(`${sentence}\n`);
    ({ playbook } = read);
    loaded.add(read.quiz.id);
  }
  for (const quiz of playbook.quizzes ?? []) if (loaded.has(quiz.id)) io.out(`${quizResultsText(playbook, quiz)}\n`);
  if (!keep) {
    io.out('Nothing was written: add --keep to keep this in the playbook.\n');
    return;
  }
  await replacePlaybook(file, opened, playbook);
  io.out(`Kept in ${file}.\n`);
}

function edited(edit: PlaybookEdit): Playbook {
  if (edit.kind === 'refused') throw new Failure(edit.reason, exitCodes.no);
  return edit.playbook;
}

function onePlay({ playbook }: OpenPlaybook, asked: string | undefined): string {
  const [play, ...others] = chosenPlays(playbook, asked);
  if (play === undefined || asked === undefined || others.length > 0) {
    const known = playbook.plays.map(({ id }) => id).join(', ');
    throw badUse(`a quiz is that of one play: name one of ${known} after --play.`);
  }
  return play;
}

/** The spot by its name, whatever its letters' size; fails with the names that there are. */
function spotOf(playbook: Playbook, play: string, side: 'left' | 'right', asked: string): string {
  const spots = toEnginePlay(playbook, play, side).spots.map(({ id }) => id);
  const spot = spots.find((one) => one.toLowerCase() === asked.toLowerCase());
  if (spot === undefined) throw unknownName('spot after --for', asked, spots, undefined);
  return spot;
}
