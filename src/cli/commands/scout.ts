import { engineVersion, inputHash, type SchemeBelief, type SignId, type WalkedMovement } from '../../engine/index.ts';
import { type Opponent, schemeName, toEnginePlay, toEngineScheme } from '../../playbook/index.ts';
import { papers } from '../../render/index.ts';
import {
  dayWords,
  type ManDownQuestion,
  type MeasuredPlay,
  manDownAnswers,
  manDownContent,
  measurePlays,
  movementsOfPlay,
  printedManDown,
  probeAdvice,
  type SchemeConcedes,
  type ScoutQuestion,
  scoutBelief,
  scoutedBefore,
  walkMovements,
} from '../../teach/index.ts';
import type { MeasureOptions, TrialPool } from '../../worker/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chosenPlays } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions, shown } from '../conditions.ts';
import { badUse, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';
import { beliefText, manDownText, probeText, type ScoutNames, signList } from '../scout-text.ts';
import { checkNew, writeNew } from '../write-file.ts';
import { readTicks, type SeenOfThem, seenOf } from './scout-marks.ts';
import { readPaper, readSheetFormat, written } from './sheet-format.ts';

interface RawScout extends RawConditions {
  readonly opponent?: string;
  readonly play?: string;
  readonly marks?: string;
  readonly ticks?: string;
  readonly probe?: true;
  readonly manDown?: true;
  readonly out?: string;
  readonly paper: string;
  readonly json?: true;
}

/** `sliderule scout FILE`: which scheme it is, how to find out, and what our own man-down unit should play. */
export const addScout: AddCommand = (program, io) => {
  const command = program
    .command('scout')
    .description('tell which scheme an opponent plays, what to run to find out, and what to play against his man-up')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--opponent <id>', 'the opponent; his marked man-ups and his schemes in the playbook count')
    .option('--play <id>', 'the play whose set is on the field (default: the first)')
    .option('--marks <file>', 'marks of one more man-up: JSON, a list as in "marks" of a man-up')
    .option('--ticks <signs>', 'what was seen without film, with commas between: one-in-front,not:crease-glued')
    .option('--probe', 'also which movement of the ball is worth running to find out')
    .option('--man-down', 'also what each scheme of ours concedes to a man-up from this set')
    .option('--out <file>', 'with --man-down: write the sheet of what concedes least, .pdf, .svg or .png')
    .option('--paper <letter|a4>', 'the paper', 'letter');
  addConditions(command)
    .option('--trials <number>', `man-ups for each number of goals (default: ${usualTrials})`)
    .option('--threads <number>', 'worker threads (default: one a core)')
    .option('--json', 'print all of it as JSON')
    .addHelpText(
      'after',
      `${examples(io, [
        'sliderule scout playbook.json --opponent copper-falls --probe',
        'sliderule scout playbook.json --opponent copper-falls --marks film.json',
        'sliderule scout playbook.json --play ferry --ticks one-in-front,not:crease-glued',
        'sliderule scout playbook.json --opponent northgate --man-down --out man-down.pdf',
      ])}\nSigns:\n${signList()}\n`,
    )
    .action((file: string, raw: RawScout) => runScout(io, file, raw));
};

const usualTrials = 200;

/** All that is found out, in the order in which it is printed. */
interface Found {
  readonly seen: SeenOfThem;
  readonly belief: SchemeBelief;
  readonly calls?: readonly MeasuredPlay[];
  readonly walked: readonly WalkedMovement[];
  readonly conceded?: readonly SchemeConcedes[];
}

async function runScout(io: Io, file: string, raw: RawScout): Promise<void> {
  const made = new Date();
  const conditions = readConditions(raw);
  const ticks = readTicks(raw.ticks);
  const paper = readPaper(raw.paper);
  if (raw.out !== undefined && raw.manDown !== true)
    throw badUse('--out is where the sheet of your own man-down goes: add --man-down.');
  const format = raw.out === undefined ? undefined : readSheetFormat(raw.out, 'opponent');
  if (raw.out !== undefined) checkNew(raw.out);
  const opened = await openPlaybook(file, io);
  const opponent = opponentOf(opened, raw.opponent);
  const play = playOf(opened, raw.play);
  const question: ScoutQuestion = {
    play,
    side: conditions.side,
    level: conditions.level,
    ...scoutedBefore(opened.playbook, opponent),
  };
  const seen = await seenOf(opened.playbook, {
    ...{ play, ticks, side: conditions.side, marks: raw.marks },
    opponent: opponent?.id,
  });
  for (const sentence of seen.leftOut) io.err(`${sentence}\n`);
  io.err(levelNote(opened.playbook, conditions.level));
  const found = await findOut(io, opened, question, seen, conditions, raw);
  const manDown = manDownQuestion(question, conditions);
  if (raw.json === true) io.out(`${JSON.stringify(jsonOf(opened, question, conditions, found), null, 2)}\n`);
  else io.out(`${textOf(opened, question, opponent, found)}\n`);
  if (raw.out === undefined || format === undefined || found.conceded === undefined) return;
  const content = manDownContent(opened.playbook, manDown, found.conceded, {
    opponent: opponent?.name ?? 'any opponent',
    paper,
    date: dayWords(made),
  });
  await writeNew(raw.out, await written(printedManDown(content), format, made));
  (raw.json === true ? io.err : io.out)(`\nWritten: ${raw.out}, one page of ${papers[paper].name}.\n`);
}

async function findOut(
  io: Io,
  opened: OpenPlaybook,
  question: ScoutQuestion,
  seen: SeenOfThem,
  conditions: Conditions,
  raw: RawScout,
): Promise<Found> {
  const pool = createTrialPool({ threads: conditions.threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Working out');
  const options = { signal: io.signal, onPlan: progress.plan, onAnswer: progress.step };
  try {
    return await ask(pool, opened, question, seen, conditions, raw, options);
  } finally {
    progress.stop();
    await pool.close();
  }
}

async function ask(
  pool: TrialPool,
  { playbook }: OpenPlaybook,
  question: ScoutQuestion,
  seen: SeenOfThem,
  conditions: Conditions,
  { probe, manDown }: RawScout,
  options: MeasureOptions,
): Promise<Found> {
  const needsWalks = probe === true || seen.manUps.some(({ ticks = [] }) => ticks.length > 0);
  const walked = needsWalks ? await walkMovements(pool, playbook, question, options) : [];
  const belief = await scoutBelief(pool, playbook, question, seen, walked, options);
  const { side, penalty, level, seed, trials } = conditions;
  const asked = {
    plays: chosenPlays(playbook, undefined),
    schemes: question.schemes.map(({ id }) => id),
    ...{ side, penalty, level, seed, trials: trials ?? usualTrials },
  };
  const calls = probe === true ? await measurePlays(pool, playbook, asked, options) : undefined;
  const conceded =
    manDown === true ? await manDownAnswers(pool, playbook, manDownQuestion(question, conditions), options) : undefined;
  return { seen, belief, walked, ...(calls && { calls }), ...(conceded && { conceded }) };
}

function manDownQuestion(
  { play, side, level, schemes }: ScoutQuestion,
  { penalty, seed, trials }: Conditions,
): ManDownQuestion {
  return {
    ...{ play, side, level, penalty, seed },
    runs: 'set',
    schemes: schemes.map(({ id }) => id),
    trials: trials ?? usualTrials,
  };
}

function textOf(
  { playbook }: OpenPlaybook,
  question: ScoutQuestion,
  opponent: Opponent | undefined,
  { seen, belief, calls, walked, conceded }: Found,
): string {
  const written = toEnginePlay(playbook, question.play);
  const names: ScoutNames = {
    opponent: opponent?.name ?? 'Any opponent',
    play: written.name,
    spots: toEnginePlay(playbook, question.play, question.side).spots.map(({ id }) => id),
    schemes: question.schemes.map(({ id }) => ({
      name: schemeName(playbook, id),
      men: toEngineScheme(playbook, id, written)?.names ?? [],
    })),
  };
  const parts = [beliefText(belief, seen, shownSigns(walked), names)];
  if (calls !== undefined) {
    const shares = belief.schemes.map(({ share }) => share);
    const advice = probeAdvice(playbook, question, walked, shares, calls);
    const called = calls.map(({ play }) => playbook.plays.find(({ id }) => id === play)!.name);
    parts.push(probeText(advice, movementsOfPlay(playbook, question), calls, { ...names, calls: called }));
  }
  if (conceded !== undefined) {
    const { set } = playbook.plays.find(({ id }) => id === question.play)!;
    const answers = conceded.map((one) => ({ ...one, name: schemeName(playbook, one.scheme) }));
    parts.push(manDownText(answers, `a ${set} whose ball goes round`));
  }
  return parts.join('\n\n');
}

/** The signs that the movements of this set can show. */
function shownSigns(walked: readonly WalkedMovement[]): readonly SignId[] {
  return walked.flatMap(({ signs }) => signs);
}

function jsonOf(
  { playbook }: OpenPlaybook,
  question: ScoutQuestion,
  conditions: Conditions,
  { seen, belief, calls, walked, conceded }: Found,
): object {
  const shares = belief.schemes.map(({ share }) => share);
  return {
    engine: engineVersion,
    seed: conditions.seed,
    inputHash: inputHash({ playbook, question, seen }),
    belief,
    ...(calls && { calls, probe: probeAdvice(playbook, question, walked, shares, calls) }),
    ...(conceded && { manDown: conceded }),
  };
}

function opponentOf({ playbook }: OpenPlaybook, id: string | undefined): Opponent | undefined {
  if (id === undefined) return undefined;
  const found = playbook.opponents?.find((one) => one.id === id);
  const known = (playbook.opponents ?? []).map((one) => one.id);
  if (found === undefined) throw unknownName('opponent after --opponent', id, known, undefined);
  return found;
}

function playOf({ playbook }: OpenPlaybook, named: string | undefined): string {
  const [play, ...others] = chosenPlays(playbook, named);
  if (named !== undefined && others.length > 0)
    throw badUse(`invalid --play: ${shown(named)} (expected one play, whose set is on the field).`);
  return play!;
}
