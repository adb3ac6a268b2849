import { addChances, limits, type Playbook } from '../../playbook/index.ts';
import { counted, papers } from '../../render/index.ts';
import {
  type ChanceGrouping,
  type ChanceTableReading,
  chanceGroupings,
  comparePair,
  type DayOrder,
  dayWords,
  groupsToCompare,
  newChances,
  readChanceTable,
  type SeasonReport,
  seasonPages,
  seasonReport,
  writeChanceTable,
} from '../../teach/index.ts';
import { readCsv, writeCsv } from '../chance-csv.ts';
import { type AddCommand, examples } from '../command-line.ts';
import { shown } from '../conditions.ts';
import { badUse, exitCodes, Failure, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { openPlaybook } from '../open-playbook.ts';
import { readText } from '../read-file.ts';
import { replacePlaybook } from '../replace-playbook.ts';
import { seasonText } from '../season-text.ts';
import { checkNew, writeNew } from '../write-file.ts';
import { readPaper, readPracticeFormat, written } from './sheet-format.ts';

interface RawSeason {
  readonly opponent?: string;
  readonly by: string;
  readonly compare?: string;
  readonly load?: string;
  readonly goodLines?: true;
  readonly days?: string;
  readonly keep?: true;
  readonly csv?: string;
  readonly out?: string;
  readonly paper: string;
  readonly json?: true;
}

/** `sliderule season FILE`: what the chances of a season say, and what they do not. */
export const addSeason: AddCommand = (program, io) => {
  program
    .command('season')
    .description('count man-ups and the chances in them: does it work, or was it luck?')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--by <what>', `put chances together by ${chanceGroupings.join(', ')}`, 'call')
    .option('--compare <one,other>', 'hold two of them beside each other, by id or name')
    .option('--opponent <id>', 'only chances against this opponent, by id or name')
    .option('--load <file.csv>', 'take in chances from a table whose first row names the columns')
    .option('--good-lines', 'of that table take the lines that can be read, and leave out the others')
    .option('--days <first>', 'what stands first in its days such as 3/4/2026: month or day')
    .option('--keep', 'write what was loaded into the playbook')
    .option('--csv <file.csv>', 'write the chances as a table that every spreadsheet opens')
    .option('--out <file>', 'write the season as pages: .pdf for all of them, .svg or .png for the first')
    .option('--paper <letter|a4>', 'the paper', 'letter')
    .option('--json', 'print the counts as JSON')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule season playbook.json --by scheme',
        'sliderule season playbook.json --compare lantern,ferry',
        'sliderule season playbook.json --load march.csv --keep',
        'sliderule season playbook.json --opponent copper-falls --out season.pdf',
      ]),
    )
    .action((file: string, raw: RawSeason) => runSeason(io, file, raw));
};

async function runSeason(io: Io, file: string, raw: RawSeason): Promise<void> {
  const made = new Date();
  const by = readGrouping(raw.by);
  // What is wrong with them is told before anything is read.
  readPaper(raw.paper);
  if (raw.out !== undefined) readPracticeFormat(raw.out);
  if (raw.keep === true && raw.load === undefined)
    throw badUse('--keep writes what --load took in: name a table after --load.');
  if (raw.days !== undefined) readDays(raw.days);
  for (const path of [raw.csv, raw.out]) if (path !== undefined) checkNew(path);
  const opened = await openPlaybook(file, io);
  const loaded = raw.load === undefined ? opened.playbook : await load(io, opened.playbook, raw.load, raw);
  const opponent = raw.opponent === undefined ? undefined : opponentOf(loaded, raw.opponent);
  const wishes = { by, ...(opponent !== undefined && { opponent }) };
  const report = seasonReport(loaded, wishes);
  const pair = raw.compare === undefined ? undefined : pairOf(report, raw.compare);
  const isJson = raw.json === true;
  if (isJson) io.out(`${JSON.stringify(jsonOf(report, pair), null, 2)}\n`);
  else
    io.out(`${report.ours.all.chances + report.theirs.all.chances === 0 ? none : seasonText(loaded, report, pair)}\n`);
  // JSON goes to another program, which wants nothing else on this line.
  const tell = isJson ? io.err : io.out;
  await writeFiles(loaded, opponent, raw, made, tell);
  if (raw.load === undefined) return;
  if (raw.keep !== true || loaded === opened.playbook) {
    tell(
      `\nNothing was kept${loaded === opened.playbook ? '' : ': add --keep to write these chances into the playbook'}.\n`,
    );
    return;
  }
  await replacePlaybook(file, opened, loaded);
  tell(`\nKept in ${file}.\n`);
}

function jsonOf(report: SeasonReport, pair: readonly [string, string] | undefined): object {
  const compared = pair && comparePair(report.ours, ...pair);
  return {
    chances: report.ours.all.chances + report.theirs.all.chances,
    ...report,
    ...(compared && { compared: { of: pair, ...compared } }),
  };
}

