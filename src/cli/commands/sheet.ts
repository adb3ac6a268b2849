import { papers } from '../../render/index.ts';
import {
  dayWords,
  isOfOnePlay,
  type MeasuredPlay,
  measurePlays,
  opponentContent,
  type PrintedPages,
  printedOpponent,
  printedPages,
  type SheetKind,
  type SheetWishes,
  sheetContent,
} from '../../teach/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { chosenFoes, chosenPlays, type Foes, weightOf } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions } from '../conditions.ts';
import { badUse, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';
import { writeNew } from '../write-file.ts';
import { readPaper, readSheetFormat, written } from './sheet-format.ts';
import { defaultSheetFile, type RawSheetKind, readSheetKind } from './sheet-kind.ts';

interface RawSheet extends RawConditions, RawSheetKind {
  readonly play?: string;
  readonly against: string;
  readonly paper: string;
  readonly out?: string;
  readonly names?: true;
  readonly worths: boolean;
}

/** `sliderule sheet FILE`: plays on paper, to pin up, to hand out, to wear on the wrist. */
export const addSheet: AddCommand = (program, io) => {
  const command = program
    .command('sheet')
    .description('put a play on one page to print: steps, jobs, reads, what it beats')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed but for --cards and --book, which take several or all')
    .option('--spots', 'with a page for each man, in large letters')
    .option('--cards', 'a card for the bench and cards for the wrist, of all plays')
    .option('--book', 'the whole playbook: contents, each play with its pages, cards')
    .option('--opponent <id>', 'one page of an opponent: what they play, who is late, what to call')
    .option('--out <file>', 'where to write it; its ending says how: .pdf, .svg or .png (default: ID-sheet.pdf)')
    .option('--paper <letter|a4>', 'the paper', 'letter')
    .option('--names', 'with names beside the numbers (left out by themselves, for the sake of minors)')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all')
    .option('--no-worths', 'without what the play makes against the schemes, which takes some seconds to find');
  addConditions(command)
    .option('--trials <number>', 'simulated man-ups for each scheme (default: 300, goals to about 0.03)')
    .option('--threads <number>', 'worker threads (default: one a core)')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule sheet playbook.json --play lantern',
        'sliderule sheet playbook.json --play lantern --spots --names',
        'sliderule sheet playbook.json --play lantern --side left --out left.svg',
        'sliderule sheet playbook.json --cards',
        'sliderule sheet playbook.json --opponent copper-falls',
        'sliderule sheet playbook.json --book --paper a4 --no-worths',
      ]),
    )
    .action(async (file: string, raw: RawSheet) => {
      const conditions = readConditions(raw);
      const kind = readSheetKind(raw);
      const made = new Date();
      const { side } = conditions;
      const wishes = { side, paper: readPaper(raw.paper), date: dayWords(made), withNames: raw.names === true };
      const opened = await openPlaybook(file, io);
      const plays = playsFor(kind, opened, raw.play);
      const out = raw.out ?? defaultSheetFile(kind, raw.opponent ?? plays[0]!);
      const format = readSheetFormat(out, kind);
      const foes = foesFor(opened, raw);
      io.err(levelNote(opened.playbook, conditions.level));
      const measured = raw.worths ? await measuredPlays(io, opened, plays, foes, conditions) : [];
      const printed =
        kind === 'opponent'
          ? opponentOf(opened, foes, wishes, measured)
          : printedPages(
              kind,
              plays.map((play, at) => sheetContent(opened.playbook, play, wishes, measured[at]?.results)),
            );
      await writeNew(out, await written(printed, format, made));
      const count = printed.pages.length === 1 ? 'one page' : `${printed.pages.length} pages`;
      io.out(`Written: ${out}, ${count} of ${papers[wishes.paper].name}.\n`);
    });
};

/** The schemes that are asked for; of an opponent's page they are his own. */
function foesFor({ playbook }: OpenPlaybook, { opponent, against }: RawSheet): Foes {
  if (opponent === undefined) return chosenFoes(playbook, against);
  const known = (playbook.opponents ?? []).map(({ id }) => id);
  if (!known.includes(opponent)) throw unknownName('opponent after --opponent', opponent, known, undefined);
  if (against !== 'all') throw badUse('--opponent and --against do not go together: they play their own schemes.');
  return chosenFoes(playbook, opponent);
}

function opponentOf(
  { playbook }: OpenPlaybook,
  { opponent }: Foes,
  wishes: SheetWishes,
  measured: readonly MeasuredPlay[],
): PrintedPages {
  return printedOpponent(opponentContent(playbook, opponent!.id, wishes, measured));
}

/** What the plays make, with a progress line where somebody sees it. */
async function measuredPlays(
  io: Io,
  { playbook }: OpenPlaybook,
  plays: readonly string[],
  foes: Foes,
  { side, penalty, level, seed, trials, threads }: Conditions,
): Promise<readonly MeasuredPlay[]> {
  const { schemes, opponent } = foes;
  const asked = {
    ...{ plays, schemes, side, penalty, level, seed },
    weights: schemes.map((scheme) => weightOf(foes, scheme)),
    ...(opponent && { opponent: opponent.id }),
    ...(trials !== null && { trials }),
  };
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  try {
    return await measurePlays(pool, playbook, asked, {
      signal: io.signal,
      onPlan: progress.plan,
      onAnswer: progress.step,
    });
  } finally {
    progress.stop();
    await pool.close();
  }
}

function playsFor(kind: SheetKind, { playbook }: OpenPlaybook, named: string | undefined): readonly string[] {
  const plays = chosenPlays(playbook, named);
  if (isOfOnePlay(kind) && (named === undefined || plays.length > 1)) {
    const known = playbook.plays.map(({ id }) => id).join(', ');
    throw badUse(`a sheet is that of one play: name one of ${known} after --play, or print all with --book.`);
  }
  return plays;
}
