import { inputHash } from '../../engine/index.ts';
import { ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import {
  drawnField,
  type Page,
  type PaperName,
  pageToSvg,
  papers,
  playSheet,
  type SheetContent,
} from '../../render/index.ts';
import { buildMatchup } from '../../worker/index.ts';
import { chosenFoes, chosenPlays, type Foes } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions, shown } from '../conditions.ts';
import { badUse } from '../failure.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { pageToPng } from '../press/page-to-png.ts';
import { pagesToPdf } from '../press/pages-to-pdf.ts';
import { reportNames, schemeName } from '../report-names.ts';
import { type SimulatedPlay, simulatePlays } from '../simulate-plays.ts';
import { writeNew } from '../write-file.ts';

interface RawSheet extends RawConditions {
  readonly play?: string;
  readonly against: string;
  readonly paper: string;
  readonly out?: string;
  readonly names?: true;
  readonly worths: boolean;
}

const formats = ['pdf', 'svg', 'png'] as const;
type Format = (typeof formats)[number];

/** `sliderule sheet FILE`: a play on one page, to pin up. */
export const addSheet: AddCommand = (program, io) => {
  const command = program
    .command('sheet')
    .description('put a play on one page to print: steps, jobs, reads, what it beats')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--play <id>', 'the play; needed')
    .option('--out <file>', 'where to write it; its ending says how: .pdf, .svg or .png (default: ID-sheet.pdf)')
    .option('--paper <letter|a4>', 'the paper', 'letter')
    .option('--names', 'with names beside the numbers (left out by themselves, for the sake of minors)')
    .option('--against <ids>', "schemes with commas between them, an opponent's id, or all", 'all')
    .option('--no-worths', 'without what the play makes against the schemes, which takes some seconds to find');
  addConditions(command)
    .option('--trials <number>', 'simulated man-ups for each scheme (default: until goals are known to 0.03)')
    .option('--threads <number>', 'worker threads (default: one a core)')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule sheet playbook.json --play lantern',
        'sliderule sheet playbook.json --play lantern --side left --out left.svg',
        'sliderule sheet playbook.json --play ferry --paper a4 --no-worths',
      ]),
    )
    .action(async (file: string, raw: RawSheet) => {
      const conditions = readConditions(raw);
      const paper = readPaper(raw.paper);
      const opened = await openPlaybook(file, io);
      const [play, ...others] = chosenPlays(opened.playbook, raw.play);
      if (play === undefined || raw.play === undefined || others.length > 0) {
        const known = opened.playbook.plays.map(({ id }) => id).join(', ');
        throw badUse(`a sheet is that of one play: name one of ${known} after --play.`);
      }
      const out = raw.out ?? `${play}-sheet.pdf`;
      const format = readFormat(out);
      const foes = chosenFoes(opened.playbook, raw.against);
      const simulated = raw.worths ? await simulatePlays(io, opened, [play], foes, conditions, 'goals') : [];
      const made = new Date();
      const content = contentOf(
        opened,
        play,
        foes,
        conditions,
        { paper, made, withNames: raw.names === true },
        simulated[0],
      );
      const page = playSheet(content);
      await writeNew(out, await printed(page, format, made));
      io.out(`Written: ${out}, one page of ${papers[paper].name}.\n`);
    });
};

interface SheetWishes {
  readonly paper: PaperName;
  readonly made: Date;
  readonly withNames: boolean;
}

function contentOf(
  { playbook }: OpenPlaybook,
  id: string,
  { schemes }: Foes,
  { side, penalty, level }: Conditions,
  { paper, made, withNames }: SheetWishes,
  simulated: SimulatedPlay | undefined,
): SheetContent {
  const entry = playbook.plays.find((play) => play.id === id)!;
  const play = toEnginePlay(playbook, id, side);
  const names = reportNames(playbook, id);
  const built = buildMatchup(playbook, { play: id, scheme: schemes[0]!, side, penalty, level });
  const players = built.kind === 'refused' ? [] : built.players;
  const results = simulated?.report.results ?? [];
  return {
    play,
    set: entry.set,
    team: playbook.team.name,
    side,
    field: drawnField(ruleCodeOf(playbook).markings),
    men: players.map(({ number, name }, at) => ({ spot: play.spots[at]!.id, number, ...(withNames && { name }) })),
    worths: results.map(({ scheme, goalsPerChance }) => ({ scheme: schemeName(scheme, names), goals: goalsPerChance })),
    trials: results.reduce((least, { trials }) => Math.min(least, trials), Number.POSITIVE_INFINITY),
    version: inputHash(entry).slice(0, 6),
    date: made.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' }),
    paper,
  };
}

async function printed(page: Page, format: Format, made: Date): Promise<string | Uint8Array> {
  switch (format) {
    case 'pdf':
      return pagesToPdf([page], { title: page.title, made: made.toISOString() });
    case 'svg':
      return pageToSvg(page);
    case 'png':
      return pageToPng(page);
    default:
      return exhaustive(format);
  }
}

function readPaper(raw: string): PaperName {
  const name = raw.toLowerCase();
  if (name === 'letter' || name === 'a4') return name;
  throw badUse(`invalid --paper: ${shown(raw)} (expected letter or a4).`);
}

function readFormat(path: string): Format {
  const ending = path.slice(path.lastIndexOf('.') + 1).toLowerCase();
  const format = formats.find((one) => one === ending);
  if (format === undefined)
    throw badUse(`invalid --out: ${shown(path)} (expected a file that ends in .pdf, .svg or .png).`);
  return format;
}

function exhaustive(format: never): never {
  throw new TypeError(`unknown format: ${JSON.stringify(format)}`);
}