/** The keys of two groups that are there, by id or name. */
function pairOf({ ours, theirs }: SeasonReport, asked: string): readonly [string, string] {
  const groups = [...groupsToCompare(ours), ...groupsToCompare(theirs)];
  const keys = asked.split(',').map((part) => {
    const plain = part.trim().toLowerCase();
    const one = groups.find(({ key, name }) => key.toLowerCase() === plain || name.toLowerCase() === plain);
    if (one === undefined)
      throw unknownName('group', part.trim(), [...new Set(groups.map(({ key }) => key))], undefined);
    return one.key;
  });
  const [one, other] = keys;
  if (keys.length !== 2 || one === undefined || other === undefined || one === other)
    throw badUse(`invalid --compare: ${shown(asked)} (expected two that differ, such as lantern,ferry).`);
  return [one, other];
}

async function writeFiles(
  loaded: Playbook,
  opponent: string | undefined,
  raw: RawSeason,
  made: Date,
  tell: (text: string) => void,
): Promise<void> {
  if (raw.csv !== undefined) {
    const chances = (loaded.chances ?? []).filter((chance) => opponent === undefined || chance.opponent === opponent);
    await writeNew(raw.csv, writeCsv(writeChanceTable(chances)));
    tell(
      `\nWritten: ${raw.csv}, ${chances.length} chances. It holds no marks and no expected schemes: the playbook file does.\n`,
    );
  }
  if (raw.out !== undefined) {
    const paper = readPaper(raw.paper);
    const format = readPracticeFormat(raw.out);
    const pages = seasonPages(loaded, { paper, made: dayWords(made), ...(opponent !== undefined && { opponent }) });
    await writeNew(raw.out, await written(pages, format, made));
    const count = format !== 'pdf' || pages.pages.length === 1 ? 'one page' : `${pages.pages.length} pages`;
    tell(`\nWritten: ${raw.out}, ${count} of ${papers[paper].name}.\n`);
  }
}

const none = 'No chance was written down yet. Write them down in the workbench, or take in a table with --load.';

/** The playbook with the chances of a table: all of them, or with `--good-lines` those that can be read. */
async function load(io: Io, playbook: Playbook, path: string, raw: RawSeason): Promise<Playbook> {
  const cells = readCsv(await readText(path, limits.bytes));
  const days = raw.days === undefined ? undefined : readDays(raw.days);
  const reading = readChanceTable(playbook, cells, days === undefined ? {} : { days });
  const { chances, badLines } = reading;
  tellProblems(io, path, reading);
  if (reading.problems.length > 0 && (raw.goodLines !== true || chances.length === 0))
    throw new Failure(`Nothing of ${path} was taken in. ${remedy(reading)}`, exitCodes.no);
  for (const note of [...reading.warnings, ...reading.notes]) io.err(`${note}\n`);
  const fresh = newChances(playbook, chances);
  const known = chances.length - fresh.length;
  const out = badLines === 0 ? '' : `; ${counted(badLines, 'line')} left out, which do not count`;
  io.err(
    `${path}: ${counted(fresh.length, 'chance')}${known === 0 ? '' : `; ${known} more were there already`}${out}.\n`,
  );
  const edit = addChances(playbook, fresh);
  if (edit.kind === 'refused') throw new Failure(edit.reason, exitCodes.no);
  return edit.playbook;
}

function tellProblems(io: Io, path: string, { problems }: ChanceTableReading): void {
  for (const { line, text } of problems.slice(0, mostTold)) io.err(`${path}, line ${line}: ${text}\n`);
  if (problems.length > mostTold) io.err(`and ${problems.length - mostTold} more.\n`);
}

function remedy({ chances, badLines, asksDays }: ChanceTableReading): string {
  const days = asksDays ? ' --days month or --days day says what stands first in 3/4/2026.' : '';
  if (chances.length === 0) return `Mend it and try again.${days}`;
  return `Mend ${badLines === 1 ? 'this line' : 'these lines'} and try again, or add --good-lines to take the other ${chances.length}.${days}`;
}

function readDays(raw: string): DayOrder {
  if (raw === 'month') return 'monthFirst';
  if (raw === 'day') return 'dayFirst';
  throw badUse(`invalid --days: ${shown(raw)} (expected month, day).`);
}

/** Lines of a table that are told before the rest is only counted. */
const mostTold = 20;

function readGrouping(raw: string): ChanceGrouping {
  const by = chanceGroupings.find((one) => one === raw.toLowerCase());
  if (by === undefined) throw badUse(`invalid --by: ${shown(raw)} (expected ${chanceGroupings.join(', ')}).`);
  return by;
}

/** The opponent by id or name, among those of the playbook and those that chances name. */
function opponentOf(playbook: Playbook, asked: string): string {
  const plain = asked.toLowerCase();
  const known = (playbook.opponents ?? []).map(({ id, name }) => ({ id, name }));
  const written = [...new Set((playbook.chances ?? []).flatMap(({ opponent }) => opponent ?? []))];
  const one =
    known.find(({ id, name }) => id.toLowerCase() === plain || name.toLowerCase() === plain)?.id ??
    written.find((name) => name.toLowerCase() === plain);
  if (one === undefined)
    throw unknownName('opponent', asked, [...new Set([...known.map(({ id }) => id), ...written])], undefined);
  return one;
}
